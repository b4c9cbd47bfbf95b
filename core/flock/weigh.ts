// core/flock/weigh.ts: the chance that a bird of a told flock carries the debated allele, and on what footing.
import { askBird } from '../engine/ask.ts'
import { conflict } from '../engine/conflict.ts'
import { fractions } from '../engine/fractions.ts'
import { askCarries } from '../engine/item.ts'
import { type Ratio, ratio, rational } from '../engine/num.ts'
import type { Bird, Pedigree, Prior } from '../engine/pedigree.ts'
import { type Debated, mostCopies } from './debated.ts'
import { copiesLeft, type Member } from './member.ts'

/**
 * `told`: the pedigree decides. `even`: nobody tells where this bird has its genes from, so it was taken as
 * an even chance before its chicks. `open`: nothing told bears on it.
 */
export type Footing = 'told' | 'even' | 'open'
export type Weighed =
  | { readonly kind: 'chance'; readonly p: Ratio; readonly evidence: Ratio; readonly footing: Footing }
  | { readonly kind: 'conflict'; readonly readings: readonly { readonly bird: string; readonly reading: string }[] }

/** How many copies a founder is taken to have where its own readings leave it open. */
type Taken = 'fewest' | 'one more' | 'either' | 'anything'

/**
 * The chance that a bird carries the allele. Birds of whom nothing is told are taken to be free of it, as
 * far as the readings allow: if they need a carrier among such birds, every smallest set of carriers that
 * explains them counts alike. That is the limit of a rare allele, and it keeps 1/2 and 2/3 what they are.
 */
export function weigh(debated: Debated, all: readonly Member[], name: string): Weighed {
  const flock = relatives(all, name)
  const bird = flock.findIndex((member) => member.name === name)
  const open = flock.flatMap((member, i) => (isFounder(member) && copiesLeft(debated, member).length > 1 ? [i] : []))
  const ask = (taken: ReadonlyMap<number, Taken>): Found | undefined => outcomeOf(debated, flock, bird, taken)
  const either = new Map<number, Taken>(open.map((founder) => [founder, 'either']))
  const suspects = ancestorsOfCarriers(debated, flock).filter((founder) => open.includes(founder))
  const fewest = fewestCarriers(suspects, ask)
  if (fewest !== undefined && !rational.isZero(fewest.p)) return { kind: 'chance', ...fewest, footing: 'told' }
  const loosest = ask(either)
  if (loosest === undefined) return { kind: 'conflict', readings: conflictIn(debated, flock) }
  if (rational.isZero(loosest.p)) return { kind: 'chance', ...loosest, footing: 'told' }
  const footing = bears(flock, name) ? 'even' : 'open'
  if (!isFounder(flock[bird]!))
    return weigh(debated, flock.with(bird, { ...flock[bird]!, sire: undefined, dam: undefined }), name)
  const others = fewestCarriers(
    suspects.filter((founder) => founder !== bird),
    (taken) => ask(new Map([...taken, [bird, 'either']])),
  )
  return { kind: 'chance', ...(others ?? loosest), footing }
}

/** The chance over every smallest set of these founders that, as carriers, explains what was read; all others have the fewest copies. */
function fewestCarriers(
  suspects: readonly number[],
  ask: (taken: ReadonlyMap<number, Taken>) => Found | undefined,
): Found | undefined {
  for (let carriers = 0; carriers <= Math.min(mostCarriers, suspects.length); carriers += 1) {
    const chosen = choose(suspects, carriers)
    if (chosen.length > mostWays) return undefined
    const ways = chosen.map((some) => new Map<number, Taken>(some.map((founder) => [founder, 'one more'])))
    const found = mean(ways.flatMap((taken) => ask(taken) ?? []))
    if (found !== undefined) return found
  }
  return undefined
}

/** Carriers among unknown birds beyond which, and ways to place them beyond which, all are left open. */
const mostCarriers = 3
const mostWays = 500

/** Birds that must have the allele by what was read of them, and their ancestors: nobody else can have brought it. */
function ancestorsOfCarriers(debated: Debated, flock: readonly Member[]): readonly number[] {
  const numbers = new Map(flock.map(({ name }, i) => [name, i]))
  const found = new Set(flock.flatMap((member, i) => (copiesLeft(debated, member).includes(0) ? [] : [i])))
  for (const bird of found)
    for (const parent of [flock[bird]!.sire, flock[bird]!.dam])
      if (parent !== undefined) found.add(numbers.get(parent)!)
  return [...found]
}

/** Birds joined to this one by parents, chicks and mates, however far; of the others nothing follows. */
function relatives(flock: readonly Member[], name: string): readonly Member[] {
  const found = new Set([name])
  for (const one of found)
    for (const { name: chick, sire, dam } of flock) {
      const trio = [chick, sire, dam].filter((bird) => bird !== undefined)
      if (trio.includes(one)) for (const bird of trio) found.add(bird)
    }
  return flock.filter((member) => found.has(member.name))
}

const isFounder = ({ sire, dam }: Member): boolean => sire === undefined && dam === undefined

/** Is anything read of a bird descended from this one? */
const bears = (flock: readonly Member[], name: string): boolean =>
  flock.some(
    (member) =>
      (member.sire === name || member.dam === name) && (member.readings.length > 0 || bears(flock, member.name)),
  )

function choose(from: readonly number[], n: number): readonly (readonly number[])[] {
  if (n === 0) return [[]]
  return from.flatMap((first, i) => choose(from.slice(i + 1), n - 1).map((rest) => [first, ...rest]))
}

type Found = { readonly p: Ratio; readonly evidence: Ratio }

function mean(ways: readonly Found[]): Found | undefined {
  const evidence = ways.reduce((sum, way) => rational.plus(sum, way.evidence), rational.zero)
  if (rational.isZero(evidence)) return undefined
  const carried = ways.reduce((sum, way) => rational.plus(sum, rational.times(way.p, way.evidence)), rational.zero)
  return { p: rational.over(carried, evidence), evidence }
}

/** Undefined where the readings cannot be. */
export function outcomeOf(
  debated: Debated,
  flock: readonly Member[],
  bird: number,
  taken: ReadonlyMap<number, Taken>,
): Found | undefined {
  const pedigree = pedigreeOf(debated, flock, taken)
  const outcome = askBird(pedigree, bird, [askCarries(debated.genome, 0, 1)], fractions)
  if (outcome.kind !== 'answer') return undefined
  const { classes, evidence } = outcome.answer
  const p = [...classes]
    .filter(([name]) => name.endsWith('yes'))
    .reduce((sum, [, share]) => rational.plus(sum, share), rational.zero)
  return { p, evidence }
}

function pedigreeOf(debated: Debated, flock: readonly Member[], taken: ReadonlyMap<number, Taken>): Pedigree {
  const numbers = new Map(flock.map(({ name }, i) => [name, i]))
  const number = (name: string | undefined): number => numbers.get(name ?? '')!
  const birds = flock.map((member, i): Bird => {
    const founder = isFounder(member)
    const of = mostCopies(debated, member.sex)
    return {
      id: member.name,
      sex: member.sex,
      parents: founder ? undefined : { sire: number(member.sire), dam: number(member.dam) },
      prior: founder ? priorOf(copiesTaken(copiesLeft(debated, member), of, taken.get(i) ?? 'fewest'), of) : undefined,
      readings: member.readings,
      copies: member.chicks?.count,
    }
  })
  return { genome: debated.genome, birds }
}

function copiesTaken(left: readonly number[], of: 1 | 2, taken: Taken): readonly number[] {
  if (taken === 'anything' || left.length === 0) return of === 1 ? [0, 1] : [0, 1, 2]
  if (left.length === 1) return left
  return taken === 'either' ? left.slice(0, 2) : [left[taken === 'fewest' ? 0 : 1]!]
}

function priorOf(copies: readonly number[], of: 1 | 2): ReadonlyMap<number, Prior> {
  const strands = (n: number): readonly (readonly number[])[] => (of === 1 ? [[n]] : [[n > 1 ? 1 : 0], [n > 0 ? 1 : 0]])
  return new Map([[0, copies.map((n) => ({ strands: strands(n), p: ratio(1n, BigInt(copies.length)) }))]])
}

/** With every founder left open, so that what was told of the founders can be part of the conflict. */
function conflictIn(debated: Debated, flock: readonly Member[]): { bird: string; reading: string }[] {
  const pedigree = pedigreeOf(debated, flock, new Map(flock.map((_, i) => [i, 'anything'])))
  return conflict(pedigree).map(({ bird, reading }) => ({
    bird: pedigree.birds[bird]!.id,
    reading: pedigree.birds[bird]!.readings[reading]!.says,
  }))
}
