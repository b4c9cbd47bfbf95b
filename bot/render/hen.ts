// bot/render/hen.ts: the hens to expect from a mating, in one line, or one line for each thing asked.
import { line, strong } from './document.ts'
import { or, share } from './numbers.ts'
import { capital } from './tame.ts'
import { estimate, grams, kilograms, range } from './measures.ts'
import type { Block } from './document.ts'
import type { Hen } from '../../core/answer.ts'
import type { Aspect, Manner } from '../../core/question.ts'

type Units = Manner['units']

const exact = (of: number): boolean => !share(of).includes('about')

/** Shares where they are those of an inherited colour; else how commonly, since shade is a matter of degree. */
function shell({ shell }: Hen): string {
  const [only, ...others] = shell.filter((s) => s.share > 0.05)
  if (!only) return ''
  if (others.length === 0) return `${only.colour} shells`
  if (shell.every((s) => exact(s.share)))
    return `shells ${shell.map((s) => `${share(s.share)} ${s.colour}`).join(', ')}`
  if (only.share > 0.6) return `mostly ${only.colour} shells, some ${or(others.map((s) => s.colour))}`
  return `${or([only, ...others].map((s) => s.colour))} shells`
}

const eggs = (hen: Hen): string => `${estimate(hen.eggsFirstYear, hen.status, 'eggs')} in the first laying year`

/** Eggs, shell, size and temper: what a keeper would ask next. */
export function henLine(hen: Hen, units: Units): Block {
  const rest = [shell(hen), kilograms(hen.bodyWeightKg.likely, units), hen.temper].filter(Boolean)
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
const vigour = (hen: Hen): string => (hen.vigour === undefined ? '' : ` Taken as ${hen.vigour}.`)

/** One sentence an aspect; aspects that are not of the hen give none. */
const aspects: Partial<Record<Aspect, (hen: Hen, units: Units) => string>> = {
  eggs: (hen, units) =>
    `Eggs year by year: perhaps ${byYear(hen)}; ${grams(hen.eggWeightGrams.likely, units)} each; ${shell(hen)}.${keep(hen)}${vigour(hen)}`,
  shell: (hen) => `Shell colour: ${hen.shell.map((s) => `${share(s.share)} ${s.colour}`).join(', ')}.`,
  size: (hen, units) =>
    `Size: hens ${kilograms(hen.bodyWeightKg.likely, units)}, cocks ${kilograms(hen.cockWeightKg.likely, units)}; a dressed cockerel ${kilograms(hen.carcassKg.likely, units)}.`,
  temper: (hen) => `Temper: ${hen.temper}.`,
  broody: (hen) => `Broodiness: ${hen.broody.words}.`,
  hardiness: (hen) => `Cold: ${hen.hardiness.cold}. Heat: ${hen.hardiness.heat}.`,
  feed: (hen, units) =>
    `Feed: about ${grams(hen.feedGramsPerDay.likely, units)} a day, ${kilograms(hen.feedKgPerDozen.likely, units)} a dozen eggs.`,
  maturity: (hen) =>
    `First egg at ${or([range({ low: hen.ageFirstEggDays.low / 7, likely: hen.ageFirstEggDays.likely / 7, high: hen.ageFirstEggDays.high / 7 })])} weeks.`,
}

/** The lines that were asked for, in the order asked. */
export const henAspects = (hen: Hen, asked: readonly Aspect[], units: Units): readonly Block[] =>
  asked.flatMap((aspect) => {
    const words = aspects[aspect]?.(hen, units)
    return words ? [line(words)] : []
  })

export const isOfTheHen = (aspect: Aspect): boolean => aspect in aspects
