// test/core/hen/hatchChance.test.ts: chances of a hatch against another program, and the laws they obey.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  chanceOfAtLeast,
  chanceOfExactly,
  chanceOverHatches,
  eggsFor,
  eggsOverHatches,
} from '../../../core/hen/hatchChance.ts'
import table from './hatchTable.json' with { type: 'json' }

describe(`against ${table.program}`, () => {
  test('fewest eggs for so many pullets at such a certainty, every row', () => {
    expect(table.eggs.length).toBeGreaterThan(270)
    for (const { p, wanted, certainty, eggs } of table.eggs)
      expect([p, wanted, certainty, eggsFor(wanted, p, certainty)]).toEqual([p, wanted, certainty, eggs])
  })
  test('chance of at least so many, to twelve digits', () => {
    for (const { p, n, atLeast, chance } of table.tails)
      expect(Math.abs(chanceOfAtLeast(atLeast, n, p) - chance)).toBeLessThan(1e-12)
  })
  test('hatches that vary as a whole, to ten digits', () => {
    for (const row of table.varying) {
      const rate = { mean: row.mean, between: row.between }
      const got =
        row.exactly === undefined
          ? chanceOverHatches(row.atLeast, row.n, rate, row.pullet)
          : chanceOfExactly(row.exactly, row.n, rate)
      expect(Math.abs(got - row.chance)).toBeLessThan(1e-10)
    }
  })
})

describe('worked by hand: eggs to set, 50, 80, 90, 95 in 100 sure', () => {
  const rows = [
    ['own eggs, 3 pullets', 0.85 * 0.85 * 0.495, 3, [8, 11, 14, 16]],
    ['own eggs, 6 pullets', 0.85 * 0.85 * 0.495, 6, [16, 21, 24, 27]],
    ['own eggs, 10 pullets', 0.85 * 0.85 * 0.495, 10, [27, 34, 37, 41]],
    ['a good keeper, 6 pullets', 0.41, 6, [14, 18, 21, 23]],
    ['posted eggs, 6 pullets', 0.45 * 0.495, 6, [26, 34, 40, 45]],
  ] as const
  test.each(rows)('%s', (_name, p, wanted, want) => {
    expect([0.5, 0.8, 0.9, 0.95].map((q) => eggsFor(wanted, p, q))).toEqual(want)
  })
})

describe('laws', () => {
  const chance = fc.double({ min: 0.05, max: 0.95, noNaN: true })

  test('more eggs never lower the chance of enough pullets', () => {
    fc.assert(
      fc.property(
        fc.nat(40),
        fc.integer({ min: 1, max: 120 }),
        fc.integer({ min: 1, max: 30 }),
        chance,
        (wanted, n, more, p) => {
          expect(chanceOfAtLeast(wanted, n + more, p)).toBeGreaterThanOrEqual(chanceOfAtLeast(wanted, n, p) - 1e-12)
        },
      ),
    )
  })
  test('nor where hatches vary as a whole', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 12, max: 50 }),
        fc.integer({ min: 1, max: 10 }),
        (wanted, n, more) => {
          const rate = { mean: 0.7, between: 0.12 }
          expect(chanceOverHatches(wanted, n + more, rate, 0.5)).toBeGreaterThanOrEqual(
            chanceOverHatches(wanted, n, rate, 0.5) - 1e-12,
          )
        },
      ),
      { numRuns: 50 },
    )
  })
  test('the eggs asked for suffice, and one fewer does not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        chance,
        fc.double({ min: 0.5, max: 0.99, noNaN: true }),
        (wanted, p, sure) => {
          const n = eggsFor(wanted, p, sure)!
          expect(chanceOfAtLeast(wanted, n, p)).toBeGreaterThanOrEqual(sure)
          expect(chanceOfAtLeast(wanted, n - 1, p)).toBeLessThan(sure)
        },
      ),
    )
  })
  test('hatches that vary ask for more eggs than steady ones, and the more they vary the more', () => {
    const set = [0.03, 0.12, 0.2].map((between) => eggsOverHatches(12, { mean: 0.72, between }, 0.475, 0.9)!)
    expect(set[0]).toBeGreaterThanOrEqual(eggsFor(12, 0.72 * 0.475, 0.9)!)
    expect(set[1]).toBeGreaterThan(set[0]!)
    expect(set[2]).toBeGreaterThan(set[1]!)
  })
  test('all chances of one hatch together make 1', () => {
    const sum = Array.from({ length: 31 }, (_, k) => chanceOfExactly(k, 30, { mean: 0.6, between: 0.15 })).reduce(
      (a, b) => a + b,
      0,
    )
    expect(sum).toBeCloseTo(1, 10)
  })
  test('a wish that is met exactly is met: 100 or more of 199 at even odds is one half', () => {
    expect(chanceOfAtLeast(100, 199, 0.5)).toBeCloseTo(0.5, 14)
    expect(eggsFor(1, 0.5, 0.5)).toBe(1)
  })
  test('a hopeless wish is refused, not reckoned for ever', () => {
    expect(eggsFor(12, 1e-9, 0.9)).toBeNull()
    expect(eggsFor(2_000_000, 0.5, 0.9)).toBeNull()
    expect(eggsOverHatches(12, { mean: 0.05, between: 0.2 }, 0.475, 0.99)).toBeNull()
  })
})
