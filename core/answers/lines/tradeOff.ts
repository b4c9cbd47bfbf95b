// core/answers/lines/tradeOff.ts: what is given up for what, in one sentence.
import type { Manner } from '../../question.ts'
import type { Candidate } from './candidate.ts'
import { about, kilos } from './words.ts'

const bestBy = (all: readonly Candidate[], of: (one: Candidate) => number): Candidate =>
  all.reduce((best, one) => (of(one) > of(best) ? one : best))

/** Fewer eggs than this in three years are no difference. */
const alike = 20

/** What the heavier or gentler of two gives for the eggs it lacks. */
function gains(less: Candidate, more: Candidate, units: Manner['units']): readonly string[] {
  const meat = less.carcassKg.likely - more.carcassKg.likely
  return [
    ...(meat >= 0.1 ? [`${kilos(meat, units)} more on a cockerel`] : []),
    ...(more.flight - less.flight >= 0.5 ? ['a calmer hen'] : []),
    ...(less.keeps.likely > more.keeps.likely ? ['a longer laying life'] : []),
    ...(less.cold - more.cold >= 0.5 ? ['a hardier one'] : []),
  ]
}

const and = (words: readonly string[]): string => new Intl.ListFormat('en-GB', { type: 'conjunction' }).format(words)

/** Empty where there are not two to set against each other. */
export function tradeOff(shown: readonly Candidate[], units: Manner['units']): string {
  if (shown.length < 2) return ''
  const more = bestBy(shown, (one) => one.eggsThreeYears.likely)
  const rest = shown.filter((one) => one !== more)
  const less = bestBy(rest, (one) => gains(one, more, units).length + one.carcassKg.likely / 10)
  const eggs = more.eggsThreeYears.likely - less.eggsThreeYears.likely
  const feed = less.feedKgPerDozen.likely - more.feedKgPerDozen.likely
  const cheaper = feed >= 0.1 ? ` on ${kilos(feed, units)} less feed a dozen` : ''
  const given = gains(less, more, units)
  if (eggs < alike)
    return given.length > 0
      ? `${more.name} and ${less.name} lay much alike; ${less.name} adds ${and(given)}.`
      : `${more.name} and ${less.name} come out much alike.`
  const first = `${more.name}: ${about(eggs, 10)} more eggs in three years${cheaper}`
  return given.length > 0
    ? `${first}; ${less.name}: ${and(given)}.`
    : `${first} than ${less.name}, at no loss elsewhere.`
}
