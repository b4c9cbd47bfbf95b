// test/bot/render/lookCases.test.ts: where every case is sexed alike and the colours hang on a parent, each look has its condition.
import { expect, test } from 'vitest'
import { reply } from '../../../bot/render/reply.ts'
import { asked, blackSexLink, cross, lookShare } from './samples.ts'

const other = {
  ...blackSexLink,
  given: 'the cock is gold',
  weight: 0.3,
  cockerels: [lookShare(1, { words: 'pale yellow' }, 'brassy white')],
  pullets: [lookShare(1, { words: 'pale yellow' }, 'white')],
}

test('two looks of one verdict are told one after the other, likeliest first, and the sign once', () => {
  const { text } = reply(cross([{ ...blackSexLink, given: 'the cock is black', weight: 0.7 }, other]), asked())
  const lines = text.split('\n')
  expect(lines.filter((line) => line.startsWith('If the cock is'))).toEqual([
    expect.stringMatching(/^If the cock is black \(likely\): chicks .*Grown /),
    expect.stringMatching(/^If the cock is gold \(less likely\): chicks .*Grown cocks brassy white; hens white\.$/),
  ])
  expect(lines.filter((line) => line.startsWith('Read it'))).toHaveLength(1)
})

test('cases of one look need no condition', () => {
  const { text } = reply(
    cross([
      { ...blackSexLink, given: 'a', weight: 0.7 },
      { ...blackSexLink, given: 'b', weight: 0.3 },
    ]),
    asked(),
  )
  expect(text).not.toMatch(/^If /m)
})
