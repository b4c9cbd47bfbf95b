// grammar/read/prices.ts: the prices a keeper tells: feed by weight or by the bag, eggs by the dozen, the half dozen or each, a chick.
import type { Reading } from '../reading.ts'
import type { LinesQuestion } from '../../core/question.ts'

type Prices = LinesQuestion['prices']
/** A bag of which nobody told the weight, taken as the usual one. */
export type Sack = { readonly kilograms: number; readonly said: string }
export type PricesTold = { readonly prices: Prices; readonly sack?: Sack; readonly currency?: string }

type Price = { readonly value: number; readonly at: number; readonly end: number; readonly currency?: string }

const kgPerPound = 0.45359237
const round = (value: number): number => Math.round(value * 10_000) / 10_000

const article = String.raw`\s*(?:\/|=|per|for|from|to|at|on|-)?\s*(?:an?|the|each|every)?\s*`
const weight = String.raw`(\d+(?:[.,]\d+)?)\s?-?\s?(kgs?|kilos?|kilograms?|lbs?|pounds?|#)(?![\p{L}])`
const dozen = String.raw`(?:dozen|doz|dz)\b`
const half = String.raw`(?:half|1\/2|½)[\s-]*(?:an?\s+)?-?\s?`
const bag = String.raw`(?:bags?|sacks?)\b`
const counts = String.raw`(\d+|six|ten|twelve|eighteen|half a dozen|a dozen)\b`
const boxOf = String.raw`(?:box|tray|carton|pack|flat)\s+of\s+${counts}`
const feedWord = String.raw`(?:feed|pellets?|layers?|mash|crumbles?|grain|corn|wheat|scratch)\b`

/** A price without a sign: "18 a bag", "3 a dozen", "2 pounds a dozen". */
const bareBehind = new RegExp(
  String.raw`^(?:\s?pounds?)?\s*(?:\/|an?\b|per\b|for an?\b)\s*(?:\d+(?:[.,]\d+)?\s?-?(?:kg|kilo|lb|pound)s?\s+)?(?:${bag}|kg\b|kilo|lb\b|pound\b|${half}${dozen}|${dozen})`,
  'u',
)
const bareBefore = new RegExp(
  String.raw`\b(?:feed|bags?|sacks?|pellets?)\s+(?:price\s+)?(?:is|are|was|costs?|at|now|goes up to|went up to|goes to|went to|were)\s+$`,
  'u',
)
const counted = /^\s?-?(?:kgs?|kilos?|lbs?|pounds?|g|grams?|oz|hens?|birds?|%|weeks?|months?|days?|years?|x|times|\d)/u

function pricesSaid({ tokens, text }: Reading): readonly Price[] {
  const lower = text.toLowerCase()
  return tokens.flatMap((token): readonly Price[] => {
    if (token.type === 'money') return [token]
    if (token.type !== 'number' || token.percent || token.value <= 0) return []
    const after = lower.slice(token.end, token.end + 40)
    if (bareBehind.test(after)) {
      const pounds = /^\s?pounds?(?=\s*(?:\/|an?\b|per\b|for\b))/u.exec(after)?.[0].length ?? 0
      return [{ value: token.value, at: token.at, end: token.end + pounds, ...(pounds > 0 ? { currency: '£' } : {}) }]
    }
    const { value, at, end } = token
    return bareBefore.test(lower.slice(0, at)) && !counted.test(after) ? [{ value, at, end }] : []
  })
}

const kilograms = (amount: string, unit: string): number =>
  Number(amount.replace(',', '.')) * (unit.startsWith('k') ? 1 : kgPerPound)

const first = (text: string, pattern: string): RegExpExecArray | null =>
  new RegExp(`^${article}${pattern}`, 'u').exec(text)

type Found = Prices | 'bag' | undefined
const byDozen = (value: number): Prices => ({ eggsPerDozen: round(value) })
const byWeight = (value: number, kg: number): Prices => (kg > 0 ? { feedPerKg: round(value / kg) } : {})

const eggCounts: Readonly<Record<string, number>> = {
  six: 6,
  ten: 10,
  twelve: 12,
  eighteen: 18,
  'half a dozen': 6,
  'a dozen': 12,
}
const countOf = (said: string): number => eggCounts[said] ?? Number(said)

/** What stands right behind a price: "a half dozen", "for 20kg", "/lb", "a bag", "each". */
function behind(value: number, after: string, before: string): Found {
  if (first(after, half + dozen)) return byDozen(value * 2)
  const boxed = first(after, boxOf)
  if (boxed) return byDozen((value * 12) / countOf(boxed[1]!))
  const eggs = first(
    after,
    String.raw`(\d+|six|ten|twelve|eighteen)(?:\s*-?\s*(?:eggs?|pack)\b|(?=\s*(?:$|[,.;?!]|and\b)))`,
  )
  if (eggs && countOf(eggs[1]!) > 0 && (/eggs?|pack/u.test(eggs[0]) || /\beggs?\b/u.test(before)))
    return byDozen((value * 12) / countOf(eggs[1]!))
  if (first(after, dozen)) return byDozen(value)
  const dozens = first(after, String.raw`(\d+|two|three)\s*${dozen}`)
  if (dozens) return byDozen(value / ({ two: 2, three: 3 }[dozens[1]!] ?? Number(dozens[1])))
  if (first(after, String.raw`egg\b`)) return byDozen(value * 12)
  const weighed = first(after, `(?:${bag}\\s+of\\s+)?${weight}`)
  if (weighed) return byWeight(value, kilograms(weighed[1]!, weighed[2]!))
  if (first(after, String.raw`(?:kg|kilo|kilogram)s?\b`)) return byWeight(value, 1)
  if (first(after, String.raw`(?:lb|pound)s?\b`)) return byWeight(value, kgPerPound)
  if (first(after, String.raw`(?:ton|tonne)s?\b`)) return byWeight(value, 1000)
  if (first(after, bag)) return 'bag'
  if (first(after, String.raw`(?:eggs?)\b`)) return byDozen(value)
  if (
    /^\s*(?:each|apiece|a piece|per (?:chick|pullet|bird|head)|a (?:chick|pullet|bird|head)|\/\s?(?:chick|pullet))\b/u.test(
      after,
    )
  )
    return nearestNoun(before) === 'eggs' ? byDozen(value * 12) : { chick: value }
  return undefined
}

const nouns = [
  ['boxed', boxOf],
  ['half', half + dozen],
  ['dozen', dozen],
  ['weighed', weight],
  ['kilo', String.raw`(?<!\d\s?)\b(?:kg|kilo|kilogram)\b`],
  ['pound', String.raw`(?<!\d\s?)\blb\b`],
  ['tonne', String.raw`\b(?:ton|tonne)\b`],
  ['bag', bag],
  ['feed', feedWord],
  ['one egg', String.raw`\b(?:an|one|each|per)\s+egg\b`],
  ['eggs', String.raw`\beggs?\b`],
  ['chick', String.raw`\b(?:chicks?|pullets?|pol|point of lay|hens?)\b`],
] as const
type Noun = (typeof nouns)[number][0]
const patterns = nouns.map(([noun, pattern]) => ({ noun, pattern: new RegExp(pattern, 'gu') }))

/** The thing named last in these words, that what follows is the price of. */
function nearestNoun(words: string): Noun | undefined {
  const found = patterns.flatMap(({ noun, pattern }) =>
    [...words.matchAll(pattern)].slice(-1).map((match) => ({ noun, end: match.index + match[0].length })),
  )
  const [last] = found.toSorted((a, b) => b.end - a.end) // of two that end together the narrower, which stands first
  const measure = found.find(({ noun }) => ['kilo', 'pound', 'tonne', 'weighed', 'bag'].includes(noun))
  return last?.noun === 'feed' && measure ? measure.noun : last?.noun // "a kilo of grain"
}

/** "eggs sell at $5", "a 20kg sack is £11.50", "pullets are £9": the thing named before its price, or right after it. */
function named(value: number, before: string, after: string): Found {
  const words = nearestNoun(before) === undefined ? after : before
  switch (nearestNoun(before) ?? nearestFirst(after)) {
    case 'boxed': {
      const [, said = ''] = [...words.matchAll(new RegExp(boxOf, 'gu'))].at(-1) ?? []
      return byDozen((value * 12) / countOf(said))
    }
    case 'half':
      return byDozen(value * 2)
    case 'dozen':
    case 'eggs':
      return byDozen(value)
    case 'one egg':
      return byDozen(value * 12)
    case 'weighed': {
      const [, amount = '', unit = ''] = [...words.matchAll(new RegExp(weight, 'gu'))].at(-1) ?? []
      return byWeight(value, kilograms(amount, unit))
    }
    case 'kilo':
      return byWeight(value, 1)
    case 'pound':
      return byWeight(value, kgPerPound)
    case 'tonne':
      return byWeight(value, 1000)
    case 'bag':
    case 'feed':
      return 'bag'
    case 'chick':
      return { chick: value }
    case undefined:
      return undefined
  }
}
function nearestFirst(words: string): Noun | undefined {
  const found = patterns.flatMap(({ noun, pattern }) => {
    const at = words.search(pattern)
    return at < 0 ? [] : [{ noun, at }]
  })
  return found.toSorted((a, b) => a.at - b.at)[0]?.noun
}

/** The weight of the bag, wherever it stands: nearest before the price, right behind it, or anywhere in the message. */
function bagWeight(before: string, after: string, text: string): number | undefined {
  const all = (words: string): readonly number[] =>
    [...words.matchAll(new RegExp(weight, 'gu'))].map(([, amount, unit]) => kilograms(amount!, unit!))
  return all(after.slice(0, 30))[0] ?? all(before).at(-1) ?? all(text)[0]
}

/** A bag as it is sold where that money is used (common practice). */
function usualSack(currency: string | undefined, units: Reading['manner']['units']): Sack {
  if (currency === '$' || (currency === undefined && units === 'imperial'))
    return { kilograms: 50 * kgPerPound, said: '50 lb' }
  return currency === '€' ? { kilograms: 25, said: '25 kg' } : { kilograms: 20, said: '20 kg' }
}

/**
 * Prices told, in the keeper's money.
 *
 * @param before sign of his money where it was told before; it says how large his bags are
 */
export function pricesIn(reading: Reading, before?: string): PricesTold {
  const said = pricesSaid(reading)
  const currency = said.find((price) => price.currency !== undefined)?.currency
  const text = withoutPrices(reading.text.toLowerCase(), said)
  let prices: Prices = {}
  let sack: Sack | undefined
  for (const [i, { value, at, end }] of said.entries()) {
    const front = text.slice(Math.max(said[i - 1]?.end ?? 0, at - 60), at)
    const back = text.slice(end, Math.min(said[i + 1]?.at ?? text.length, end + 60))
    const found = behind(value, back, front) ?? named(value, front, back)
    if (found !== 'bag') {
      prices = { ...prices, ...found }
      continue
    }
    const told = bagWeight(front, back, text)
    if (told === undefined) sack = usualSack(currency ?? before, reading.manner.units)
    prices = { ...prices, ...byWeight(value, told ?? sack!.kilograms) }
  }
  return { prices, ...(sack ? { sack } : {}), ...(currency === undefined ? {} : { currency }) }
}

/** "12 pounds a bag" is no weight. */
const withoutPrices = (text: string, said: readonly Price[]): string =>
  said.reduce((left, { at, end }) => left.slice(0, at) + ' '.repeat(end - at) + left.slice(end), text)

/** Is a price told? */
export const tellsPrice = (reading: Reading): boolean => pricesSaid(reading).length > 0

/** The weight of a bag by itself: "it's a 40 lb bag", kg. */
export const weightTold = ({ text }: Reading): number | undefined => bagWeight('', '', text.toLowerCase())
