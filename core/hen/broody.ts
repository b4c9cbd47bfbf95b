// core/hen/broody.ts: how many daughters to expect broody, from the inclination of their lines.
import normalCdf from '@stdlib/stats-base-dists-normal-cdf'
import normalQuantile from '@stdlib/stats-base-dists-normal-quantile'
import type { Span } from '../vocabulary.ts'
import { broodiness } from '../data/hen/broody.ts'
import { lineMean, type Crossbred } from './crossbred.ts'

/** Where a line of this broody rate stands on the hidden scale; where it was bred out, far below. */
const inclination = (rate: number): number =>
  rate <= broodiness.neverUpToRate ? broodiness.never : normalQuantile(Math.min(rate, 0.99), 0, 1)

/** Share of hens that go broody in a year if let: a range. Not on the Z: both ways of a cross agree in the trial. */
export function broodyRate(bird: Crossbred): Span {
  const mean = lineMean(bird, (stock) => inclination(stock.broodyRate))
  const nearer = bird.meetings.reduce(
    (sum, { one, other, crossed }) =>
      sum + (crossed * Math.abs(inclination(one.broodyRate) - inclination(other.broodyRate))) / 2,
    0,
  )
  const middle = mean + broodiness.dominance * nearer
  const rate = (z: number): number => normalCdf(z, 0, 1)
  return { low: rate(middle - broodiness.doubt), likely: rate(middle), high: rate(middle + broodiness.doubt) }
}

const steps = [
  { below: 0.03, words: 'hardly ever broody' },
  { below: 0.1, words: 'seldom broody' },
  { below: 0.25, words: 'now and then broody' },
  { below: 0.45, words: 'often broody' },
  { below: 0.7, words: 'very often broody' },
  { below: Infinity, words: 'nearly every hen goes broody' },
] as const

export const broodyWords = (rate: number): string => steps.find((s) => rate < s.below)!.words

/** Days a year a hen loses to sitting, on the average of the flock, where broodies are broken up or left a few weeks. */
export const broodyDays = (rate: Span): Span => ({
  low: rate.low * broodiness.daysEach.low,
  likely: rate.likely * broodiness.daysEach.likely,
  high: rate.high * broodiness.daysEach.high,
})
