// core/answers/hatch/rules.ts: hatch questions that a rule of the trade or a date answers, and luck with the sexes.
import { hatchDays, hatching, hensPerCock, newCock } from '../../data/hen/hatching.ts'
import { hatchDates } from '../../hen/calendar.ts'
import { henFigures } from '../../hen/expect.ts'
import { birdAsBred, youngOf, type Mating } from '../../hen/lineage.ts'
import { chanceOfAtLeast, chanceOfAtMost } from '../../hen/hatchChance.ts'
import type { BirdRef, HatchQuestion } from '../../question.ts'
import type { Span } from '../../vocabulary.ts'
import type { Found } from './counts.ts'

const weeks = (days: number): number => Math.round(days / 7)

/** Age at first egg of the daughters of this mating, days from hatch; where none is told, of any pullet. */
export function firstEggDays(mating: Mating | undefined): Span {
  if (mating) return henFigures(youngOf(mating, 'F'), youngOf(mating, 'M')).ageFirstEggDays
  const { low, likely, high } = hatchDays.pointOfLay
  return { low: low - hatchDays.hatch, likely: likely - hatchDays.hatch, high: high - hatchDays.hatch }
}

/** Made when asked for: few hatch questions name a day, and every start would pay for it. */
const dayAndMonth = (iso: string): string =>
  new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' }).format(
    new Date(`${iso}T00:00:00Z`),
  )

export function dates(question: HatchQuestion): Found {
  const lay = firstEggDays(question.mating)
  const found = question.setOn === undefined ? null : hatchDates(question.setOn, lay.likely)
  const span = `${weeks(lay.low)} to ${weeks(lay.high)} weeks`
  return {
    dates: found,
    summary: found
      ? `Hatch day is ${dayAndMonth(found.hatch)}; first eggs at ${span}.`
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

export function ratio(question: HatchQuestion): Found {
  const all = `Light breeds ${to(hensPerCock.light)} hens to a cock, heavy ones ${to(hensPerCock.heavy)}, the largest such as Brahmas ${to(hensPerCock.giant)}.`
  const says = [
    all,
    'A young keen cock serves more, an old, fluffy or winter-worn one fewer; a spare cock is the insurance.',
  ]
  if (!question.mating)
    return {
      summary: `One cock to about ${hensPerCock.giant.low} to ${hensPerCock.light.high} hens, by weight of breed.`,
      says,
    }
  const own = ratioOf(question.mating.sire)
  return { summary: `For ${own.kind}: one cock to ${to(own.ratio)} hens.`, says }
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
