// test/core/hen/distance.test.ts: how far breeds stand apart, pair by pair, as the crossing formula takes them (judgement, from memory).
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { breeds } from '../../../core/breeds.ts'
import { distance, isWide } from '../../../core/hen/distance.ts'
import { stockOf } from '../../../core/hen/stockOf.ts'
import type { Stock } from '../../../core/hen/stock.ts'

function line(breed: string, id?: string): Stock {
  const founder = stockOf({ breed, line: id })
  if (founder.kind !== 'pure') throw new Error(`${breed} is a hybrid`)
  return founder.stock
}
const apart = (one: string, other: string): number => distance(line(one), line(other))

const classes = [
  ['Rhode Island Red', 'New Hampshire', 0.5],
  ['Rhode Island Red', 'Rhode Island White', 0.5],
  ['Buff Orpington', 'Black Australorp', 0.5],
  ['Barred Plymouth Rock', 'White Plymouth Rock', 0.3],
  ['Light Sussex', 'Speckled Sussex', 0.3],
  ['Rhode Island Red', 'Barred Plymouth Rock', 1],
  ['Rhode Island Red', 'Light Sussex', 1],
  ['White Leghorn', 'Black Australorp', 1.3],
  ['White Leghorn', 'Rhode Island Red', 1.3],
  ['White Leghorn', 'Ancona', 0.5],
  ['White Leghorn', 'Silver Spangled Hamburg', 1],
  ['White Silkie', 'Light Brahma', 1.3],
  ['White Silkie', 'Black Pekin bantam', 1.3],
  ['Egyptian Fayoumi', 'Rhode Island Red', 1.3],
  ['Delaware', 'New Hampshire', 0.5],
  ['Delaware', 'Barred Plymouth Rock', 0.5],
  ['Cream Legbar', 'White Leghorn', 0.5],
  ['Easter Egger', 'Rhode Island Red', 0.8],
  ['Mixed breed', 'Light Sussex', 0.8],
  ['Mixed breed', 'Red bird', 0.3],
] as const

describe('classes', () => {
  test.each(classes)('%s and %s: %s', (one, other, want) => {
    expect(apart(one, other)).toBe(want)
    expect(apart(other, one)).toBe(want)
  })
  test('one line: none; another line of the breed: as two strains', () => {
    expect(apart('Rhode Island Red', 'Rhode Island Red')).toBe(0)
    expect(distance(line('Rhode Island Red', 'production'), line('Rhode Island Red', 'heritage'))).toBe(0.3)
  })
})

test('landraces, bantams and birds of no breed are wide; the rest are not', () => {
  for (const wide of ['Egyptian Fayoumi', 'White Silkie', 'Mixed breed', 'Easter Egger', 'Icelandic landrace'])
    expect(isWide(line(wide))).toBe(true)
  for (const bred of ['Rhode Island Red', 'White Leghorn', 'Cream Legbar']) expect(isWide(line(bred))).toBe(false)
})

test('any two birds of the catalogue stand 0 to 1.3 apart, the same both ways', () => {
  const pure = breeds.filter((breed) => !breed.madeFrom)
  fc.assert(
    fc.property(fc.constantFrom(...pure), fc.constantFrom(...pure), ({ name: a }, { name: b }) => {
      expect(apart(a, b)).toBe(apart(b, a))
      expect(apart(a, b)).toBeGreaterThanOrEqual(0)
      expect(apart(a, b)).toBeLessThanOrEqual(1.3)
    }),
  )
})
