// core/answers/lines/says.ts: the arithmetic of feed, keep, cockerels and buying, in a few plain sentences.
import { disagreements, type Disagreement } from '../../data/hen/practice.ts'
import { costPerDozen, feedInYear, keepUntilYear, paidBack } from '../../hen/money.ts'
import { persistencyOf } from '../../hen/years.ts'
import { yearSaid } from './year.ts'
import type { LinesQuestion } from '../../question.ts'
import type { Candidate } from './candidate.ts'
import { about, capital, daily, kilos, money } from './words.ts'

export type Says = (question: LinesQuestion, shown: readonly Candidate[]) => readonly string[]

/** ', about £0.84' where the feed price is told. */
export const feedPrice = ({ prices, manner }: LinesQuestion, kg: number): string =>
  prices.feedPerKg === undefined ? '' : `, about ${money(kg * prices.feedPerKg, manner)}`

export const askPrice = ({ prices }: LinesQuestion): readonly string[] =>
  prices.feedPerKg === undefined ? ['Tell me what a kilogram of your feed costs and I put money to it.'] : []

const fiveYears = (one: Candidate): number => one.figures.eggsByYear.reduce((sum, year) => sum + year.likely, 0)

/** Lines among those shown on which keepers and print disagree. */
export const disputed = (shown: readonly Candidate[]): readonly Disagreement[] =>
  disagreements.filter((d) => shown.some(({ bird }) => bird.breed === d.breed && bird.line === d.line))

/** Both figures of each, and whose they are. */
export const disagree: Says = (_question, shown) =>
  disputed(shown).map(
    ({ breed, line, practice, published, publishedOf }) =>
      `${breed}, ${line}: keepers say ${practice.low} to ${practice.high} a year; figures for ${publishedOf} are ${published.low} to ${published.high}.`,
  )

/** Whether a line that lays less makes up for it by laying longer: the sum over five years. */
export const wholeLife: Says = (_question, shown) => {
  if (shown.length < 2) return []
  const parts = shown.slice(0, 3).map((one) => `${one.name} ${about(fiveYears(one), 10)}`)
  return [`Over five laying years: ${parts.join(', ')}.`]
}

/** 'to year 3', 'in no year', or as long as anybody reckons. */
export function yearsPaid(until: number): string {
  if (until === 0) return 'in no year'
  return until >= 10 ? 'as long as she lays' : `to year ${until}`
}

/** Where both prices are told, the years in which eggs pay the feed. */
const payingYears: Says = ({ prices: { feedPerKg, eggsPerDozen } }, shown) => {
  if (feedPerKg === undefined || eggsPerDozen === undefined) return []
  const years = shown
    .slice(0, 2)
    .map((one) => `${one.name} ${yearsPaid(keepUntilYear(one.figures, feedPerKg, eggsPerDozen))}`)
  return [`At these prices the eggs pay for the feed: ${years.join(', ')}.`]
}

/** '; rearing and three years counted, a dozen costs £2.29' where the feed price is told. */
const wholeCost = ({ prices, manner }: LinesQuestion, one: Candidate): string =>
  prices.feedPerKg === undefined
    ? ''
    : `; rearing and three years counted, a dozen costs ${money(costPerDozen(one.figures, prices.feedPerKg, prices.chick), manner)}`

/** One hen by the day and month; of a flock, which the verdict has told, the dozen. */
function feedSaid(question: LinesQuestion, one: Candidate): string {
  const { hens = 1, manner } = question
  const { units } = manner
  if (hens > 1)
    return `A dozen of their eggs takes ${kilos(one.feedKgPerDozen.likely, units)} of feed${feedPrice(question, one.feedKgPerDozen.likely)}${wholeCost(question, one)}.`
  const kg = feedInYear(one.figures, 1)
  return `${capital(one.name)}: a hen eats about ${daily((kg / 365) * 1000, units)} a day, ${kilos(kg / 12, units)} a month${feedPrice(question, kg / 12)}${wholeCost(question, one)}.`
}

/** Her feed; with a price, what a dozen comes to when her own rearing is spread over three years. */
export const feedCost: Says = (question, shown) => {
  const flock = (question.hens ?? 1) > 1
  return [
    ...shown.slice(0, flock ? 1 : 3).map((one) => feedSaid(question, one)),
    ...(shown.length > 1 || flock ? payingYears(question, shown) : []),
    'Cold weather adds about a tenth, spilt feed goes on top; good range saves a little.',
    ...askPrice(question),
  ]
}

const share = (x: number): string => `${Math.round(x * 100)}`

export const keepUntil: Says = (question, shown) => {
  const { feedPerKg, eggsPerDozen, chick = 0 } = question.prices
  if (question.year !== undefined) return yearSaid(question, question.year, shown)
  const falls = shown.slice(0, 2).map((one) => {
    const later = [2, 3, 4].map((year) => share(persistencyOf(one.figures.daughter, year).likely))
    return `${capital(one.name)}: of each 100 eggs of the first year she lays ${later.join(', ')} in years two, three and four.`
  })
  if (feedPerKg === undefined || eggsPerDozen === undefined)
    return [...falls, 'Tell me your feed price and what a dozen eggs brings, and I work out the year.']
  const paid = shown.slice(0, 2).map((one) => {
    const left = paidBack(one.figures, feedPerKg, eggsPerDozen, chick, 3)
    return `${capital(one.name)}: three years’ eggs less all feed from hatch leave ${money(left, question.manner)} a hen.`
  })
  return [...falls, ...paid]
}
