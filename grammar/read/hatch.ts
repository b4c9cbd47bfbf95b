// grammar/read/hatch.ts: eggs to set, pullets to expect, hatch dates, waiting after a change of cocks, hens to a cock.
import { commonOf, numberBefore, type Reader } from './common.ts'
import { dateIn, daysBefore } from './dates.ts'
import { hensIn } from './lineTopic.ts'
import { isPlainTopic } from './topic.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import { shownAsked } from './shownAsked.ts'
import type { Bird } from '../bird.ts'
import type { Context } from '../context.ts'
import type { Reading } from '../reading.ts'
import type { HatchQuestion } from '../../core/question.ts'

type Token = Reading['tokens'][number]

export const isEgg = (token: Token): boolean =>
  (token.type === 'aspect' && token.aspect === 'eggs' && !token.word.startsWith('lay')) ||
  token.word === 'eggs' ||
  token.word === 'egg' ||
  /eggs?$/u.test(token.word)
export const isPullet = (token: Token): boolean => token.type === 'hen'
const isMale = (token: Token): boolean => token.type === 'cock'
const isChick = (token: Token): boolean => token.type === 'chick'

export const sureWord = /sure|certain|confiden|safe|guarantee|probab|chance/u
export const rateWord = /hatch|rate|fertil/u

/** "90% sure", "hatch rate is about 65 percent": the number in percent to which the nearest word is one of that kind. */
export function percentBeside({ tokens }: Reading, near: RegExp, others = /^$/u): number | undefined {
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i]!
    const next = tokens[i + 1]
    const percent =
      token.type === 'number' &&
      (token.percent || /^(?:percent|per cent|pct|prozent)$/u.test(next?.word ?? '') || next?.said === '%')
    if (!percent || token.type !== 'number' || token.value <= 0 || token.value >= 100) continue
    const away = (of: RegExp): number => nearest(tokens, i, of)
    if (away(near) <= 4 && away(near) <= away(others)) return token.value / 100
  }
  return undefined
}

/** How many words away the nearest one of a kind stands; what comes before a figure binds it closer. */
function nearest(tokens: Reading['tokens'], at: number, kind: RegExp): number {
  const found = tokens.flatMap(({ word }, i) => (kind.test(word) ? [i < at ? (at - i) / 2 : i - at] : []))
  return Math.min(Infinity, ...found)
}

/** "11 roos out of 14 chicks", "9 boys and 3 girls". */
function sexesCounted(reading: Reading): Pick<HatchQuestion, 'males' | 'chicks'> | undefined {
  const tally = reading.scene.tallies.find(({ look }) => look.some((token) => isMale(token) || isPullet(token)))
  if (tally?.of !== undefined && tally.of >= tally.count) {
    const male = tally.look.some(isMale)
    return { males: male ? tally.count : tally.of - tally.count, chicks: tally.of }
  }
  const males = numberBefore(reading, isMale, 2)
  const females = numberBefore(reading, isPullet, 2)
  const all = numberBefore(reading, isChick, 4)
  if (males !== undefined && females !== undefined && females <= 200 && males + females > 0)
    return { males, chicks: males + females }
  if (males !== undefined && all !== undefined && all >= males) return { males, chicks: all }
  if (all !== undefined && reading.words.includes('all'))
    return { males: reading.tokens.some(isMale) ? all : 0, chicks: all }
  return undefined
}

/** "set 18": eggs, though they are not named again. */
function eggsAfterSet({ tokens }: Reading): number | undefined {
  const at = tokens.findIndex(({ word }) => /^(?:set|setting|incubate|incubating)$/u.test(word))
  const next = at < 0 ? undefined : tokens[at + 1]
  const dozens = /^(?:dozens?|doz|dz)$/u.test(tokens[at + 2]?.word ?? '') ? 12 : 1
  return next?.type === 'number' && !next.percent && next.value * dozens > 1 ? next.value * dozens : undefined
}
/** "incubator full of 48": the only number there is. */
function eggsInside({ tokens, words }: Reading): number | undefined {
  const numbers = tokens.flatMap((token, i) =>
    token.type === 'number' && !token.percent && !isPulletsWanted(tokens[i + 1] ?? token, i + 1, tokens)
      ? [token.value]
      : [],
  )
  return numbers.length === 1 && words.some((word) => /^(?:incubator|bator|ebay)$/u.test(word)) ? numbers[0] : undefined
}
/** "2 broodies 11 eggs each": so many under each. */
function eggsEach({ tokens }: Reading): number | undefined {
  const each = /^(?:each|apiece|every|per)$/u
  const at = tokens.findIndex(
    (token, i) => isEgg(token) && tokens.slice(i + 1, i + 3).some(({ word }) => each.test(word)),
  )
  const count = tokens.slice(Math.max(0, at - 3), Math.max(at, 0)).findLast(({ type }) => type === 'number')
  const many = tokens.find(
    (token, i) => token.type === 'number' && tokens.slice(i + 1, i + 3).some(({ word }) => isSitter.test(word)),
  )
  return count?.type === 'number' && many?.type === 'number' && many !== count ? many.value * count.value : undefined
}
const isSitter = /^(?:broody|broodies|broody hens|sitters?|nests?|incubators?|bators?|trays?)$/u

/** "posted eggs, 18 of em": the number behind. */
function eggsCountedBehind({ tokens }: Reading): number | undefined {
  const at = tokens.findIndex(
    (token, i) => token.type === 'number' && tokens[i + 1]?.type === 'of' && tokens[i + 2]?.type === 'their',
  )
  const [count, named] = [tokens[at], tokens.slice(Math.max(0, at - 3), Math.max(at, 0))]
  return count?.type === 'number' && !count.percent && named.some(isEgg) ? count.value : undefined
}

const eggsIn = (reading: Reading): number | undefined =>
  eggsEach(reading) ??
  numberBefore(reading, isEgg, 6) ??
  eggsCountedBehind(reading) ??
  eggsAfterSet(reading) ??
  eggsInside(reading)

/** "sold my roo 10 days ago, are the eggs still his". */
const isCockGone = ({ tokens, words, scene, has }: Reading): boolean =>
  tokens.some(({ type }) => type === 'cock') &&
  words.some((word) =>
    /^(?:sold|gone|removed|rehomed|left|died|lost|culled|swapped|replaced|moved|ate|killed)$/u.test(word),
  ) &&
  words.some((word) =>
    /^(?:days?|weeks?|wks?|still|long|month|months|soon|yesterday|today|\p{L}{3,6}day)$/u.test(word),
  ) &&
  (scene.aspects.includes('eggs') || has('newCock', 'wait')) &&
  (words.some((word) => /^(?:fertile|his|fertilised|fertilized|pure|still|swapped|replaced|changed)$/u.test(word)) ||
    has('newCock'))

/** Cocks that are told by number, or the one of whom it is spoken. */
const cocksIn = (reading: Reading): number | undefined =>
  numberBefore(reading, isMale, 3) ??
  (reading.tokens.some((token) => token.type === 'cock' && !token.many) ? 1 : undefined)

/** "14 hens for one cock, getting clears": whether he serves so many. */
const isOverworked = (reading: Reading): boolean =>
  cocksIn(reading) !== undefined &&
  hensIn(reading) !== undefined &&
  /\b(?:too (?:many|much|few)|enough (?:for|roosters|roos|cocks|boys)|clears?|infertile|unfertili[sz]ed|not fertile|(?:cope|manage|keep up) with)\b/u.test(
    reading.words.slice(0, 80).join(' '),
  ) &&
  !reading.has('sexRatio', 'hatchedWhat', 'newCock', 'carry') &&
  reading.scene.aspects.every((aspect) => aspect === 'eggs' || aspect === 'welfare') &&
  eggsIn(reading) === undefined

/** "two roosters 15 hens ok?" */
const isRatio = (reading: Reading): boolean =>
  numberBefore(reading, isMale, 2) !== undefined &&
  numberBefore(reading, isPullet, 2) !== undefined &&
  !reading.has('hatch', 'outcome', 'sexRatio') &&
  !reading.tokens.some(({ type }) => type === 'breed' || type === 'family' || type === 'chick')
const isOfLaying = ({ words, has, tokens, scene }: Reading): boolean =>
  !scene.aspects.includes('maturity') &&
  words.some(
    (word, i) =>
      (/^(?:lay|lays|year|yearly|annually|weekly|daily)$/u.test(word) &&
        !/^(?:next|this|coming)$/u.test(words[i - 1] ?? '')) ||
      (/^(?:week|day)$/u.test(word) && /^(?:a|per|each|every)$/u.test(words[i - 1] ?? '') && has('strategy')),
  ) &&
  !(has('set') && (has('dates') || words.includes('when') || has('shipped') || tokens.some(isPulletsWanted)))
/** "8 laying hens" is a number of pullets. */
const isPulletsWanted = (token: Token, at: number, all: readonly Token[]): boolean =>
  token.type === 'hen' && all.slice(Math.max(0, at - 2), at).some(({ type }) => type === 'number')

/** "if I set eggs on 1 Feb when will they lay": the day is told, the days after it are asked. */
const isOfDays = (reading: Reading, today: string | undefined): boolean =>
  reading.has('set') &&
  (reading.words.some((word) => /^(?:when|whens)$/u.test(word)) || reading.scene.aspects.includes('maturity')) &&
  !reading.has('manyEggs', 'manyPullets') &&
  !reading.words.includes('turning') &&
  dateIn(reading.words, reading.text, today) !== undefined

function topicOf(reading: Reading, today: string | undefined): HatchQuestion['topic'] | undefined {
  const { has, scene } = reading
  const [eggs, pullets] = [eggsIn(reading), numberBefore(reading, isPullet)]
  if (isToldPair(reading) && shownAsked(pairsIn(reading), reading).length > 0) return undefined
  if ((has('ratio') || (has('howManyHens') && eggs === undefined && reading.tokens.some(isMale))) && !has('sexRatio'))
    return 'ratio'
  if (isRatio(reading) || isOverworked(reading)) return 'ratio'
  if (reading.words.includes('enough') && reading.tokens.some(isMale) && pullets !== undefined) return 'ratio'
  if (isCockGone(reading)) return 'new-cock-wait'
  if (has('newCock') && has('wait') && !has('dates') && !scene.aspects.includes('maturity')) return 'new-cock-wait'
  const loose = eggs === undefined && pairsIn(reading).length === 0 && !has('carry', 'shipped')
  if ((has('sexRatio') || reading.words.includes('all') || loose) && has('odds') && sexesCounted(reading))
    return 'sex-ratio'
  if (isLayDay(reading) && pullets !== undefined && /\bhow many\b/u.test(reading.words.join(' '))) return 'eggs-to-set'
  if (isOfDays(reading, today) || isLayDay(reading)) return 'dates'
  if (isOfLaying(reading)) return undefined
  if (has('manyEggs') && (has('set', 'hatch', 'shipped') || pullets !== undefined) && !has('years'))
    return 'eggs-to-set'
  if (
    eggs !== undefined &&
    eggs > 1 &&
    has('manyPullets', 'odds') &&
    (has('set', 'hatch', 'shipped', 'pulletsWanted') || pullets !== undefined)
  )
    return 'pullets-from'
  if (eggsEach(reading) !== undefined && pullets === undefined) return 'pullets-from'
  if (has('dates') && isPlainTopic(reading)) return undefined
  if (has('dates') || (has('hatch') && has('set') && reading.words.includes('when'))) return 'dates'
  if (
    has('set') &&
    eggs !== undefined &&
    eggs > 1 &&
    scene.matings.length === 0 &&
    has('manyPullets', 'odds', 'pulletsWanted')
  )
    return 'pullets-from'
  const planned =
    has('hatch') && !has('outcome', 'carry') && reading.words.some((word) => /^(?:when|many)$/u.test(word))
  if (planned && pullets !== undefined && pullets > 1 && eggs === undefined && pairsIn(reading).length === 0)
    return 'eggs-to-set'
  if (has('set') && pullets !== undefined && (has('question') || reading.asks) && scene.matings.length === 0)
    return 'eggs-to-set'
  if (has('shipped') && (has('hatch', 'set') || reading.tokens.some(isEgg)) && scene.matings.length === 0)
    return eggs !== undefined && pullets === undefined ? 'pullets-from' : 'eggs-to-set'
  if (has('hatch') && eggs !== undefined && eggs > 1 && has('manyPullets')) return 'pullets-from'
  return undefined
}

export const whole = (value: number | undefined): number | undefined =>
  value === undefined || value < 1 || value > 100_000 ? undefined : Math.round(value)

function numbers(reading: Reading, topic: HatchQuestion['topic']): Partial<HatchQuestion> {
  const eggsSet = whole(eggsIn(reading))
  const counted = whole(numberBefore(reading, isPullet))
  const pulletsWanted = counted !== undefined && counted === eggsAfterSet(reading) ? undefined : counted // "set 30 how many pullets"
  const certainty = percentBeside(reading, sureWord, rateWord)
  const hatchRate = percentBeside(reading, rateWord, sureWord)
  const shipped = reading.has('shipped') ? true : undefined
  return {
    ...(eggsSet !== undefined && topic !== 'eggs-to-set' && eggsSet > 1 ? { eggsSet } : {}),
    ...(pulletsWanted !== undefined && topic !== 'ratio' && topic !== 'new-cock-wait' ? { pulletsWanted } : {}),
    ...(certainty === undefined ? {} : { certainty }),
    ...(hatchRate === undefined || hatchRate === certainty ? {} : { hatchRate }),
    ...(shipped === undefined ? {} : { shipped }),
    ...(topic === 'sex-ratio' ? sexesCounted(reading) : {}),
  }
}

const asksDay =
  /\b(?:(?:what|which) (?:day|date)|when (?:do|will|should|are|is|to|can)|how (?:long|many days)|due|lockdown|candl\w*)\b/u
/** "can I sex them, how many eggs": what the daughters lay, and nothing of setting. "i set 22 eggs, what am i looking for": how to tell the chicks. */
function isOfCross(reading: Reading, topic: HatchQuestion['topic']): boolean {
  const { has, scene } = reading
  const pairs = pairsIn(reading)
  if (!pairs.some(({ by }) => by !== 'nothing')) return false
  if (topic === 'dates') return scene.aspects.includes('sexing') && !asksDay.test(reading.words.join(' '))
  const sexing = scene.aspects.includes('sexing')
  if (topic === 'new-cock-wait') return sexing
  if (topic !== 'eggs-to-set' && topic !== 'pullets-from') return false
  if (topic === 'eggs-to-set' && sexing && !/\b(?:how many|enough)\b/u.test(reading.words.join(' '))) return true
  const others = scene.aspects.some((aspect) => aspect !== 'eggs' && aspect !== 'shares') || scene.goals.length > 0
  if (topic === 'eggs-to-set')
    return (pairs.length > 1 && others) || (!has('set', 'shipped') && numberBefore(reading, isPullet) === undefined)
  return others && !has('manyPullets', 'odds')
}

/** The cock whose hens are counted, and how many of each there are. */
function penOf(reading: Reading): Pick<HatchQuestion, 'cock' | 'cocks' | 'hens'> {
  const cock = reading.scene.birds.find((bird) => bird.ref.breed !== undefined && bird.sex !== 'F')?.ref
  const cocks = whole(cocksIn(reading))
  const counted = hensIn(reading) ?? 0
  const hens = counted > 1 ? counted : undefined // "how many for one Brahma" counts him
  return {
    ...(cock ? { cock } : {}),
    ...(hens === undefined ? {} : { hens, ...(cocks === undefined ? {} : { cocks }) }),
  }
}

const incubation = 21
/** "when to set so they hatch on 4 April": the day that is told is that of the hatch. */
const isHatchDay = ({ words }: Reading): boolean => {
  const text = words.join(' ')
  return (
    /\b(?:when|what day|which day|what date)\b.*\b(?:set|start|put|incubat\w*)\b/u.test(text) &&
    /\b(?:hatch|hatched|due|chicks|ready)\b(?: \w+){0,3} (?:on|by|for|before|around|at)\b/u.test(text)
  )
}

/** "when to set so the pullets lay by April": the first eggs are counted back from, at the later usual age. */
const isLayDay = ({ words }: Reading): boolean =>
  /\b(?:lay|laying|eggs|in lay|layers)\b(?: \w+){0,3} (?:by|before)\b.*\b(?:when|what (?:day|month|date))\b(?: \w+){0,4}? (?:set|start|hatch|incubat\w*)\b|\b(?:when|what (?:day|month|date)|which month|how early|how late)\b.*\b(?:set|start|hatch|incubat\w*|have chicks)\b.*\b(?:lay|laying|eggs?|layers)\b.*\b(?:by|before)\b/u.test(
    words.slice(0, 60).join(' '),
  )
const untilLaying = incubation + 24 * 7

/** "if I set Light Sussex on 1 March": eggs of one breed, pure where nothing else is told. */
function onlyBreed({ scene }: Reading): Bird | undefined {
  const [bird, ...others] = scene.birds.filter(({ ref }) => ref.breed !== undefined)
  return bird?.sex !== 'M' && others.length === 0 ? bird : undefined
}

export const readHatch: Reader = (reading, context: Context) => {
  const topic = topicOf(reading, context.today)
  if (topic === undefined || isOfCross(reading, topic)) return undefined
  const pairs = pairsIn(reading)
  if (pairs.length > 1) return undefined
  const [pair] = pairs
  const pure = topic === 'dates' && !pair ? onlyBreed(reading) : undefined
  const told =
    topic === 'dates' || topic === 'eggs-to-set' || topic === 'pullets-from'
      ? dateIn(reading.words, reading.text, context.today)
      : undefined
  const back = isLayDay(reading) ? untilLaying : isHatchDay(reading) ? incubation : 0
  const counted = told === undefined ? undefined : daysBefore(told, back)
  const isGone = back > incubation && counted !== undefined && context.today !== undefined && counted < context.today
  const setOn = isGone ? undefined : counted // too late for that year: the days alone are told
  return {
    kind: 'hatch',
    topic,
    ...numbers(reading, topic),
    ...(pair && pair.by !== 'nothing' && topic !== 'new-cock-wait' && topic !== 'ratio'
      ? { mating: { sire: pair.sire.ref, dam: pair.dam.ref } }
      : pure
        ? { mating: { sire: pure.ref, dam: pure.ref } }
        : {}),
    ...(setOn === undefined ? {} : { setOn }),
    ...(topic === 'ratio' ? penOf(reading) : {}),
    ...commonOf(reading, pair ? [pair.sire, pair.dam] : pure ? [pure] : []),
  }
}
