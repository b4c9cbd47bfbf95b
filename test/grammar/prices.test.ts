// test/grammar/prices.test.ts: what feed, eggs and chicks cost, as keepers write it, and the year they ask about.
import { describe, expect, test } from 'vitest'
import { normalise } from '../../grammar/normalise.ts'
import { pricesIn, weightTold } from '../../grammar/read/prices.ts'
import { yearIn } from '../../grammar/read/years.ts'
import { readingOf, type Reading } from '../../grammar/reading.ts'

function read(text: string): Reading {
  const clean = normalise(text)
  if (!clean.ok) throw new Error('too long')
  return readingOf(clean.value)
}

/** feed a kilogram, eggs a dozen, a chick; worked by hand from 1 lb = 0.4536 kg. */
const rows = [
  ['layer pellets £14 for 20kg, what does a dozen eggs cost', 0.7, undefined, undefined],
  ['$22 a 50 lb bag, eggs sell for $5 a dozen', 0.97, 5, undefined],
  ['20kg sack is £11.50 and I get £1.80 a half dozen', 0.575, 3.6, undefined],
  ['feed 18 euro per 25kg bag. eggs 3 euro a dozen', 0.72, 3, undefined],
  ['feed is $0.38/lb and I sell eggs at 6 bucks a dozen', 0.838, 6, undefined],
  ["feed's £13.50 a bag (20kg). monthly", 0.675, undefined, undefined],
  ['16 dollars for 40 pounds of layer', 0.882, undefined, undefined],
  ['feed is 70p/kg', 0.7, undefined, undefined],
  ['sexed pullets are £9 each, feed 65p kilo', 0.65, undefined, 9],
  ['feed 15 quid 20kg, eggs £2 a half doz', 0.75, 4, undefined],
  ['a box of 6 goes for £1.80', undefined, 3.6, undefined],
  ['£1.50 for 6 eggs, £13 a 20 kg bag', 0.65, 3, undefined],
  ['i get $3.50 for a carton of 18', undefined, 2.333, undefined],
  ['eggs 25p each', undefined, 3, undefined],
  ['pullets 25 euro, feed €0,55/kg', 0.55, undefined, 25],
  ['chicks are $4 and feed $20 for 50#', 0.882, undefined, 4],
  ['a tonne at £420', 0.42, undefined, undefined],
  ['point of lay are £18', undefined, undefined, 18],
  ['eggs £3 a dozen and a bag is 25kg for £15', 0.6, 3, undefined],
  ['£5 for 2 dozen', undefined, 2.5, undefined],
  ['a kilo of grain is 60p', 0.6, undefined, undefined],
  ['got 6 hens a dozen eggs', undefined, undefined, undefined],
  ['i want 5 dozen eggs a week', undefined, undefined, undefined],
] as const

describe('prices', () => {
  test.each(rows)('%s', (text, feed, eggs, chick) => {
    const { prices, sack } = pricesIn(read(text))
    expect(sack).toBeUndefined()
    const near = (got: number | undefined, want: number | undefined): void =>
      want === undefined ? expect(got).toBeUndefined() : expect(got).toBeCloseTo(want, 3)
    near(prices.feedPerKg, feed)
    near(prices.eggsPerDozen, eggs)
    near(prices.chick, chick)
  })
})

describe('a bag of which no weight is told is the usual one of that money', () => {
  test.each([
    ['what if feed is 18 a bag', undefined, 20, 0.9],
    ['what if feed is 18 a bag', '$', 22.68, 0.794],
    ['a sack of feed is €15', undefined, 25, 0.6],
    ['feed 12 quid a sack', undefined, 20, 0.6],
    ['sack of feed $19', undefined, 22.68, 0.838],
    ['what if feed goes up to 22', undefined, 20, 1.1],
    ['eggs 2 pounds a dozen, feed 12 pounds a bag', undefined, 20, 0.6],
  ] as const)('%s', (text, before, kilograms, feed) => {
    const { prices, sack } = pricesIn(read(text), before)
    expect(sack?.kilograms).toBeCloseTo(kilograms, 2)
    expect(prices.feedPerKg).toBeCloseTo(feed, 3)
  })
  test('its weight told afterwards', () => expect(weightTold(read("it's a 40 lb bag"))).toBeCloseTo(18.14, 2))
})

describe('the laying year', () => {
  test.each([
    ['and in year 3', 3],
    ['and after 3 years', 4],
    ['do they drop off after two years', 3],
    ['worth keeping past year 2', 3],
    ['should i cull my 3 yr old reds', 3],
    ['third year', 3],
    ['what about the 2nd laying season', 2],
    ['after their second year', 3],
    ['eggs over three years', undefined],
    ['how many years do they lay', undefined],
    ['in year 30', undefined],
  ] as const)('%s: %s', (text, want) => expect(yearIn(text.split(' '))).toBe(want))
})
