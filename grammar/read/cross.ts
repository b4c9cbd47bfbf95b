// grammar/read/cross.ts: a cross question from the matings of the message, or a question back where a bird is in doubt.
import { asksWay, commonOf } from './common.ts'
import { crossOf, nameOf } from './crossOf.ts'
import { inEachLine } from './lineChoice.ts'
import { pairsIn } from './pairs.ts'
import { asksBefore, bredTogether, isSecondGeneration, putsThemTogether } from './secondGeneration.ts'
import {
  isForShells,
  isOfForm,
  knowsGenes,
  ofMeatBird,
  ofOneBreed,
  ofSplit,
  onlyOfDaughters,
  whichVariety,
} from './whichVariety.ts'
import type { AskBackQuestion, Question } from '../../core/question.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'
import type { Pair } from './pairs.ts'

const faultIn = (pairs: readonly Pair[]): Question | undefined => {
  const fault = pairs.flatMap(({ sire, dam }) => [sire.fault, dam.fault]).find((found) => found !== undefined)
  return fault && { kind: 'error', fault }
}

const swapped = ({ sire, dam, by }: Pair): Pair => ({ sire: dam, dam: sire, by })

/** Nothing tells which is the cock: both ways round stand as choices. */
function whichIsMale(pair: Pair, reading: Reading): AskBackQuestion {
  const ways = [
    { ...pair, by: 'sex' as const },
    { ...swapped(pair), by: 'sex' as const },
  ]
  return {
    kind: 'ask-back',
    missing: 'which-is-male',
    about: `${nameOf(pair.sire.ref)} and ${nameOf(pair.dam.ref)}`,
    options: ways.map((way) => ({
      label: `${nameOf(way.sire.ref)} cock on ${nameOf(way.dam.ref)} hen`,
      question: crossOf([way], reading),
    })),
    birds: [pair.sire.ref, pair.dam.ref],
    ...commonOf(reading),
  }
}

/** "are Cuckoo Marans autosexing like Legbars", "does a RIR/Sussex mix breed true": two birds, and no mating of them. */
const isNoMating = ({ words, has, scene }: Reading): boolean =>
  words.some((word) => /^(?:mean|means|meaning)$/u.test(word)) ||
  has('trueBreeding', 'inbreeding') ||
  (scene.matings.length === 0 &&
    /\b(?:does|do) (?:(?:a|an|the|my) )?[\w ]{3,40}\b(?:lay|lays|weigh|eat|live|get)\b/u.test(words.join(' ')) &&
    !words.some((word) => /^(?:cross|mix|chicks?|babies|make|give|produce|put|together|offspring)$/u.test(word))) ||
  (has('define', 'question', 'claim') &&
    words.some((word) => /^(?:like|than|similar)$/u.test(word)) &&
    !words.includes('look'))

/** "what does wheaten mean on a Marans": a word of the breed. */
const isWordOf = ({ sire }: Pair, { words }: Reading): boolean =>
  words.some((word) => /^(?:mean|means|meaning)$/u.test(word)) &&
  sire.saidOf.parts.every(({ type }) => type === 'colour' || type === 'trait')

/** `RIRxBRxLSxBO`: birds in a row, with nothing to say how they go together. */
const isChain = ({ sire, dam }: Pair): boolean =>
  [sire, dam].every(({ ref, saidOf, sex }) => ref.cross !== undefined && saidOf.parts.length === 0 && sex !== undefined)

/** Matings told or plainly there. */
export const readCross: Reader = (reading) => {
  const pairs = inEachLine(pairsIn(reading).map(ofMeatBird).map(ofSplit), reading)
  const [only] = pairs
  if (!only) return undefined
  if (isSecondGeneration(reading, pairs)) {
    const first = putsThemTogether(reading, pairs) && asksBefore(reading) ? pairs : []
    return crossOf([...first, ...pairs.map(bredTogether)], reading)
  }
  const fault = faultIn(pairs)
  if (fault) return fault
  if (pairs.length === 1) {
    if (only.by === 'nothing' && isNoMating(reading)) return undefined
    if (only.by === 'order' && isWordOf(only, reading)) return undefined
    if (only.by === 'nothing' && asksWay(reading)) return crossOf([only, swapped(only)], reading)
    if (only.by === 'nothing' && onlyOfDaughters(reading)) return crossOf([{ ...only, by: 'order' }], reading)
    if (only.by === 'nothing') return whichIsMale(only, reading)
    if (onlyOfDaughters(reading) || knowsGenes(only) || isOfForm(reading) || isForShells(only, reading))
      return crossOf(pairs, reading)
    return whichVariety(ofOneBreed(only), reading) ?? crossOf(pairs, reading)
  }
  if (pairs.some(isChain))
    return {
      kind: 'ask-back',
      missing: 'birds',
      options: [],
      birds: pairs.flatMap(({ sire, dam }) => [sire.ref, dam.ref]).slice(0, 4),
      ...commonOf(reading),
    }
  return crossOf(pairs, reading)
}
