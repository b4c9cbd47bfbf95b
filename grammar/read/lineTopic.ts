// grammar/read/lineTopic.ts: which of the sums of lines is asked: eggs, feed, money, meat, years, or several birds side by side.
import { goalsNamed, goalsOf, isHybrid, isProduct, isSolid, numberBefore } from './common.ts'
import { asksNeeds, needsIn } from './needs.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import { pricesIn, tellsPrice } from './prices.ts'
import type { LinesQuestion } from '../../core/question.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'

export const weeksIn = (reading: Reading): number | undefined =>
  numberBefore(reading, ({ word }) => /^(?:weeks?|wks?|wk|wochen|weken|semaines|semanas)$/u.test(word), 2)

/** Units and times of which a number may be: "50 lb reds". */
const isMeasure = /^(?:kgs?|kilos?|lbs?|pounds?|oz|g|grams?|weeks?|wks?|months?|days?|years?|yrs?|eggs?|dozen|doz)$/u

/** "12 light sussex": hens, though the word is left out. */
function birdsCounted({ tokens }: Reading): number | undefined {
  for (const [i, token] of tokens.entries()) {
    if (token.type !== 'number' || token.percent || /^(?:year|yr|week)$/u.test(tokens[i - 1]?.word ?? '')) continue
    const behind = tokens.slice(i + 1, i + 4)
    const end = behind.findIndex(({ type }) => type !== 'line' && type !== 'filler' && type !== 'my')
    const bird = behind[end]
    if (bird && !isMeasure.test(bird.word) && ['breed', 'family', 'colour'].includes(bird.type)) return token.value
  }
  return undefined
}

/** How many hens are spoken of; "16 weeks and hens" counts none. */
export function hensIn(reading: Reading): number | undefined {
  const tokens = reading.tokens.filter(
    ({ type }, i, all) =>
      !(type === 'number' && /^(?:weeks?|wks?|months?|years?|yrs?|kgs?|lbs?)$/u.test(all[i + 1]?.word ?? '')),
  )
  const count = numberBefore({ ...reading, tokens }, ({ type }) => type === 'hen', 3) ?? birdsCounted(reading)
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= 10_000 ? count : undefined
}

/** "hybrids vs heritage RIR": "or" stands right beside it. */
const isWeighed = ({ saidOf }: Bird, { tokens }: Reading): boolean => {
  const [first, last] = [
    tokens.findIndex(({ at }) => at >= saidOf.at),
    tokens.findLastIndex(({ end }) => end <= saidOf.end),
  ]
  return [tokens[first - 1], tokens[last + 1]].some((token) =>
    /^(?:or|vs|versus|v|than|against)$/u.test(token?.word ?? ''),
  )
}

/** Lines named without a bird of their own: "heritage or production RIR" is two lines of one breed. */
export function comparedIn(reading: Reading): readonly Bird[] {
  const solid = reading.scene.birds.concat(reading.scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams]))
  return solid.filter(
    (bird) =>
      bird.ref.breed !== undefined &&
      !(isProduct(bird) && bird.ref.breed.endsWith('-egg layer')) && // "most economical blue egg layer": a wish
      !(
        isHybrid(bird) &&
        !isWeighed(bird, reading) &&
        solid.some((other) => other !== bird && isSolid(other) && !isHybrid(other) && reading.has('lineWord'))
      ),
  )
}

/** Combs, sizes and countries are no strategy. */
const isStrain =
  /^(?:production|hatchery|utility|heritage|exhibition|fine-barred|open-barred|dark-line|light-line|layer|meat)$/u

export function linesNamed({ tokens }: Reading): readonly string[] {
  return [
    ...new Set(tokens.flatMap((token) => (token.type === 'line' && isStrain.test(token.line) ? [token.line] : []))),
  ]
}

/** "most eggs for the least feed": no bird is named, one is sought. */
const isSearch = ({ scene, words, tokens }: Reading): boolean =>
  scene.birds.every((bird) => bird.ref.breed === undefined) &&
  !tokens.some(({ type }) => type === 'money') &&
  words.some((word) => /^(?:best|most|least|cheapest)$/u.test(word)) &&
  words.some((word) => /^(?:best|most|breeds?|hens?|layers?|which)$/u.test(word))

/** "australorp or sussex for a family": breeds set against each other, nobody put to anybody. */
function isChoice(reading: Reading): boolean {
  const { tokens, words } = reading
  const breeds = new Set(comparedIn(reading).map(({ ref }) => ref.breed))
  return (
    breeds.size > 1 &&
    words.some((word) => /^(?:or|vs|versus|than)$/u.test(word)) &&
    (goalsOf(reading).some((goal) => goal !== 'sexable' && !goal.endsWith('-eggs')) ||
      reading.scene.aspects.includes('eggs')) &&
    !tokens.some(({ type }) => ['cock', 'chick', 'over', 'under', 'cross', 'together', 'sexlink'].includes(type)) &&
    !reading.has('hatch', 'set', 'carry')
  )
}

/** A cockerel for the pot, where no age is told. */
export const tableWeeks = 16

const raisedBoys =
  /\b(?:rais(?:e|ing)|rear(?:ing)?|keep(?:ing)?|grow(?:ing)?(?: out| on)?|feed(?:ing)?|fatten(?:ing)?)(?: \w+){0,4} (?:cockerels?|boys|males|roos|roosters|brothers)\b/u

/** "worth keeping the spare cockerels on for the pot": whether they pay for their feed. */
export const asksOfBoys = (reading: Reading): boolean =>
  raisedBoys.test(reading.words.slice(0, 80).join(' ')) &&
  (reading.words.some((word) => /^(?:worth|pay|pays|cheaper|cost|costs)$/u.test(word)) || tellsPrice(reading)) &&
  !reading.has('buyOrHatch', 'father', 'carry', 'hatchedWhat')

/** "broilers or my spare boys": a meat hybrid weighed against cockerels of one's own. */
export const weighsBroilers = ({ scene, words, tokens }: Reading): boolean =>
  [...scene.birds, ...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])].some(
    ({ ref }) => ref.breed === 'Cornish Cross',
  ) &&
  tokens.some(({ type }) => type === 'cock') &&
  words.some((word) => /^(?:or|vs|versus|than|against|v)$/u.test(word)) &&
  words.some((word) =>
    /^(?:feed|conversion|cheaper|cost|costs|better|worth|eats?|freezer|meat|raise|raising|grow)$/u.test(word),
  ) &&
  !tokens.some(({ type, word }) => type === 'cross' || (type === 'over' && /^(?:x|over|onto)$/u.test(word)))

/** "meat cocks of 2 kg and hens with 200 eggs, which line": a breed for both is sought, and none is named. */
export const seeksOneForBoth = (reading: Reading): boolean => {
  const text = reading.words.slice(0, 80).join(' ')
  const goals = goalsOf(reading)
  return (
    goals.includes('eggs') &&
    goals.includes('meat') &&
    (/\b(?:which|what) (?:lines?|breeds?|strains?)\b/u.test(text) || wantsOneBreed(reading)) &&
    !reading.has('cost', 'feedCost', 'money') &&
    (wantsOneBreed(reading) || !reading.has('trueBreeding')) && // "one breed on half an acre"
    !tellsPrice(reading) &&
    comparedIn(reading).every((bird) => isExcluded(bird, reading)) &&
    !isToldPair(reading)
  )
}

/** "cheapest way to brown eggs for 4 people": by a shell or by mouths; hens are sought, and no chicks to buy. */
const asksForLayers = (reading: Reading): boolean =>
  (goalsSought(reading).some((goal) => goal.endsWith('-eggs')) || needsIn(reading).people !== undefined) &&
  !reading.tokens.some(({ type }) => type === 'chick' || type === 'money') &&
  !/\b(?:feed (?:for|per|a)|least feed)\b/u.test(reading.words.slice(0, 80).join(' '))

const lasting =
  /\bhow (?:long|many (?:\w+ )?(?:years|yrs|seasons))\b(?: (?!til|till|until|before|start|to)\w+){0,14}? (?:lay|laying|lays|last|lasts|productive)\b(?! age)|\bhow many (?:\w+ )?(?:years|yrs|seasons) (?:of (?:eggs|laying)|(?:\w+ ){0,3}(?:from|out of|off))\b/u

/** "how long do Red sex-links lay well", "how many good years from RIR x Sussex pullets": until when they lay, and not from when. */
export const asksYears = ({ words, has }: Reading): boolean =>
  lasting.test(words.slice(0, 80).join(' ')) &&
  !/\b(?:til|till|until|before|start|starts|begin)\b/u.test(words.slice(0, 80).join(' ')) &&
  !has('newCock', 'hatch', 'set')

export function topicOf(reading: Reading): LinesQuestion['topic'] | undefined {
  const { has, tokens, scene } = reading
  if (renews(reading) || seeksOneForBoth(reading)) return 'compare'
  if (weighsBroilers(reading) || asksOfBoys(reading)) return 'cockerel-cost'
  if (asksYears(reading)) return 'keep-until'
  if (!isToldPair(reading) && asksNeeds(reading, hensIn(reading))) return 'needs'
  const cocks = tokens.some(({ type }) => type === 'cock') || scene.goals.includes('meat')
  const mated = isToldPair(reading) || pairsIn(reading).some(({ by }) => by === 'sex')
  const shells = scene.goals.some((goal) => goal.endsWith('-eggs'))
  const hens = tokens.some(({ type }) => type === 'hen' || type === 'chick') || scene.aspects.includes('eggs') || shells
  if (
    hens &&
    !cocks &&
    !mated &&
    reading.words.some((word) => /^(?:cull|culling|replace|replacing|retire)$/u.test(word))
  )
    return 'keep-until'
  const isKeep = // "cost of keeping 6 hens a month", "what do six hens cost me a week"
    has('cost') &&
    (scene.aspects.includes('feed') ||
      /\b(?:keep|keeping|feed|feeding|upkeep|run)\b|\b(?:a|per|each|every) (?:day|week|month)\b/u.test(
        reading.words.join(' '),
      ))
  if (hens && !cocks && !mated && isKeep && !has('keepUntil', 'buyOrHatch')) return 'feed-cost'
  const isPriced = tellsPrice(reading) && pricesIn(reading).prices.feedPerKg !== undefined
  if (!mated && !cocks && isPriced && comparedIn(reading).length > 1 && reading.words.includes('cheaper'))
    return 'feed-cost'
  const cheapest = reading.words.some((word) => /^(?:cheapest|economical|efficient)$/u.test(word))
  if (cheapest && !cocks && !mated && !has('buyOrHatch') && comparedIn(reading).length === 0 && asksForLayers(reading))
    return 'compare'
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
  const eggsToo =
    !tokens.some(({ type }) => type === 'cock') && (scene.aspects.includes('eggs') || scene.goals.includes('eggs'))
  if (
    cocks &&
    !mated &&
    !eggsToo &&
    (has('cockerelCost') ||
      (has('cost', 'feedCost') && weeksIn(reading) !== undefined) ||
      (has('feedCost') && weeksIn(reading) !== undefined))
  )
    return 'cockerel-cost'
  const spendsNothing =
    !has('feedCost', 'cost', 'keepUntil') &&
    !scene.aspects.includes('feed') &&
    !tokens.some(({ type }) => type === 'money')
  if (spendsNothing && isChoice(reading)) return 'compare'
  const forMeat = scene.goals.includes('meat') && tokens.some(({ type }) => type === 'cock')
  if (forMeat && !mated && has('keepUntil', 'feedCost', 'cost', 'money') && tellsPrice(reading)) return 'cockerel-cost'
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
    return (has('lineWord', 'strategy') && !has('feedCost')) || isSearch(reading) ? 'compare' : 'feed-cost'
  if (scene.aspects.includes('feed') && !mated && (has('cost', 'money', 'years') || (hensIn(reading) ?? 1) > 1))
    return 'feed-cost'
  const worth = reading.words.some((word) => /^(?:worth|extra)$/u.test(word)) && linesNamed(reading).length > 0
  if (worth && !mated && scene.aspects.includes('feed')) return 'feed-cost'
  if (isChoice(reading)) return 'compare'
  if (!mated && tellsPrice(reading) && pricesIn(reading).prices.feedPerKg !== undefined)
    return has('lineWord', 'strategy') ? 'compare' : 'feed-cost'
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

const renewing =
  /\bself (?:sustain\w*|sufficien\w*|perpetuat\w*|replacing)|\bsustainable (?:\w+ )?flock|\b(?:no more|never|stop|without) (?:\w+ ){0,3}(?:buying|bought|buy|store|hatchery|mail order) (?:\w+ ){0,2}(?:chicks|pullets|birds|stock)|\b(?:hatch|breed|raise) (?:my|our) own replacements|\breplaces? (?:itself|themselves)|\bclosed flock|\bkeeps? (?:itself|themselves) going/u

/** "a self sustaining flock, eggs first": birds that give their own kind again, none of them named. */
export const renews = (reading: Reading): boolean =>
  renewing.test(reading.words.slice(0, 80).join(' ')) &&
  goalsOf(reading).some((goal) => goal !== 'sexable') &&
  comparedIn(reading).every((bird) => isExcluded(bird, reading)) &&
  !isToldPair(reading)

/** Something is for sale, or sought: nothing is asked of the bot. */
export const isAdvert = (reading: Reading): boolean => {
  const { has, asks, words } = reading
  const quiet = !asks && !has('question')
  const sought = words.some((word) => /^(?:best|better|most|least|cheapest|cheaper|which|what|worth)$/u.test(word))
  const sale =
    (has('offTopic') || words.some((word) => /^(?:sold|selling|sale)$/u.test(word))) && !sought && !isChoice(reading)
  return (has('offTopic') && words.some((word) => word === 'anyone' || word === 'anybody')) || (quiet && sale)
}

/** "dun vs chocolate, whats the difference": of two colours, and no breed or line is named. */
export const tellsColoursApart = (reading: Reading): boolean => {
  const birds = comparedIn(reading)
  return (
    birds.length > 1 &&
    reading.words.some((word) => /^(?:difference|differences|diff|differ|different)$/u.test(word)) &&
    birds.every(({ saidOf }) => saidOf.parts.every(({ type }) => type === 'colour' || type === 'filler'))
  )
}

/** "meat bird I can breed myself, not Cornish Cross": named to be left out. */
export const isExcluded = ({ saidOf }: Bird, { tokens }: Reading): boolean => {
  const at = tokens.findIndex((token) => token.at >= saidOf.at)
  const before = tokens.slice(Math.max(0, at - 3), Math.max(at, 0)).map(({ word }) => word)
  return before.some((word) => /^(?:not|no|without|except|besides|than|instead)$/u.test(word))
}

/** "want table birds and eggs out of one breed". */
export const wantsOneBreed = ({ tokens, words }: Reading): boolean =>
  /\b(?:one|single|same) breed (?:for|that|to|which|with|and)\b|\bout of (?:one|a single|the same) breed\b/u.test(
    words.slice(0, 80).join(' '),
  ) ||
  (tokens.some(({ type }) => type === 'want') && /\b(?:one|single|a|same) breed\b/u.test(words.join(' ')))

/** "hybrids or RIR for eggs": the hybrid is one of the birds, and no chicks to be sexed; "Marans with dark egg at 9 euro": of that bird alone. */
const isOfCompared = (goal: LinesQuestion['goals'][number], reading: Reading): boolean =>
  comparedIn(reading).length > 1 &&
  ((goal === 'sexable' && !reading.scene.goals.includes('sexable') && !reading.scene.aspects.includes('sexing')) ||
    (goal.endsWith('-eggs') && reading.tokens.some(({ type }) => type === 'money')))

/** Where no bird is set beside others, a hen told by her eggs is what is looked for. */
export const goalsSought = (reading: Reading): LinesQuestion['goals'] =>
  comparedIn(reading).length > 0
    ? goalsOf(reading).filter((goal) => !isOfCompared(goal, reading))
    : [...new Set([...goalsOf(reading), ...goalsNamed(reading.scene)])]
