// core/answers/lines/year.ts: one laying year that a keeper asks about: what she lays in it, has laid by then, and whether it pays.
import { feedInYear, incomeLessFeed } from '../../hen/money.ts'
import { eggsTogether, eggsInYears, persistencyOf } from '../../hen/years.ts'
import type { LinesQuestion } from '../../question.ts'
import type { Span } from '../../vocabulary.ts'
import type { Candidate } from './candidate.ts'
import { capital, kilos, money } from './words.ts'

const mostShown = 3
const ten = (n: number): number => Math.round(n / 10) * 10
const five = (n: number): number => Math.round(n / 5) * 5
const span = ({ low, high }: Span): string => `${five(low)} to ${five(high)}`

const yearsOf = ({ figures }: Candidate, year: number): readonly Span[] =>
  eggsInYears(figures.daughter, figures.eggsFirstYear, year)

/** What the eggs of that year leave over its feed; undefined without both prices. */
function left(one: Candidate, year: number, { feedPerKg, eggsPerDozen }: LinesQuestion['prices']): number | undefined {
  if (feedPerKg === undefined || eggsPerDozen === undefined) return undefined
  return incomeLessFeed(one.figures, feedPerKg, eggsPerDozen, year).at(-1)
}

/** 'In year 3: production Rhode Island Red perhaps 140 to 210 eggs', or, with prices, whether that year pays. */
export function yearVerdict(
  { prices, manner }: LinesQuestion,
  year: number,
  shown: readonly Candidate[],
): readonly string[] {
  const each = shown.slice(0, 2).map((one) => {
    const over = left(one, year, prices)
    if (over === undefined) return `${one.name} perhaps ${span(yearsOf(one, year).at(-1)!)} eggs`
    return over < 0
      ? `${one.name} falls ${money(-over, manner)} short of her feed`
      : `${one.name} brings ${money(over, manner)} over her feed`
  })
  return [`In laying year ${year}: ${each.join('; ')}.`, `In laying year ${year}: ${each[0]}.`]
}

function eggsSaid(one: Candidate, year: number): string {
  const years = yearsOf(one, year)
  const kept = Math.round(persistencyOf(one.figures.daughter, year).likely * 100)
  const before =
    year === 1
      ? ''
      : `; ${year === 2 ? 'the year before' : `the ${year - 1} years before`} about ${ten(eggsTogether(years.slice(0, -1)).likely)}`
  const ofFirst = year === 1 ? '' : `, about ${kept} for each 100 of her first`
  return `${capital(one.name)}, year ${year}: perhaps ${span(years.at(-1)!)} eggs${ofFirst}${before}.`
}

/** The eggs of that year and of those before, her feed in it, and for how much more the keeper would have to tell. */
export function yearSaid(question: LinesQuestion, year: number, shown: readonly Candidate[]): readonly string[] {
  const { prices, manner } = question
  const some = shown.slice(0, mostShown)
  const feed = some.map((one) => `${one.name} ${kilos(feedInYear(one.figures, year), manner.units)}`)
  return [
    ...some.map((one) => eggsSaid(one, year)),
    `Feed in that year: ${feed.join(', ')} a hen.`,
    ...(prices.feedPerKg === undefined || prices.eggsPerDozen === undefined
      ? ['Tell me your feed price and what a dozen eggs brings, and I say whether that year pays.']
      : []),
  ]
}
