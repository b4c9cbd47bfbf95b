// grammar/needed.ts: "roo needed: 3 Marans", "who should daddy be for my Brahmas": a mate sought with the verb behind it, put as the grammar reads it.
import type { Token } from './token.ts'

type Bare = Pick<Token, 'said' | 'word' | 'at' | 'end' | 'gap'>
const bare = ({ said, word, at, end }: Token): Bare => ({ said, word, at, end, gap: false })

const asks = /^(?:needed|required|wanted|sought)$/u
const ought = /^(?:should|shall|must|ought to)$/u
const isName = ({ type }: Token): boolean => type === 'breed' || type === 'family'

/** "roo needed", "should daddy be", where the birds for whom come behind it. */
function isSought(tokens: readonly Token[], at: number): boolean {
  const [token, verb] = [tokens[at]!, tokens[at + 1]]
  if ((token.type !== 'cock' && token.type !== 'hen') || !verb || !tokens.slice(at + 2, at + 10).some(isName))
    return false
  const toBe =
    token.parent && verb.word === 'be' && tokens.slice(Math.max(0, at - 2), at).some(({ word }) => ought.test(word))
  return asks.test(verb.word) || toBe
}

/** The verb first, then the mate, then "for" and the birds. */
export function soughtOutright(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex((_, i) => isSought(tokens, i))
  const [mate, verb] = [tokens[at], tokens[at + 1]]
  if (!mate || !verb) return tokens
  const rest = tokens.slice(at + 2)
  const behind = rest.findIndex(({ type }) => !['is', 'comma', 'stop', 'forWhom', 'over', 'filler'].includes(type))
  return [
    ...tokens.slice(0, at),
    { ...bare(verb), word: 'needed', type: 'want' },
    { ...mate, gap: false },
    { ...bare(verb), word: 'for', type: 'forWhom' },
    ...rest.slice(Math.max(behind, 0)),
  ]
}
