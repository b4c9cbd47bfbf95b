// core/hen/money.ts: what a hen costs and brings, year by year. Prices come from the keeper; there are none here.
import { yard } from '../data/hen/feed.ts'
import { cockerelWeeks } from '../data/hen/growing.ts'
import type { HenFigures } from './expect.ts'
import { feedGramsPerDay, type Keeping } from './feed.ts'
import { feedToAge } from './growth.ts'
import { persistencyOf } from './years.ts'

export type Prices = {
  readonly feedPerKg?: number | undefined
  readonly eggsPerDozen?: number | undefined
  readonly chick?: number | undefined
}

/** How far ahead a hen is reckoned: hardly one in ten lays beyond. */
const mostYears = 10
/** Years over which rearing is spread in the price of a dozen. */
const rearedOver = 3

const usual: Keeping = {
  celsius: yard.celsius.likely,
  activity: yard.activity.likely,
  kcalPerKg: yard.kcalPerKg.likely,
  waste: yard.waste.likely,
}

export const eggsInYear = (hen: HenFigures, year: number): number =>
  hen.eggsFirstYear.likely * persistencyOf(hen.daughter, year).likely

/** Feed of one laying year, kg; she eats a little less as she lays less. */
export function feedInYear(hen: HenFigures, year: number, keeping = usual): number {
  const layer = {
    weightKg: hen.henKg.likely,
    eggsPerYear: eggsInYear(hen, year),
    eggWeightGrams: hen.eggWeightGrams.likely,
  }
  return (feedGramsPerDay(layer, keeping) * 365) / 1000
}

/** Feed from hatch to first egg, kg. */
export const rearingFeedKg = (hen: HenFigures): number =>
  feedToAge(hen.ageFirstEggDays.likely / 7, hen.henKg.likely).likely

const years = (n: number): readonly number[] => Array.from({ length: n }, (_, at) => at + 1)
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0)

/** All feed from hatch through three laying years and the chick, over the dozens of those years. */
export function costPerDozen(hen: HenFigures, feedPerKg: number, chick = 0): number {
  const laying = years(rearedOver)
  const feed = rearingFeedKg(hen) + sum(laying.map((year) => feedInYear(hen, year)))
  return ((feed * feedPerKg + chick) * 12) / sum(laying.map((year) => eggsInYear(hen, year)))
}

/** Eggs sold less feed bought, for one hen in each of so many laying years. */
export const incomeLessFeed = (
  hen: HenFigures,
  feedPerKg: number,
  eggsPerDozen: number,
  of: number,
): readonly number[] =>
  years(of).map((year) => (eggsInYear(hen, year) / 12) * eggsPerDozen - feedInYear(hen, year) * feedPerKg)

/** The last laying year in which her eggs still pay her feed; 0 where not even the first does. */
export function keepUntilYear(hen: HenFigures, feedPerKg: number, eggsPerDozen: number): number {
  const left = incomeLessFeed(hen, feedPerKg, eggsPerDozen, mostYears)
  const loss = left.findIndex((money) => money < 0)
  return loss < 0 ? mostYears : loss
}

/** What her first years leave after her own rearing: negative while she has not paid it back. */
export const paidBack = (hen: HenFigures, feedPerKg: number, eggsPerDozen: number, chick: number, of: number): number =>
  sum(incomeLessFeed(hen, feedPerKg, eggsPerDozen, of)) - rearingFeedKg(hen) * feedPerKg - chick

/** Feed of the brother hatched with her, until he can be told apart, kg. */
export const brotherFeedKg = (hen: HenFigures): number => feedToAge(cockerelWeeks.toldApart, hen.cockKg.likely).likely

/** Feed to raise one pullet to lay from a straight-run hatch: her own and that of the brother hatched with her, kg. */
export const straightRunFeedKg = (hen: HenFigures, weeks: number): number =>
  rearingFeedKg(hen) + feedToAge(weeks, hen.cockKg.likely).likely
