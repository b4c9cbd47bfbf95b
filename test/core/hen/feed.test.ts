// test/core/hen/feed.test.ts: the energy equation against the table printed beside it, and against hens that were weighed and fed.
import { describe, expect, test } from 'vitest'
import { energyPerDay, feedGramsPerDay, feedKgPerDozen, feedOf, type Layer } from '../../../core/hen/feed.ts'

/** kcal a hen a day at 22 degrees C, eggs of 60 g, no gain; columns: lay of 0, 50, 60, 70, 80, 90 in 100. */
const printed: readonly (readonly [number, readonly number[]])[] = [
  [1.0, [130, 192, 205, 217, 229, 242]],
  [1.5, [177, 239, 251, 264, 276, 289]],
  [2.0, [218, 280, 292, 305, 317, 330]],
  [2.5, [259, 321, 333, 346, 358, 371]],
  [3.0, [296, 358, 370, 383, 395, 408]],
]
const lay = [0, 50, 60, 70, 80, 90]

describe('energy a day (table: NRC 1994, Nutrient Requirements of Poultry, 9th ed.; from memory)', () => {
  const at = (weightKg: number, i: number): number =>
    energyPerDay({ weightKg, eggsPerYear: (365 * lay[i]!) / 100, eggWeightGrams: 60 }, 22)

  // Equation and table come from one memory, neither from the page: this holds them to each other. The hens that were fed hold them to life.
  test.each(printed)('a hen of %s kg: upkeep, and what each rate of lay adds, to the kilocalorie', (weightKg, row) => {
    expect(Math.abs(at(weightKg, 0) - row[0]!)).toBeLessThan(1)
    for (const [i, kcal] of row.entries())
      expect(Math.abs(at(weightKg, i) - at(weightKg, 0) - (kcal - row[0]!))).toBeLessThan(1)
  })
  test('and no figure of the table is missed by more than its two roundings', () => {
    const misses = printed.flatMap(([kg, row]) => row.map((kcal, i) => Math.abs(at(kg, i) - kcal)))
    expect(Math.max(...misses)).toBeLessThan(1.5)
  })
  test('a gram of gain costs 5.5 kcal', () => {
    const hen: Layer = { weightKg: 2, eggsPerYear: 250, eggWeightGrams: 60 }
    expect(energyPerDay({ ...hen, gainGramsPerDay: 2 }, 20) - energyPerDay(hen, 20)).toBeCloseTo(11, 9)
  })
  test('colder than 0 or hotter than 30 degrees the line is not stretched', () => {
    const hen: Layer = { weightKg: 2, eggsPerYear: 250, eggWeightGrams: 60 }
    expect(energyPerDay(hen, -15)).toBe(energyPerDay(hen, 0))
    expect(energyPerDay(hen, 40)).toBe(energyPerDay(hen, 30))
    expect(energyPerDay(hen, 1)).toBeLessThan(energyPerDay(hen, 0))
  })
})

/** Worked apart from this program with the same equation: feed of 2850 kcal/kg, nothing spilt, no ranging. */
const worked = [
  { hen: 'Leghorn, production', kg: 1.7, eggs: 300, g: 61, day: [104, 115], dozen: [1.52, 1.67] },
  { hen: 'red sex-link', kg: 2.0, eggs: 290, g: 61, day: [112, 123], dozen: [1.69, 1.86] },
  { hen: 'black sex-link', kg: 2.4, eggs: 270, g: 60, day: [120, 133], dozen: [1.95, 2.16] },
  { hen: 'heritage red x Rock', kg: 2.9, eggs: 220, g: 58, day: [127, 142], dozen: [2.53, 2.83] },
  { hen: 'heritage red', kg: 2.9, eggs: 190, g: 58, day: [123, 139], dozen: [2.84, 3.19] },
  { hen: 'exhibition Barred Rock', kg: 3.4, eggs: 150, g: 57, day: [131, 148], dozen: [3.83, 4.33] },
] as const

describe('feed a day and a dozen, at 22 and 12 degrees C (worked by hand)', () => {
  test.each(worked)('$hen', ({ kg, eggs, g, day, dozen }) => {
    const layer = { weightKg: kg, eggsPerYear: eggs, eggWeightGrams: g }
    for (const [i, celsius] of [22, 12].entries()) {
      const keeping = { celsius, activity: 0, kcalPerKg: 2850, waste: 0 }
      expect(Math.abs(feedGramsPerDay(layer, keeping) - day[i]!)).toBeLessThanOrEqual(1)
      expect(Math.abs(feedKgPerDozen(layer, keeping) - dozen[i]!)).toBeLessThanOrEqual(0.02)
    }
  })
})

const within = (x: number, low: number, high: number): void => {
  expect(x).toBeGreaterThanOrEqual(low)
  expect(x).toBeLessThanOrEqual(high)
}
const around = (x: number, share: number) => ({ low: x * (1 - share), likely: x, high: x * (1 + share) })

describe('against hens that were fed', () => {
  test('organic dual-purpose crosses ate 133-143 g a day at 68-73 in 100 lay (Baldinger and Bussemas 2021, read)', () => {
    const layer = { weightKg: 2.5, eggsPerYear: 0.705 * 365, eggWeightGrams: 60 }
    within(feedGramsPerDay(layer, { celsius: 12, activity: 0, kcalPerKg: 2750, waste: 0 }), 133, 143)
  })
  test('asks up to a fifth more than the 3.04 and 2.18 kg a dozen of 1919 (USDA Bulletin 1067, read): those hens were smaller', () => {
    const bare = { celsius: 22, activity: 0, kcalPerKg: 2850, waste: 0 }
    const heavy = feedKgPerDozen({ weightKg: 2.6, eggsPerYear: 150, eggWeightGrams: 57 }, bare)
    const leghorn = feedKgPerDozen({ weightKg: 1.7, eggsPerYear: 150, eggWeightGrams: 57 }, bare)
    within(heavy / 3.04, 1, 1.2)
    within(leghorn / 2.18, 1, 1.2)
  })
})

describe('the range of feed', () => {
  const hen = { weightKg: around(2.5, 0.1), eggsPerYear: around(220, 0.12), eggWeightGrams: around(58, 0.05) }
  test('spilt feed, cold and ranging raise it', () => {
    const layer = { weightKg: 2.5, eggsPerYear: 220, eggWeightGrams: 58 }
    const base = { celsius: 15, activity: 0, kcalPerKg: 2800, waste: 0 }
    const eaten = feedGramsPerDay(layer, base)
    expect(feedGramsPerDay(layer, { ...base, waste: 0.05 })).toBeCloseTo(eaten / 0.95, 9)
    expect(feedGramsPerDay(layer, { ...base, celsius: 5 })).toBeGreaterThan(eaten)
    expect(feedGramsPerDay(layer, { ...base, activity: 0.1 })).toBeGreaterThan(eaten)
  })
  test('a better layer eats more a day and less a dozen', () => {
    const better = { ...hen, eggsPerYear: around(280, 0.12) }
    expect(feedOf(better).gramsPerDay.likely).toBeGreaterThan(feedOf(hen).gramsPerDay.likely)
    expect(feedOf(better).kgPerDozen.likely).toBeLessThan(feedOf(hen).kgPerDozen.likely)
  })
  test('brackets its middle', () => {
    for (const span of Object.values(feedOf(hen))) {
      expect(span.low).toBeLessThan(span.likely)
      expect(span.high).toBeGreaterThan(span.likely)
    }
  })
})
