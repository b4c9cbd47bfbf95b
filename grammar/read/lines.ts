// grammar/read/lines.ts: which line or breed for a goal, feed and money, how long to keep hens, what cockerels cost.
import { breedNamed } from '../../core/breeds.ts'
import { commonOf, goalsOf, isHybrid, isSolid, numberBefore, refsOf, type Reader } from './common.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { BirdRef, LinesQuestion } from '../../core/question.ts'

const kilogramsOf = (text: string): number | undefined => {
  const bag = /(\d+(?:[.,]\d+)?)\s?(kg|kilos?|lbs?|pounds?|#)/iu.exec(text)
  if (!bag) return undefined
  const amount = Number(bag[1]!.replace(',', '.'))
  return /kg|kilo/iu.test(bag[2]!) ? amount : amount * 0.4536
}

/** Prices told: of feed by weight, of eggs by the dozen, of a chick. */
function pricesIn({ tokens, text }: Reading): LinesQuestion['prices'] {
  const prices: { feedPerKg?: number; eggsPerDozen?: number; chick?: number } = {}
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i]!
    if (token.type !== 'money') continue
    const around = text.slice(Math.max(0, token.at - 30), token.end + 40).toLowerCase()
    const after = text.slice(token.end, token.end + 14).toLowerCase()
    if (/^\s*(?:\/|a|per|each)?\s*(?:dozen|doz|dz)/u.test(after) || /dozen|dz\b/u.test(after))
      prices.eggsPerDozen = token.value
    else if (/^\s*(?:\/|a|per)?\s*(?:lb|pound)/u.test(after)) prices.feedPerKg = round(token.value / 0.4536)
    else if (/^\s*(?:\/|a|per)?\s*(?:kg|kilo)/u.test(after)) prices.feedPerKg = token.value
    else if (/feed|bag|sack|layer|grain|pellet/u.test(around))
      prices.feedPerKg = round(token.value / (kilogramsOf(around) ?? 1 / 0))
    else if (/chick|pullet|each|apiece/u.test(around)) prices.chick = token.value
    else if (/egg/u.test(around)) prices.eggsPerDozen = token.value
  }
  if (prices.feedPerKg === 0) delete prices.feedPerKg
  return prices
}
const round = (value: number): number => Math.round(value * 1000) / 1000

const weeksIn = (reading: Reading): number | undefined =>
  numberBefore(reading, ({ word }) => /^(?:weeks?|wks?|wk|wochen|weken|semaines|semanas)$/u.test(word), 2)
const hensIn = (reading: Reading): number | undefined => {
  const count = numberBefore(reading, ({ type }) => type === 'hen', 3)
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= 10_000 ? count : undefined
}

/** Lines named without a bird of their own: "heritage or production RIR" is two lines of one breed. */
function comparedIn(reading: Reading): readonly Bird[] {
  const solid = reading.scene.birds.concat(reading.scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams]))
  return solid.filter(
    (bird) =>
      bird.ref.breed !== undefined &&
      !(
        isHybrid(bird) &&
        solid.some((other) => other !== bird && isSolid(other) && !isHybrid(other) && reading.has('lineWord'))
      ),
  )
}

/** Combs, sizes and countries are no strategy. */
const isStrain =
  /^(?:production|hatchery|utility|heritage|exhibition|fine-barred|open-barred|dark-line|light-line|layer|meat)$/u

function linesNamed({ tokens }: Reading): readonly string[] {
  return [
    ...new Set(tokens.flatMap((token) => (token.type === 'line' && isStrain.test(token.line) ? [token.line] : []))),
  ]
}

function compareOf(reading: Reading): readonly BirdRef[] {
  const birds = refsOf(comparedIn(reading))
  const said = linesNamed(reading)
  const breeds = [...new Set(birds.map(({ breed }) => breed))]
  const [only] = breeds
  const pairs = pairsIn(reading)
  if (pairs.length > 0 && isToldPair(reading))
    return pairs.map(({ sire, dam }) => ({ cross: { sire: sire.ref, dam: dam.ref } }))
  if (breeds.length === 1 && only !== undefined && said.length !== 1) {
    const lines = (breedNamed(only)?.lines ?? []).filter(({ id, covers }) =>
      said.some((line) => line === id || (covers as readonly string[]).includes(line)),
    )
    if (lines.length > 1) return lines.map(({ id }) => ({ breed: only, line: id }))
    return [{ breed: only }]
  }
  if (birds.length === 0 && said.length > 0) return linesOfReds(said)
  return [...new Map(birds.map((bird) => [JSON.stringify([bird.breed, bird.line]), bird])).values()].slice(0, 6)
}

/** Lines spoken of with no breed at all are shown on the breed best known for them. */
const linesOfReds = (said: readonly string[]): readonly BirdRef[] =>
  said.length > 1 || said.includes('heritage') ? [{ breed: 'Rhode Island Red' }] : []

function topicOf(reading: Reading): LinesQuestion['topic'] | undefined {
  const { has, tokens, scene } = reading
  const cocks = tokens.some(({ type }) => type === 'cock') || scene.goals.includes('meat')
  const mated = isToldPair(reading) || pairsIn(reading).some(({ by }) => by === 'sex')
  const hens = tokens.some(({ type }) => type === 'hen' || type === 'chick') || scene.aspects.includes('eggs')
  if (
    hens &&
    !cocks &&
    !mated &&
    reading.words.some((word) => /^(?:cull|culling|replace|replacing|retire)$/u.test(word))
  )
    return 'keep-until'
  if (
    hens &&
    !cocks &&
    !mated &&
    scene.birds.every((bird) => bird.ref.breed === undefined) &&
    (has('cost') || reading.words.some((word) => /^(?:cheap|cheaper|cheapest|affordable)$/u.test(word))) &&
    !has('feedCost', 'cockerelCost', 'keepUntil') &&
    !tokens.some(({ type }) => type === 'money')
  )
    return 'buy-or-hatch'
  if (
    has('cost', 'money') &&
    !mated &&
    reading.words.some((word) => /^(?:raise|raising|rear|rearing)$/u.test(word)) &&
    !cocks
  )
    return 'buy-or-hatch'
  if (
    has('money') &&
    !mated &&
    reading.words.some((word) => /^(?:better|best|more|most)$/u.test(word)) &&
    !has('feedCost', 'keepUntil', 'buyOrHatch')
  )
    return 'compare'
  if (has('buyOrHatch') && (has('cost', 'money', 'set', 'hatch') || reading.asks)) return 'buy-or-hatch'
  if (
    cocks &&
    !mated &&
    (has('cockerelCost') ||
      (has('cost', 'feedCost') && weeksIn(reading) !== undefined) ||
      (has('feedCost') && weeksIn(reading) !== undefined))
  )
    return 'cockerel-cost'
  if (
    has('keepUntil') &&
    !mated &&
    (has('years', 'money', 'cost') ||
      linesNamed(reading).length > 0 ||
      scene.aspects.includes('eggs') ||
      scene.birds.length > 0)
  )
    return linesNamed(reading).length > 0 &&
      reading.words.some((word) => /^(?:longer|lifetime|life|vs|versus|or|than)$/u.test(word))
      ? 'compare'
      : 'keep-until'
  if (
    has('feedCost', 'cost', 'money') &&
    (!mated || has('feedCost') || tokens.some(({ type }) => type === 'money')) &&
    (has('feedCost') ||
      scene.aspects.includes('feed') ||
      scene.aspects.includes('eggs') ||
      tokens.some(({ type }) => type === 'money'))
  )
    return has('lineWord', 'strategy') && !has('feedCost') ? 'compare' : 'feed-cost'
  if (scene.aspects.includes('feed') && !mated && has('cost', 'money', 'years')) return 'feed-cost'
  if (!mated && has('lineWord') && linesNamed(reading).length > 0) return 'compare'
  if (
    !mated &&
    has('lineWord') &&
    has('question') &&
    scene.birds.some((bird) => bird.ref.breed !== undefined) &&
    reading.words.some((word) => /^(?:lines?|strains?|bloodlines?)$/u.test(word))
  )
    return 'compare'
  if (!mated && linesNamed(reading).length > 1) return 'compare'
  return undefined
}

/** Something is for sale, or sought: nothing is asked of the bot. */
const isAdvert = ({ has, asks, words }: Reading): boolean => {
  const quiet = !asks && !has('question')
  const sale = has('offTopic') || words.some((word) => /^(?:sold|selling|sale)$/u.test(word))
  return (has('offTopic') && words.some((word) => word === 'anyone' || word === 'anybody')) || (quiet && sale)
}

export const readLines: Reader = (reading) => {
  const topic = isAdvert(reading) ? undefined : topicOf(reading)
  if (topic === undefined) return undefined
  return linesQuestion(reading, topic)
}

/** "best dual purpose breed for the cold": the catalogue by goals. */
export const readBestBreed: Reader = (reading) => {
  const { scene, words } = reading
  if (isAdvert(reading) || goalsOf(reading).length === 0 || scene.birds.some(isSolid) || isToldPair(reading))
    return undefined
  const seeking =
    scene.wanted.some(({ firm }) => firm) && !words.some((word) => /^(?:my|his|her|these|those)$/u.test(word))
  return reading.has('bestBreed') ||
    seeking ||
    words[0] === 'best' ||
    (goalsOf(reading).filter((goal) => goal !== 'sexable').length > 1 &&
      reading.has('question') &&
      !reading.has('hatch'))
    ? linesQuestion(reading, 'compare')
    : undefined
}

/** No birds, but a goal and a wish for a plan: the best of the catalogue. */
export const readStrategy: Reader = (reading) => {
  const goals = goalsOf(reading)
  if (reading.has('offTopic') && !reading.asks && !reading.has('question')) return undefined
  if (
    isAdvert(reading) ||
    isToldPair(reading) ||
    !reading.has('strategy', 'money') ||
    (goals.length === 0 && !reading.has('money'))
  )
    return undefined
  if (reading.scene.birds.some(isSolid) && !reading.has('money', 'strategy')) return undefined
  return linesQuestion(reading, 'compare')
}

function linesQuestion(reading: Reading, topic: LinesQuestion['topic']): LinesQuestion {
  const weeks = weeksIn(reading)
  const hens = hensIn(reading)
  return {
    kind: 'lines',
    goals: goalsOf(reading),
    compare: compareOf(reading),
    prices: pricesIn(reading),
    topic,
    ...(weeks === undefined ? {} : { weeks }),
    ...(hens === undefined ? {} : { hens }),
    ...commonOf(reading, comparedIn(reading)),
  }
}
