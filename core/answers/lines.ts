// core/answers/lines.ts: the lines answer: lines and crosses side by side for a goal, and the arithmetic of keeping them.
import type { LinesAnswer } from '../answer.ts'
import { breedNamed } from '../breeds.ts'
import { cautionFor, cautionSources, type CautionId } from '../data/cautions.ts'
import { broiler, growing } from '../data/hen/growing.ts'
import { persistency } from '../data/hen/laying.ts'
import { lightHours, managementSources, naturalLight } from '../data/hen/management.ts'
import { henSources } from '../hen/sources.ts'
import type { BirdRef, Goal, LinesQuestion } from '../question.ts'
import type { Citation } from '../vocabulary.ts'
import { optionOf, type Candidate } from './lines/candidate.ts'
import { buyOrHatch, cockerelCost } from './lines/cockerels.ts'
import { needsSaid } from './lines/needs.ts'
import { strengths } from './lines/rank.ts'
import { disagree, disputed, feedCost, keepUntil, wholeLife } from './lines/says.ts'
import { waysToSex, wayWords } from './lines/sexed.ts'
import { birdsShown } from './lines/shown.ts'
import { summaryOf } from './lines/summary.ts'
import { tradeOff } from './lines/tradeOff.ts'
import { assumptionWords, birdsOf, fitting, uniqueSources } from './parts.ts'

type Topic = LinesQuestion['topic']

/** Costs of cockerels and of buying are told in sentences; hens stand beside them only where the keeper named some. */
const isShown = ({ topic, compare }: LinesQuestion): boolean =>
  compare.length > 0 || (topic !== 'cockerel-cost' && topic !== 'buy-or-hatch')

const renewing =
  'A pure breed renews itself: keep cockerels of your own hatch, at least two, and bring in an unrelated cock every few years. Layers of a first cross do not breed on; that takes both pure lines kept apart.'

function saysFor(question: LinesQuestion, shown: readonly Candidate[]): readonly string[] {
  switch (question.topic) {
    case 'compare':
      return [
        ...(question.breedsOn === true ? [renewing] : []),
        ...waysToSex(question)
          .slice(1)
          .map((way) => `${wayWords(way)}.`),
        ...(question.compare.length > 0 ? wholeLife(question, shown) : []),
        ...disagree(question, shown),
      ]
    case 'feed-cost':
      return feedCost(question, shown)
    case 'keep-until':
      return keepUntil(question, shown)
    case 'cockerel-cost':
      return cockerelCost(question, shown)
    case 'buy-or-hatch':
      return buyOrHatch(question, shown)
    case 'needs':
      return needsSaid(question, shown)
  }
}

const sources: Readonly<Record<Topic, readonly Citation[]>> = {
  compare: [...henSources(['eggs', 'feed']), ...managementSources],
  'feed-cost': henSources(['feed']),
  'keep-until': [...persistency.sources, ...henSources(['feed'])],
  'cockerel-cost': [...growing.sources, ...broiler.sources],
  'buy-or-hatch': [...growing.sources, ...henSources(['feed'])],
  needs: henSources(['eggs']),
}

const due: Readonly<Record<Topic, readonly CautionId[]>> = {
  compare: [],
  'feed-cost': [],
  'keep-until': [],
  'cockerel-cost': ['surplusMales'],
  'buy-or-hatch': ['newStock', 'surplusMales'],
  needs: [],
}

const goalWords = (goals: readonly Goal[]): readonly string[] => goals.map((goal) => goal.replace('-', ' '))

/** A line that was not told is the breed’s usual one: said once for each bird that was named. */
function usualLines(compare: readonly BirdRef[], shown: readonly Candidate[]): readonly string[] {
  return shown.flatMap(({ bird }) => {
    const usual = bird.line === undefined && bird.breed !== undefined ? breedNamed(bird.breed)?.usualLine : undefined
    return usual !== undefined && compare.length > 0 ? [`${bird.breed} means its ${usual} line`] : []
  })
}

/** Under what keeping the eggs compared are laid; none of it where costs alone are asked. */
function keeping({ topic }: LinesQuestion, shown: readonly Candidate[]): readonly string[] {
  if (topic !== 'compare' || shown.length === 0) return []
  const less = [naturalLight.high, naturalLight.low].map((left) => Math.round((1 - left) * 100))
  return [
    `the hens get full feed and ${lightHours.low} to ${lightHours.high} hours of light (natural light alone costs ${less.join(' to ')} eggs in 100)`,
  ]
}

const sourcesOfDispute = (shown: readonly Candidate[]): readonly Citation[] =>
  disputed(shown).flatMap((one) => one.sources)

/** Birds of one part, and of each cross its sire and its dam as well. */
const partsOf = (compare: readonly BirdRef[]): ReturnType<typeof birdsOf> =>
  birdsOf({
    birds: compare,
    sire: compare.flatMap(({ cross }) => (cross ? [cross.sire] : [])),
    dam: compare.flatMap(({ cross }) => (cross ? [cross.dam] : [])),
  })

export function answerLines(question: LinesQuestion): LinesAnswer {
  const shown = birdsShown(question)
  return {
    kind: 'lines',
    summary: fitting(...summaryOf(question, shown)),
    assumptions: [
      ...assumptionWords(question.assumed),
      ...usualLines(question.compare, shown),
      ...keeping(question, shown),
    ],
    assumed: question.assumed,
    cautions: cautionFor(due[question.topic]),
    sources: uniqueSources([
      ...sources[question.topic],
      ...sourcesOfDispute(shown),
      ...cautionSources(due[question.topic]),
    ]),
    ...partsOf(question.compare),
    topic: question.topic,
    goal: goalWords(question.goals),
    options: isShown(question) ? shown.map((one) => optionOf(one, question.prices, strengths(one, shown))) : [],
    tradeOff: question.topic === 'compare' ? tradeOff(shown, question.manner.units) : '',
    says: saysFor(question, shown),
  }
}
