// core/answers/lines/summary.ts: the first line of the lines answer.
import { cockerelWeeks } from '../../data/hen/growing.ts'
import { feedToAge } from '../../hen/growth.ts'
import { brotherFeedKg, feedInYear, keepUntilYear, rearingFeedKg, straightRunFeedKg } from '../../hen/money.ts'
import type { LinesQuestion } from '../../question.ts'
import type { Candidate } from './candidate.ts'
import { carcassKg } from '../../hen/expect.ts'
import { broilerVerdict, isBroiler, usualCockKg } from './broiler.ts'
import { needsSummary } from './needs.ts'
import { waysToSex, wayWords } from './sexed.ts'
import { yearsPaid } from './says.ts'
import { about, capital, daily, kilos, money } from './words.ts'
import { yearVerdict } from './year.ts'

const goalPhrases: Readonly<Record<LinesQuestion['goals'][number], string>> = {
  sexable: 'chicks sexed at hatch',
  eggs: 'eggs',
  'blue-eggs': 'blue eggs',
  'green-eggs': 'green eggs',
  'olive-eggs': 'olive eggs',
  'brown-eggs': 'brown eggs',
  'dark-eggs': 'dark eggs',
  'white-eggs': 'white eggs',
  size: 'size',
  meat: 'meat',
  calm: 'a calm flock',
  barred: 'barred hens',
  laced: 'laced hens',
  show: 'the show pen',
  cold: 'a cold yard',
  heat: 'a hot yard',
  broody: 'broody hens',
  family: 'a family flock',
}

function compared(question: LinesQuestion, shown: readonly Candidate[]): readonly string[] {
  const { goals } = question
  const [way] = waysToSex(question)
  if (way) return [`${wayWords(way)}.`]
  const [best, next] = shown
  if (!best) return ['No line of the catalogue meets all of that at once; leave one wish out.']
  const wish = goals.length > 0 ? goals.map((goal) => goalPhrases[goal]).join(' and ') : 'eggs'
  const eggs = `${question.breedsOn === true ? 'breeds true, ' : ''}${about(best.eggsThreeYears.likely, 10)} eggs in three years`
  const short = `For ${wish}: ${best.name}, ${eggs}.`
  return next
    ? [`For ${wish}: ${best.name}, ${eggs}; next ${next.name}.`, short, `${capital(best.name)}, ${eggs}.`]
    : [short]
}

/** What several hens eat together, where the keeper told how many. */
function together({ hens = 1, manner, prices }: LinesQuestion, [first]: readonly Candidate[]): readonly string[] {
  if (!first || hens === 1) return []
  const kg = feedInYear(first.figures, 1) * hens
  const cost = prices.feedPerKg === undefined ? '' : `, ${money((kg / 12) * prices.feedPerKg, manner)}`
  return [
    `${hens} hens, ${first.name}, eat about ${daily((kg / 365) * 1000, manner.units)} a day, ${kilos(kg / 12, manner.units)} a month${cost}.`,
  ]
}

/** What a dozen takes in feed and sells at, where both prices are told. */
function marginOf({ manner, prices }: LinesQuestion, [first]: readonly Candidate[]): readonly string[] {
  const { feedPerKg, eggsPerDozen } = prices
  if (!first || feedPerKg === undefined || eggsPerDozen === undefined) return []
  const until = keepUntilYear(first.figures, feedPerKg, eggsPerDozen)
  const cost = money(first.feedKgPerDozen.likely * feedPerKg, manner)
  return [
    `${capital(first.name)}: a dozen takes ${cost} of feed in her first year and sells at ${money(eggsPerDozen, manner)}: that pays ${yearsPaid(until)}.`,
  ]
}

function feed(question: LinesQuestion, shown: readonly Candidate[]): readonly string[] {
  const { manner, prices } = question
  const dozens = shown.slice(0, 2).map((one) => {
    const kg = one.feedKgPerDozen.likely
    const cost = prices.feedPerKg === undefined ? '' : `, ${money(kg * prices.feedPerKg, manner)}`
    return `${one.name} ${kilos(kg, manner.units)}${cost}`
  })
  return [
    ...together(question, shown),
    ...(shown.length === 1 ? marginOf(question, shown) : []),
    `Feed for a dozen eggs: ${dozens.join('; ')}.`,
    `Feed for a dozen eggs: ${dozens[0]}.`,
  ]
}

function keep(question: LinesQuestion, shown: readonly Candidate[]): readonly string[] {
  if (question.year !== undefined) return yearVerdict(question, question.year, shown)
  const { feedPerKg, eggsPerDozen } = question.prices
  const until = shown.slice(0, 2).map((one) => {
    if (feedPerKg === undefined || eggsPerDozen === undefined) return `${one.name} about ${one.keeps.likely} years`
    return `${one.name} ${yearsPaid(keepUntilYear(one.figures, feedPerKg, eggsPerDozen))}`
  })
  return feedPerKg !== undefined && eggsPerDozen !== undefined
    ? [`Eggs pay for the feed: ${until.join(', ')}.`, `Eggs pay for the feed: ${until[0]}.`]
    : [`Worth keeping for eggs: ${until.join(', ')}.`, `Worth keeping for eggs: ${until[0]}.`]
}

function cockerel(
  { weeks = cockerelWeeks.toldApart, manner, prices }: LinesQuestion,
  shown: readonly Candidate[],
): readonly string[] {
  if (shown.some(isBroiler)) return [broilerVerdict(shown)]
  const cockKg = shown[0]?.figures.cockKg.likely ?? usualCockKg
  const kg = feedToAge(weeks, cockKg).likely
  const cost = prices.feedPerKg === undefined ? '' : `, ${money(kg * prices.feedPerKg, manner)}`
  const dressed = carcassKg({ low: cockKg, likely: cockKg, high: cockKg }).likely
  const each = prices.feedPerKg === undefined ? '' : `, ${money((kg * prices.feedPerKg) / dressed, manner)} a kg`
  const table = weeks === cockerelWeeks.table ? `, for about ${kilos(dressed, manner.units)} dressed${each}` : ''
  return [`A cockerel to ${weeks} weeks: about ${kilos(kg, manner.units)} of feed${cost}${table}.`]
}

const kgPerPound = 0.45359237

function bought({ prices, manner }: LinesQuestion, shown: readonly Candidate[]): readonly string[] {
  const { feedPerKg, chick } = prices
  const hen = shown[0]?.figures
  if (hen && feedPerKg === undefined && chick !== undefined) {
    const even = chick / brotherFeedKg(hen)
    const pound = manner.units === 'metric' ? '' : ` (${money(even * kgPerPound, manner)} a lb)`
    return [
      `At ${money(chick, manner)} a pullet chick, hatching is cheaper while feed is under ${money(even, manner)} a kg${pound}; buying spares you the cockerels.`,
    ]
  }
  if (!hen || feedPerKg === undefined || chick === undefined)
    return ['Hatching is cheaper where you sex at hatch or eat the cockerels; buying sexed pullets spares you them.']
  const buy = chick + rearingFeedKg(hen) * feedPerKg
  const hatch = straightRunFeedKg(hen, cockerelWeeks.toldApart) * feedPerKg
  return [
    `A pullet in lay: ${money(buy, manner)} from a bought sexed chick, ${money(hatch, manner)} hatched at home with her brother’s feed.`,
  ]
}

/** From the fullest to the shortest; the first that fits is taken. */
export function summaryOf(question: LinesQuestion, shown: readonly Candidate[]): readonly string[] {
  switch (question.topic) {
    case 'compare':
      return compared(question, shown)
    case 'feed-cost':
      return feed(question, shown)
    case 'keep-until':
      return keep(question, shown)
    case 'cockerel-cost':
      return cockerel(question, shown)
    case 'buy-or-hatch':
      return bought(question, shown)
    case 'needs':
      return needsSummary(question, shown)
  }
}
