// core/answers/hatch/counts.ts: eggs to set for so many pullets, and pullets from so many eggs.
import type { HatchAnswer } from '../../answer.ts'
import { hatching } from '../../data/hen/hatching.ts'
import { dayAndMonth, hatchDates } from '../../hen/calendar.ts'
import { chanceOfAtLeast, eggsFor, eggsOverHatches, numberNotExceeded } from '../../hen/hatchChance.ts'
import type { HatchQuestion } from '../../question.ts'
import { cockerelOfEgg, givenFor, hatchRate, pulletOfChick, pulletOfEgg, type Given } from './given.ts'

/** What a topic fills in; the rest is the same for all. */
export type Found = Partial<Omit<HatchAnswer, 'kind' | 'topic' | 'given'>> & { readonly summary: string }

const percent = (share: number): string => `${Math.round(share * 100)} in 100`
const eggs = (n: number): string => `${n} egg${n === 1 ? '' : 's'}`
const pullets = (n: number): string => `${n} pullet${n === 1 ? '' : 's'}`

const steps = [0.5, 0.8, 0.9, 0.95, 0.99] as const

/** Chance of enough by eggs set, at the numbers that reach the usual degrees of certainty. */
function ladder(wanted: number, p: number): HatchAnswer['distribution'] {
  const rungs = [...new Set(steps.map((certainty) => eggsFor(wanted, p, certainty)))]
  return rungs.flatMap((n) => (n === null ? [] : [{ eggs: n, chance: chanceOfAtLeast(wanted, n, p) }]))
}

/** Hatches turn out well or badly as a whole: a few eggs more to be as sure over all of them. Not where the keeper knows his rate. */
function overHatches(question: HatchQuestion, wanted: number, certainty: number, given: Given): readonly string[] {
  if (question.hatchRate !== undefined || wanted > 50) return []
  const { between } = given.shipped ? hatching.posted : hatching.own
  const set = eggsOverHatches(wanted, { mean: hatchRate(given), between }, pulletOfChick(given), certainty)
  return set === null
    ? []
    : [`Hatches turn out well or badly as a whole; to be as sure over good and bad ones, set ${set}.`]
}

/** Whether eggs are posted was not told: then the number for posted ones as well. */
function ifPosted(
  question: HatchQuestion,
  wanted: number,
  certainty: number,
  accuracy: number | null,
): readonly string[] {
  if (question.shipped !== undefined || question.hatchRate !== undefined) return []
  const set = eggsFor(wanted, pulletOfEgg(givenFor({ ...question, shipped: true }, accuracy)), certainty)
  return set === null ? [] : [`Posted eggs hatch worse, and less evenly: of those, set ${set}.`]
}

/** A cross that cannot be sexed at hatch: every male is fed until he shows. */
const allReared = ({ mating }: HatchQuestion, { sexingAccuracy }: Given): readonly string[] =>
  mating && sexingAccuracy === null
    ? ['I count on no sexing at hatch in this cross: all chicks are reared until they show.']
    : []

/** The day to set them, where it was told or counted back. */
const setDay = ({ setOn }: HatchQuestion): string =>
  setOn === undefined || hatchDates(setOn, 0) === null ? '' : ` on ${dayAndMonth(setOn)}`

export function eggsToSet(question: HatchQuestion, given: Given, certainty: number): Found {
  const wanted = question.pulletsWanted
  const p = pulletOfEgg(given)
  if (wanted === undefined)
    return { summary: `Set about ${Math.ceil(1 / p)} eggs for each pullet you want in lay, more to be sure.` }
  const set = eggsFor(wanted, p, certainty)
  const average = Math.ceil(wanted / p)
  if (set === null)
    return { pulletsWanted: wanted, summary: `For ${pullets(wanted)} you would set about ${eggs(average)} or more.` }
  return {
    pulletsWanted: wanted,
    eggsToSet: set,
    eggsToSetOnAverage: average,
    pulletsExpected: set * p,
    cockerelsExpected: set * cockerelOfEgg(given),
    chance: chanceOfAtLeast(wanted, set, p),
    distribution: ladder(wanted, p),
    summary: `Set about ${eggs(set)}${setDay(question)} to have ${pullets(wanted)} in lay, ${percent(certainty)} sure.`,
    says: [
      ...allReared(question, given),
      ...ifPosted(question, wanted, certainty, given.sexingAccuracy),
      ...overHatches(question, wanted, certainty, given),
    ],
  }
}

/** The day, where it was told when the eggs were set. */
function hatchDay({ setOn }: HatchQuestion): string {
  const days = setOn === undefined ? null : hatchDates(setOn, 0)
  return days ? `, hatched ${dayAndMonth(days.hatch)}` : ''
}

export function pulletsFrom(question: HatchQuestion, given: Given, certainty: number): Found {
  const set = question.eggsSet
  if (set === undefined) return eggsToSet(question, given, certainty)
  const p = pulletOfEgg(given)
  const [low, high] = [0.05, 0.95].map((q) => numberNotExceeded(q, set, p))
  const wanted = question.pulletsWanted
  const chance = wanted === undefined ? null : chanceOfAtLeast(wanted, set, p)
  const expected = `From ${eggs(set)}: about ${pullets(Math.round(set * p))} in lay`
  return {
    pulletsWanted: wanted ?? null,
    pulletsExpected: set * p,
    cockerelsExpected: set * cockerelOfEgg(given),
    chance,
    distribution: wanted === undefined ? [] : ladder(wanted, p),
    summary:
      chance === null
        ? `${expected}${hatchDay(question)}, as a rule between ${low} and ${high}.`
        : `${expected}${hatchDay(question)}; the chance of at least ${wanted} is about ${percent(chance)}.`,
    says: [`Nine hatches in ten give between ${low} and ${high} pullets.`],
  }
}
