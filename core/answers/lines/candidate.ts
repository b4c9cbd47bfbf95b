// core/answers/lines/candidate.ts: one line or cross with everything by which it is compared.
import type { LinesAnswer } from '../../answer.ts'
import { broodyDays, broodyRate } from '../../hen/broody.ts'
import { coldScore, flightiness, hardinessOf, heatScore, sharpness, temperWords } from '../../hen/character.ts'
import { carcassKg, henFigures, type HenFigures } from '../../hen/expect.ts'
import { feedOf } from '../../hen/feed.ts'
import { birdAsBred } from '../../hen/lineage.ts'
import { costPerDozen, incomeLessFeed, keepUntilYear, type Prices } from '../../hen/money.ts'
import { roundedSpan } from '../../hen/span.ts'
import { eggsTogether, yearsShown, yearsWorthKeeping } from '../../hen/years.ts'
import type { BirdRef } from '../../question.ts'
import { seenBird } from '../../cross/seen.ts'
import { nameOf } from './words.ts'
import type { Span } from '../../vocabulary.ts'

export type Option = LinesAnswer['options'][number]

/** `keeps`: laying years worth her keep while no price is told. */
export type Candidate = {
  readonly bird: BirdRef
  readonly name: string
  readonly figures: HenFigures
  readonly eggsThreeYears: Span
  readonly feedKgPerDozen: Span // of the first laying year
  readonly carcassKg: Span
  readonly broody: Span
  readonly flight: number
  readonly sharp: number
  readonly cold: number
  readonly heat: number
  readonly keeps: Span
}

export function candidate(bird: BirdRef): Candidate {
  const [hen, cock] = [birdAsBred(bird, 'F'), birdAsBred(bird, 'M')]
  const figures = henFigures(hen, cock)
  return {
    bird,
    name: nameOf(bird),
    figures,
    eggsThreeYears: eggsTogether(figures.eggsByYear.slice(0, 3)),
    feedKgPerDozen: feedOf({
      weightKg: figures.henKg,
      eggsPerYear: figures.eggsFirstYear,
      eggWeightGrams: figures.eggWeightGrams,
    }).kgPerDozen,
    carcassKg: carcassKg(figures.cockKg),
    broody: broodyRate(hen),
    flight: flightiness(hen),
    sharp: sharpness(hen),
    cold: coldScore(hen),
    heat: heatScore(hen),
    keeps: yearsWorthKeeping(hen),
  }
}

function moneyOf({ figures }: Candidate, { feedPerKg, eggsPerDozen, chick }: Prices): Option['money'] {
  if (feedPerKg === undefined) return undefined
  const sold = eggsPerDozen !== undefined
  return {
    costPerDozen: costPerDozen(figures, feedPerKg, chick),
    incomeLessFeedByYear: sold ? incomeLessFeed(figures, feedPerKg, eggsPerDozen, yearsShown) : [],
    keepUntilYear: sold ? keepUntilYear(figures, feedPerKg, eggsPerDozen) : null,
  }
}

const span = ({ low, high }: Span): string => (low === high ? `${low}` : `${low} to ${high}`)

export function optionOf(one: Candidate, prices: Prices, why: string): Option {
  const { daughter } = one.figures
  const hardy = hardinessOf(daughter)
  const money = moneyOf(one, prices)
  return {
    name: one.name,
    bird: seenBird(one.bird),
    eggsThreeYears: roundedSpan(one.eggsThreeYears, 5),
    eggsByYear: one.figures.eggsByYear.map((year) => roundedSpan(year, 1)),
    feedKgPerDozen: roundedSpan(one.feedKgPerDozen, 0.05),
    carcassKg: roundedSpan(one.carcassKg, 0.05),
    broodyDays: roundedSpan(broodyDays(one.broody), 1),
    hardiness: `cold ${hardy.cold}, heat ${hardy.heat}`,
    temper: temperWords(daughter),
    keep: `Worth keeping ${span(one.keeps)} laying years.`,
    ...(money ? { money } : {}),
    why,
  }
}
