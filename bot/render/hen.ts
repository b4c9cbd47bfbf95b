// bot/render/hen.ts: the hens to expect from a mating, in one line, or one line for each thing asked.
import { line, strong } from './document.ts'
import { or, share } from './numbers.ts'
import { capital } from './tame.ts'
import { estimate, grams, gramsRange, kilograms, kilogramsRange, range } from './measures.ts'
import type { Block } from './document.ts'
import type { Hen } from '../../core/answer.ts'
import type { Aspect, Manner } from '../../core/question.ts'

type Units = Manner['units']

/** A share of inheritance rather than of shade: a half, a quarter, three quarters, to within a hundredth. */
const plain = (of: number): number | undefined => [1 / 2, 1 / 4, 3 / 4].find((p) => Math.abs(p - of) < 0.01)

/** 'brown', 'half olive, the rest dark brown or brown', 'mostly cream, some white', 'brown or light brown'. */
export function shellWords({ shell }: Hen): string {
  const [first, ...others] = shell.filter((s) => s.share > 0.04)
  if (!first) return 'as the cases say'
  const rest = or(others.map((s) => s.colour))
  if (others.length === 0) return first.colour
  const exact = plain(first.share)
  if (exact !== undefined) return `${share(exact)} ${first.colour}, the rest ${rest}`
  return first.share > 0.6 ? `mostly ${first.colour}, some ${rest}` : or([first, ...others].map((s) => s.colour))
}

const eggs = (hen: Hen): string => `${estimate(hen.eggsFirstYear, hen.status, 'eggs')} in the first laying year`

/** Eggs, shell, size and temper: what a keeper would ask next. */
export function henLine(hen: Hen, units: Units): Block {
  const rest = [
    hen.shell.length > 0 ? `shells ${shellWords(hen)}` : '',
    kilograms(hen.bodyWeightKg.likely, units),
    hen.temper,
  ].filter(Boolean)
  return line(
    strong('Hens to expect: '),
    `${eggs(hen)}; ${rest.join('; ')}.${hen.line ? ` ${capital(hen.line)}.` : ''}`,
  )
}

/** What sets these lines apart, where the lines matter. */
export const lineNote = (hen: Hen): readonly Block[] => (hen.line ? [line(`${capital(hen.line)}.`)] : [])

const byYear = (hen: Hen): string => hen.eggsByYear.slice(0, 4).map(range).join(', then ')

const keep = (hen: Hen): string =>
  hen.yearsWorthKeeping ? ` Worth keeping for eggs about ${range(hen.yearsWorthKeeping)} years.` : ''

/** How far apart the lines stand, and what that adds. */
export const vigour = (hen: Hen): readonly Block[] =>
  hen.vigour === undefined ? [] : [line(`Taken as ${hen.vigour}.`)]

/** One sentence an aspect; aspects that are not of the hen give none. */
const aspects: Partial<Record<Aspect, (hen: Hen, units: Units) => string>> = {
  eggs: (hen, units) =>
    `Eggs year by year: perhaps ${byYear(hen)}; ${grams(hen.eggWeightGrams.likely, units)} each${hen.shell.length > 0 ? `; shells ${shellWords(hen)}` : ''}.${keep(hen)}`,
  shell: (hen) => (hen.shell.length > 0 ? `Shells: ${shellWords(hen)}.` : ''),
  size: (hen, units) =>
    `Size: hens ${kilograms(hen.bodyWeightKg.likely, units)}, cocks ${kilograms(hen.cockWeightKg.likely, units)}; a dressed cockerel ${kilograms(hen.carcassKg.likely, units)}.`,
  'egg-size': (hen, units) =>
    `Eggs: perhaps ${gramsRange(hen.eggWeightGrams, units)}; pullets begin with smaller ones.`,
  vigour: (hen) => (hen.vigour === undefined ? '' : `Taken as ${hen.vigour}.`),
  meat: (hen, units) =>
    `For the pot, at sixteen weeks: perhaps ${kilogramsRange(hen.carcassKg, units)} dressed; grown, cocks weigh ${kilograms(hen.cockWeightKg.likely, units)}.`,
  temper: (hen) => `Temper: ${hen.temper}.`,
  broody: (hen) => `Broodiness: ${hen.broody.words}.`,
  hardiness: (hen) => `Cold: ${hen.hardiness.cold}. Heat: ${hen.hardiness.heat}.`,
  feed: (hen, units) =>
    `Feed: about ${grams(hen.feedGramsPerDay.likely, units)} a day, ${kilograms(hen.feedKgPerDozen.likely, units)} a dozen eggs.`,
  maturity: (hen) =>
    `First egg at ${or([range({ low: hen.ageFirstEggDays.low / 7, likely: hen.ageFirstEggDays.likely / 7, high: hen.ageFirstEggDays.high / 7 })])} weeks.`,
}

/** What the verdict says by itself when nothing else was asked. */
const inVerdict: Partial<Record<Aspect, (hen: Hen) => string>> = {
  shell: shellWords,
  temper: (hen) => hen.temper,
  broody: (hen) => hen.broody.words,
  hardiness: ({ hardiness }) => `cold ${hardiness.cold}, heat ${hardiness.heat}`,
  maturity: () => 'first egg',
}

/** The lines that were asked for, in the order asked; what the verdict has said is not said again. */
export const henAspects = (hen: Hen, asked: readonly Aspect[], units: Units, verdict: string): readonly Block[] =>
  asked.flatMap((aspect) => {
    const said = inVerdict[aspect]
    const words = said && verdict.includes(said(hen)) ? undefined : aspects[aspect]?.(hen, units)
    return words ? [line(words)] : []
  })

/** All that was asked of them, in one line. */
export const henWords = (hen: Hen, asked: readonly Aspect[], units: Units): string =>
  asked.flatMap((aspect) => aspects[aspect]?.(hen, units) ?? []).join(' ')

export const isOfTheHen = (aspect: Aspect): boolean => aspect in aspects
