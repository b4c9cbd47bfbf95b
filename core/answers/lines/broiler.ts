// core/answers/lines/broiler.ts: a meat hybrid beside a dual-purpose cockerel: feed for each kilogram, alive and dressed.
import { broiler, cockerelWeeks } from '../../data/hen/growing.ts'
import { carcassKg } from '../../hen/expect.ts'
import { feedToAge, weightAt } from '../../hen/growth.ts'
import type { LinesQuestion } from '../../question.ts'
import type { Candidate } from './candidate.ts'
import { kilos } from './words.ts'

/** A dual-purpose cockerel where no bird is named. */
export const usualCockKg = 3.8

export const isBroiler = ({ bird }: Candidate): boolean => bird.breed === broiler.breed

type Grown = { readonly name: string; readonly feedKg: number; readonly liveKg: number; readonly dressedKg: number }

/** The cockerel to set beside it: the bird that was named too, else one of a heavy breed, at the age for the table. */
function cockerelOf(shown: readonly Candidate[]): Grown {
  const other = shown.find((one) => !isBroiler(one))
  const cockKg = other?.figures.cockKg.likely ?? usualCockKg
  return {
    name: other ? `${other.name} cockerel` : 'dual-purpose cockerel',
    feedKg: feedToAge(cockerelWeeks.table, cockKg).likely,
    liveKg: weightAt(cockerelWeeks.table, cockKg),
    dressedKg: carcassKg({ low: cockKg, likely: cockKg, high: cockKg }).likely,
  }
}
const ofBroiler: Grown = {
  name: broiler.breed,
  feedKg: broiler.liveKg * broiler.feedPerLive,
  liveKg: broiler.liveKg,
  dressedKg: broiler.liveKg * broiler.dressedShare,
}

const ages = `${broiler.weeks.low} to ${broiler.weeks.high} weeks`
const perLive = ({ feedKg, liveKg }: Grown): string => (feedKg / liveKg).toFixed(1)

export function broilerVerdict(shown: readonly Candidate[]): string {
  const other = cockerelOf(shown)
  return `By feed the Cornish Cross wins: about ${broiler.feedPerLive} of feed to 1 of live bird at ${ages}; a ${other.name} at ${cockerelWeeks.table} weeks about ${perLive(other)} to 1.`
}

export function broilerSays({ manner: { units } }: LinesQuestion, shown: readonly Candidate[]): readonly string[] {
  const told = ({ feedKg, liveKg, dressedKg }: Grown): string =>
    `about ${kilos(feedKg, units)} of feed, ${kilos(liveKg, units)} alive, ${kilos(dressedKg, units)} dressed: ${(feedKg / dressedKg).toFixed(1)} of feed to 1 of meat and bone`
  const other = cockerelOf(shown)
  return [
    `Cornish Cross to ${ages}: ${told(ofBroiler)}.`,
    `A ${other.name} to ${cockerelWeeks.table} weeks: ${told(other)}, give or take a seventh.`,
    'Kept much longer a Cornish Cross tends to go down on its legs or heart; it is bought anew each time, while spare cockerels come free with your layers.',
  ]
}
