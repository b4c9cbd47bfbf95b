// core/answers/hatch.ts: the hatch answer: eggs to set, pullets to expect, dates, and the rules of the breeding pen.
import type { HatchAnswer } from '../answer.ts'
import { cautionFor, cautionSources, type CautionId } from '../data/cautions.ts'
import { hatchDays, hatching, hensPerCock, newCock } from '../data/hen/hatching.ts'
import { hatchDates } from '../hen/calendar.ts'
import type { HatchQuestion } from '../question.ts'
import type { Citation } from '../vocabulary.ts'
import { eggsToSet, pulletsFrom, type Found } from './hatch/counts.ts'
import { givenFor, type Given } from './hatch/given.ts'
import { dates, firstEggDays, newCockWait, ratio, sexRatio } from './hatch/rules.ts'
import { assumptionWords, birdsOf, fitting, uniqueSources } from './parts.ts'

const usualCertainty = 0.9

function find(question: HatchQuestion, given: Given, certainty: number): Found {
  switch (question.topic) {
    case 'eggs-to-set':
      return eggsToSet(question, given, certainty)
    case 'pullets-from':
      return pulletsFrom(question, given, certainty)
    case 'dates':
      return dates(question, given)
    case 'new-cock-wait':
      return newCockWait()
    case 'ratio':
      return ratio(question)
    case 'sex-ratio':
      return sexRatio(question)
  }
}

const isCount = ({ topic }: HatchQuestion): boolean => topic === 'eggs-to-set' || topic === 'pullets-from'

function assumed(question: HatchQuestion, accuracy: number | null): readonly string[] {
  if (!isCount(question)) return []
  const own =
    question.shipped === undefined && question.hatchRate === undefined ? ['the eggs are your own, not posted'] : []
  const sure =
    question.certainty === undefined && question.pulletsWanted !== undefined ? ['nine times in ten is sure enough'] : []
  const sexed = accuracy === null ? [] : ['you sex the chicks at hatch and keep those you read as pullets']
  return [...own, ...sure, ...sexed]
}

const sources: Readonly<Record<HatchQuestion['topic'], readonly Citation[]>> = {
  'eggs-to-set': hatching.sources,
  'pullets-from': hatching.sources,
  dates: hatchDays.sources,
  'new-cock-wait': newCock.sources,
  ratio: hensPerCock.sources,
  'sex-ratio': hatching.sources,
}

const cautionsDue = (question: HatchQuestion): readonly CautionId[] => (isCount(question) ? ['surplusMales'] : [])

/**
 * @param sexingAccuracy share of the chicks of this very cross that end in the right pen when sexed at hatch;
 *        null where they cannot be, or are all reared
 */
export function answerHatch(question: HatchQuestion, sexingAccuracy: number | null = null): HatchAnswer {
  const certainty = question.certainty ?? usualCertainty
  const given = givenFor(question, sexingAccuracy)
  const found = find(question, given, certainty)
  const due = cautionsDue(question)
  return {
    kind: 'hatch',
    assumptions: [...assumptionWords(question.assumed), ...assumed(question, sexingAccuracy)],
    assumed: question.assumed,
    cautions: cautionFor(due),
    sources: uniqueSources([...sources[question.topic], ...cautionSources(due)]),
    ...birdsOf(
      question.mating
        ? { sire: [question.mating.sire], dam: [question.mating.dam] }
        : question.cock
          ? { sire: [question.cock] }
          : {},
    ),
    topic: question.topic,
    pulletsWanted: null,
    certainty,
    eggsToSet: null,
    eggsToSetOnAverage: null,
    pulletsExpected: null,
    cockerelsExpected: null,
    chance: null,
    distribution: [],
    given,
    dates: question.setOn === undefined ? null : hatchDates(question.setOn, firstEggDays(question.mating).likely),
    says: [],
    ...found,
    summary: fitting(found.summary),
  }
}
