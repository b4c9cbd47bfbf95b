// core/hen/feed.ts: what a laying hen eats: from her weight, her eggs and the weather to grams a day and kilograms a dozen.
import type { Span } from '../vocabulary.ts'
import { energyNeed, trustedCelsius, yard } from '../data/hen/feed.ts'
import { spanThrough } from './span.ts'

export type Keeping = {
  readonly celsius: number // mean temperature of house and run
  readonly activity: number // more on maintenance for ranging, as a share
  readonly kcalPerKg: number // metabolisable energy of the feed
  readonly waste: number // share of the feed that is spilt, 0 <= waste < 1
}

export type Layer = {
  readonly weightKg: number
  readonly eggsPerYear: number
  readonly eggWeightGrams: number
  readonly gainGramsPerDay?: number
}

const eggMassPerDay = (layer: Layer): number => (layer.eggsPerYear * layer.eggWeightGrams) / 365

/**
 * Metabolisable energy a hen needs, kcal a day.
 *
 * @param activity more on maintenance than in a pen, as a share
 * @source NRC 1994; not to be stretched beyond 0 to 30 degrees C, where it is held at the nearer end
 */
export function energyPerDay(layer: Layer, celsius: number, activity = 0): number {
  const t = Math.min(trustedCelsius.high, Math.max(trustedCelsius.low, celsius))
  const upkeep = layer.weightKg ** 0.75 * (energyNeed.maintenance - energyNeed.perDegree * t) * (1 + activity)
  return upkeep + energyNeed.perGramGain * (layer.gainGramsPerDay ?? 0) + energyNeed.perGramEgg * eggMassPerDay(layer)
}

/** Feed to be put out for one hen, g a day, spilt feed counted. */
export const feedGramsPerDay = (layer: Layer, keeping: Keeping): number =>
  ((energyPerDay(layer, keeping.celsius, keeping.activity) / keeping.kcalPerKg) * 1000) / (1 - keeping.waste)

/** Feed for twelve eggs, kg; a hen that lays nothing has no such figure (Infinity). */
export const feedKgPerDozen = (layer: Layer, keeping: Keeping): number =>
  (feedGramsPerDay(layer, keeping) * 365 * 12) / layer.eggsPerYear / 1000

type FeedSpans = { readonly gramsPerDay: Span; readonly kgPerDozen: Span }

/** Feed of a hen whose weight, eggs and egg weight are ranges, in a yard that is not known either. */
export function feedOf(hen: {
  readonly weightKg: Span
  readonly eggsPerYear: Span
  readonly eggWeightGrams: Span
}): FeedSpans {
  const inputs = [
    hen.weightKg,
    hen.eggsPerYear,
    hen.eggWeightGrams,
    yard.celsius,
    yard.activity,
    yard.kcalPerKg,
    yard.waste,
  ]
  const through = (figure: (layer: Layer, keeping: Keeping) => number): Span =>
    spanThrough(inputs, ([weightKg, eggsPerYear, eggWeightGrams, celsius, activity, kcalPerKg, waste]) =>
      figure(
        { weightKg: weightKg!, eggsPerYear: Math.max(1, eggsPerYear!), eggWeightGrams: eggWeightGrams! },
        { celsius: celsius!, activity: activity!, kcalPerKg: kcalPerKg!, waste: waste! },
      ),
    )
  return { gramsPerDay: through(feedGramsPerDay), kgPerDozen: through(feedKgPerDozen) }
}
