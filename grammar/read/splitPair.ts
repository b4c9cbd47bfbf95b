// grammar/read/splitPair.ts: "two carriers of mottled, how many": two birds told by what they carry or show, and by nothing else.
import { loci } from '../../core/data/loci.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { chicksCounted } from './chicks.ts'
import { aspectsOf, commonOf, type Reader } from './common.ts'
import { factOf } from './topic.ts'
import { outOfIn, shownAsked } from './shownAsked.ts'
import type { Reading } from '../reading.ts'
import type { Token } from '../token.ts'
import type { Trait } from '../words/traits.ts'
import type { BirdRef } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'

type Mates = { readonly sire: BirdRef; readonly dam: BirdRef }

/** What comes of them is asked, and not whether one of them carries it. */
const asksYoung = ({ words }: Reading): boolean => {
  const text = words.join(' ')
  return (
    /\b(?:how many|how much|what (?:do|will|would|can|are|comes|percent\w*|share|part)|percent\w*|chances?|odds|babies|chicks|offspring|mated|together|bred)\b|%/u.test(
      text,
    ) && !/\b(?:is|does|could|can|if) (?:he|she|it)\b|\b(?:he|she|it) carr|\b(?:parents|prove|test|sure)\b/u.test(text)
  )
}

const isCarried = ({ type, word }: Token): boolean =>
  type === 'carries' || type === 'split' || /^(?:splits?|carriers?)$/u.test(word)

/** The recessive that these words name. */
const recessiveIn = (tokens: readonly Token[]): Trait | undefined =>
  traitsIn(tokens.filter(({ type }) => type === 'colour' || type === 'trait' || type === 'gene'))
    .map((id) => traits[id])
    .find((trait) => trait?.seen === false && trait.locus !== 'O')

/** "two chocolate splits": of what is on the Z a hen has one copy, which she shows. */
const isOnZ = (trait: Trait): boolean => loci[trait.locus].on === 'Z'

/** One copy, or as many as a bird has that shows it; undefined for a hen with one copy of what is on the Z. */
function refOf({ locus, allele }: Trait, sex: Sex, shows: boolean): BirdRef | undefined {
  const { on, wild } = loci[locus]
  if (on === 'Z' && sex === 'F') return shows ? { genotype: { [locus]: [allele] } } : undefined
  return { genotype: { [locus]: shows ? [allele, allele] : [wild, allele] } }
}

const bothOf = (sire: BirdRef | undefined, dam: BirdRef | undefined): Mates | undefined =>
  sire && dam ? { sire, dam } : undefined

/** "two carriers of mottled", "2 birds split to lavender", "both split for lavender". */
function splitTwice({ tokens }: Reading): Trait | undefined {
  const at = tokens.findIndex(
    (token) => /^(?:both|pair)$/u.test(token.word) || (token.type === 'number' && token.value === 2),
  )
  const near = at < 0 ? [] : tokens.slice(at + 1, at + 8)
  const verb = near.findIndex(isCarried)
  const between = near.slice(0, Math.max(verb, 0))
  if (verb < 0 || between.some(({ type }) => ['stop', 'comma', 'over', 'chick', 'kin'].includes(type))) return undefined
  const stop = near.findIndex(({ type }, i) => i > verb && (type === 'stop' || type === 'comma'))
  return recessiveIn([...between, ...near.slice(verb + 1, stop < 0 ? undefined : stop)])
}

/** "she is split for mottled, he is mottled": each told by itself. */
function heAndShe({ tokens }: Reading): Mates | undefined {
  const told = new Map<Sex, { readonly trait: Trait | undefined; readonly shows: boolean }>()
  for (const [i, { word }] of tokens.entries()) {
    const sex = /^(?:he|hes|he is)$/u.test(word) ? 'M' : /^(?:she|shes|she is)$/u.test(word) ? 'F' : undefined
    if (sex === undefined || told.has(sex)) continue
    const rest = tokens.slice(i + 1, i + 8)
    const end = rest.findIndex(
      ({ type, word: other }) => type === 'stop' || type === 'comma' || /^(?:s?hes?)$/u.test(other),
    )
    const said = end < 0 ? rest : rest.slice(0, end)
    if (!said.some(({ type }) => type === 'not'))
      told.set(sex, { trait: recessiveIn(said), shows: !said.some(isCarried) })
  }
  const [he, she] = [told.get('M'), told.get('F')]
  const trait = he?.trait ?? she?.trait
  if (!he || !she || !trait || (he.shows && she.shows)) return undefined
  if (
    [he, she].some((one) => one.trait && one.trait.allele !== trait.allele) ||
    (he.shows && !he.trait) ||
    (she.shows && !she.trait)
  )
    return undefined
  return bothOf(refOf(trait, 'M', he.shows), refOf(trait, 'F', she.shows))
}

export const readSplitPair: Reader = (reading) => {
  const { scene, tokens } = reading
  const named = tokens.some(({ type }) => type === 'breed' || type === 'family')
  const seen = chicksCounted(tokens).some(({ count }) => count !== 2) // "two lavender splits" are no chicks
  if (named || scene.matings.length > 0 || !asksYoung(reading) || seen) return undefined
  const trait = splitTwice(reading)
  const told = heAndShe(reading)
  if (!told && trait && isOnZ(trait)) return factOf(reading, 'hens-not-split', [])
  const mates = told ?? (trait && bothOf(refOf(trait, 'M', false), refOf(trait, 'F', false)))
  if (!mates) return undefined
  const shown = shownAsked([], reading)
  const outOf = outOfIn(reading)
  return {
    kind: 'cross',
    matings: [mates],
    aspects: aspectsOf(reading),
    ...(shown.length > 0 ? { shown } : {}),
    ...(outOf === undefined ? {} : { outOf }),
    ...commonOf(reading),
  }
}
