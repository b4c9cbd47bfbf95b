// grammar/build/body.ts: the words said of one bird, taken one after another: which can be of the same bird.
import { breedNamed } from '../../core/breeds.ts'
import { lociOfAllele } from '../../core/genotype.ts'
import { isToken, spanOf, tokensIn, type Reject, type Span, type Words } from './words.ts'
import type { BirdSaid, MatingSaid } from '../saying.ts'
import type { Token } from '../token.ts'

export type Body = Omit<BirdSaid, 'kind'>

/** What a rule made of several words said of a bird. */
export type Made = Span &
  Partial<Pick<BirdSaid, 'lacks' | 'carried' | 'split' | 'cross' | 'parts'>> & {
    /** Made from what stood in brackets. */
    readonly bracket?: boolean
    /** Said only of a bird whose breed stands before it. */
    readonly ofNamed?: boolean
  }
type Piece = Token | Made
/** nearley wraps the value of a single symbol in a list. */
export type Wrapped<T> = T | readonly [Wrapped<T>]
const isWrapped = <T>(piece: Wrapped<T>): piece is readonly [Wrapped<T>] => Array.isArray(piece)
export const unwrapped = <T>(piece: Wrapped<T>): T => (isWrapped(piece) ? unwrapped(piece[0]) : piece)

export function bodyOf(piece: Piece): Body {
  const { at, end, gap } = piece
  const empty = { lacks: [], carried: [], split: false, at, end, gap }
  if (isToken(piece)) return { ...empty, parts: [piece] }
  const { bracket: _, ofNamed: _o, ...made } = piece
  return { ...empty, parts: [], ...made }
}

/** A bracket is said of what stands before it. */
export const begun = ([piece]: [Wrapped<Piece>], _at: number, reject: Reject): Body | Reject => {
  const first = unwrapped(piece)
  return !isToken(first) && (first.bracket === true || first.ofNamed === true) ? reject : bodyOf(first)
}

export const grown = ([of, piece]: [Body, Wrapped<Piece>], _at: number, reject: Reject): Body | Reject => {
  const next = unwrapped(piece)
  if (!isToken(next) && next.ofNamed === true && !has(of, 'breed', 'family')) return reject
  const more = bodyOf(next)
  if (!fits(of, more)) return reject
  return {
    parts: [...of.parts, ...more.parts],
    lacks: [...of.lacks, ...more.lacks],
    carried: [...of.carried, ...more.carried],
    split: of.split || more.split,
    cross: of.cross ?? more.cross,
    at: of.at,
    end: more.end,
    gap: of.gap,
  }
}

const has = (of: Body, ...types: readonly Token['type'][]): boolean => of.parts.some(({ type }) => types.includes(type))
const familyTold = (token: Token): string | undefined =>
  token.type === 'family' ? token.family : token.type === 'breed' ? breedNamed(token.names[0] ?? '')?.family : undefined
const sameName = (one: Token, other: Token): boolean =>
  one.type === 'breed' && other.type === 'breed'
    ? one.names[0] === other.names[0]
    : familyTold(one) !== undefined && familyTold(one) === familyTold(other)
const locusOf = ({ word }: Token): string | undefined => lociOfAllele(word.split('/')[0] ?? '')?.locus

/** A named hybrid may be followed by its parents, or be called a cross of a breed. */
const isHybridName = (part: Token): boolean =>
  part.type === 'breed' && /sex-link|Olive Egger|Easter Egger|Mixed breed/u.test(part.names[0] ?? '')

/** Can this be of the same bird? One breed, one sex; nothing new once a word was left out, but sex and genes. */
function fits(of: Body, more: Body): boolean {
  const named = has(of, 'breed', 'family') || of.cross !== undefined
  if (!more.parts.every((part) => partFits(of, part, named))) return false
  return !(more.cross && (named || has(of, 'colour')) && !has(of, 'generation') && !of.parts.some(isHybridName))
}

function partFits(of: Body, part: Token, named: boolean): boolean {
  const sexed = has(of, 'cock', 'hen', 'kin')
  switch (part.type) {
    case 'gene':
      return !of.parts.some((before) => before.type === 'gene' && locusOf(before) === locusOf(part))
    case 'breed':
    case 'family': {
      const same = of.parts.filter((before) => sameName(before, part)).length
      return (!named || same === 1 || isHybridName(part)) && !(sexed && part.gap)
    }
    case 'cock':
    case 'hen':
    case 'kin':
      return !sexed && (!part.gap || named || has(of, 'gene'))
    case 'colour':
      return !part.gap || !(sexed || named || has(of, 'gene'))
    case 'trait':
    case 'line':
      return !part.gap || !(sexed || named)
    default:
      return true
  }
}

/** Numbers and "my" alone are no bird. */
const isBird = (of: Body): boolean =>
  of.lacks.length > 0 ||
  of.cross !== undefined ||
  of.carried.length > 0 ||
  of.split ||
  has(of, 'breed', 'family', 'colour', 'cock', 'hen', 'kin', 'gene', 'trait', 'line', 'generation')

export const bird = ([of]: [Body], _at: number, reject: Reject): BirdSaid | Reject =>
  isBird(of) ? { kind: 'bird', ...of } : reject

/** "my 3 Barred Rocks". */
export const led = ([lead, of]: [Words, Body], _at: number, reject: Reject): BirdSaid | Reject => {
  const before = tokensIn(lead)
  if (before.length === 0 || !isBird(of)) return reject
  const { at, gap } = spanOf(before)
  return { kind: 'bird', ...of, parts: [...before, ...of.parts], at, gap }
}

/** A bird and its parents. */
export const withParents = (child: BirdSaid, cross: MatingSaid): BirdSaid => ({
  ...child,
  cross,
  end: cross.second[0]?.end ?? child.end,
})
