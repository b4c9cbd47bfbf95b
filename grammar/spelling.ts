// grammar/spelling.ts: the word that a misspelt one was meant to be. Edit distance first, sound where that is a tie.
import { daleChall } from 'dale-chall'
import { doubleMetaphone } from 'double-metaphone'
import { distance } from 'fastest-levenshtein'
import { isRisky, joinedNames, knownWords, phrases, runTogether } from './lexicon.ts'
import { conceptWords } from './words/concepts.ts'
import { chatter } from './words/chatter.ts'
import { places } from './words/places.ts'

/** A word, or the words of a run-together name, and what else it might have been. */
export type Spelt = { readonly words: readonly string[]; readonly rival?: readonly string[] }

const ofConcepts = Object.values(conceptWords).flatMap((list) => phrases(list).flatMap((text) => text.split(' ')))
const beginnings = ofConcepts.filter((word) => word.endsWith('*')).map((word) => word.slice(0, -1))
const everyday: ReadonlySet<string> = new Set([
  ...daleChall.map((word) => word.toLowerCase()),
  ...chatter,
  ...places,
  ...ofConcepts,
])

/** An English word in its plain form. */
export const isPlainWord = (word: string): boolean => everyday.has(word)

/** An English word, in its plain form or with a usual ending. */
export const isEveryday = (word: string): boolean =>
  everyday.has(word) ||
  beginnings.some((start) => word.startsWith(start)) ||
  /^\d|^.{1,3}$/u.test(word) ||
  everyday.has(word.replace(/([bdgklmnprt])\1(?:ed|ing|er|y)$/u, '$1')) ||
  ['s', 'es', 'ed', 'd', 'ing', 'ly', 'er', 'ers', 'est', 'y', 'nt'].some(
    (ending) =>
      word.endsWith(ending) &&
      (everyday.has(word.slice(0, -ending.length)) || everyday.has(`${word.slice(0, -ending.length)}e`)),
  )

/** Slips allowed in a word of that length. */
const slips = (length: number): number => (length <= 4 ? 1 : length <= 7 ? 2 : 3)

type Target = {
  readonly word: string
  readonly letters: number
  readonly words: readonly string[]
  readonly group: ReadonlySet<string>
}

const lettersOf = (word: string): number => {
  let bits = 0
  for (const letter of word) bits |= 1 << (letter.codePointAt(0)! % 31)
  return bits
}
const bitCount = (bits: number): number => {
  let count = 0
  for (let rest = bits; rest !== 0; rest &= rest - 1) count += 1
  return count
}

/** Words that name or describe a bird are worth mending; small words are not. */
const worth = /^(?:\{"type":")?(?:breed|family|colour|line|cock|hen|chick|sexlink|trait|goal|kin)\b/u

const single: readonly Target[] = [...knownWords()]
  .filter(
    ([word, group]) =>
      word.length >= 4 &&
      /^[a-z]+$/u.test(word) &&
      /[aeiouy]/u.test(word) &&
      !isRisky(word) &&
      [...group].some((use) => worth.test(use)),
  )
  .map(([word, group]) => ({ word, letters: lettersOf(word), words: [word], group }))
const run: readonly Target[] = [...joinedNames()]
  .filter(([word, text]) => text.includes(' ') && word.length >= 8 && /^[a-z]+$/u.test(word))
  .map(([word, text]) => ({ word, letters: lettersOf(word), words: text.split(' '), group: new Set([text]) }))
const targets: ReadonlyMap<number, readonly Target[]> = Map.groupBy([...single, ...run], ({ word }) => word.length)

/** A short word is near too many others: only a bird or a sex is made of it. */
const isBirdOrSex = ({ group }: Target): boolean =>
  [...group].some((use) => /^(?:\{"type":")?(?:breed|family|cock|hen)\b/u.test(use))

function near(word: string): readonly (Target & { readonly slips: number })[] {
  const most = slips(word.length)
  const letters = lettersOf(word)
  const found: (Target & { readonly slips: number })[] = []
  for (let length = word.length - most; length <= word.length + most; length += 1)
    for (const target of targets.get(length) ?? []) {
      if (bitCount(letters ^ target.letters) > 2 * most || (word.length <= 4 && !isBirdOrSex(target))) continue
      const apart = distance(word, target.word)
      if (apart <= most && apart < word.length / 2 && (apart < 2 || target.word[0] === word[0]))
        found.push({ ...target, slips: apart })
    }
  return found.sort((a, b) => a.slips - b.slips)
}

const sound = (word: string): string => doubleMetaphone(word)[0]
const alike = (one: Target, other: Target): boolean =>
  [...one.group].some((meaning) => other.group.has(meaning)) ||
  `${one.word}s` === other.word ||
  `${other.word}s` === one.word

/** "orpinton bufs": several of a colour that is known, slips and all. */
export const isColours = (word: string): boolean =>
  word.endsWith('s') &&
  [...(knownWords().get(word.slice(0, -1)) ?? [])].some((use) => /^(?:\{"type":")?colour\b/u.test(use))

const isColour = (word: string): boolean =>
  [...(knownWords().get(word) ?? [])].some((use) => /^(?:\{"type":")?colour\b/u.test(use))
/** "goldlaced", "silverspangled": two colours in one word. */
function twoColours(word: string): readonly string[] | undefined {
  if (word.length < 8 || word.length > 24) return undefined
  for (let at = 3; at <= word.length - 4; at += 1) {
    const [one, other] = [word.slice(0, at), word.slice(at)]
    if (isColour(one) && isColour(other)) return [one, other]
  }
  return undefined
}

/**
 * What an unknown word was meant to be; undefined where nothing is near, or where it is an everyday word.
 * A rival is as near and sounds as much like it.
 *
 * @param isPlace it stands where the name of a place would, so that only a near miss is a slip
 */
export function respell(word: string, isPlace = false): Spelt | undefined {
  const run = runTogether(word)
  if (run !== undefined) return { words: run.split(' ') }
  if (isEveryday(word)) return undefined
  const colours = twoColours(word)
  if (colours) return { words: colours }
  if (isColours(word)) return { words: [word.slice(0, -1)] }
  const found = near(word).filter((target) => target.word !== word)
  const best = found[0]
  if (!best) return undefined
  if (isPlace && best.slips > 2) return undefined
  const ties = found.filter((target) => target.slips === best.slips && !alike(target, best))
  if (ties.length === 0) return { words: best.words }
  const wanted = sound(word)
  const sounding = [best, ...ties].filter((target) => sound(target.word) === wanted)
  const [first, second] = sounding.length > 0 ? sounding : [best, ...ties]
  if (first === undefined) return undefined
  if (second === undefined || alike(first, second)) return { words: first.words }
  return word.length >= 5 ? { words: first.words, rival: second.words } : undefined
}
