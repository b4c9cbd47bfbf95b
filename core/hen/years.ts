// core/hen/years.ts: lay from year to year, and how many years a hen is worth keeping while nobody tells a price.
import type { Span } from '../vocabulary.ts'
import { persistency, worthKeeping } from '../data/hen/laying.ts'
import { lineMean, type Crossbred } from './crossbred.ts'
import { spanOf } from './span.ts'
import type { Purpose } from './stock.ts'

export const yearsShown = 5

/** A line's own share in year n; beyond the table each year falls as the last one did. */
function lineKeeps(purpose: Purpose, year: number): number {
  const table: readonly number[] = persistency.byPurpose[purpose]
  const last = table.at(-1) ?? 0
  return table[year - 1] ?? last * (last / (table.at(-2) ?? 1)) ** (year - table.length)
}

/** Lay of year n (1 is the first) as a share of the first, with its own doubt; crosses hold out a little better. */
export function persistencyOf(bird: Crossbred, year: number): Span {
  const line = lineMean(bird, (stock) => lineKeeps(stock.purpose, year))
  const crossed = bird.meetings.reduce((sum, pair) => sum + pair.crossed * pair.distance, 0)
  const more = (h: number): number => line * h * crossed * (year - 1)
  const { low, likely, high } = persistency.heterosisPerYear
  const doubt = line * persistency.doubtPerYear * (year - 1)
  return spanOf(line + more(likely), [
    { down: doubt, up: doubt },
    { down: more(likely - low), up: more(high - likely) },
  ])
}

/** Eggs of each of the first `of` years, the first as given. Doubts of the first year and of the fall are taken as independent. */
export const eggsInYears = (bird: Crossbred, first: Span, of: number): readonly Span[] =>
  Array.from({ length: of }, (_, at) => {
    const kept = persistencyOf(bird, at + 1)
    return spanOf(first.likely * kept.likely, [
      { down: (first.likely - first.low) * kept.likely, up: (first.high - first.likely) * kept.likely },
      { down: first.likely * (kept.likely - kept.low), up: first.likely * (kept.high - kept.likely) },
    ])
  })

export const eggsByYear = (bird: Crossbred, first: Span): readonly Span[] => eggsInYears(bird, first, yearsShown)

/** Eggs of several years together. The doubt about a line runs through all its years, so ends are added, not squares. */
export const eggsTogether = (years: readonly Span[]): Span => ({
  low: years.reduce((sum, y) => sum + y.low, 0),
  likely: years.reduce((sum, y) => sum + y.likely, 0),
  high: years.reduce((sum, y) => sum + y.high, 0),
})

/** Laying years in which she still lays at least this share of her first; at least 1. */
function yearsAbove(bird: Crossbred, share: number): number {
  const years = Array.from({ length: yearsShown }, (_, at) => at + 1)
  return years.filter((year) => persistencyOf(bird, year).likely >= share).length
}

/** Strict, usual and patient view of how many laying years are worth her keep; without prices, a custom, not a sum. */
export const yearsWorthKeeping = (bird: Crossbred): Span => ({
  low: yearsAbove(bird, worthKeeping.strict),
  likely: yearsAbove(bird, worthKeeping.usual),
  high: yearsAbove(bird, worthKeeping.patient),
})
