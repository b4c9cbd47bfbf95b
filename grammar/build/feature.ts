// grammar/build/feature.ts: what is said of a bird in several words: what it carries or lacks, what stands in brackets, its egg.
import { bodyOf, unwrapped, type Made, type Wrapped } from './body.ts'
import { isToken, spanOf, tokensIn, type Reject, type Words } from './words.ts'
import type { Carried, MatingSaid } from '../saying.ts'
import type { Token } from '../token.ts'

/** "no bars". */
export const without = ([not, name]: [Token, Words], _at: number, reject: Reject): Made | Reject => {
  const tokens = tokensIn(name)
  // "why doesnt a silver cock ...": the verb is denied, not the colour
  if (/^(?:doesnt|dont|didnt|never)$/u.test(not.word)) return reject
  return { ...spanOf([not, ...tokens]), lacks: tokens }
}

/** "split Black Orpington": the name of a bird, and nothing that it carries. */
export const isWholeName = (token: Token): boolean =>
  (token.type === 'family' && token.family !== 'Silkie') ||
  (token.type === 'breed' &&
    token.names[0] !== undefined &&
    !/^(?:Frizzle|Naked Neck|Barred Plymouth Rock)$/u.test(token.names[0]) &&
    !token.names[0].endsWith('sex-link'))

const carries =
  (copies: 1 | 2) =>
  ([word, what]: [Token, Words], _at: number, reject: Reject): Made | Reject => {
    const tokens = tokensIn(what)
    const [first] = tokens
    if (!first || first.gap || isWholeName(first)) return reject
    const carried: readonly Carried[] = [{ copies, what: tokens }]
    return { ...spanOf([word, ...tokens]), carried }
  }
export const carriesOne = carries(1)
export const carriesTwo = carries(2)
const recessive: ReadonlySet<string> = new Set(['lavender', 'chocolate', 'white', 'mottled'])
/** "lavender split hens": what is carried stands before the word. */
export const splitBehind = ([what, word]: [Words, Token], _at: number, reject: Reject): Made | Reject => {
  const tokens = tokensIn(what)
  const [named] = tokens
  const isSplit = /^(?:splits?|carriers?|hets?)$/u.test(word.word) && !word.gap
  const canBe = named?.type === 'trait' || (named?.type === 'colour' && recessive.has(named.colour))
  return isSplit && canBe ? { ...spanOf([...tokens, word]), carried: [{ copies: 1, what: tokens }] } : reject
}
export const split = ([word]: [Token]): Made => ({ ...spanOf([word]), split: true })

const isMade = (word: unknown): word is Made => typeof word === 'object' && word !== null && 'gap' in word
const piecesIn = (notes: Words): readonly (Token | Made)[] => {
  if (Array.isArray(notes)) return notes.flatMap(piecesIn)
  if (isToken(notes)) return notes.type === 'comma' ? [] : [notes]
  return isMade(notes) ? [notes] : []
}

/** "(show line, blue)". */
export const noted = ([open, notes, close]: [Token, Words, Token]): Made => {
  const merged = piecesIn(notes).map(bodyOf)
  return {
    ...spanOf([open, close]),
    bracket: true,
    parts: merged.flatMap(({ parts }) => parts),
    lacks: merged.flatMap(({ lacks }) => lacks),
    carried: merged.flatMap(({ carried }) => carried),
  }
}
/** "(Delaware x NH) hen". */
export const bracketed = ([open, cross, close]: [Token, MatingSaid, Token]): Made => ({
  ...spanOf([open, close]),
  cross,
})

/** "with muffs", "with one copy of the blue egg gene". */
export const having = <T>([over, feature]: [Token, Wrapped<T>], _at: number, reject: Reject): T | Reject =>
  over.type === 'over' && over.weak && over.word.startsWith('w') ? unwrapped(feature) : reject
/** "a cock who is split for chocolate". */
export const thatCarries = ([, carried]: [Token, Wrapped<Made>]): Made => ({ ...unwrapped(carried), ofNamed: true })
/** "black hens with bars". */
export const havingColour = ([over, colour]: [Token, Token], at: number, reject: Reject): Token | Reject =>
  /^(?:bars|barring|stripes|crests?|beards?|tufts)$/u.test(colour.word) ? having([over, colour], at, reject) : reject

const isShell = (token: Token | undefined): boolean => token?.type === 'goal' && token.goal.endsWith('-eggs')
/** "a roo from a blue egg". */
export const fromEgg = ([from, egg]: [Token, Token], _at: number, reject: Reject): Made | Reject =>
  isShell(egg) ? { ...spanOf([from, egg]), parts: [egg] } : reject
/** "hens from the hatchery". */
export const fromLine = ([, line]: [Token, Token], _at: number, reject: Reject): Token | Reject =>
  line.gap ? reject : line
/** "my RIR is from show stock". */
export const isFromLine = ([, from, line]: [Token, Token, Token], at: number, reject: Reject): Token | Reject =>
  fromLine([from, line], at, reject)
/** "blue egg rooster". */
export const eggBird = (words: Words, _at: number, reject: Reject): Made | Reject => {
  const tokens = tokensIn(words)
  return isShell(tokens[0]) && tokens[1]?.gap === false && !/^la(?:y|id)/u.test(tokens[0]?.word ?? '')
    ? { ...spanOf(tokens), parts: tokens }
    : reject
}

/** ", s+/s+ Co/Co". */
export const afterComma = <T>([, piece]: [Token, Wrapped<T>]): T => unwrapped(piece)
/** ", one barring gene". */
export const afterNumber = <T>([, , piece]: [Token, Token, Wrapped<T>]): T => unwrapped(piece)
/** "that is Lav+/lav". */
export const thatIs = ([, gene]: [Token, Token], _at: number, reject: Reject): Token | Reject =>
  gene.gap ? reject : gene
