// grammar/flock/names.ts: which words of a message name a bird of the keeper's: names told before, and new ones.
import { fold } from '../normalise.ts'
import { isEveryday, isPlainWord } from '../spelling.ts'
import { givenNames } from '../words/givenNames.ts'
import type { Flock } from '../../core/question.ts'
import type { Token } from '../token.ts'

/** "Bert's" -> "Bert". */
const bare = (said: string): string => said.replace(/['’]s$/u, '')

/** The name as it was first told. */
export function nameOf({ said }: Token, flock: Flock): string {
  const word = bare(said)
  const known = flock.birds.find(
    ({ name }) => fold(name) === fold(word) || fold(name) === fold(word).replace(/s$/u, ''),
  )
  if (word.startsWith('the ')) return word // "the sire of Sid"
  return known?.name ?? `${word.charAt(0).toUpperCase()}${word.slice(1)}`
}

/** Written as a name is. */
const isCapital = (said: string): boolean => /^\p{Lu}\p{Ll}+/u.test(said)

/** Names told before, however they are typed now. */
export const isTold = (token: Token, flock: Flock): boolean =>
  (token.type === 'unknown' ||
    token.type === 'name' ||
    isCapital(token.said) ||
    givenNames.has(fold(bare(token.said)))) &&
  flock.birds.some(({ name }) => [fold(name), `${fold(name)}s`].includes(fold(token.said)))

/** Fit to be a name though it stands with a capital at the head of a sentence: 'Sid' and 'Daisy' are, 'Seller' is not. */
const isNameLike = (word: string): boolean =>
  givenNames.has(word) || (word.length <= 3 ? !isPlainWord(word) : !isEveryday(word))

/** "in June", "since April": when it was, and nobody's name. */
const isMonth = ({ word }: Token, before: Token | undefined): boolean =>
  /^(?:april|may|june|august)$/u.test(word) &&
  /^(?:in|last|this|next|since|until|till|by|early|late|mid|around|every)$/u.test(before?.word ?? '')

/** "Bert x Daisy gave 12": between the pair and its chicks, and nobody's name. */
const outcome = /^(?:gave|gives|threw|throws|produced|made|had|hatched)$/u

/** A word that may be a new name: not known, or a word that is given as a name, written with a capital. */
function isFresh({ said, word, type }: Token): boolean {
  if (!/^\p{L}{2,}(?:['’]\p{L}+)?$/u.test(said)) return false
  if (type === 'unknown') return isCapital(said) || isNameLike(fold(bare(said)))
  const own = fold(bare(said))
  return isCapital(said) && !said.includes(' ') && (fold(said) !== word || givenNames.has(own))
}

/**
 * The clauses of a message with names marked. New names are words not known, or written with a capital where they
 * are; small words are left out, and beside names told before every other word that means nothing here.
 */
export function namedClauses(tokens: readonly Token[], flock: Flock): readonly (readonly Token[])[] {
  const clauses: Token[][] = [[]]
  const known = tokens.slice(0, 400).some((token) => isTold(token, flock))
  for (const [i, token] of tokens.slice(0, 400).entries()) {
    const { said, word, at, end, gap } = token
    const told = isTold(token, flock)
    if (token.type === 'stop') clauses.push([])
    else if (!told && (outcome.test(said) || isMonth(token, tokens[i - 1]))) continue
    else if (told || isFresh(token)) clauses.at(-1)!.push({ type: 'name', said, word, at, end, gap })
    else if (known && token.type === 'unknown' && !/^(?:parents|both)$/u.test(word)) continue
    else if (token.type !== 'filler') clauses.at(-1)!.push(token)
  }
  return clauses.map(withoutNo).filter(({ length }) => length > 1 && length <= 40)
}

/** "No, Bert's dad is Rex". */
const withoutNo = (clause: readonly Token[]): readonly Token[] =>
  clause[0]?.type === 'not' ? clause.slice(clause[1]?.type === 'comma' ? 2 : 1) : clause

/** A new name stands with a capital, or in a sentence that can only be of kin. */
export const isNewName = (token: Token, flock: Flock): boolean =>
  isTold(token, flock) || (isCapital(token.said) && isNameLike(fold(bare(token.said))))
