// test/bot/render/tame.test.ts: nothing of a message comes back live: no tag, no ping, no link, no control sign.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { reply } from '../../../bot/render/reply.ts'
import { quoted } from '../../../bot/render/tame.ts'
import { asked, blackSexLink, cross } from './samples.ts'

const hostile = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: 'binary' }),
  fc.constantFrom(
    '<script>alert(1)</script>',
    '<img src=x onerror=y>',
    '@room',
    '@wren:marlpit.example',
    'https://evil.example/x',
    'www.evil.example',
    'javascript:alert(1)',
    '#coop:marlpit.example',
    'matrix:u/wren:marlpit.example',
    '\u202Egnp.exe',
    '\u0007\u001B[31m',
    '&lt;b&gt;',
  ),
)
const allowed = /^<\/?(?:p|br|strong|em|ul|ol|li)>$/

/** What stands between tags and may be dangerous: pings, addresses that clients turn into links, control signs. */
const live = /@|:\/\/|\bwww\.\w|\p{L}\.\p{L}{2}|[#!]\w+:\w|\p{L}:[\p{L}/]|(?!\n)\p{Cc}|\p{Cf}/u

test('any words of a message, wherever an answer repeats them, are shown as harmless words', () => {
  fc.assert(
    fc.property(hostile, (said) => {
      const answer = cross([blackSexLink], {
        sire: [{ name: said }],
        crosses: [
          { sire: { name: said }, dam: { name: said }, cases: [{ ...blackSexLink, given: said }, blackSexLink] },
        ],
        assumptions: [said],
        assumed: [
          { kind: 'spelling', said, taken: 'Light Sussex' },
          { kind: 'skipped', words: [said] },
        ],
      })
      const { text, html } = reply(answer, asked())
      expect(text).not.toMatch(live)
      const tags = html.match(/<[^>]*>?/g) ?? []
      expect(tags.filter((tag) => !allowed.test(tag))).toEqual([])
      expect(html.replace(/<[^>]*>/g, '\n')).not.toMatch(live)
    }),
    { numRuns: 500 },
  )
})

test('quoted words are short and hold only what names and gene symbols are made of', () => {
  expect(quoted('s+/s+ B/-')).toBe('“s+/s+ B/-”')
  expect(quoted('<b>RIR</b>\n@room')).toBe('“b RIR /b room”')
  expect(quoted('x'.repeat(500)).length).toBeLessThan(70)
})
