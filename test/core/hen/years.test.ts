// test/core/hen/years.test.ts: lay from year to year against printed figures, and the years a hen is worth her keep.
import { describe, expect, test } from 'vitest'
import { eggsByYear, eggsTogether, persistencyOf, yearsWorthKeeping } from '../../../core/hen/years.ts'
import { cock, daughter, hen, laying, stock, type Bird } from './stocks.ts'

const exactly = (x: number) => ({ low: x, likely: x, high: x })
const pure = (purpose: Parameters<typeof stock>[1]): ReturnType<typeof daughter> => {
  const line = stock('line', purpose)
  return daughter(cock(line), hen(line))
}
const production = pure({ purpose: 'production' })
const hatchery = pure({ purpose: 'hatchery' })
const heritage = pure({ purpose: 'kept for use' })
const keeps = (bird: ReturnType<typeof daughter>): readonly number[] =>
  [1, 2, 3, 4].map((year) => persistencyOf(bird, year).likely)

describe('eggs of later years as a share of the first', () => {
  test('a usual hen keeps 80, 70, 60 in 100, give or take 3 (Florida extension figures, read)', () => {
    for (const [at, printed] of [1, 0.8, 0.7, 0.6].entries())
      expect(Math.abs(keeps(hatchery)[at]! - printed)).toBeLessThanOrEqual(0.03)
  })
  test('one station hen, 230 then 175 eggs, and Light Sussex, 180 then 150, lie inside the range (read)', () => {
    const { low, high } = persistencyOf(heritage, 2)
    for (const share of [175 / 230, 150 / 180]) {
      expect(share).toBeGreaterThan(low - 0.04)
      expect(share).toBeLessThan(high)
    }
  })
  test('production lines fall fastest, lines kept for use slowest', () => {
    for (const year of [1, 2, 3]) {
      expect(keeps(production)[year]!).toBeLessThan(keeps(hatchery)[year]!)
      expect(keeps(hatchery)[year]!).toBeLessThan(keeps(heritage)[year]!)
    }
  })
  test('a cross of unlike lines falls between them, and holds out better than the mean of both (Ni et al. 2023, read)', () => {
    const [a, b]: readonly [Bird, Bird] = [
      cock(stock('a', { purpose: 'production' })),
      hen(stock('b', { purpose: 'kept for use' })),
    ]
    const cross = daughter(a, b)
    const mid = (persistencyOf(production, 3).likely + persistencyOf(heritage, 3).likely) / 2
    expect(persistencyOf(cross, 3).likely).toBeCloseTo(mid * (1 + 0.02 * 2), 12)
  })
  test('beyond the table each year falls as the last one did', () => {
    expect(persistencyOf(production, 7).likely).toBeCloseTo(0.36 * (0.36 / 0.47) ** 2, 12)
    expect(persistencyOf(production, 5).likely).toBe(0.36)
  })
  test('the first year is all of itself, without doubt, and doubt grows', () => {
    expect(persistencyOf(heritage, 1)).toEqual({ low: 1, likely: 1, high: 1 })
    const width = (year: number): number => persistencyOf(heritage, year).high - persistencyOf(heritage, year).low
    expect(width(3)).toBeGreaterThan(width(2))
    expect(persistencyOf(heritage, 2).high - 0.85).toBeCloseTo(0.85 * 0.06, 12)
  })
})

describe('eggs by year', () => {
  const years = eggsByYear(heritage, { low: 190, likely: 220, high: 250 })
  test('the first is as given', () => expect(years[0]).toEqual({ low: 190, likely: 220, high: 250 }))
  test('the second falls, its two doubts added as squares', () => {
    expect(years[1]!.likely).toBeCloseTo(220 * 0.85, 12)
    expect(years[1]!.likely - years[1]!.low).toBeCloseTo(Math.hypot(30 * 0.85, 220 * 0.85 * 0.06), 9)
    expect(years[1]!.high - years[1]!.likely).toBeCloseTo(Math.hypot(30 * 0.85, 220 * 0.85 * 0.06), 9)
  })
  test('five of them, together the sum of each end', () => {
    expect(years).toHaveLength(5)
    expect(eggsTogether([exactly(200), { low: 100, likely: 150, high: 170 }])).toEqual({
      low: 300,
      likely: 350,
      high: 370,
    })
  })
})

describe('years worth keeping while no price is told: lay of 70, 60 and 50 in 100 of the first', () => {
  test('a production hen two to three', () =>
    expect(yearsWorthKeeping(production)).toEqual({ low: 2, likely: 3, high: 3 }))
  test('a usual hen three to five', () => expect(yearsWorthKeeping(hatchery)).toEqual({ low: 3, likely: 3, high: 5 }))
  test('an old line three to five, four as a rule', () =>
    expect(yearsWorthKeeping(heritage)).toEqual({ low: 3, likely: 4, high: 5 }))
  test('eggs do not enter: half as many eggs, the same years', () => {
    const poor = laying('line', 100, { purpose: 'production' })
    expect(yearsWorthKeeping(daughter(cock(poor), hen(poor)))).toEqual(yearsWorthKeeping(production))
  })
})
