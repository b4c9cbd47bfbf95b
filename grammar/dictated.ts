// grammar/dictated.ts: names of birds that a phone wrote down by ear: "Emma Rock Anna hen", "well summer roo".
import { doubleMetaphone } from 'double-metaphone'
import { isKnownWord, joinedNames, longestPhrase } from './lexicon.ts'
import { isColours, isPlainWord, respell } from './spelling.ts'
import type { Word } from './word.ts'

const sound = (text: string): string => doubleMetaphone(text)[0]

/** Names by their sound; a sound that two names share, or a short one, tells nothing. */
const bySound: ReadonlyMap<string, string> = (() => {
  const found = new Map<string, string | undefined>()
  for (const [run, text] of joinedNames()) {
    if (!/^[a-z]{6,}$/u.test(run)) continue
    const meaning = longestPhrase(
      (i) => text.split(' ')[i],
      0,
      () => true,
    )?.meaning
    if (meaning?.type !== 'breed' && meaning?.type !== 'family') continue
    const code = sound(run)
    if (code.length < 4) continue
    const before = found.get(code)
    found.set(code, found.has(code) && before !== text && !sameBird(before, meaning) ? undefined : text)
  }
  return new Map([...found].flatMap(([code, text]) => (text === undefined ? [] : [[code, text] as const])))
})()

function sameBird(text: string | undefined, meaning: object): boolean {
  const other =
    text === undefined
      ? undefined
      : longestPhrase(
          (i) => text.split(' ')[i],
          0,
          () => true,
        )?.meaning
  return JSON.stringify(other) === JSON.stringify(meaning)
}

/** Windows tried in one message. */
const mostTried = 24

const isSexWord = (words: readonly Word[], at: number): boolean => {
  const type = longestPhrase(
    (i) => words[i]?.word,
    at,
    () => true,
  )?.meaning.type
  return type === 'cock' || type === 'hen'
}
const isMating = (word: Word | undefined): boolean =>
  word?.raw.type === 'times' || word?.word === 'x' || word?.word === 'over'

/** The name that words `from` to `to` sound like, if at least one of them is no word of ours. */
function heardAs(words: readonly Word[], from: number, to: number): string | undefined {
  const window = words.slice(from, to)
  if (window.length < 2 || window.some(({ raw }) => raw.type !== 'word')) return undefined
  if (window.some((word) => isWritten(word) || word.mended !== undefined)) return undefined
  if (/^(?:an?|the|my|some|his|her|w|n)$/u.test(window[0]!.word)) return undefined
  const known = window.every(({ word }) => isKnownWord(word) || isColours(word))
  if (known && (window.length < 3 || reads(window) || isJoint(window[0]!))) return undefined
  const run = window.map(({ word }) => word).join('')
  return bySound.get(sound(run)) ?? spelledLike(window, run)
}

/** `BR`: letters that stand for a breed are written, not heard. */
function isWritten({ raw, word }: Word): boolean {
  if (!/^[A-Z]{2,5}s?$/u.test(raw.text)) return false
  const type = longestPhrase(
    (k) => (k === 0 ? word : undefined),
    0,
    () => true,
  )?.meaning.type
  return type === 'breed' || type === 'family'
}

/** "black astro lorp": a name in pieces that are no words, told by its letters. */
function spelledLike(window: readonly Word[], run: string): string | undefined {
  const odd = window.some(({ word }) => !isKnownWord(word) && !isPlainWord(word))
  if (!odd || run.length < 8 || window.some(({ word }) => word.length < 3)) return undefined
  const found = respell(run)
  if (!found || found.rival) return undefined
  const meaning = longestPhrase(
    (i) => found.words[i],
    0,
    ({ length }) => length === found.words.length,
  )?.meaning
  return meaning?.type === 'breed' || meaning?.type === 'family' ? found.words.join(' ') : undefined
}

/** "my roo and a white hen": nobody hears a name that begins so. */
const isJoint = ({ word }: Word): boolean => /^(?:and|or|with|over|on|the)$/u.test(word)

const ofBird: ReadonlySet<string> = new Set(['breed', 'family', 'colour', 'line', 'cock', 'hen', 'goal', 'aspect'])

/** True where each word has its part in a bird as it stands: "white rock roo". */
function reads(window: readonly Word[]): boolean {
  for (let i = 0; i < window.length;) {
    const found = longestPhrase(
      (k) => window[k]?.word,
      i,
      () => true,
    )
    const type = found?.meaning.type
    if (!found || type === undefined || !ofBird.has(type)) return false
    i += found.length
  }
  return true
}

/** The same words, with each dictated name before a sex word or beside a mating sign written out. */
export function dictated(words: readonly Word[], tries = mostTried): readonly Word[] {
  let tried = 0
  for (let i = 0; i < words.length && tried < tries; i += 1) {
    const spans = isSexWord(words, i) || isMating(words[i]) ? [4, 3, 2].map((n) => [i - n, i] as const) : []
    const after = isMating(words[i]) ? [4, 3, 2].map((n) => [i + 1, i + 1 + n] as const) : []
    for (const [from, to] of [...spans, ...after]) {
      if (from < 0 || to > words.length) continue
      tried += 1
      const name = heardAs(words, from, to)
      if (name !== undefined)
        return dictated([...words.slice(0, from), ...written(words, from, to, name), ...words.slice(to)], tries - tried)
    }
  }
  return words
}

/** The first word of the name carries the whole of what was said. */
function written(words: readonly Word[], from: number, to: number, name: string): readonly Word[] {
  const said = words
    .slice(from, to)
    .map(({ raw }) => raw.text)
    .join(' ')
  const raw = words[from]!.raw
  return name.split(' ').map((word) => ({ raw: { ...raw, text: said }, word, mended: said }))
}
