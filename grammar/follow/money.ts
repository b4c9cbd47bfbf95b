// grammar/follow/money.ts: a short message applied to a question of lines, money or a hatch: another price, "and in year 3?", "shipped".
import { breedNamed, lineOf } from '../../core/breeds.ts'
import { birdOf } from '../bird.ts'
import { aspectsOf, commonOf, goalsOf, isSolid, numberBefore } from '../read/common.ts'
import { dateIn } from '../read/dates.ts'
import { isEgg, isPullet, percentBeside, rateWord, readHatch, sureWord, whole } from '../read/hatch.ts'
import { linesNamed, topicOf } from '../read/lineTopic.ts'
import { tellingOf } from '../read/linesCompared.ts'
import { weightTold } from '../read/prices.ts'
import { isNamed } from '../saying.ts'
import { lineSought } from '../words/lines.ts'
import type { Context } from '../context.ts'
import type { Reading } from '../reading.ts'
import type {
  Aspect,
  BirdRef,
  CrossQuestion,
  HatchQuestion,
  LinesQuestion,
  Manner,
  Question,
} from '../../core/question.ts'

// --- money, years, other birds ---

/** Birds named, also behind "what about". */
const birdsNamed = ({ scene }: Reading): readonly BirdRef[] => [
  ...scene.changes.flatMap(({ birds }) => birds.filter(isNamed).map((said) => birdOf(said).ref)),
  ...scene.birds.filter(isSolid).map(({ ref }) => ref),
]

/** "also", "as well": to what was wanted before, more is added. */
const adds = ({ words }: Reading): boolean =>
  /^(?:and|plus)\b|\b(?:also|too|as well)\b/u.test(words.join(' ')) && !words.includes('instead')

const mannerAfter = (before: Manner, { currency, units, symbols }: Manner): Manner => ({
  symbols: before.symbols || symbols,
  units: units === 'both' ? before.units : units,
  ...((currency ?? before.currency) === undefined ? {} : { currency: currency ?? before.currency }),
})

const inLine = (bird: BirdRef, said: keyof typeof lineSought): BirdRef => {
  const breed = bird.breed === undefined ? undefined : breedNamed(bird.breed)
  const found = breed && lineSought[said].map((word) => lineOf(breed, word)).find((line) => line !== undefined)
  return found ? { ...bird, line: found.id } : bird
}

/** Birds set beside each other after this message: named ones in place of the old or beside them, or another line of the old. */
function compared(base: LinesQuestion, reading: Reading): readonly BirdRef[] {
  const named = birdsNamed(reading)
  if (named.length > 0) return base.topic === 'compare' && adds(reading) ? [...base.compare, ...named] : named
  const token = reading.tokens.find(({ type }) => type === 'line')
  if (token?.type !== 'line' || linesNamed(reading).length === 0) return base.compare
  const old = base.compare.length > 0 ? base.compare : [{ breed: 'Rhode Island Red' }]
  return old.map((bird) => inLine(bird, token.line))
}

/** "its a 25 kg bag": the price of the bag holds, the weight taken for it does not. */
function rescaled(base: LinesQuestion, reading: Reading): LinesQuestion | undefined {
  const sack = base.assumed.find((one) => one.kind === 'sack')
  const kilograms = weightTold(reading)
  const { feedPerKg } = base.prices
  if (sack?.kind !== 'sack' || kilograms === undefined || feedPerKg === undefined) return undefined
  return {
    ...base,
    prices: { ...base.prices, feedPerKg: (feedPerKg * sack.kilograms) / kilograms },
    assumed: base.assumed.filter((one) => one !== sack),
  }
}

/** What of the hen herself is asked, of one bird or cross. */
const ofTheHen: ReadonlySet<Aspect> = new Set([
  'size',
  'temper',
  'broody',
  'hardiness',
  'shell',
  'maturity',
  'comb',
  'legs',
])

function aboutTheBird(base: LinesQuestion, reading: Reading): Question | undefined {
  const aspects = aspectsOf(reading).filter((aspect) => ofTheHen.has(aspect))
  const [bird, ...others] = base.compare
  if (!bird || others.length > 0 || aspects.length === 0) return undefined
  const common = { ...commonOf(reading), manner: mannerAfter(base.manner, reading.manner) }
  return bird.cross
    ? { kind: 'cross', matings: [bird.cross], aspects, ...common }
    : { kind: 'fact', topic: 'bird', birds: [bird], aspects, ...common }
}

export function linesAgain(base: LinesQuestion, reading: Reading): Question | undefined {
  const told = tellingOf(reading, base.manner.currency)
  const compare = compared(base, reading)
  const priced = Object.keys(told.prices).length > 0
  const topic = told.year === undefined ? topicOf(reading) : 'keep-until'
  if (!priced && told.year === undefined && topic === undefined && compare === base.compare)
    return rescaled(base, reading) ?? aboutTheBird(base, reading) ?? otherGoals(base, reading)
  const { year: _, ...kept } = base
  const goals = goalsOf(reading)
  return {
    ...kept,
    topic: topic ?? base.topic,
    goals: goals.length === 0 ? base.goals : adds(reading) ? [...new Set([...base.goals, ...goals])] : goals,
    compare,
    prices: { ...base.prices, ...told.prices },
    ...(told.weeks === undefined ? {} : { weeks: told.weeks }),
    ...(told.hens === undefined ? {} : { hens: told.hens }),
    ...(told.year === undefined ? {} : { year: told.year }),
    assumed: [...sackKept(base, told.prices.feedPerKg !== undefined), ...told.assumed],
    manner: mannerAfter(base.manner, told.manner),
  }
}

const sackKept = ({ assumed }: LinesQuestion, feedToldAnew: boolean): LinesQuestion['assumed'] =>
  feedToldAnew ? [] : assumed.filter(({ kind }) => kind === 'sack')

/** "and in the cold?" */
function otherGoals(base: LinesQuestion, reading: Reading): LinesQuestion | undefined {
  const goals = goalsOf(reading)
  if (goals.length === 0 || base.topic !== 'compare') return undefined
  return { ...base, goals: adds(reading) ? [...new Set([...base.goals, ...goals])] : goals }
}

/** Prices or a year told after an answer about a bird or a cross: what that hen costs and brings. */
export function moneyOf(
  birds: readonly BirdRef[],
  base: Pick<CrossQuestion, 'manner'>,
  reading: Reading,
): LinesQuestion | undefined {
  const told = tellingOf(reading, base.manner.currency)
  const priced = Object.keys(told.prices).length > 0
  const keeps = told.year !== undefined || reading.has('keepUntil')
  if (
    birds.length === 0 ||
    birdsNamed(reading).length > 0 ||
    (!priced && !keeps) ||
    reading.tokens.some(({ type }) => type === 'generation')
  )
    return undefined
  return {
    kind: 'lines',
    goals: [],
    compare: birds.slice(0, 4),
    topic: keeps ? 'keep-until' : (topicOf(reading) ?? 'feed-cost'),
    ...told,
    manner: mannerAfter(base.manner, told.manner),
  }
}

// --- a hatch ---

/** "how many should I set for 8 girls" after an answer about a cross: of that cross. */
export function hatchOfCross(base: CrossQuestion, reading: Reading, context: Context): HatchQuestion | undefined {
  const [mating, ...others] = base.matings
  if (!mating || others.length > 0 || birdsNamed(reading).length > 0) return undefined
  const asked = readHatch(reading, context)
  return asked?.kind === 'hatch' && !asked.mating && asked.topic !== 'new-cock-wait' && asked.topic !== 'sex-ratio'
    ? { ...asked, mating }
    : undefined
}

/** The only number of a short message, where it is of no date and no share. */
function bareNumber({ tokens, words }: Reading): number | undefined {
  const numbers = tokens.flatMap((token) => (token.type === 'number' && !token.percent ? [token.value] : []))
  return numbers.length === 1 && words.length <= 8 ? whole(numbers[0]) : undefined
}

function counts(base: HatchQuestion, reading: Reading): Partial<HatchQuestion> {
  const pullets = whole(numberBefore(reading, isPullet))
  const eggs = whole(numberBefore(reading, isEgg))
  if (eggs !== undefined && eggs > 1 && pullets === undefined) return { eggsSet: eggs, topic: 'pullets-from' }
  if (pullets !== undefined) return { pulletsWanted: pullets }
  const number = bareNumber(reading)
  if (number === undefined) return {}
  return base.topic === 'eggs-to-set'
    ? { pulletsWanted: number }
    : base.topic === 'pullets-from'
      ? { eggsSet: number }
      : {}
}

function rates(reading: Reading): Partial<HatchQuestion> {
  const sure = percentBeside(reading, sureWord, rateWord)
  const rate = percentBeside(reading, /./u)
  return sure !== undefined ? { certainty: sure } : rate !== undefined ? { hatchRate: rate } : {}
}

/** "shipped", "95% sure", "set on 3 April, when do they lay", "and for 10?". */
export function hatchAgain(base: HatchQuestion, reading: Reading, context: Context): HatchQuestion | undefined {
  if (birdsNamed(reading).length > 0) return undefined
  const setOn = dateIn(reading.words, reading.text, context.today)
  const asksWhen = reading.has('dates') || aspectsOf(reading).includes('maturity') || reading.words.includes('when')
  const posted = reading.has('shipped')
    ? { shipped: true }
    : /\bown\b/u.test(reading.words.join(' '))
      ? { shipped: false }
      : {}
  const told: Partial<HatchQuestion> = {
    ...posted,
    ...rates(reading),
    ...(setOn === undefined ? counts(base, reading) : { setOn }),
    ...(asksWhen ? { topic: 'dates' as const } : {}),
  }
  return Object.keys(told).length > 0 ? { ...base, ...counting({ ...base, ...told }, asksWhen), ...told } : undefined
}

/** After dates, a number or a rate is again of the eggs. */
const counting = ({ topic, pulletsWanted, eggsSet }: HatchQuestion, asksWhen: boolean): Partial<HatchQuestion> => {
  if (topic !== 'dates' || asksWhen) return {}
  return pulletsWanted !== undefined ? { topic: 'eggs-to-set' } : eggsSet !== undefined ? { topic: 'pullets-from' } : {}
}
