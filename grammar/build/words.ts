// grammar/build/words.ts: what the makers of sayings share: the tokens inside a rule's result, their place, and "cannot be meant".
import type { Group } from '../saying.ts'
import type { Token } from '../token.ts'

/** nearley's own value for a reading that cannot be meant. */
export type Reject = object

/** What a rule that makes nothing of its own hands on: tokens in lists, lists in lists. */
export type Words = unknown

export const isToken = (word: unknown): word is Token => typeof word === 'object' && word !== null && 'type' in word

/** Tokens inside a rule's result, in order. */
export const tokensIn = (words: Words): readonly Token[] =>
  Array.isArray(words) ? words.flatMap(tokensIn) : isToken(words) ? [words] : []

export type Span = { readonly at: number; readonly end: number; readonly gap: boolean }
export const spanOf = (tokens: readonly Token[]): Span => ({
  at: tokens[0]?.at ?? 0,
  end: tokens.at(-1)?.end ?? 0,
  gap: tokens[0]?.gap ?? false,
})
export const endsOf = (birds: Group): { readonly at: number; readonly end: number } => ({
  at: birds[0]?.at ?? 0,
  end: birds.at(-1)?.end ?? 0,
})
