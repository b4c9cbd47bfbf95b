// grammar/featureWords.ts: tokens told by the words beside them: a carried allele, feathering, combs, a red face.
import { lociOfAllele } from '../core/genotype.ts'
import type { Token } from './token.ts'

export type Bare = {
  readonly said: string
  readonly word: string
  readonly at: number
  readonly end: number
  readonly gap: boolean
}

const beginsBird: ReadonlySet<string> = new Set(['breed', 'family', 'colour', 'line'])

const endsBird: ReadonlySet<string> = new Set(['breed', 'family', 'hen'])

/** "over 4 leghorns 3 BR 2 light sussex": a number parts the hens of a list. */
export function withComma(token: Token, at: number, all: readonly Token[]): readonly Token[] {
  const parts =
    token.type === 'number' &&
    Number.isInteger(token.value) &&
    endsBird.has(all[at - 1]?.type ?? '') &&
    beginsBird.has(all[at + 1]?.type ?? '') &&
    all
      .slice(Math.max(0, at - 30), at)
      .some(({ type, word }) => type === 'over' || type === 'forWhom' || word === ':') &&
    all.slice(Math.max(0, at - 30), at).some(({ type }) => type === 'number')
  return parts ? [{ ...spotOnly(token), end: token.at, said: '', word: '', type: 'comma' }, token] : [token]
}

/** "split mo": the symbol of an allele behind a word of carrying. */
export const carriedAllele = (token: Token, before: Token | undefined): Token =>
  token.type === 'unknown' &&
  (before?.type === 'carries' || before?.type === 'pure' || before?.type === 'single') &&
  /^[A-Za-z]{1,4}\+?$/u.test(token.said) &&
  lociOfAllele(token.said) !== undefined
    ? { ...token, type: 'gene' }
    : token

const feathering: Readonly<Record<string, string>> = {
  slow: 'slow feathering',
  fast: 'fast feathering',
  rapid: 'fast feathering',
}

/** "gold fast hens": of the feathering, between a colour and a sex. */
function isFeathering(at: number, all: readonly Token[]): boolean {
  const [before, token, after] = [all[at - 1]?.type, all[at], all[at + 1]?.type]
  if (token?.type !== 'unknown' || feathering[token.word] === undefined) return false
  const sexed = after === 'cock' || after === 'hen'
  const ends = after === undefined || after === 'stop' || after === 'over'
  const coloured = after === 'colour' && ['cock', 'hen'].includes(all[at + 2]?.type ?? '')
  return sexed || coloured || (before === 'colour' && ends)
}

export const asFeathering = (token: Token, at: number, all: readonly Token[]): Token =>
  isFeathering(at, all)
    ? { ...spotOnly(token), type: 'trait', trait: feathering[token.word]! }
    : token.gap && isFeathering(at - 1, all)
      ? { ...token, gap: false }
      : token

/** "a chick with a naked neck": a feature there, and no breed. */
export function asFeature(token: Token, at: number, all: readonly Token[]): Token {
  if (token.type === 'line') return asComb(token, at, all)
  if (token.type === 'colour' && reddens.test(token.word) && isFace(all[at + 1]))
    return { ...spotOnly(token), type: 'unknown' }
  const comb =
    token.type === 'unknown' && (all[at - 1]?.type === 'number' || isOfCombs(all, at)) ? combs[token.word] : undefined
  if (comb !== undefined) return { ...spotOnly(token), type: 'trait', trait: comb }
  if (token.type !== 'breed' || token.names[0] !== 'Naked Neck') return token
  const before = all.slice(Math.max(0, at - 3), at).filter(({ type }) => type !== 'filler')
  const described = before.at(-1)?.type === 'over' && before.at(-2)?.type === 'chick'
  const { said, word, end, gap } = token
  return described ? { type: 'trait', trait: 'naked neck', said, word, at: token.at, end, gap } : token
}

/** "a red comb": how old it is, and no colour of the bird. */
const reddens = /^(?:red|bright red|pale|pink)$/u

const isFace = (token: Token | undefined): boolean => /^(?:combs?|wattles?|face|faces)$/u.test(token?.word ?? '')

/** "a rose comb cock ..., all 13 babies are rose": where combs are spoken of, the word by itself is one. */
const isOfCombs = (all: readonly Token[], at: number): boolean =>
  /^(?:is|are|all|were|was|came|have)$/u.test(all[at - 1]?.word ?? '') &&
  all.slice(Math.max(0, at - 40), at).some(({ word }) => /combs?\b/u.test(word))

/** "3 single comb chicks": a comb away from any breed is no line of one. */
function asComb(token: Token & { readonly type: 'line' }, at: number, all: readonly Token[]): Token {
  const trait = token.line === 'rose-comb' ? 'rose comb' : token.line === 'single-comb' ? 'single comb' : undefined
  const isBreed = (near: Token | undefined): boolean => near?.type === 'breed' || near?.type === 'family'
  const plain = ({ type }: Token): boolean => type !== 'line' && type !== 'filler'
  const beside = [all.slice(0, at).findLast(plain), all.slice(at + 1).find(plain)]
  if (trait === undefined || beside.some(isBreed)) return token
  return { ...spotOnly(token), type: 'trait', trait }
}

/** "5 rose and 4 single". */
const combs: Readonly<Record<string, string>> = { rose: 'rose comb', single: 'single comb', pea: 'pea comb' }

const spotOnly = ({ said, word, at, end, gap }: Token): Bare => ({ said, word, at, end, gap })
