// core/answers/lines/rank.ts: which candidate serves the goals best: each goal a scale from worst to best of the pool.
import { brownScore } from '../../hen/shell.ts'
import type { Goal } from '../../question.ts'
import type { Candidate } from './candidate.ts'

type Measure = (one: Candidate) => number

const eggs: Measure = (one) => one.eggsThreeYears.likely
const thrift: Measure = (one) => 1 / one.feedKgPerDozen.likely
const calm: Measure = (one) => -one.flight - 0.5 * one.sharp
const smallComb: Measure = (one) =>
  one.figures.daughter.stocks.every((stock) => /^(rose|pea|cushion|walnut)/.test(stock.comb)) ? 1 : 0

/** What each goal measures; several measures of one goal count alike. */
const measures: Readonly<Record<Goal, readonly Measure[]>> = {
  eggs: [eggs, thrift],
  sexable: [eggs],
  'blue-eggs': [eggs],
  'green-eggs': [eggs],
  'olive-eggs': [eggs],
  'brown-eggs': [eggs],
  'white-eggs': [eggs],
  'dark-eggs': [(one) => brownScore(one.figures.daughter)],
  size: [(one) => one.figures.henKg.likely],
  meat: [(one) => one.carcassKg.likely],
  calm: [calm],
  family: [calm, eggs, (one) => -one.broody.likely],
  cold: [(one) => one.cold, smallComb],
  heat: [(one) => one.heat],
  broody: [(one) => one.broody.likely],
  barred: [eggs],
  laced: [eggs],
  show: [calm],
}

/** 0 for the worst of the pool, 1 for the best. */
function scale(pool: readonly Candidate[], measure: Measure): Measure {
  const values = pool.map(measure)
  const [low, high] = [Math.min(...values), Math.max(...values)]
  return (one) => (high > low ? (measure(one) - low) / (high - low) : 0)
}

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length

const product = (values: readonly number[]): number => values.reduce((a, b) => a * b, 1)

/** Best first, goals multiplied so that a bird must serve them all; of equals the one that lays more. No goal told counts as eggs. */
export function ranked(pool: readonly Candidate[], goals: readonly Goal[]): readonly Candidate[] {
  const scales = (goals.length > 0 ? goals : (['eggs'] as const)).map((goal) =>
    measures[goal].map((measure) => scale(pool, measure)),
  )
  const score = new Map(pool.map((one) => [one, product(scales.map((of) => mean(of.map((m) => m(one)))))]))
  return pool.toSorted((a, b) => score.get(b)! - score.get(a)! || eggs(b) - eggs(a))
}

const kindOf = (one: Candidate): string => one.figures.daughter.stocks.map((stock) => stock.family).join(' x ')

/** The best few, no two of the same breed or of the same two breeds. */
export function bestFew(sorted: readonly Candidate[], most: number): readonly Candidate[] {
  const kinds = new Map<string, Candidate>()
  for (const one of sorted) if (!kinds.has(kindOf(one))) kinds.set(kindOf(one), one)
  return [...kinds.values()].slice(0, most)
}

const firsts: readonly (readonly [string, Measure])[] = [
  ['most eggs', eggs],
  ['most meat', (one) => one.carcassKg.likely],
  ['least feed a dozen', thrift],
  ['calmest', calm],
  ['least broody', (one) => -one.broody.likely],
  ['best in the cold', (one) => one.cold],
]

/** In what this one stands first among those shown: 'most eggs, least feed a dozen'; shared firsts do not count. */
export function strengths(one: Candidate, among: readonly Candidate[]): string {
  const first = firsts.filter(([, measure]) =>
    among.every((other) => other === one || measure(one) > measure(other) + 1e-9),
  )
  return first.map(([words]) => words).join(', ')
}
