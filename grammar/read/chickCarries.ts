// grammar/read/chickCarries.ts: "are the black chicks of these two split": of a chick it is asked whether it carries what a parent hands on.
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { flockBird, ofBreeds } from './carrierShown.ts'
import { isOf, type Trait } from './carrierKin.ts'
import { commonOf, type Reader } from './common.ts'
import { pairsIn } from './pairs.ts'
import { readingOf, type Reading } from '../reading.ts'
import type { CarrierQuestion, FlockBird } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'
import type { Bird } from '../bird.ts'
import type { Token } from '../token.ts'

type Asked = {
  readonly young: Young
  /** The words before the chick, that tell its look. */
  readonly look: readonly Token[]
  /** The words that name its parents. */
  readonly parents: readonly Token[]
  /** What it is to carry; empty where only "split" is said. */
  readonly what: readonly Token[]
  /** Both parents are said to carry it. */
  readonly both: boolean
}

type Young = { readonly name: string; readonly sex?: Sex }
const youngOf = (token: Token | undefined): Young | undefined => {
  if (token?.type === 'chick') return { name: 'the chick' }
  if (token?.type === 'kin' && token.kin === 'daughter') return { name: 'the daughter', sex: 'F' }
  if (token?.type === 'kin' && token.kin === 'son') return { name: 'the son', sex: 'M' }
  if (/^pullets?$/u.test(token?.word ?? '')) return { name: 'the daughter', sex: 'F' }
  return /^cockerels?$/u.test(token?.word ?? '') ? { name: 'the son', sex: 'M' } : undefined
}
const isCarried = ({ type, word }: Token): boolean =>
  type === 'carries' || type === 'split' || /^carriers?$/u.test(word)
const isLook = ({ type }: Token): boolean => type === 'colour' || type === 'trait'
const joins: ReadonlySet<Token['type']> = new Set(['outOf', 'between', 'of'])

/** "two lavender splits", "two birds split to white", "both split". */
const bothSplit = /^(?:two|2|a pair of|both)\b.*\b(?:split|splits|carriers|hets?)\b|\bsplits? (?:x|to|over) splits?\b/u

/** "9 black chicks from my lavender hen, is the cock split": chicks that were counted tell of a parent, and another bird is asked about. */
const isCounted = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(Math.max(0, at - 3), at).some(({ type }) => type === 'number')
const asksAnother = (parents: readonly Token[]): boolean =>
  parents.some(
    ({ type, word }) =>
      type === 'comma' ||
      (type === 'is' && word !== 'be') ||
      type === 'not' ||
      /^(?:he|hes|she|shes|does|did)$/u.test(word),
  )

/** "black chick from A x B carries lav", "are black chicks out of A and B split", "a black chick out of two splits". */
function askedIn({ tokens }: Reading): Asked | undefined {
  const at = tokens.findIndex((token, i) => youngOf(token) && joins.has(tokens[i + 1]?.type ?? 'stop'))
  const young = youngOf(tokens[at])
  if (!young || isCounted(tokens, at)) return undefined
  const end = tokens.findIndex(({ type }, i) => i > at && type === 'stop')
  const said = tokens.slice(at + 2, end < 0 ? undefined : end)
  const look = tokens.slice(Math.max(0, at - 2), at).filter(isLook)
  const both = bothSplit.test(said.map(({ word }) => word).join(' '))
  const verb = said.findLastIndex(isCarried)
  const what = said.slice(verb + 1).filter(({ type }) => type !== 'filler')
  if (both) return { young, look, parents: said, what, both }
  if (
    verb < 2 ||
    asksAnother(said.slice(0, verb)) ||
    what.some((token) => !isLook(token) && token.type !== 'gene' && token.type !== 'unknown')
  )
    return undefined
  return { young, look, parents: said.slice(0, verb), what, both }
}

/** "lav split x lav split, what part of the blacks carries it": of those that do not show it. */
function amongIn({ tokens }: Reading): Asked | undefined {
  const verbs = tokens.flatMap((token, i) => (isCarried(token) ? [i] : []))
  const [first, second, third] = verbs
  const crossed = second !== undefined && tokens.slice(first, second).some(({ type }) => type === 'over')
  const two = tokens.slice(0, first).some(({ word }) => /^(?:two|2|both|pair)$/u.test(word))
  const asked = crossed ? third : two ? second : undefined
  const last = crossed ? second : first
  if (asked === undefined || last === undefined) return undefined
  const pair = tokens.slice(0, last + 2)
  const look = tokens
    .slice(last + 1, asked)
    .filter((token) => isLook(token) || /^(?:clear|plain|normal)s?$/u.test(token.word))
  const own = traitsIn(pair.filter(isLook)).find((id) => traits[id]?.seen === false)
  const rest = look.length === 1 && !traitsIn(look).includes(own ?? '')
  return own !== undefined && rest
    ? { young: { name: 'the chick' }, look, parents: pair, what: tokens.slice(0, last + 1), both: true }
    : undefined
}

/** A recessive that the words name, else one that a parent shows or its breed is called by. */
function traitOf(what: readonly Token[], parents: readonly Token[]): Trait | undefined {
  const found = [...traitsIn(what), ...traitsIn(parents.filter(isLook)), ...ofBreeds(parents)]
    .map((id) => traits[id])
    .find((trait) => trait !== undefined && !trait.seen)
  return found && { allele: found.allele, locus: found.locus }
}

type Parents = { readonly birds: readonly FlockBird[]; readonly refs: readonly Bird[] }

/** The two parents, as far as the trait goes. */
function parentsIn({ text }: Reading, { parents, both }: Asked, trait: Trait): Parents | undefined {
  const carries = { carries: { [trait.allele]: true } }
  if (both)
    return {
      birds: [
        { name: 'the cock', sex: 'M', ...carries },
        { name: 'the hen', sex: 'F', ...carries },
      ],
      refs: [],
    }
  const [pair, ...more] = pairsIn(readingOf(text.slice(parents[0]!.at, parents.at(-1)!.end)))
  if (!pair || more.length > 0) return undefined
  const birds: readonly FlockBird[] = [
    { ...flockBird(pair.sire, 'the cock', trait), sex: 'M' },
    { ...flockBird(pair.dam, 'the hen', trait), sex: 'F' },
  ]
  return { birds, refs: [pair.sire, pair.dam] }
}

export const readChickCarries: Reader = (reading): CarrierQuestion | undefined => {
  const asked = reading.asks || reading.has('question', 'odds') ? (askedIn(reading) ?? amongIn(reading)) : undefined
  const trait = asked && traitOf(asked.what, asked.parents)
  const parents = asked && trait && parentsIn(reading, asked, trait)
  if (!asked || !trait || !parents) return undefined
  const { young, look } = asked
  const shows = look.length > 0 ? { shows: { [trait.allele]: isOf(look, trait) } } : {}
  const chick: FlockBird = { ...young, sire: 'the cock', dam: 'the hen', ...shows }
  return {
    kind: 'carrier',
    of: young.name,
    ...trait,
    flock: { birds: [...parents.birds, chick], broods: [] },
    rivals: [],
    ...commonOf(reading, parents.refs),
  }
}
