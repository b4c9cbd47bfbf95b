// grammar/standsAsBird.ts: a short or everyday word that may name a breed does so only beside words that stand beside birds.
import { isRisky, longestPhrase } from './lexicon.ts'
import type { Found } from './lexicon.ts'
import type { Word } from './word.ts'

const birdTypes: ReadonlySet<string> = new Set(['breed', 'family'])

const evidence: ReadonlySet<string> = new Set([
  'cock',
  'hen',
  'breed',
  'family',
  'over',
  'under',
  'plus',
  'my',
  'line',
  'his',
  'her',
  'about',
  'same',
  'swap',
  'forWhom',
  'carries',
])

const isCapital = (text: string): boolean => text.length >= 2 && /^[A-Z]{2,}s?$/u.test(text)

/** `4 am`, `30 cm`, `5 lb`. */
const isUnit = (word: string): boolean => /^(?:am|cms?|lbs?|m|kk)$/u.test(word)

/** The phrase that begins at a word, or going back, the longest that ends with it. */
function phraseOver(words: readonly Word[], at: number, step: 1 | -1): Found | undefined {
  for (let from = step === 1 ? at : Math.max(0, at - 2); from <= at; from += 1) {
    const found = longestPhrase(
      (k) => words[k]?.word,
      from,
      () => true,
    )
    if (found && (step === 1 || from + found.length === at + 1)) return found
  }
  return undefined
}

/** Is there a word beside it that only a bird has beside it? Looks past colours, lines and numbers. */
export function standsAsBird(words: readonly Word[], from: number, length: number): boolean {
  const before = words[from - 1]?.word ?? ''
  if (length === 1 && isUnit(words[from]!.word) && /^(?:per|each|in|the)$/u.test(before)) return false // "feed per lb"
  if (
    words.slice(from, from + length).every(({ raw }) => isCapital(raw.text)) &&
    !(words[from - 1]?.raw.type === 'number')
  )
    return true
  const look = (start: number, step: 1 | -1): boolean => {
    const reach = /^hybrids?$/u.test(words[from]!.word) ? 5 : 3 // "hybrids or a pure utility Sussex"
    for (let i = start, seen = 0; seen < reach; i += step, seen += 1) {
      const word = words[i]
      if (!word) return false
      if (
        step === -1 &&
        i === from - 1 &&
        isUnit(words[from]!.word) &&
        (word.raw.type === 'slash' || word.raw.type === 'money')
      )
        return false // "$0.38/lb"
      if (
        word.raw.type === 'times' ||
        word.raw.type === 'slash' ||
        word.raw.type === 'plus' ||
        word.raw.type === 'male' ||
        word.raw.type === 'female'
      )
        return true
      if (word.raw.type === 'number' && step === -1) return !isUnit(words[from]!.word)
      if (
        step === -1 &&
        i === from - 1 &&
        /^(?:do|are|does|is|about|of)$/u.test(word.word) &&
        !isUnit(words[from]!.word)
      )
        return /s$|^(?:polish|ee|br|nh)$/u.test(words[from]!.word)
      if (step === -1 && i === from - 1 && word.word === 'which' && words[from]!.word.length > 2) return true // "which man"
      if (step === -1 && words[from]!.word === 'man' && /^(?:needs?|want|wants|after)$/u.test(word.word)) return true // "hens need a man"
      if (step === 1 && i === from + length && ofBreeds.test(word.word) && words[from]!.word.length > 4) return true // "buckeye comb?"
      if (step === -1 && i === from - 1 && isAskedOf(words, from, length)) return true
      if (
        word.raw.type === 'comma' ||
        word.raw.type === 'and' ||
        word.raw.type === 'open' ||
        /^(?:or|vs|versus)$/u.test(word.word)
      )
        continue
      const found = phraseOver(words, i, step)
      const type = found?.meaning.type
      if (type === undefined || word.raw.type === 'stop' || word.raw.type === 'ask') return false
      if (evidence.has(type) && !(type === 'over' && word.word !== 'x' && step === 1 && isRisky(word.word)))
        return !(birdTypes.has(type) && isRisky(word.word))
      if (type !== 'colour' && type !== 'filler' && type !== 'and' && type !== 'comma') return false
    }
    return false
  }
  return look(from + length, 1) || look(from - 1, -1)
}

/** "what does a serama weigh", "is a sultan crested", "what made the Buckeye": one of a kind, and behind it what is asked of it, or nothing. */
function isAskedOf(words: readonly Word[], from: number, length: number): boolean {
  const [name, next] = [words[from]!, words[from + length]]
  if (!/^(?:a|an|the)$/u.test(words[from - 1]?.word ?? '') || name.word.length < 5) return false
  const isLast = next === undefined || next.raw.type === 'stop' || next.raw.type === 'ask'
  const asked = words.length <= 7 && /^(?:how|what|whats|which|is|does|did|has)$/u.test(words[0]?.word ?? '')
  if (isLast) return asked || /^\p{Lu}\p{Ll}/u.test(name.raw.text)
  const type = phraseOver(words, from + length, 1)?.meaning.type
  return length === 1 && (type === 'aspect' || type === 'colour' || type === 'trait' || type === 'goal')
}

/** What is spoken of a breed by its name: its comb, its temper. */
const ofBreeds = /^(?:toes?|combs?|temperament|temper|broodiness|eggshell|plumage|genetics|shanks?|crest|weight)$/u

/** "Cornish x Rock": the sign is that of a mating where a bird follows. */
export function isMatingSign(words: readonly Word[], from: number, { text, length }: Found): boolean {
  if (!text.endsWith(' x')) return false
  const type = phraseOver(words, from + length, 1)?.meaning.type
  return type !== undefined && (birdTypes.has(type) || type === 'colour')
}
