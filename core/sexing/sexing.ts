// core/sexing/sexing.ts: chick looks of both sexes -> can they be told apart at hatch, how surely, by which sign.
import type { Sexing, Sign } from '../answer.ts'
import { signs as signFacts, type SignId } from '../data/signs.ts'
import { partSexes, type Kind, type Parting } from './judge.ts'
import type { Hatch, LookClass } from './hatch.ts'
import { laterSign } from './later.ts'
import { marksOf } from './marks.ts'
import { readings, showsSpot, type Noted } from './reading.ts'
import { basisOf, describe } from './words.ts'

type Measured = {
  readonly id: SignId
  readonly M: readonly Noted[]
  readonly F: readonly Noted[]
  readonly parting: Parting
}

/** From this accuracy on a sign is worth a yes; below `some` it is no better than a coin. */
const good = 0.85
const some = 0.6

const kinds = (classes: readonly LookClass[], noted: readonly (readonly Noted[])[]): readonly Kind[] =>
  classes.map(({ share }, i) => ({ share, noted: noted.map((sign) => sign[i]!) }))

function measure(id: Exclude<SignId, 'marks'>, { M, F }: Hatch): Measured {
  const all = [...M, ...F].map(({ look }) => look)
  const [m, f] = [M.map(({ look }) => readings[id](look, all)), F.map(({ look }) => readings[id](look, all))]
  return { id, M: m, F: f, parting: partSexes(kinds(M, [m]), kinds(F, [f])) }
}

/** A pure mating of a breed whose sexes differ in marks of the down. */
function marks({ M, F }: Hatch, pure: string | undefined): Measured | undefined {
  const row = marksOf({ M, F }, pure)
  if (!row) return undefined
  const noted = (p: number): Noted => ({ marked: p, plain: 1 - p })
  const [m, f] = [M.map(() => noted(row.male)), F.map(() => noted(row.female))]
  return { id: 'marks', M: m, F: f, parting: partSexes(kinds(M, [m]), kinds(F, [f])) }
}

const worth = 1e-6
const earlySigns = ['down colour', 'head spot', 'stripes', 'skin colour', 'wing feathers'] as const

/** Wings need parents of known speed; a spot, some chick of either sex that would show it. */
function mayTell(id: SignId, { M, F }: Hatch, wing: boolean): boolean {
  if (id === 'wing feathers') return wing
  return id !== 'head spot' || [M, F].every((sex) => sex.some(({ look }) => showsSpot(look)))
}

/** Signs that part the sexes at all, best first. Wing feathers lose a tie: they must be read within a day. */
function telling(sexes: Hatch, pure: string | undefined, wing: boolean): readonly Measured[] {
  const usable = earlySigns.filter((id) => mayTell(id, sexes, wing))
  const found = [...usable.map((id) => measure(id, sexes)), marks(sexes, pure)]
  return found
    .filter((sign): sign is Measured => sign !== undefined && sign.parting.accuracy > 0.5 + worth)
    .toSorted((a, b) => b.parting.accuracy - a.parting.accuracy)
}

/** Best sign, with the second where reading both helps by a chick in a hundred or more. */
function combine(
  { M, F }: Hatch,
  found: readonly Measured[],
): { readonly parting: Parting; readonly used: readonly Measured[] } | undefined {
  const [first, ...rest] = found
  if (!first) return undefined
  const pairs = rest.map((second) => ({
    used: [first, second],
    parting: partSexes(kinds(M, [first.M, second.M]), kinds(F, [first.F, second.F])),
  }))
  const best = pairs.toSorted((a, b) => b.parting.accuracy - a.parting.accuracy)[0]
  return best && best.parting.accuracy > first.parting.accuracy + 0.01
    ? best
    : { used: [first], parting: first.parting }
}

const verdictOf = (parting: Parting | undefined, used: readonly Measured[]): Sexing['verdict'] => {
  if (!parting || parting.accuracy < some) return 'no'
  const frequencyOnly = used.every(({ id }) => id === 'marks')
  return parting.accuracy >= good && !frequencyOnly ? 'yes' : 'partly'
}

/** Gold and silver on dark down are told apart by so few, and marks counted in so few breeds, that no figure is worth giving. */
const noFigure = (id: SignId, sexes: Hatch, pure: string | undefined): boolean =>
  id === 'marks'
    ? marksOf(sexes, pure)?.counted !== true
    : id === 'down colour' && [...sexes.M, ...sexes.F].some(({ look }) => look.chick.groundClear === 'poor')

const breaksOf = (id: SignId, sexes: Hatch, pure: string | undefined): readonly string[] =>
  id === 'marks' ? (marksOf(sexes, pure)?.breaks ?? []) : signFacts[id].breaks

type Figures = Pick<Sexing, 'accuracy' | 'pulletsTrue' | 'cockerelsTrue'>
const figures = ({ accuracy, pulletsTrue, cockerelsTrue }: Parting): Figures => ({
  accuracy,
  pulletsTrue,
  cockerelsTrue,
})
const noFigures: Figures = { accuracy: null, pulletsTrue: null, cockerelsTrue: null }

const several: readonly SignId[] = ['wing feathers', 'stripes', 'marks']

/** 'head spot tells', 'wing feathers tell some', 'down colour and head spot tell'. */
function tells(used: readonly Measured[], verdict: Sexing['verdict']): string {
  const verb = used.length > 1 || used.some(({ id }) => several.includes(id)) ? 'tell' : 'tells'
  return `${used.map(({ id }) => id).join(' and ')} ${verb}${verdict === 'yes' ? '' : ' some'}`
}

const toSign = (sexes: Hatch, { id, parting }: Measured, pure: string | undefined): Sign => ({
  sign: id,
  window: signFacts[id].window,
  ...describe(id, sexes, pure),
  accuracy: noFigure(id, sexes, pure) ? null : parting.accuracy,
  ...basisOf(id, sexes, pure),
})

/**
 * Sexing of one hatch at days 0 to 3.
 *
 * @param sexes looks of cockerels and pullets with their shares, each summing to 1
 * @param pure name of the breed where both parents are of one breed
 * @param why clause for a `no`, from the parents' genes
 * @param wing whether the parents' feathering speed is known, so that the chicks' wings may be trusted
 * @source gold and silver, barring, slow feathering as Z-linked marks: see core/data/signs.ts
 */
export function sexHatch(sexes: Hatch, pure: string | undefined, why: string, wing: boolean): Sexing {
  const found = telling(sexes, pure, wing)
  const best = combine(sexes, found)
  const verdict = verdictOf(best?.parting, best?.used ?? [])
  const told = verdict === 'no' ? undefined : best
  const used = told?.used ?? []
  const shown =
    verdict === 'no' ? [] : [...used, ...found.filter((s) => !used.includes(s) && s.parting.accuracy >= some)]
  return {
    verdict,
    why: verdict === 'no' ? why : tells(used, verdict),
    ...(told && !used.some(({ id }) => noFigure(id, sexes, pure)) ? figures(told.parting) : noFigures),
    readable: told?.parting.readable ?? 0,
    signs: shown.map((sign) => toSign(sexes, sign, pure)),
    laterSign: laterSign(sexes),
    breaks: used.flatMap(({ id }) => breaksOf(id, sexes, pure)),
    reverse: null,
  }
}
