// core/answers/lines/says.ts: the arithmetic of feed, keep, cockerels and buying, in a few plain sentences.
import { disagreements, type Disagreement } from '../../data/hen/practice.ts'
import { feedInYear, keepUntilYear, paidBack } from '../../hen/money.ts'
import { persistencyOf } from '../../hen/years.ts'
import type { LinesQuestion } from '../../question.ts'
import type { Candidate } from './candidate.ts'
import { about, kilos, money } from './words.ts'

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

/** Where both prices are told, the years in which eggs pay the feed. */
const payingYears: Says = ({ prices: { feedPerKg, eggsPerDozen } }, shown) => {
  if (feedPerKg === undefined || eggsPerDozen === undefined) return []
  const years = shown.slice(0, 2).map((one) => {
    const until = keepUntilYear(one.figures, feedPerKg, eggsPerDozen)
    return until === 0 ? `${one.name} in no year` : `${one.name} to year ${until}`
  })
  return [`At these prices the eggs pay for the feed: ${years.join(', ')}.`]
}

export const feedCost: Says = (question, shown) => {
  const { hens = 1, manner } = question
  const lines = shown.slice(0, 3).map((one) => {
    const kg = feedInYear(one.figures, 1)
    const month = (kg * hens) / 12
    const who = hens === 1 ? 'a hen' : `${hens} hens`
    return `${one.name}: ${who} ${about((kg / 365) * 1000 * hens, 10)} g a day, ${kilos(month, manner.units)} a month${feedPrice(question, month)}.`
  })
  return [
    ...lines,
    ...payingYears(question, shown),
    'Cold weather adds about a tenth, spilt feed goes on top; good range saves a little.',
    ...askPrice(question),
  ]
}

const share = (x: number): string => `${Math.round(x * 100)}`

export const keepUntil: Says = (question, shown) => {
  const { feedPerKg, eggsPerDozen, chick = 0 } = question.prices
  const falls = shown.slice(0, 2).map((one) => {
    const later = [2, 3, 4].map((year) => share(persistencyOf(one.figures.daughter, year).likely))
    return `${one.name}: of each 100 eggs of the first year she lays ${later.join(', ')} in years two, three and four.`
  })
  if (feedPerKg === undefined || eggsPerDozen === undefined)
    return [...falls, 'Tell me your feed price and what a dozen eggs brings, and I work out the year.']
  const paid = shown.slice(0, 2).map((one) => {
    const left = paidBack(one.figures, feedPerKg, eggsPerDozen, chick, 3)
    return `${one.name}: three years’ eggs less all feed from hatch leave ${money(left, question.manner)} a hen.`
  })
  return [...falls, ...paid]
}
