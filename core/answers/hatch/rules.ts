// core/answers/hatch/rules.ts: hatch questions that a rule of the trade or a date answers, and luck with the sexes.
import { hatchDays, hatching, hensPerCock, newCock } from '../../data/hen/hatching.ts'
import { dayAndMonth, hatchDates } from '../../hen/calendar.ts'
import { henFigures } from '../../hen/expect.ts'
import { birdAsBred, youngOf, type Mating } from '../../hen/lineage.ts'
import { chanceOfAtLeast, chanceOfAtMost } from '../../hen/hatchChance.ts'
import type { BirdRef, HatchQuestion } from '../../question.ts'
import type { Span } from '../../vocabulary.ts'
import type { Found } from './counts.ts'
import { cockerelOfEgg, pulletOfEgg, type Given } from './given.ts'

const weeks = (days: number): number => Math.round(days / 7)

/** Age at first egg of the daughters of this mating, days from hatch; where none is told, of any pullet. */
export function firstEggDays(mating: Mating | undefined): Span {
  if (mating) return henFigures(youngOf(mating, 'F'), youngOf(mating, 'M')).ageFirstEggDays
  const { low, likely, high } = hatchDays.pointOfLay
  return { low: low - hatchDays.hatch, likely: likely - hatchDays.hatch, high: high - hatchDays.hatch }
}

/** What to expect of the eggs that were counted. */
const youngOfThese = ({ eggsSet }: HatchQuestion, given: Given): Partial<Found> =>
  eggsSet === undefined
    ? {}
    : { pulletsExpected: eggsSet * pulletOfEgg(given), cockerelsExpected: eggsSet * cockerelOfEgg(given) }

export function dates(question: HatchQuestion, given: Given): Found {
  const lay = firstEggDays(question.mating)
  const found = question.setOn === undefined ? null : hatchDates(question.setOn, lay.likely)
  const span = `${weeks(lay.low)} to ${weeks(lay.high)} weeks`
  return {
    ...youngOfThese(question, given),
    dates: found,
    summary: found
      ? `Set on ${dayAndMonth(question.setOn!)}, hatch day is ${dayAndMonth(found.hatch)}; first eggs about ${dayAndMonth(found.pointOfLay)}, at ${span}.`
      : `Hens’ eggs hatch on day ${hatchDays.hatch}; first eggs at ${span}.`,
    says: found
      ? []
      : [
          `Set is day 0; candle on day ${hatchDays.candle} and day ${hatchDays.secondCandle}; stop turning and raise the damp on day ${hatchDays.lockdown}; hatch on day ${hatchDays.hatch}.`,
          `Off heat when feathered, about six weeks old; in lay ${span} after hatching.`,
        ],
  }
}

export function newCockWait(): Found {
  const { waitWeeks, spermWeeks } = newCock
  return {
    summary: `Wait ${waitWeeks.low} to ${waitWeeks.high} weeks after the old cock is gone before you keep eggs to hatch.`,
    says: [
      `A hen stores live sperm for ${spermWeeks.low} to ${spermWeeks.high} weeks.`,
      'With both cocks in turn the newest tends to sire most chicks, but not all: for a sure sire wait out the time.',
    ],
  }
}

type Ratio = { readonly low: number; readonly high: number }
const to = ({ low, high }: Ratio): string => `${low} to ${high}`

function ratioOf(bird: BirdRef): { readonly ratio: Ratio; readonly kind: string } {
  const { stocks } = birdAsBred(bird, 'M')
  const stock = stocks[0]!
  if (stock.type === 'bantam') return { ratio: hensPerCock.bantam, kind: 'a bantam' }
  if (stock.cockKg.likely >= hensPerCock.giantFromKg) return { ratio: hensPerCock.giant, kind: 'a very heavy breed' }
  return stock.type === 'heavy'
    ? { ratio: hensPerCock.heavy, kind: 'a heavy breed' }
    : { ratio: hensPerCock.light, kind: 'a light breed' }
}

/** A hen or two over the usual number do no harm. */
const slack = 0.15

/** Whether so many cocks are enough for so many hens, and how many would be. */
function judged(cocks: number, hens: number, { low, high }: Ratio, whose: string): string {
  const many = (n: number): string => `${n} cock${n === 1 ? '' : 's'}`
  const fewest = Math.max(1, Math.ceil(hens / high - slack))
  const usual = Math.max(fewest, Math.ceil(hens / low - slack))
  const by = `a cock${whose} serves ${low} to ${high} hens`
  if (cocks < fewest)
    return `Too few cocks: ${by}; for ${hens} keep ${fewest === usual ? many(usual) : `${fewest} or ${usual}`}.`
  if (cocks > usual)
    return `More cocks than enough: ${by}; ${many(fewest)} will do for ${hens}, and too many wear the hens bare.`
  return cocks < usual ? `Just enough: ${by}; ${usual} for ${hens} would be safer.` : `Enough: ${by}.`
}

export function ratio(question: HatchQuestion): Found {
  const all = `Light breeds ${to(hensPerCock.light)} hens to a cock, heavy ones ${to(hensPerCock.heavy)}, the largest such as Brahmas ${to(hensPerCock.giant)}.`
  const says = [
    all,
    'A young keen cock serves more, an old, fluffy or winter-worn one fewer; a spare cock is the insurance.',
  ]
  const cock = question.mating?.sire ?? question.cock
  const any: Ratio = { low: hensPerCock.giant.low, high: hensPerCock.light.high }
  const own = cock ? ratioOf(cock) : undefined
  if (question.hens !== undefined && question.cocks !== undefined)
    return {
      summary: judged(
        question.cocks,
        question.hens,
        own?.ratio ?? { low: hensPerCock.heavy.low, high: hensPerCock.light.high },
        own ? ` of ${own.kind}` : '',
      ),
      says,
    }
  return own
    ? { summary: `For ${own.kind}: one cock to ${to(own.ratio)} hens.`, says }
    : { summary: `One cock to about ${to(any)} hens, by weight of breed.`, says }
}

const inHundred = (chance: number): string =>
  chance < 0.005 ? 'under 1 in 100' : `about ${Math.round(chance * 100)} in 100`

/** How often plain luck gives so lopsided a hatch, on the side it leans to. */
export function sexRatio(question: HatchQuestion): Found {
  const { males, chicks } = question
  const always = 'The hen settles the sex when she ovulates; egg shape, incubator heat and the moon do not change it.'
  if (males === undefined || chicks === undefined || males > chicks)
    return {
      summary: 'About half of all chicks are cockerels; single hatches lean either way by luck.',
      says: [always],
    }
  const maleShare = 1 - hatching.femaleShare
  const many = males * 2 >= chicks
  const chance = many ? chanceOfAtLeast(males, chicks, maleShare) : chanceOfAtMost(males, chicks, maleShare)
  const which = many ? `${males} or more` : `${males} or fewer`
  return {
    chance,
    summary: `Plain luck: ${which} cockerels among ${chicks} chicks comes up ${inHundred(chance)} hatches.`,
    says: [always],
  }
}
