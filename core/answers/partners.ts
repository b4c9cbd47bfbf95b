// core/answers/partners.ts: the `partners` answer: which mates serve the keeper's goal with the birds he has, best first, and which do not.
import type { PartnersAnswer } from '../answer.ts'
import { seenBird } from '../cross/seen.ts'
import { mate } from '../cross/mate.ts'
import { cautionFor } from '../data/cautions.ts'
import { harmful } from '../data/partners.ts'
import type { BirdRef, Goal, PartnersQuestion } from '../question.ts'
import { assumptionWords, birdsOf, uniqueSources } from './parts.ts'
import { failing } from './partners/avoid.ts'
import { chicksWords, matesForColour, shareInColour } from './partners/chicks.ts'
import { choose } from './partners/choose.ts'
import { harmTogether, playThrough, search, type Candidate, type Hunt } from './partners/search.ts'
import { carriesOf } from './partners/quick.ts'
import { eachGoal } from './partners/eachGoal.ts'
import { partnersSummary } from './partners/summary.ts'
import { conditionOf, workingCase } from './partners/condition.ts'
import { reason } from './partners/why.ts'

type Best = PartnersAnswer['best'][number]
/** More birds of the keeper's than these are left out: the search is for a few pens, not for a yard. */
const mostOwn = 6
const mostNames = 5

const goalsOf = ({ goals, minimumEggs, chicks }: PartnersQuestion): readonly Goal[] => {
  const all = goals.length > 0 || chicks !== undefined ? goals : (['sexable'] as const)
  return minimumEggs !== undefined && !all.includes('eggs') ? [...all, 'eggs'] : all
}

const couple = (wanted: PartnersQuestion['wanted'], own: BirdRef, other: BirdRef): readonly [BirdRef, BirdRef] =>
  wanted === 'F' ? [own, other] : [other, own]

const inColour = (sire: BirdRef, dam: BirdRef, colour: string): string => {
  const share = shareInColour(sire, dam, colour)
  return share === undefined ? '' : chicksWords(share, colour)
}

function toBest(
  { bird, own }: Candidate,
  wanted: PartnersQuestion['wanted'],
  goals: readonly Goal[],
  colour?: string,
): Best {
  const [sire, dam] = couple(wanted, own, bird)
  const crossed = mate(sire, dam, { hen: true, reverse: false })
  const one = workingCase(crossed, goals)
  const condition = conditionOf(crossed, [bird, own], goals)
  return {
    bird: seenBird(bird),
    part: wanted === 'F' ? 'dam' : 'sire',
    with: seenBird(own),
    why: [
      colour === undefined ? '' : inColour(sire, dam, colour),
      goals.length > 0 ? reason(goals, one, sire, wanted) : '',
    ]
      .filter(Boolean)
      .join('; '),
    ...(goals.includes('sexable') ? { sexing: one.sexing } : {}),
    ...(one.hen ? { hen: one.hen } : {}),
    ...(condition === undefined ? {} : { condition }),
  }
}

const safely = ({ bird, own }: Candidate): string =>
  Object.values(harmful).find(({ safe, allele }) => safe === bird.breed && carriesOf(own)(allele, allele) > 0)
    ?.safely ?? ''

/** All the candidates for each of the keeper's birds: those he named, or the catalogue. */
function candidates(
  hunts: readonly Hunt[],
  { among, chicks, besides = [] }: PartnersQuestion,
): readonly (readonly Candidate[])[] {
  const leftOut = new Set(besides.map(({ breed }) => breed))
  if (chicks !== undefined && among.length === 0) return hunts.map((hunt) => matesForColour(hunt, chicks))
  if (among.length === 0)
    return hunts.map((hunt) => search(hunt, 1 / hunts.length).filter(({ bird }) => !leftOut.has(bird.breed)))
  return hunts.map((hunt) =>
    among
      .filter((bird) => !harmTogether(hunt.own, bird))
      .map((bird) => playThrough(hunt, bird, true))
      .toSorted((a, b) => b.worth - a.worth),
  )
}

export function answerPartners(question: PartnersQuestion): PartnersAnswer {
  const goals = goalsOf(question)
  const { line } = question
  const hunts = question.for
    .slice(0, mostOwn)
    .map((own): Hunt => ({ own, wanted: question.wanted, goals, ...(line === undefined ? {} : { line }) }))
  const chosen = choose(candidates(hunts, question), question)
  const safe = chosen.safe.map((one) => ({ ...toBest(one, question.wanted, []), why: safely(one) }))
  const all = chosen.candidates.map((one) => toBest(one, question.wanted, goals, question.chicks))
  const minimum = question.minimumEggs ?? 0
  const fit = all.filter(({ hen }) => (hen?.eggsFirstYear.likely ?? 0) >= minimum)
  const best = [...safe, ...(fit.length > 0 ? fit : all)].slice(0, mostNames)
  const avoid = hunts[0] && question.each !== true ? failing(hunts[0], question.among) : []
  const sexed = goals.includes('sexable') && best.some(({ sexing }) => sexing?.verdict !== 'no')
  const signs = best.flatMap(({ sexing }) => sexing?.signs.slice(0, 1) ?? [])
  return {
    kind: 'partners',
    summary:
      eachGoal(question) ?? partnersSummary(question, goals, { safe, best, how: chosen.how, reached: fit.length > 0 }),
    assumptions: assumptionWords(question.assumed),
    assumed: question.assumed,
    cautions: sexed ? cautionFor(['surplusMales']) : [],
    sources: uniqueSources(signs.map(({ basis, status }) => ({ ref: basis, status }))),
    ...birdsOf({
      [question.wanted === 'F' ? 'sire' : 'dam']: question.for,
      [question.wanted === 'F' ? 'dam' : 'sire']: question.among,
    }),
    goal: goals,
    for: question.for.map(seenBird),
    best,
    avoid: avoid.filter(({ bird }) => !best.some((one) => one.bird.breed === bird.breed)),
  }
}
