// test/grammar/bounds.test.ts: however long or odd a message is, what is read of it stays within its bounds.
import { describe, expect, test } from 'vitest'
import { emptyContext } from '../../grammar/context.ts'
import { byteLimit } from '../../grammar/normalise.ts'
import { mostRead } from '../../grammar/excerpt.ts'
import { longestSaying, sayingsOf } from '../../grammar/parse.ts'
import { mostParsed, readingOf } from '../../grammar/reading.ts'
import { understand } from '../../grammar/understand.ts'
import { asked } from './print.ts'
import type { Token } from '../../grammar/token.ts'

const fill = (unit: string): string => unit.repeat(Math.ceil(byteLimit / unit.length)).slice(0, byteLimit)

describe('the limit', () => {
  test('a message of 64 KB is read, and one byte more is refused with both numbers', () => {
    expect(understand(fill('RIR over BR hens. '), emptyContext()).question.kind).toBe('cross')
    expect(understand(`${fill('a')}b`, emptyContext()).question).toEqual({
      kind: 'error',
      fault: { kind: 'too-long', bytes: byteLimit + 1, limit: byteLimit },
    })
  })

  test('the limit counts bytes, so half as many two-byte letters pass and one more does not', () => {
    expect(understand('é'.repeat(byteLimit / 2), emptyContext()).question.kind).not.toBe('error')
    expect(understand('é'.repeat(byteLimit / 2 + 1), emptyContext()).question.kind).toBe('error')
  })

  test('the one sentence about birds is found among thousands of others', () => {
    const talk = 'the weather was fine and we went to town. '.repeat(700)
    const question = asked(`${talk}RIR roo over light sussex hens? ${talk}`)
    expect(question.kind === 'cross' && question.matings[0]?.dam.breed).toBe('Light Sussex')
    const genes = asked(`${talk}s+/s+ cock over S/- hens? ${talk}`)
    expect(genes.kind === 'cross' && genes.matings[0]?.sire.genotype).toEqual({ S: ['s+', 's+'] })
  })

  test('of a long message only so much is read as stands in its own sentences of birds', () => {
    const read = readingOf(fill('RIR roo over light sussex hens, and then we had tea. '))
    expect(read.text.length).toBeLessThanOrEqual(mostRead)
  })
})

const word = (type: 'comma' | 'and', at: number): Token => ({ type, said: ',', word: ',', at, end: at, gap: false })
const hen = (at: number): Token => ({
  type: 'breed',
  names: ['Ancona'],
  said: 'Ancona',
  word: 'ancona',
  at,
  end: at,
  gap: false,
})

describe('the parser', () => {
  test('gets no more tokens than its budget, and gives back what is left', () => {
    const tokens = Array.from({ length: 200 }, (_, at) => (at % 2 === 0 ? hen(at) : word('comma', at)))
    expect(sayingsOf(tokens, 30).budget).toBe(0)
    expect(sayingsOf(tokens.slice(0, 3), mostParsed).budget).toBeGreaterThan(0)
  })

  test('makes no saying of more tokens than one may have', () => {
    const tokens = Array.from({ length: 300 }, (_, at) => (at % 2 === 0 ? hen(at) : word('and', at)))
    expect(Math.max(...sayingsOf(tokens, 10_000).read.map(({ length }) => length))).toBeLessThanOrEqual(longestSaying)
  })

  test.each([
    'split to lav carrying choc ',
    'RIR and ',
    '(RIR ',
    'RIR roo BR hens ',
    'S/s+ ',
    'roo hen ',
    'cross A with ',
  ])('comes to an end on %j without end', (unit) => {
    expect(readingOf(fill(unit)).clauses.flat().length).toBeLessThanOrEqual(mostParsed)
  })
})

test('a question never grows with the message: at most twelve matings', () => {
  const question = asked(
    `RIR roo over ${Array.from({ length: 60 }, () => 'BR, SLW, EE, LS, WL, BO, NH, BCM, CCL, GLW, BLRW, RIW, Ancona, Delaware').join(', ')} hens`,
  )
  expect(question.kind === 'cross' ? question.matings.length : 0).toBeLessThanOrEqual(12)
})
