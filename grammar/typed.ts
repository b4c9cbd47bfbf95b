// grammar/typed.ts: the words of a message as typed tokens: phrases found, slips mended, everything else marked unknown.
import { lociOfAllele, readPair } from '../core/genotype.ts'
import { dictated } from './dictated.ts'
import type { Word } from './word.ts'
import { fold } from './normalise.ts'
import { isKnownWord, isRisky, longestPhrase, type Found } from './lexicon.ts'
import { respell } from './spelling.ts'
import { numberWords } from './words/small.ts'
import type { Correction, Meaning, Plain, Token } from './token.ts'
import type { Raw } from './tokens.ts'

export type Typed = { readonly tokens: readonly Token[]; readonly corrections: readonly Correction[] }

/** A raw token on its way: its folded word, and whether that word is what was written. */

/** Unknown words of one message that are mended, among its first words; beyond, they are left as they are. */
const mostMended = 40
const mostLookedAt = 500

const notGenes = /^(?:w\/o|b\/c|y\/n|i\/o|a\/c|s\/he|n\/a|w\/c|p\/o|o\/w)$/iu

/** Does a slash or a plus make this a genotype, right or wrong? Among other genotypes, one known half will do. */
function isGenotype(text: string, among: boolean): boolean {
  if (notGenes.test(text)) return false
  const halves = text.split('/')
  const known = halves.map((half) => lociOfAllele(half)?.locus).filter((locus) => locus !== undefined)
  if (!text.includes('/')) return known.length > 0 || readPair(text).ok
  if (readPair(text).ok || (known.length === halves.length && new Set(known).size === 1)) return true
  const marked = /[+^-]/u.test(text) || /^([a-z])\/\1$/iu.test(text) || text.endsWith('/W')
  return (
    (marked || among) &&
    (known.length > 0 || (marked && halves.every((half) => half.replace(/[+^-]/gu, '').length <= 2)))
  )
}

/** `w/ RIR`, `b/c`, `y/n` look like genotypes and are none; `RIR+` is a name and a plus. */
function plainly(raw: Raw, among: boolean): readonly Raw[] {
  if (raw.type !== 'gene' || isGenotype(raw.text, among)) return [raw]
  return [...raw.text.matchAll(/[A-Za-z\d]+|\+|\/|[^A-Za-z\d+/]/gu)].map((part): Raw => ({
    type: /^[A-Za-z\d]/u.test(part[0]) ? 'word' : part[0] === '+' ? 'plus' : part[0] === '/' ? 'slash' : 'sign',
    text: part[0],
    at: raw.at + part.index,
  }))
}

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
function standsAsBird(words: readonly Word[], from: number, length: number): boolean {
  if (
    words.slice(from, from + length).every(({ raw }) => isCapital(raw.text)) &&
    !(words[from - 1]?.raw.type === 'number')
  )
    return true
  const look = (start: number, step: 1 | -1): boolean => {
    for (let i = start, seen = 0; seen < 3; i += step, seen += 1) {
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
      if (step === 1 && i === from + length && ofBreeds.test(word.word) && words[from]!.word.length > 4) return true // "buckeye comb?"
      if (word.raw.type === 'comma' || word.raw.type === 'and' || word.raw.type === 'open' || word.word === 'or')
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

/** What is spoken of a breed by its name: its comb, its temper. */
const ofBreeds = /^(?:toes?|combs?|temperament|temper|broodiness|eggshell|plumage|genetics|shanks?|crest|weight)$/u

/** "Cornish x Rock": the sign is that of a mating where a bird follows. */
function isMatingSign(words: readonly Word[], from: number, { text, length }: Found): boolean {
  if (!text.endsWith(' x')) return false
  const type = phraseOver(words, from + length, 1)?.meaning.type
  return type !== undefined && (birdTypes.has(type) || type === 'colour')
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

type Bare = {
  readonly said: string
  readonly word: string
  readonly at: number
  readonly end: number
  readonly gap: boolean
}
/** `hens 4 my roo`. */
/** "hens 2 make sex-links". */
const isTo = (words: readonly Word[], at: number): boolean =>
  words[at]?.raw.text === '2' &&
  at > 0 &&
  /^(?:make|get|put|breed|cross|use|do|see|be|go|hatch|have|keep|buy|find|sell|give|produce)$/u.test(
    words[at + 1]?.word ?? '',
  )
const isFor = (words: readonly Word[], at: number): boolean =>
  words[at]?.raw.text === '4' &&
  (/^(?:my|the|a|an|our|this|these|his)$/u.test(words[at + 1]?.word ?? '') ||
    /^(?:what|wat|wot|which|wich|best)$/u.test(words[at - 2]?.word ?? '')) &&
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

/** `Ss`, `Bb`: no name is written so. */
const isMixedPair = (text: string): boolean =>
  /^[A-Z][a-z]$/u.test(text) && text[0]!.toLowerCase() === text[1] && readPair(text).ok

/** `BB` among other genotypes. */
const isDouble = (text: string): boolean => /^(?:BB|bb|SS|ss|KK|kk|OO|oo|PP|pp|RR|rr|II|ii|CC|cc)$/u.test(text)

/** `S hen`: one symbol right before a sex word. */
const isLoneAllele = (words: readonly Word[], at: number): boolean =>
  /^(?:[SsBbKkOIEP]|Id|id|Bl|Co|lav|choc)$/u.test(words[at]!.raw.text) &&
  !['lav', 'choc'].includes(words[at]!.raw.text) &&
  /^(?:hens?|cocks?|pullets?|females?|males?|roos?|roosters?|cockerels?)$/u.test(words[at + 1]?.word ?? '')

/** `Ss`, `Bb`, `Kk`, `blbl`, `EE`-like doubles only where the cases differ, or where a locus of two letters is doubled. */
const isJoinedGene = (text: string): boolean =>
  text.length <= 10 &&
  (/^([A-Z])[a-z]$/u.test(text)
    ? text[0]!.toLowerCase() === text[1]
    : /^([A-Za-z]{2,4})\1$/iu.test(text) || /^[BbKks]W$/u.test(text)) &&
  readPair(text).ok

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

const beginsBird: ReadonlySet<string> = new Set(['breed', 'family', 'colour', 'line'])
const endsBird: ReadonlySet<string> = new Set(['breed', 'family', 'hen'])
/** "over 4 leghorns 3 BR 2 light sussex": a number parts the hens of a list. */
function withComma(token: Token, at: number, all: readonly Token[]): readonly Token[] {
  const parts =
    token.type === 'number' &&
    Number.isInteger(token.value) &&
    endsBird.has(all[at - 1]?.type ?? '') &&
    beginsBird.has(all[at + 1]?.type ?? '') &&
    all.slice(Math.max(0, at - 30), at).some(({ type }) => type === 'over') &&
    all.slice(Math.max(0, at - 30), at).some(({ type }) => type === 'number')
  return parts ? [{ ...spotOnly(token), end: token.at, said: '', word: '', type: 'comma' }, token] : [token]
}

/** "split mo": the symbol of an allele behind a word of carrying. */
const carriedAllele = (token: Token, before: Token | undefined): Token =>
  token.type === 'unknown' &&
  (before?.type === 'carries' || before?.type === 'pure' || before?.type === 'single') &&
  /^[A-Za-z]{1,4}\+?$/u.test(token.said) &&
  lociOfAllele(token.said) !== undefined
    ? { ...token, type: 'gene' }
    : token

const feathering: Readonly<Record<string, string>> = {
  slow: 'slow feathering',
  fast: 'fast feathering',
  rapid: 'fast feathering',
}
/** "gold fast hens": of the feathering, between a colour and a sex. */
function isFeathering(at: number, all: readonly Token[]): boolean {
  const [before, token, after] = [all[at - 1]?.type, all[at], all[at + 1]?.type]
  if (token?.type !== 'unknown' || feathering[token.word] === undefined) return false
  const sexed = after === 'cock' || after === 'hen'
  const ends = after === undefined || after === 'stop' || after === 'over'
  const coloured = after === 'colour' && ['cock', 'hen'].includes(all[at + 2]?.type ?? '')
  return sexed || coloured || (before === 'colour' && ends)
}
const asFeathering = (token: Token, at: number, all: readonly Token[]): Token =>
  isFeathering(at, all)
    ? { ...spotOnly(token), type: 'trait', trait: feathering[token.word]! }
    : token.gap && isFeathering(at - 1, all)
      ? { ...token, gap: false }
      : token

/** "a chick with a naked neck": a feature there, and no breed. */
function asFeature(token: Token, at: number, all: readonly Token[]): Token {
  if (token.type === 'line') return asComb(token, at, all)
  if (token.type === 'colour' && reddens.test(token.word) && isFace(all[at + 1]))
    return { ...spotOnly(token), type: 'unknown' }
  const comb =
    token.type === 'unknown' && (all[at - 1]?.type === 'number' || isOfCombs(all, at)) ? combs[token.word] : undefined
  if (comb !== undefined) return { ...spotOnly(token), type: 'trait', trait: comb }
  if (token.type !== 'breed' || token.names[0] !== 'Naked Neck') return token
  const before = all.slice(Math.max(0, at - 3), at).filter(({ type }) => type !== 'filler')
  const described = before.at(-1)?.type === 'over' && before.at(-2)?.type === 'chick'
  const { said, word, end, gap } = token
  return described ? { type: 'trait', trait: 'naked neck', said, word, at: token.at, end, gap } : token
}

/** "a red comb": how old it is, and no colour of the bird. */
const reddens = /^(?:red|bright red|pale|pink)$/u
const isFace = (token: Token | undefined): boolean => /^(?:combs?|wattles?|face|faces)$/u.test(token?.word ?? '')

/** "a rose comb cock ..., all 13 babies are rose": where combs are spoken of, the word by itself is one. */
const isOfCombs = (all: readonly Token[], at: number): boolean =>
  /^(?:is|are|all|were|was|came|have)$/u.test(all[at - 1]?.word ?? '') &&
  all.slice(Math.max(0, at - 40), at).some(({ word }) => /combs?\b/u.test(word))

/** "3 single comb chicks": a comb away from any breed is no line of one. */
function asComb(token: Token & { readonly type: 'line' }, at: number, all: readonly Token[]): Token {
  const trait = token.line === 'rose-comb' ? 'rose comb' : token.line === 'single-comb' ? 'single comb' : undefined
  const isBreed = (near: Token | undefined): boolean => near?.type === 'breed' || near?.type === 'family'
  const plain = ({ type }: Token): boolean => type !== 'line' && type !== 'filler'
  const beside = [all.slice(0, at).findLast(plain), all.slice(at + 1).find(plain)]
  if (trait === undefined || beside.some(isBreed)) return token
  return { ...spotOnly(token), type: 'trait', trait }
}

/** "5 rose and 4 single". */
const combs: Readonly<Record<string, string>> = { rose: 'rose comb', single: 'single comb', pea: 'pea comb' }

const spotOnly = ({ said, word, at, end, gap }: Token): Bare => ({ said, word, at, end, gap })
