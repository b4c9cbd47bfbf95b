// grammar/read/secondGeneration.ts: the young of the mating that is told, put to each other.
import { crossOf } from './crossOf.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import type { BirdRef } from '../../core/question.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'
import type { Pair } from './pairs.ts'

/** "F2 of Legbar x Marans", "... now brother to sister": the young of that mating, put to each other. */
export const isSecondGeneration = (reading: Reading, pairs: readonly Pair[]): boolean =>
  pairs.length === 1 &&
  (isOfSecond(reading) ||
    putsKinTogether(reading) ||
    matesSiblings(reading) ||
    putsThemTogether(reading, pairs) ||
    putsToOwnKin(reading)) &&
  pairs.every(({ sire, dam, by }) => by !== 'nothing' && !sire.ref.cross && !dam.ref.cross)

const isOfSecond = ({ tokens }: Reading): boolean =>
  tokens.some((token, i) => {
    if (token.type !== 'generation' || token.generation !== 2) return false
    const [before, after] = [tokens[i - 1], tokens.slice(i + 1).find(({ type }) => type !== 'filler')]
    return (
      ['of', 'outOf', 'between', 'breed', 'family'].includes(after?.type ?? '') ||
      ((after === undefined || after.type === 'stop') &&
        ['breed', 'family', 'hen', 'comma'].includes(before?.type ?? ''))
    )
  })

/** "if I breed those to each other", of the chicks of a mating just told. */
export const putsThemTogether = ({ words }: Reading, [pair]: readonly Pair[]): boolean =>
  pair !== undefined &&
  JSON.stringify(pair.sire.ref) !== JSON.stringify(pair.dam.ref) &&
  /\b(?:breed|bred|breeding|cross|crossed|crossing|mate|mated|mating|put|pair|pairing) (?:up )?(?:those|them|these|(?:the|their) (?:chicks|babies|offspring|f1s?|kids|youngsters|young|children|progeny))(?: \w+)? (?:together|to (?:each|one) (?:other|another)|with (?:each|one) (?:other|another)|among themselves|amongst themselves|brother to sister)/u.test(
    words.join(' '),
  )

/** "all blue right? and do those ...": the first cross is asked about too. */
export const asksBefore = ({ tokens }: Reading): boolean => {
  const at = tokens.findIndex((token) => token.type === 'stop' && token.asks)
  return at >= 0 && tokens.slice(at).some(({ word }) => /^(?:those|them|these|their|the)\b/u.test(word))
}

/** "keep a cockerel from A x B and put him on his sisters": one of the young of that mating, to the others. */
const putsToOwnKin = ({ words }: Reading): boolean =>
  /\b(?:put|use|used|breed|bred|cross|crossed|mate|mated|run|keep|kept|pair|paired) (?:(?:back|up) )?(?:him|her|it|one|them|(?:a|one|the) (?:son|daughter|cockerel|pullet|boy|girl|male|roo|rooster|cock|hen)(?: of (?:them|these|those|mine))?) (?:back )?(?:on|onto|over|to|with|under) (?:a|his|her|its|their|the) (?:own |full )?(?:sisters?|brothers?|siblings?|sibs?)\b/u.test(
    words.join(' '),
  )

/** Brother to sister, behind a mating of their parents. */
const putsKinTogether = ({ scene, words }: Reading): boolean =>
  scene.matings.length > 1 &&
  scene.matings.some(({ sires, dams }) =>
    [...sires, ...dams].every(({ saidOf, named }) => !named && saidOf.parts.some((part) => part.type === 'kin')),
  ) &&
  words.some((word) => /^(?:brothers?|sisters?|siblings?|sibs?)$/u.test(word))

/** "F1 cross of A x B, then siblings together". */
const matesSiblings = ({ words }: Reading): boolean =>
  /\b(?:(?:siblings?|sibs?|brothers? (?:and|to|x|with|on|over) (?:his |the )?sisters?|sisters? (?:and|to|x|with) brothers?) (?:together|mated|crossed|bred|mating)|(?:then|and|now) (?:mate|breed|cross|put|pair)(?: up)? (?:the |two )?(?:f1s?|siblings|sibs)\b)/u.test(
    words.join(' '),
  )

export const bredTogether = (pair: Pair): Pair => {
  const ref: BirdRef = { cross: { sire: pair.sire.ref, dam: pair.dam.ref } }
  return { sire: { ...pair.sire, ref, others: [] }, dam: { ...pair.dam, ref, others: [] }, by: 'sex' }
}

/** "my olive eggers (A x B), a boy of them with a sister": of no breed that a rule is told of, but the young of that mating. */
export const readSecondGeneration: Reader = (reading) => {
  const pairs = pairsIn(reading)
  return pairs.length === 1 && !isToldPair(reading) && isSecondGeneration(reading, pairs)
    ? crossOf(pairs.map(bredTogether), reading)
    : undefined
}
