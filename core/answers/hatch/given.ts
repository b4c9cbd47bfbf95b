// core/answers/hatch/given.ts: what a hatch question takes as given: rates told, or usual ones, and the chance of one egg.
import type { HatchAnswer } from '../../answer.ts'
import { hatching } from '../../data/hen/hatching.ts'
import { youngOf } from '../../hen/lineage.ts'
import type { HatchQuestion } from '../../question.ts'

export type Given = HatchAnswer['given']

const isCross = (question: HatchQuestion): boolean =>
  question.mating !== undefined && youngOf(question.mating, 'F').meetings.length > 0

/** Hatch of the fertile eggs: as told of all eggs, else the usual, a little more where the chicks are cross-bred. */
function hatchOfFertile(question: HatchQuestion): number {
  const usual = question.shipped === true ? hatching.posted : hatching.own
  if (question.hatchRate !== undefined) return Math.min(1, question.hatchRate / fertility(question))
  return usual.hatchOfFertile + (isCross(question) ? hatching.crossbredEmbryo : 0)
}

/** A told rate is of all eggs set: where it is better than the usual fertility allows, fertility was better too. */
function fertility(question: HatchQuestion): number {
  const usual = (question.shipped === true ? hatching.posted : hatching.own).fertility
  return Math.max(usual, question.hatchRate ?? 0)
}

export const givenFor = (question: HatchQuestion, sexingAccuracy: number | null): Given => ({
  fertility: fertility(question),
  hatchOfFertile: hatchOfFertile(question),
  femaleShare: hatching.femaleShare,
  survival: hatching.survival,
  shipped: question.shipped === true,
  sexingAccuracy,
  status: question.hatchRate === undefined ? 'from memory' : 'told',
})

/** Share of the eggs set that hatch. */
export const hatchRate = (given: Given): number => given.fertility * given.hatchOfFertile

/** Chance that a hatched chick becomes a pullet in lay: a pullet, read as one where chicks are sexed at hatch, and reared. */
export const pulletOfChick = (given: Given): number => given.femaleShare * given.survival * (given.sexingAccuracy ?? 1)

/** The same of an egg set. */
export const pulletOfEgg = (given: Given): number => hatchRate(given) * pulletOfChick(given)

/** Chance that an egg set becomes a grown cockerel, whether or not he is kept. */
export const cockerelOfEgg = (given: Given): number => hatchRate(given) * (1 - given.femaleShare) * given.survival
