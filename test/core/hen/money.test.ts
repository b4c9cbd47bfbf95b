// test/core/hen/money.test.ts: feed of growing birds, and what hens cost and bring at the keeper's own prices.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { henFigures, type HenFigures } from '../../../core/hen/expect.ts'
import { feedPerKgGain, feedToAge, weightAt } from '../../../core/hen/growth.ts'
import { birdAsBred } from '../../../core/hen/lineage.ts'
import {
  costPerDozen,
  eggsInYear,
  feedInYear,
  incomeLessFeed,
  keepUntilYear,
  paidBack,
  rearingFeedKg,
  straightRunFeedKg,
} from '../../../core/hen/money.ts'

const poundsPerKg = 2.20462
const figures = (breed: string, line?: string): HenFigures =>
  henFigures(birdAsBred({ breed, line }, 'F'), birdAsBred({ breed, line }, 'M'))
const production = figures('Rhode Island Red', 'production')
const heritage = figures('Rhode Island Red', 'heritage')
const price = fc.double({ min: 0.01, max: 20, noNaN: true })

describe('growing cockerels (keepers’ figures)', () => {
  test('4 to 5 lb of feed to eight weeks, 15 to 18 lb to sixteen', () => {
    const pounds = (week: number): number => feedToAge(week, 3.8).likely * poundsPerKg
    expect(pounds(8)).toBeGreaterThan(4)
    expect(pounds(8)).toBeLessThan(5)
    expect(pounds(16)).toBeGreaterThan(15)
    expect(pounds(16)).toBeLessThan(18)
  })
  test('past 14 to 18 weeks growth grows dear: half as much again for each kilogram', () => {
    expect(feedPerKgGain(16, 20, 3.8)).toBeGreaterThan(feedPerKgGain(8, 14, 3.8) * 1.5)
  })
  test('a layer pullet of 1.7 kg takes 5.5 to 6.5 kg to twenty weeks (layer breeders’ tables, from memory)', () => {
    expect(feedToAge(20, 1.7).likely).toBeGreaterThan(5.5)
    expect(feedToAge(20, 1.7).likely).toBeLessThan(6.5)
  })
  test('weight and feed rise week by week, beyond the table too', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.double({ min: 0.8, max: 6, noNaN: true }),
        (week, more, kg) => {
          expect(weightAt(week + more, kg)).toBeGreaterThanOrEqual(weightAt(week, kg))
          expect(feedToAge(week + more, kg).likely).toBeGreaterThan(feedToAge(week, kg).likely)
          expect(weightAt(week, kg)).toBeLessThanOrEqual(kg)
        },
      ),
    )
  })
  test('smaller birds eat by weight^0.75 and are further along for their age', () => {
    expect(feedToAge(12, 1.9).likely).toBeCloseTo(4.4 * 0.5 ** 0.75, 12)
    expect(weightAt(12, 1.9) / 1.9).toBeGreaterThan(0.46)
    expect(weightAt(12, 5.9) / 5.9).toBeLessThan(0.46)
  })
  test('feed for growth is feed eaten over weight put on', () => {
    expect(feedPerKgGain(8, 12, 3.8)).toBeCloseTo((4.4 - 2.1) / (3.8 * (0.46 - 0.26)), 12)
    expect(feedToAge(8, 3.8)).toEqual({ low: 2.1 * 0.85, likely: 2.1, high: 2.1 * 1.15 })
  })
  test('at the weeks of the table, the table', () => {
    expect(feedToAge(12, 3.8).likely).toBeCloseTo(4.4, 12)
    expect(weightAt(16, 3.8)).toBeCloseTo(3.8 * 0.63, 12)
    expect(feedToAge(26, 3.8).likely).toBeCloseTo(14 + 2 * 0.85, 12)
  })
})

describe('prices', () => {
  test('dearer feed never makes a dozen cheaper', () => {
    fc.assert(
      fc.property(price, price, (feed, more) => {
        expect(costPerDozen(production, feed + more)).toBeGreaterThan(costPerDozen(production, feed))
      }),
    )
  })
  test('nor keeps a hen longer', () => {
    fc.assert(
      fc.property(price, price, price, (feed, more, dozen) => {
        expect(keepUntilYear(heritage, feed + more, dozen)).toBeLessThanOrEqual(keepUntilYear(heritage, feed, dozen))
      }),
    )
  })
  test('dearer eggs keep her at least as long', () => {
    fc.assert(
      fc.property(price, price, price, (feed, more, dozen) => {
        expect(keepUntilYear(heritage, feed, dozen + more)).toBeGreaterThanOrEqual(keepUntilYear(heritage, feed, dozen))
      }),
    )
  })
  test('twice the prices, twice the money', () => {
    const once = incomeLessFeed(production, 0.6, 3, 5)
    incomeLessFeed(production, 1.2, 6, 5).forEach((left, at) => expect(left).toBeCloseTo(2 * once[at]!, 9))
  })
})

describe('the year to stop', () => {
  test('she is kept while a year’s eggs pay that year’s feed, and one year more does not', () => {
    const until = keepUntilYear(production, 0.9, 3)
    const left = (year: number): number => (eggsInYear(production, year) / 12) * 3 - feedInYear(production, year) * 0.9
    expect(until).toBeGreaterThan(0)
    expect(left(until)).toBeGreaterThanOrEqual(0)
    expect(left(until + 1)).toBeLessThan(0)
  })
  test('eggs for nothing: never', () => expect(keepUntilYear(production, 0.6, 0.01)).toBe(0))
  test('a production hen pays back more in three years than an old line at the same prices', () => {
    expect(paidBack(production, 0.6, 3, 0, 3)).toBeGreaterThan(paidBack(heritage, 0.6, 3, 0, 3))
  })
})

test('a dozen costs its feed and its share of rearing: by hand from eggs and kilograms', () => {
  const kg = rearingFeedKg(heritage) + [1, 2, 3].reduce((sum, year) => sum + feedInYear(heritage, year), 0)
  const eggs = [1, 2, 3].reduce((sum, year) => sum + eggsInYear(heritage, year), 0)
  expect(costPerDozen(heritage, 0.7, 5)).toBeCloseTo(((kg * 0.7 + 5) / eggs) * 12, 9)
})

test('a straight run counts the brother too', () => {
  expect(straightRunFeedKg(heritage, 8) - rearingFeedKg(heritage)).toBeCloseTo(
    feedToAge(8, heritage.cockKg.likely).likely,
    12,
  )
  expect(straightRunFeedKg(heritage, 16)).toBeGreaterThan(straightRunFeedKg(heritage, 8))
})
