// core/answers/carrier/find.ts: a debate weighed: can it be, how likely before and now, what moved it, what would settle it.
import type { CarrierAnswer } from '../../answer.ts'
import { toNumber } from '../../engine/num.ts'
import type { Debated } from '../../flock/debated.ts'
import { copiesLeft, type Member } from '../../flock/member.ts'
import { carriedName } from '../../flock/carriedName.ts'
import type { Weighed } from '../../flock/weigh.ts'
import { fitting } from '../parts.ts'
import { alsoSure, ifMatesCarry, mateAtHand } from './mates.ts'
import { moreChicks } from './matings.ts'
import { movedBy, type Step, stepsOf, weighSteps } from './steps.ts'
import { unseen } from './unseen.ts'
import { contraryChick, nameOf, saysNothing, sensitivity, shortFraction, verdict } from './verdict.ts'

export type Found = Pick<
  CarrierAnswer,
  | 'summary'
  | 'possible'
  | 'why'
  | 'before'
  | 'now'
  | 'nowFraction'
  | 'moved'
  | 'moreChicks'
  | 'oneContraryChick'
  | 'conflict'
  | 'sensitivity'
> & {
  readonly taken: readonly string[]
}

const nothingFound = {
  before: null,
  now: null,
  nowFraction: null,
  moved: [],
  moreChicks: [],
  oneContraryChick: '',
  conflict: [],
  sensitivity: null,
  taken: [],
}

export function find(debated: Debated, flock: readonly Member[], bird: Member): Found {
  const can = unseen(debated, bird)
  if (can.kind === 'cannot')
    return { ...nothingFound, possible: false, summary: can.summary, why: can.why, before: can.now, now: can.now }
  if (can.kind === 'hidden') return hidden(debated, bird, can.by)
  const steps = stepsOf(debated, flock, bird.name)
  const weighed = weighSteps(debated, flock, bird.name, steps)
  const last = weighed.at(-1)!
  return last.kind === 'conflict'
    ? contradicted(bird, last.readings)
    : weighedUp(debated, flock, bird, steps, weighed, last)
}

/** A dominant that the look of the breed covers: only coloured chicks can tell. */
function hidden(debated: Debated, bird: Member, by: string): Found {
  const what = carriedName(debated.allele)
  return {
    ...nothingFound,
    possible: true,
    summary: fitting(
      `${nameOf(bird)} may have ${what} unseen: it is hidden ${by}.`.replace(/^./u, (first) => first.toUpperCase()),
    ),
    why: `${what} is dominant and would show, but it is hidden ${by}. Only chicks that are not covered in the same way can tell.`.replace(
      /^./u,
      (first) => first.toUpperCase(),
    ),
    oneContraryChick: `One chick that is ${debated.shows}, from a mate without it, proves it.`,
  }
}

const contradicted = (bird: Member, readings: CarrierAnswer['conflict']): Found => ({
  ...nothingFound,
  possible: true,
  summary: fitting(`What was told of ${nameOf(bird)} and the chicks cannot all be true.`),
  why: 'One of these is misread, or a chick has another parent.',
  conflict: readings,
})

function weighedUp(
  debated: Debated,
  flock: readonly Member[],
  bird: Member,
  steps: readonly Step[],
  weighed: readonly Weighed[],
  last: Extract<Weighed, { kind: 'chance' }>,
): Found {
  const moved = movedBy(steps, weighed)
  const soFar = moved.reduce((product, { factor }) => product * (factor ?? Number.POSITIVE_INFINITY), 1)
  const [first] = weighed
  const mute = last.footing === 'even' && moved.length > 0 && moved.every(({ factor }) => factor === 1)
  const known = last.footing !== 'open' && !mute
  const now = toNumber(last.p)
  const settled = now === 0 || now === 1
  const more = moreChicks(debated, bird.sex, now, Number.isFinite(soFar) ? soFar : 1, mateAtHand(debated, flock, bird))
  const seen = steps.filter(({ says }) => moved.some(({ reading }) => reading === says)).map(({ says }) => says)
  return {
    possible: true,
    summary: mute
      ? saysNothing(debated, bird, seen)
      : verdict(debated, bird, last, seen, settled ? alsoSure(debated, flock, bird) : [], more[0]),
    why: mute ? ifMatesCarry(debated, flock, bird) : whyOf(debated, bird, last.footing, moved),
    before: known && first?.kind === 'chance' ? toNumber(first.p) : null,
    now: known ? now : null,
    nowFraction: known ? shortFraction(last.p) : null,
    moved,
    moreChicks: settled ? [] : more,
    oneContraryChick: settled ? '' : contraryChick(debated, bird),
    conflict: [],
    sensitivity: settled ? null : sensitivity(last.footing, soFar),
    taken: settled ? [] : takenForGranted(debated, flock, bird, known ? last.footing : 'open'),
  }
}

type KnownFooting = Extract<Weighed, { kind: 'chance' }>['footing']

function whyOf(
  debated: Debated,
  bird: Member,
  footing: KnownFooting,
  moved: readonly { readonly factor: number | null }[],
): string {
  if (moved.some(({ factor }) => factor === null))
    return `A bird free of ${carriedName(debated.allele)} cannot give such a chick.`
  if (footing === 'told' && moved.length === 0)
    return `That follows from what was told of the family of ${nameOf(bird)}.`
  if (footing !== 'open') return ''
  return debated.acts === 'recessive'
    ? 'A bird with one copy looks like a bird with none; only its parents or its chicks tell.'
    : 'A bird with one copy may fail to show it; only its parents or its chicks tell.'
}

function takenForGranted(
  debated: Debated,
  flock: readonly Member[],
  bird: Member,
  footing: KnownFooting,
): readonly string[] {
  const strangers = flock.some(
    (member) => member.name !== bird.name && !member.sire && !member.dam && copiesLeft(debated, member).length > 1,
  )
  return [
    ...(footing === 'even' ? [`before the chicks ${nameOf(bird)} was as likely to carry it as not`] : []),
    ...(strangers
      ? [`birds of whom nothing was told are free of ${carriedName(debated.allele)}, as far as the chicks allow`]
      : []),
  ]
}
