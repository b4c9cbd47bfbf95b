// grammar/reading.ts: a message read as far as its words go: its scene, what it is about, how it is written.
import { excerpt } from './excerpt.ts'
import {
  amended,
  bredCockerel,
  breedingOn,
  crossedLines,
  handedOn,
  ofParents,
  putOn,
  secondOf,
  pairedKind,
  partedParents,
  unshouted,
} from './amend.ts'
import { apart } from './aside.ts'
import { isWholeName } from './build/feature.ts'
import { conceptsIn } from './concepts.ts'
import { longestSaying, sayingsOf, type Read } from './parse.ts'
import { daughterOf } from './daughterOf.ts'
import { withoutPeople } from './people.ts'
import { soughtOutright } from './needed.ts'
import { sceneOf, type Scene } from './scene.ts'
import { shellColours } from './shellColours.ts'
import { tokensOf } from './tokens.ts'
import { typed } from './typed.ts'
import { languages, type Language } from './words/languages.ts'
import { entries } from './words/entries.ts'
import { phrases } from './lexicon.ts'
import type { Correction, Token } from './token.ts'
import type { Manner } from '../core/question.ts'
import type { Concept } from './words/concepts.ts'

export type Reading = {
  readonly text: string // normalised
  readonly words: readonly string[] // folded and mended
  readonly tokens: readonly Token[]
  readonly clauses: readonly (readonly Read[])[]
  readonly scene: Scene
  readonly corrections: readonly Correction[]
  readonly language: Language | undefined
  readonly manner: Manner
  readonly asks: boolean // there is a question mark
  readonly has: (...concepts: readonly Concept[]) => boolean
}

/** Tokens of a message that are read at all; words beyond are left. */
const mostTokens = 750
/** Clauses that are parsed: those with the most words of birds in them. */
const mostClauses = 24
/** Tokens handed to the parser in one message. */
export const mostParsed = 160
/** Words looked through for what a message is about. */
const mostWords = 600

/** What is between two stops, without the small words. A word left out is marked on the next. */
function clausesOf(tokens: readonly Token[]): readonly (readonly Token[])[] {
  const clauses: Token[][] = [[]]
  for (const [i, each] of tokens.entries()) {
    const token = pointing(each, tokens[i + 1])
    if (token.type === 'about' && clauses.at(-1)!.length > 0 && /^(?:what|wat|how|hows)\b/u.test(token.word))
      clauses.push([token])
    else if (token.type === 'stop' || isNowHad(tokens, i)) clauses.push([])
    else if (
      isOfVerb(token, tokens[i + 1]) ||
      isOfChick(tokens, i) ||
      isOfAll(tokens, i) ||
      isOfEggs(token, tokens[i - 1]) ||
      isOfShell(token, tokens) ||
      isOfShare(tokens, i) ||
      isChoice(tokens, i) ||
      isOfWeight(tokens, i) ||
      isDenied(tokens, i) ||
      isOnDay(tokens, i)
    )
      continue
    else if (token.type !== 'filler' && token.type !== 'unknown' && !isPronoun(token, clauses.at(-1)!.at(-1)))
      clauses.at(-1)!.push(token)
  }
  return clauses
    .map((clause) => withoutEmptyBrackets(withoutOpening(clause).map(aloneOrNot)))
    .filter(({ length }) => length > 0)
}

/** "crossed A with B, now have olive pullets": what came of it, and no more mates. */
const isNowHad = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.word === 'now' &&
  tokens
    .slice(at + 1, at + 4)
    .find(({ word }) => word !== 'i' && word !== 'we')
    ?.word.match(/^(?:have|got|ive|weve)\b/u) != null

/** "do the chicks still split red and white": they part, and carry nothing. */
const asVerb = (token: Token, at: number, tokens: readonly Token[]): Token =>
  isSplitOfChicks(at, tokens) || isShowing(at, tokens)
    ? { ...token, type: 'unknown' }
    : isHowMany(at, tokens)
      ? { ...token, type: 'aspect', aspect: 'shares' }
      : isToldApart(at, tokens)
        ? { ...token, type: 'aspect', aspect: 'sexing' }
        : token
const isSplitOfChicks = (at: number, tokens: readonly Token[]): boolean =>
  /^splits?$/u.test(tokens[at]!.word) &&
  tokens.slice(Math.max(0, at - 3), at).some(({ type, word }) => type === 'chick' || word === 'they') &&
  tokens[at + 1]?.word !== 'to' &&
  tokens[at + 1]?.word !== 'for' &&
  !['cock', 'hen', 'over'].includes(tokens[at + 1]?.type ?? '') &&
  !/^(?:a|an|the)$/u.test(tokens[at - 1]?.word ?? '')
/** "does the dot show on wet chicks": no show line. */
const isShowing = (at: number, tokens: readonly Token[]): boolean =>
  tokens[at]!.word === 'show' &&
  tokens
    .slice(Math.max(0, at - 4), at)
    .some(({ word }) => /^(?:does|do|will|would|can|should|might|to)\b/u.test(word)) &&
  !['breed', 'family', 'colour', 'cock', 'hen', 'line'].includes(tokens[at + 1]?.type ?? '') &&
  !/^(?:a|the|from|same|my)$/u.test(tokens[at - 1]?.word ?? '')
/** "rose combs how many", "how many pea combs": the share of what is named beside it. */
const isHowMany = (at: number, tokens: readonly Token[]): boolean =>
  tokens[at]!.word === 'many' &&
  tokens[at - 1]?.word === 'how' &&
  [tokens[at + 1], tokens[at - 2]].some((near) => near?.type === 'trait' || near?.type === 'colour')

/** "tell Cuckoo Marans chicks apart": which sex each of them is. */
function isToldApart(at: number, tokens: readonly Token[]): boolean {
  if (tokens[at]!.word !== 'apart') return false
  const from = tokens.slice(0, at).findLastIndex(({ word }) => /^(?:tell|telling|told)$/u.test(word))
  const between = tokens.slice(from + 1, at)
  const birds: ReadonlySet<string> = new Set(['breed', 'family'])
  return (
    from >= 0 &&
    between.length <= 6 &&
    between.some(({ type, word }) => type === 'chick' || /^day[- ]olds?$/u.test(word) || birds.has(type)) &&
    !between.some(({ type }) => type === 'and' || type === 'stop') &&
    tokens[at + 1]?.word !== 'from'
  )
}

const dayWord =
  /^(?:(?:jan|febr?)(?:uary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|(?:sept?|octo?|novem|decem)(?:em)?(?:ber)?|nov|dec|oct|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|\d+(?:st|nd|rd|th))$/u
/** "set Light Sussex on 1st March when do the pullets": on a day, and on nobody. */
const isOnDay = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.word === 'on' && tokens.slice(at + 1, at + 4).some(({ word }) => dayWord.test(word))

/** "B/b+ not B/B": genes that the bird has not, beside those it has. */
function isDenied(tokens: readonly Token[], at: number): boolean {
  const denied = (i: number): boolean => tokens[i]?.type === 'gene' && tokens[i - 1]?.type === 'not'
  return (denied(at) || denied(at + 1)) && tokens.some(({ type }, i) => type === 'gene' && !denied(i))
}

/** "RIR x Light Sussex, yellow": no grown bird is yellow; the chick is. */
const isOfChick = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.word === 'yellow' &&
  tokens[at - 1]?.type === 'comma' &&
  ['stop', 'comma', undefined].includes(tokens[at + 1]?.type)

/** "hens to carry barring": nobody is put to anybody. */
const isOfVerb = (token: Token, next: Token | undefined): boolean =>
  token.word === 'to' && /^(?:carry|hide|show)/u.test(next?.word ?? '')

/** "..., all red I guess", "(both buff)": said of all the birds or chicks spoken of; it names none. */
export function isOfAll(tokens: readonly Token[], at: number): boolean {
  const [token, after] = [tokens[at]!, tokens[at + 1]]
  const comes = /^(?:come|comes|came|be|hatch|turn out|come out|are|turned out)$/u.test(tokens[at - 1]?.word ?? '') // "so they all come blue"
  const before = tokens[at - (comes ? 2 : 1)]
  if (token.type !== 'colour' || !/^(?:all|both|every|everything)$/u.test(before?.word ?? '')) return false
  if (!comes && ['over', 'under', 'cock', 'hen', 'is'].includes(tokens[at - 2]?.type ?? '')) return false
  return !['breed', 'family', 'colour', 'cock', 'hen', 'over', 'under', 'line'].includes(after?.type ?? '')
}

/** "mottled %", "% lavender", "percent white": what is counted, and no bird. */
function isOfShare(tokens: readonly Token[], at: number): boolean {
  const [before, token, after] = [tokens[at - 1], tokens[at]!, tokens[at + 1]]
  const isShare = (near: Token | undefined): boolean => near?.type === 'aspect' && near.aspect === 'shares'
  const ofBird = (near: Token | undefined): boolean =>
    ['breed', 'family', 'colour', 'cock', 'hen', 'over', 'under', 'line'].includes(near?.type ?? '')
  if (token.type === 'trait')
    return isShare(before) || isShare(after) || (after?.word === 'how' && isShare(tokens[at + 2]))
  if (token.type !== 'colour') return false
  return isShare(before) ? !ofBird(after) : isShare(after) && !ofBird(before)
}

/** "Blue Laced Red Wyandotte, gold or silver": which of the two it is, is asked of the bird before. */
function isChoice(tokens: readonly Token[], at: number): boolean {
  const is = (near: Token | undefined, colour: string): boolean => near?.type === 'colour' && near.colour === colour
  const [before, token, after] = [tokens[at - 1], tokens[at]!, tokens[at + 1]]
  const pair = (one: Token | undefined, other: Token | undefined): boolean =>
    (is(one, 'gold') && is(other, 'silver')) || (is(one, 'silver') && is(other, 'gold'))
  const first = after?.type === 'or' && pair(token, tokens[at + 2])
  const second = before?.type === 'or' && pair(token, tokens[at - 2])
  const named = tokens.slice(0, at).some(({ type }) => type === 'breed' || type === 'family')
  const mated = ['cock', 'hen', 'breed', 'family'].includes(tokens[at + (first ? 3 : 1)]?.type ?? '')
  return named && !mated && (first || second || (token.type === 'or' && pair(before, after)))
}

/** "heavy or light hens": of their weight. */
const isOfWeight = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.word === 'light' &&
  [tokens.slice(Math.max(0, at - 3), at), tokens.slice(at + 1, at + 4)].some(
    (near) =>
      near.some(({ word }) => word === 'heavy') &&
      near.some(({ type, word }) => type === 'or' || /^(?:vs|and|versus|than)$/u.test(word)),
  )

/** "how brown are the eggs": no colour of a bird. */
const isOfEggs = (token: Token, before: Token | undefined): boolean => token.type === 'colour' && before?.word === 'how'

/** "do speckles on Marans eggs get passed on": of the shell, and no Speckled Sussex. */
const isOfShell = ({ word }: Token, tokens: readonly Token[]): boolean =>
  /^(?:speckles?|speckling)$/u.test(word) &&
  tokens.slice(0, 100).some(({ type, word: other }) => /\beggs?$/u.test(other) && type !== 'breed')

/** "and if I put a Barred Rock cock on red hens?": a mating by itself, whatever was said before. */
function withoutOpening(clause: readonly Token[]): readonly Token[] {
  const [first, ...rest] = clause
  const mates =
    rest.some(({ type }) => type === 'over' || type === 'under') ||
    (rest.some(({ type }) => type === 'cock') && rest.some(({ type }) => type === 'hen'))
  return first?.type === 'about' && mates && rest.filter(({ type }) => type === 'breed' || type === 'family').length > 1
    ? rest
    : clause
}

/** "lav x split", "split Orpington cock": of nothing that is named here. */
const aloneOrNot = (token: Token, at: number, all: readonly Token[]): Token =>
  token.type === 'carries' &&
  (!['colour', 'trait', 'gene', 'breed', 'family', 'sexlink'].includes(all[at + 1]?.type ?? '') ||
    (token.word === 'split' && isWholeName(all[at + 1]!)))
    ? { ...token, type: 'split' }
    : token

/** "my buff ones": of the breed that was named before. */
const pointing = (token: Token, next: Token | undefined): Token =>
  token.type === 'colour' && (next?.word === 'ones' || next?.word === 'one')
    ? { ...token, word: `${token.word} ones` }
    : token

/** "a hatchery one", "the blue one". */
const isPronoun = (token: Token, before: Token | undefined): boolean =>
  (token.word === 'one' && (before?.type === 'line' || before?.type === 'colour')) ||
  (token.word === 'any' && ['over', 'plus', 'under', 'and', 'is'].includes(before?.type ?? '')) ||
  (token.word === 'same' && (before?.type === 'over' || before?.type === 'under' || before?.type === 'and'))

const tells: ReadonlySet<string> = new Set([
  'breed',
  'family',
  'colour',
  'line',
  'cock',
  'hen',
  'kin',
  'gene',
  'trait',
  'generation',
  'carries',
  'split',
  'pure',
  'single',
])

/** Brackets with nothing of a bird in them say nothing. */
function withoutEmptyBrackets(tokens: readonly Token[]): readonly Token[] {
  const kept: Token[] = []
  for (const token of tokens) {
    kept.push(token)
    if (token.type !== 'close') continue
    const near = kept.slice(-longestSaying)
    const open = kept.length - near.length + near.findLastIndex(({ type }) => type === 'open')
    if (kept[open]?.type === 'open' && !kept.slice(open).some(({ type }) => tells.has(type))) kept.splice(open)
  }
  return kept
}

const weight = (clause: readonly Token[]): number =>
  clause.slice(0, 400).filter(({ type }) => tells.has(type) || type === 'which' || type === 'swap' || type === 'same')
    .length

/** The clauses that are parsed, in their order. */
function worthReading(clauses: readonly (readonly Token[])[]): readonly (readonly Token[])[] {
  if (clauses.length <= mostClauses) return clauses
  const chosen = new Set(
    clauses
      .map((clause, i) => ({ i, weight: weight(clause) }))
      .toSorted((a, b) => b.weight - a.weight || a.i - b.i)
      .slice(0, mostClauses)
      .map(({ i }) => i),
  )
  return clauses.filter((_, i) => chosen.has(i))
}

function parsed(clauses: readonly (readonly Token[])[]): readonly (readonly Read[])[] {
  let left = mostParsed
  return clauses.map((clause) => {
    const { read, budget } = sayingsOf(clause, left)
    left = budget
    return read
  })
}

const small: ReadonlyMap<string, readonly Language[]> = (() => {
  const found = new Map<string, Language[]>()
  for (const [language, words] of entries(languages))
    for (const list of Object.values(words))
      for (const word of phrases(list)) found.set(word, [...(found.get(word) ?? []), language])
  return found
})()
const english =
  /^(?:the|is|are|a|an|my|with|hens?|roos?|rooster|what|which|will|do|does|i|to|for|how|and|of|get|x|can|have|chicks?|or|if|it|in|on|over|cock|cockerel|pullets?)$/u

/** The language whose small words stand in the message, where they outnumber the English ones. */
function languageOf(words: readonly string[]): Language | undefined {
  const count = new Map<Language, number>()
  for (const word of words) {
    if (english.test(word)) continue
    for (const language of small.get(word) ?? [])
      count.set(language, (count.get(language) ?? 0) + (word.length > 2 ? 2 : 1))
  }
  const [best] = [...count].toSorted((a, b) => b[1] - a[1])
  const ours = words.filter((word) => english.test(word)).length
  return best && best[1] >= 3 && best[1] > ours * 1.5 ? best[0] : undefined
}

/** "(both buff)": colours that every bird has of which none was told. */
const ofBoth = (tokens: readonly Token[]): readonly Token[] =>
  tokens.filter((_, i) => tokens[i - 1]?.word === 'both' && isOfAll(tokens, i))

const metric = /(?<![\p{L}])(?:kg|kgs|kilos?|kilograms?|grams?|grammes?|g|litres?|gm)(?![\p{L}])/iu
const imperial = /(?<![\p{L}])(?:lbs?|pounds?|oz|ounces?|bushels?)(?![\p{L}])/iu

function mannerOf(text: string, tokens: readonly Token[]): Manner {
  const [isMetric, isImperial] = [metric.test(text.slice(0, 4000)), imperial.test(text.slice(0, 4000))]
  const money = tokens.find((token) => token.type === 'money')
  return {
    symbols: tokens.some(
      ({ type, ...token }) => type === 'gene' || (type === 'aspect' && 'aspect' in token && token.aspect === 'symbols'),
    ),
    units: isMetric === isImperial ? 'both' : isMetric ? 'metric' : 'imperial',
    ...(money?.type === 'money' ? { currency: money.currency } : {}),
  }
}

/** A question by its last words: "he's pure isn't he", "splash breeds blue right". */
const tag =
  /\b(?:isnt (?:it|he|she)|arent (?:they|we)|doesnt (?:it|he|she)|dont (?:they|you)|wont (?:it|they|he)|innit|isnit|right|correct|true or false|yes or no|y (?:\/ )?n|or not|or no|huh|eh|surely)(?: [.!]| [a-z]{2,4})?\s*[.!]*$/u

/** "a RIR instead of the Silkie roo": what comes behind is what was not taken. */
function withoutRejected(tokens: readonly Token[]): readonly Token[] {
  const isName = ({ type }: Token): boolean => type === 'breed' || type === 'family'
  const ofBird: ReadonlySet<string> = new Set([
    'breed',
    'family',
    'colour',
    'line',
    'cock',
    'hen',
    'my',
    'filler',
    'their',
  ])
  const at = tokens.findIndex(
    ({ type, word }) => type === 'or' && /^(?:instead of|rather than|in place of)$/u.test(word),
  )
  if (at < 0 || !tokens.slice(0, at).some(isName)) return tokens
  const length = tokens.slice(at + 1).findIndex(({ type }) => !ofBird.has(type))
  const end = length < 0 ? tokens.length : at + 1 + length
  const rejected = tokens.slice(at, end)
  const compared =
    rejected.some(({ type }) => type === 'line') ||
    tokens.some(({ word }) => /^(?:difference|diff|compared?)$/u.test(word))
  return rejected.some(isName) && !compared ? [...tokens.slice(0, at), ...tokens.slice(end)] : tokens
}

/** Reads a normalised message. Whatever it is, this ends, within the bounds above. */
export function readingOf(message: string): Reading {
  const text = excerpt(message)
  const { tokens: written, corrections } = typed(unshouted(tokensOf(text, mostTokens)))
  const tokens = handedOn(
    bredCockerel(
      breedingOn(
        pairedKind(
          partedParents(
            crossedLines(
              withoutRejected(
                secondOf(
                  putOn(ofParents(apart(soughtOutright(withoutPeople(amended(daughterOf(shellColours(written)))))))),
                ),
              ),
            ),
          ),
        ),
      ),
    ),
  ).map(asVerb)
  const clauses = parsed(worthReading(clausesOf(tokens)))
  const words = tokens.slice(0, mostWords).flatMap(({ word }) => word.split(' '))
  const concepts = conceptsIn(words)
  return {
    text,
    words,
    tokens,
    clauses,
    scene: sceneOf(clauses, tokens.slice(0, mostWords), ofBoth(tokens.slice(0, mostWords))),
    corrections,
    language: languageOf(words),
    manner: mannerOf(text, tokens.slice(0, mostWords)),
    asks: text.includes('?') || tag.test(words.join(' ')),
    has: (...wanted) => wanted.some((concept) => concepts.has(concept)),
  }
}
