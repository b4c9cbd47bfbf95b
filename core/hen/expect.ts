// core/hen/expect.ts: the hen to expect from a mating: what the daughters lay, weigh, eat and are like.
import type { Hen } from '../answer.ts'
import type { Span, Status } from '../vocabulary.ts'
import { carcass } from '../data/hen/laying.ts'
import { crossing } from '../data/hen/crossing.ts'
import { broodyRate, broodyWords } from './broody.ts'
import { hardinessOf, temperWords } from './character.ts'
import type { Crossbred } from './crossbred.ts'
import { feedOf } from './feed.ts'
import { birdAsBred, youngOf, type Mating } from './lineage.ts'
import { weightAt } from './growth.ts'
import { lineWords } from './lineWords.ts'
import { livingOf } from './living.ts'
import { shellOf, type BlueShare } from './shell.ts'
import { boundedSpan, roundedSpan, spanThrough } from './span.ts'
import { crossbredTrait } from './trait.ts'
import { vigourOf } from './vigour.ts'
import { eggsByYear, yearsWorthKeeping } from './years.ts'
import type { BirdRef } from '../question.ts'

/** What the model computes before rounding: the figures that other answers build on. */
export type HenFigures = {
  readonly daughter: Crossbred
  readonly eggsFirstYear: Span
  readonly eggsByYear: readonly Span[]
  readonly eggWeightGrams: Span
  readonly henKg: Span
  readonly cockKg: Span
  readonly ageFirstEggDays: Span
}

/** Figures of a female and her brothers. */
export function henFigures(daughter: Crossbred, son: Crossbred): HenFigures {
  const eggsFirstYear = boundedSpan(
    crossbredTrait(daughter, crossing.eggsFirstYear, (s) => s.eggsFirstYear),
    0,
    365,
  )
  return {
    daughter,
    eggsFirstYear,
    eggsByYear: eggsByYear(daughter, eggsFirstYear),
    eggWeightGrams: crossbredTrait(daughter, crossing.eggWeight, (s) => s.eggWeightGrams),
    henKg: crossbredTrait(daughter, crossing.bodyWeight, (s) => s.henKg, 'ratio'),
    cockKg: crossbredTrait(son, crossing.bodyWeight, (s) => s.cockKg, 'ratio'),
    ageFirstEggDays: crossbredTrait(daughter, crossing.ageFirstEgg, (s) => s.ageFirstEggDays),
  }
}

/** Dressed weight of a cockerel at sixteen weeks, kg, from what he would weigh grown. */
export const carcassKg = (cockKg: Span): Span =>
  spanThrough(
    [cockKg, carcass.forward, carcass.dressedShare],
    ([kg, forward, dressed]) => weightAt(carcass.weeks, kg!) * forward! * dressed!,
  )

const worst = (statuses: readonly Status[]): Status =>
  statuses.includes('from memory') ? 'from memory' : statuses.includes('common practice') ? 'common practice' : 'read'

function henOf(figures: HenFigures, blue: readonly BlueShare[], line: string): Hen {
  const { daughter } = figures
  const feed = feedOf({
    weightKg: figures.henKg,
    eggsPerYear: figures.eggsFirstYear,
    eggWeightGrams: figures.eggWeightGrams,
  })
  const rate = broodyRate(daughter)
  return {
    eggsFirstYear: roundedSpan(figures.eggsFirstYear, 1),
    eggsByYear: figures.eggsByYear.map((year) => roundedSpan(year, 1)),
    ageFirstEggDays: roundedSpan(figures.ageFirstEggDays, 1),
    shell: shellOf(daughter, blue),
    eggWeightGrams: roundedSpan(figures.eggWeightGrams, 0.5),
    bodyWeightKg: roundedSpan(figures.henKg, 0.05),
    cockWeightKg: roundedSpan(figures.cockKg, 0.05),
    feedGramsPerDay: roundedSpan(feed.gramsPerDay, 1),
    feedKgPerDozen: roundedSpan(feed.kgPerDozen, 0.05),
    broody: { rate: roundedSpan(rate, 0.01), words: broodyWords(rate.likely) },
    temper: temperWords(daughter),
    hardiness: hardinessOf(daughter),
    yearsWorthKeeping: yearsWorthKeeping(daughter),
    liveability: roundedSpan(livingOf(daughter), 0.01),
    carcassKg: roundedSpan(carcassKg(figures.cockKg), 0.05),
    line,
    ...vigourOf(daughter),
    status: worst(['from memory', ...daughter.stocks.map((stock) => stock.status)]),
  }
}

/**
 * The daughters of a mating. Every figure is a range and, being computed from lines and parameters that are largely
 * judgement, carries the status 'from memory': it is shown hedged, never as a promise.
 *
 * @param pulletShellBlue copies of blue among the daughters, by share; from their looks
 */
export const expectHen = (mating: Mating, pulletShellBlue: readonly BlueShare[]): Hen =>
  henOf(henFigures(youngOf(mating, 'F'), youngOf(mating, 'M')), pulletShellBlue, lineWords(mating))

/** The same for one bird as it stands: a line bred pure, or a cross-bred bird. */
export const henAsBred = (bird: BirdRef, shellBlue: readonly BlueShare[]): Hen =>
  henOf(henFigures(birdAsBred(bird, 'F'), birdAsBred(bird, 'M')), shellBlue, '')
