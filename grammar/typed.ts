// grammar/typed.ts: the words of a message as typed tokens: phrases found, slips mended, everything else marked unknown.
import { readPair } from '../core/genotype.ts'
import { dictated } from './dictated.ts'
import { asFeathering, asFeature, carriedAllele, withComma } from './featureWords.ts'
import { isDouble, isJoinedGene, isLoneAllele, isMixedPair, plainly } from './geneText.ts'
import { isKnownWord, isRisky, longestPhrase } from './lexicon.ts'
import { fold } from './normalise.ts'
import { respell } from './spelling.ts'
import { isMatingSign, standsAsBird } from './standsAsBird.ts'
import { numberWords } from './words/small.ts'
import type { Bare } from './featureWords.ts'
import type { Found } from './lexicon.ts'
import type { Correction, Meaning, Plain, Token } from './token.ts'
import type { Raw } from './tokens.ts'
import type { Word } from './word.ts'

export type Typed = { readonly tokens: readonly Token[]; readonly corrections: readonly Correction[] }

/** Unknown words of one message that are mended, among its first words; beyond, they are left as they are. */
const mostMended = 40

const mostLookedAt = 500

/** A hyphen inside a name is a blank; one that stands by itself parts like a comma. */
function withoutHyphens(raws: readonly Raw[]): readonly Raw[] {
  return raws.flatMap((raw, i): readonly Raw[] => {
    if (raw.type !== 'dash') return [raw]
    const [before, after] = [raws[i - 1], raws[i + 1]]
    const touches =
      before !== undefined && before.at + before.text.length === raw.at && after?.at === raw.at + raw.text.length
    return touches ? [] : [{ ...raw, type: 'comma' }]
  })
}

const oneOfSex =
  /^(roo|rooster|cock|cockerel|male|boy|hen|pullet|female|girl|dad|father|daddy|sire|mum|mom|mother|mama|dam|lad|fella)'?s$/iu

/** "the roo's a RIR", "moms an Australorp": the sex word, and "is". */
function uncontracted(raws: readonly Raw[]): readonly Raw[] {
  return raws.flatMap((raw, i): readonly Raw[] => {
    const sex = raw.type === 'word' ? oneOfSex.exec(raw.text)?.[1] : undefined
    const next = raws[i + 1]
    if (sex === undefined || next?.type !== 'word' || !/^(?:an?|actually|called|some|one)$/iu.test(next.text))
      return [raw]
    return [
      { ...raw, text: sex },
      { type: 'is', text: raw.text.slice(sex.length), at: raw.at + sex.length },
    ]
  })
}

/** `RIRxBR`, `bcmxlegbar`: names with a cross between them and no blank. */
function uncrossed({ raw, word }: Word): readonly Word[] | undefined {
  if (!word.includes('x') || word.length < 4) return undefined
  const parts = raw.text.split(/(?<=.)[xX](?=.)/u)
  if (parts.length < 2 || !parts.every((part) => isKnownWord(fold(part)))) return undefined
  let at = raw.at
  return parts.flatMap((part, i): readonly Word[] => {
    const name: Word = { raw: { type: 'word', text: part, at }, word: fold(part) }
    const sign: Word = { raw: { type: 'times', text: 'x', at: at + part.length }, word: 'x' }
    at += part.length + 1
    return i < parts.length - 1 ? [name, sign] : [name]
  })
}

/** Does any phrase of the lexicon stand over this word? */
function isCovered(words: readonly Word[], at: number): boolean {
  for (let from = Math.max(0, at - 4); from <= at; from += 1) {
    const found = longestPhrase(
      (k) => words[k]?.word,
      from,
      () => true,
    )
    if (found && from + found.length > at) return true
  }
  return false
}

/** "from Arkansas", "here in Wyoming": a capital behind a word of place. */
const isPlace = (words: readonly Word[], at: number): boolean =>
  /^\p{Lu}\p{Ll}+$/u.test(words[at]!.raw.text) &&
  /^(?:from|in|near|to|around|outside)$/u.test(words[at - 1]?.word ?? '')

function mend(words: readonly Word[]): {
  readonly words: readonly Word[]
  readonly corrections: readonly Correction[]
} {
  const corrections: Correction[] = []
  let tried = 0
  const mended = words.flatMap((word, at): readonly Word[] => {
    if (word.raw.type !== 'word' || tried >= mostMended || at >= mostLookedAt) return [word]
    if (isKnownWord(word.word) && (isCovered(words, at) || word.word.length < 4)) return [word]
    tried += 1
    const crossed = uncrossed(word)
    if (crossed) return crossed
    const spelt = respell(word.word, isPlace(words, at))
    if (!spelt) return [word]
    const rival = spelt.rival?.join(' ')
    corrections.push({ said: word.raw.text, taken: spelt.words.join(' '), ...(rival === undefined ? {} : { rival }) })
    return spelt.words.map((text) => ({ raw: word.raw, word: text, mended: word.raw.text }))
  })
  return { words: mended, corrections }
}

const signTypes: Partial<Record<Raw['type'], Plain>> = {
  plus: 'plus',
  and: 'and',
  slash: 'slash',
  comma: 'comma',
  open: 'open',
  close: 'close',
  is: 'is',
  chick: 'chick',
}

const currencies: Readonly<Record<string, string>> = { '£': '£', $: '$', '€': '€' }

function money(text: string): { readonly value: number; readonly currency: string } {
  const value = Number(/\d+(?:[.,]\d+)?/u.exec(text)?.[0].replace(',', '.') ?? 0)
  const sign = /[£$€]/u.exec(text)?.[0]
  if (sign !== undefined) return { value: /k$/iu.test(text) ? value * 1000 : value, currency: currencies[sign] ?? sign }
  if (/\d\s?(?:p|pence)$/iu.test(text)) return { value: value / 100, currency: '£' }
  if (/quid|gbp|sterling|pounds?/iu.test(text)) return { value, currency: '£' }
  if (/\d\s?(?:c|ct|cents?)$/iu.test(text)) return { value: value / 100, currency: '$' }
  return { value, currency: /eur/iu.test(text) ? '€' : '$' }
}

function signToken(
  raw: Raw,
  spot: Omit<Token, 'type'> & { word: string; gap: boolean; said: string; at: number; end: number },
): Token | undefined {
  const plain = signTypes[raw.type]
  if (plain !== undefined) return { ...spot, type: plain }
  switch (raw.type) {
    case 'times':
      return { ...spot, type: 'over', weak: false }
    case 'male':
      return { ...spot, type: 'cock', many: false, parent: false }
    case 'female':
      return { ...spot, type: 'hen', many: false, parent: false }
    case 'egg':
      return { ...spot, type: 'aspect', aspect: 'eggs' }
    case 'sign':
      return raw.text === '%' ? { ...spot, type: 'aspect', aspect: 'shares' } : { ...spot, type: 'unknown' }
    case 'gene':
      return { ...spot, type: 'gene' }
    case 'stop':
    case 'ask':
      return { ...spot, type: 'stop', asks: raw.type === 'ask' && raw.text.includes('?') }
    case 'money':
      return { ...spot, type: 'money', ...money(raw.text) }
    case 'number':
      return numberToken(raw, spot)
    default:
      return undefined
  }
}

/** "hens 2 make sex-links". */
const isTo = (words: readonly Word[], at: number): boolean =>
  words[at]?.raw.text === '2' &&
  at > 0 &&
  /^(?:make|get|put|breed|cross|use|do|see|be|go|hatch|have|keep|buy|find|sell|give|produce)$/u.test(
    words[at + 1]?.word ?? '',
  )

/** `hens 4 my roo`, "what cock 4 sexable", "good 4 meat", "hens 4 big fluffy chicks". */
const isFor = (words: readonly Word[], at: number): boolean =>
  words[at]?.raw.text === '4' &&
  (/^(?:my|the|a|an|our|this|these|his)$/u.test(words[at + 1]?.word ?? '') ||
    /^(?:what|wat|wot|which|wich|best)$/u.test(words[at - 2]?.word ?? '') ||
    /^(?:good|best|better|great)$/u.test(words[at - 1]?.word ?? '') ||
    (/^(?:hens|girls|ladies|pullets|females|roo|rooster|cock|cockerel|male|boy)$/u.test(words[at - 1]?.word ?? '') &&
      words.slice(at + 1, at + 5).some(({ word }) => /^(?:chicks|babies|eggs|meat|layers|sexlinks?)$/u.test(word)))) &&
  words[at - 1]?.word !== 'of'

const numberToken = (raw: Raw, spot: Bare): Token => ({
  ...spot,
  type: 'number',
  value:
    Number(
      raw.text
        .replace('%', '')
        .replace(/,(?=\d{3}\b)/gu, '')
        .replace(',', '.'),
    ) || 0,
  percent: raw.text.endsWith('%'),
})

const spotOf = (words: readonly Word[], from: number, length: number, gap: boolean): Bare => {
  const [first, last] = [words[from]!, words[from + length - 1]!]
  return {
    said: words
      .slice(from, from + length)
      .map(({ raw }) => raw.text)
      .join(' '),
    word: words
      .slice(from, from + length)
      .map(({ word }) => word)
      .join(' '),
    at: first.raw.at,
    end: last.raw.at + last.raw.text.length,
    gap,
  }
}

function wordToken(
  words: readonly Word[],
  from: number,
  gap: boolean,
  among: boolean,
): { readonly token: Token; readonly length: number } {
  const admits = (found: Found): boolean =>
    (!isRisky(found.text) || standsAsBird(words, from, found.length)) && !isMatingSign(words, from, found)
  const at = (index: number): string | undefined => {
    const word = words[index]
    return word && (word.raw.type === 'word' || word.raw.type === 'number') ? word.word : undefined
  }
  const found = longestPhrase(at, from, admits)
  const length = found?.length ?? 1
  const spot = spotOf(words, from, length, gap)
  const meaning: Meaning | undefined = found?.meaning
  const word = words[from]!
  const number = isHalfDozen(words, from) ? 6 : numberWords[word.word]
  if (isMixedPair(word.raw.text) || isLoneAllele(words, from) || (among && isDouble(word.raw.text)))
    return { token: { ...spotOf(words, from, 1, gap), type: 'gene' }, length: 1 }
  if (number !== undefined && length === 1)
    return { token: { ...spot, type: 'number', value: number, percent: false }, length }
  if (meaning) return { token: { ...spot, ...meaning }, length }
  return { token: { ...spot, type: isJoinedGene(word.raw.text) ? 'gene' : 'unknown' }, length }
}

/** "half a dozen", "half dozen": the last word of it. */
const isHalfDozen = (words: readonly Word[], at: number): boolean =>
  words[at]!.word === 'dozen' &&
  (words[at - 1]?.word === 'half' || (words[at - 1]?.word === 'a' && words[at - 2]?.word === 'half'))

/**
 * Typed tokens of a message, with the slips that were mended.
 *
 * @param raws as `tokensOf` gives them
 */
export function typed(raws: readonly Raw[]): Typed {
  const among = raws.some(({ type, text }) => type === 'gene' && text.includes('/') && readPair(text).ok)
  const plain = uncontracted(withoutHyphens(raws.flatMap((raw) => plainly(raw, among))))
  const heard = dictated(
    plain.map((raw) => ({ raw, word: raw.type === 'word' || raw.type === 'number' ? fold(raw.text) : raw.text })),
  )
  const { words, corrections } = mend(
    heard.map((word, at) => (isTo(heard, at) ? { raw: { ...word.raw, type: 'word' }, word: 'to' } : word)),
  )
  const amongGenes =
    among || words.some(({ raw }) => raw.type === 'word' && (isMixedPair(raw.text) || isJoinedGene(raw.text)))
  const tokens: Token[] = []
  let gap = false
  for (let i = 0; i < words.length;) {
    const { raw } = words[i]!
    const spot = spotOf(words, i, 1, gap)
    const sign = isFor(words, i) ? ({ ...spot, type: 'forWhom' } as const) : signToken(raw, spot)
    const isNumberName =
      raw.type === 'number' &&
      longestPhrase(
        (k) => words[k]?.word,
        i,
        (found) => found.length > 1,
      )
    const { token, length }: { readonly token: Token; readonly length: number } =
      sign && !isNumberName ? { token: sign, length: 1 } : wordToken(words, i, gap, amongGenes)
    tokens.push(carriedAllele(token, tokens.at(-1)))
    gap = token.type === 'unknown' || (gap && token.type === 'filler')
    i += length
  }
  return { tokens: tokens.map(asFeathering).map(asFeature).flatMap(withComma), corrections }
}
