// grammar/follow/young.ts: the young of the cross before: bred together, back to a parent, or to another bird.
import { aspectsOf, isSolid } from '../read/common.ts'
import { crossAgain, lasting } from './cross.ts'
import type { BirdRef, CrossQuestion, Question } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'
import type { Reading } from '../reading.ts'
import type { Mating } from './cross.ts'

// --- generations ---

const bredTogether = ({ sire, dam }: Mating): Mating => ({
  sire: { cross: { sire, dam } },
  dam: { cross: { sire, dam } },
})

const backTo = (part: Sex, { sire, dam }: Mating): Mating =>
  part === 'M' ? { sire, dam: { cross: { sire, dam } } } : { sire: { cross: { sire, dam } }, dam }

/** "if I cross two of those chicks", "breed the kids". */
const crossesChicks =
  /\b(?:cross|breed|mate|put|pair)(?:ing|ed)? (?:up )?(?:(?:two|2|some|any|a pair|a couple|one|both|back) (?:of )?)?(?:those|them|these|the|their)(?: two)? ?(?:chicks?|babies|kids|offspring|young|youngsters|f1s?|together|progeny|pullets and cockerels)?(?: |$)/u

/** "if I keep one of the sons for my next rooster": he goes on the same hens, a daughter to the same cock. */
const keepsYoung =
  /\b(?:keep|kept|use|save|saved|hold back|held back|raise|pick)(?: \w+){0,3} (sons?|boys?|cockerels?|roos?|daughters?|pullets?|girls?)\b.*\b(?:next|breeders?|breeding|rooster|roo|cock|father|flock|hens|again|back)\b/u

export function nextGeneration(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const generation = reading.tokens.some(({ type }) => type === 'generation')
  const words = reading.words.join(' ')
  const back = /\bback\b/u.test(words)
  const parent = back && reading.tokens.some((token) => (token.type === 'cock' || token.type === 'hen') && token.parent)
  const kept = keepsYoung.exec(words)?.[1]
  if (kept !== undefined && !back) {
    const son = /^(?:son|boy|cock|roo)/u.test(kept)
    const on = base.matings.slice(0, 2).map((mating) => backTo(son ? 'F' : 'M', mating))
    return crossAgain(base, on, aspectsOf(reading), reading)
  }
  if (!reading.has('nextGeneration') && !generation && !parent && !crossesChicks.test(words)) return undefined
  const mother = /\b(?:mother|mum|mom|dam|hen)\b/u.test(words)
  const matings = base.matings
    .slice(0, 2)
    .map((mating) => (back ? backTo(mother ? 'F' : 'M', mating) : bredTogether(mating)))
  const asked = aspectsOf(reading)
  return crossAgain(base, matings, asked.length > 0 ? asked : shells(base), reading)
}

/** "olive?" before: what was asked of the shells is meant of the next generation too. */
const shells = (base: CrossQuestion): CrossQuestion['aspects'] => lasting(base).filter((aspect) => aspect === 'shell')

/** "the girls from that". */
const ofThat = /\b(?:from|out of|of) (?:that|this|those|them|it|there)\b/u

/** "then breed the daughters to a Welsummer": the young of the cross before, put to another bird. */
export function youngMated(base: Question | undefined, reading: Reading): CrossQuestion | undefined {
  const [mating] = base?.kind === 'cross' ? base.matings : []
  const [pair, ...others] = reading.scene.matings
  const [sire] = pair?.sires ?? []
  const [dam] = pair?.dams ?? []
  if (base?.kind !== 'cross' || !mating || !sire || !dam || others.length > 0) return undefined
  const isYoung = ({ named, ref, saidOf }: typeof sire): boolean =>
    !named &&
    !ref.cross &&
    saidOf.parts.some(
      (part) =>
        (part.type === 'kin' && /daughter|son/u.test(part.kin)) ||
        ((part.type === 'hen' || part.type === 'cock') && !part.parent && ofThat.test(reading.words.join(' '))),
    )
  const [youngSire, youngDam] = [isYoung(sire), isYoung(dam)]
  const mate = youngSire ? dam : sire
  if (youngSire === youngDam || !isSolid(mate)) return undefined
  const young: BirdRef = { cross: mating }
  const next = youngSire ? { sire: young, dam: mate.ref } : { sire: mate.ref, dam: young }
  return crossAgain(base, [next], [...lasting(base), ...aspectsOf(reading)], reading)
}
