// core/topics/cues.ts: whether the stems of a cue occur in a text, how much that weighs, and by which letters cues are looked up.
import { plain } from '../breeds/read.ts'

/** Stems that must all occur. */
export type Cue = readonly string[]

/** Two spellings or trade words that cues need not tell apart. */
const same: readonly (readonly [RegExp, string])[] = [
  [/\bcolor/gu, 'colour'],
  [/\bvigor\b/gu, 'vigour'],
  [/\broo(?:s|ster|sters)?\b/gu, 'cock'],
]

/** Words as cues compare them: lower case, without accents and marks, but with the signs of genotypes. */
export const cueWords = (text: string): readonly string[] =>
  same
    .reduce((words, [spelling, one]) => words.replace(spelling, one), plain(text))
    .replace(/[?!:;"“”]/gu, ' ')
    .split(' ')
    .filter((word) => word !== '')

function fits(part: string, word: string | undefined): boolean {
  if (word === undefined) return false
  if (part.endsWith('*')) return word.startsWith(part.slice(0, -1))
  return part.length > 3 ? word.startsWith(part) : word === part || word === `${part}s`
}

/** Words among which all stems of a cue must stand: in a long message they would else be picked up from anywhere. */
const together = 16

/** Each stem takes a word of its own, so that 'frizzle frizzle' wants the word twice. */
export function occurs(cue: readonly string[], words: readonly string[]): boolean {
  const last = Math.max(0, words.length - together)
  for (let from = 0; from <= last; from += together / 2)
    if (standsIn(cue, words.slice(Math.min(from, last), from + together))) return true
  return last % (together / 2) !== 0 && standsIn(cue, words.slice(last))
}

function standsIn(cue: readonly string[], words: readonly string[]): boolean {
  const taken = new Set<number>()
  return cue.every((stem) => {
    const parts = stem.split('_')
    const at = words.findIndex((_, i) => parts.every((part, k) => !taken.has(i + k) && fits(part, words[i + k])))
    parts.forEach((_, k) => taken.add(at + k))
    return at >= 0
  })
}

/** More the longer the cue: it says more of what is asked. */
export const weightOf = (cue: Cue): number => cue.join('').length + cue.length * 4

const mostKey = 4
/** The first letters by which a cue is looked up: of the longest of its words, which is the rarest. */
export function keyOf(cue: Cue): string {
  const longest = cue.flatMap((stem) => stem.split('_')).reduce((a, b) => (b.length > a.length ? b : a))
  return longest.replace('*', '').slice(0, mostKey)
}
export const keysOf = (words: readonly string[]): ReadonlySet<string> =>
  new Set(words.flatMap((word) => Array.from({ length: mostKey }, (_, at) => word.slice(0, at + 1))))
