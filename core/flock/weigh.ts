// core/flock/weigh.ts: the chance that a bird of a told flock carries the debated allele, and on what footing.
import { askBird } from '../engine/ask.ts'
import { conflict } from '../engine/conflict.ts'
import { fractions } from '../engine/factor.ts'
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
export function weigh(debated: Debated, flock: readonly Member[], name: string): Weighed {
  const bird = flock.findIndex((member) => member.name === name)
  const founders = flock.flatMap((member, i) =>
    isFounder(member) && copiesLeft(debated, member).length > 1 ? [i] : [],
  )
  const asked = founders.includes(bird)
  const others = founders.filter((founder) => founder !== bird)
  const own: [number, Taken][] = asked ? [[bird, 'either']] : []
  for (let carriers = 0; carriers <= Math.min(mostCarriers, others.length); carriers += 1) {
    const ways = choose(others, carriers).map(
      (some) => new Map<number, Taken>([...own, ...some.map((i) => [i, 'one more'] as const)]),
    )
    const found = mean(ways.flatMap((taken) => outcomeOf(debated, flock, bird, taken) ?? []))
    if (found === undefined) continue
    if (asked) return { kind: 'chance', ...found, footing: bears(flock, name) ? 'even' : 'open' }
    if (!rational.isZero(found.p) || isFree(debated, flock, bird, others))
      return { kind: 'chance', ...found, footing: 'told' }
    return weigh(debated, flock.with(bird, { ...flock[bird]!, sire: undefined, dam: undefined }), name)
  }
  const open = new Map<number, Taken>(founders.map((founder) => [founder, 'either']))
  const last = outcomeOf(debated, flock, bird, open)
  if (last !== undefined) return { kind: 'chance', ...last, footing: 'even' }
  return { kind: 'conflict', readings: conflictIn(debated, flock) }
}

const mostCarriers = 3
const isFounder = ({ sire, dam }: Member): boolean => sire === undefined && dam === undefined

/** Is anything read of a bird descended from this one? */
const bears = (flock: readonly Member[], name: string): boolean =>
  flock.some(
    (member) =>
      (member.sire === name || member.dam === name) && (member.readings.length > 0 || bears(flock, member.name)),
  )

/** Even with every unknown founder open the bird cannot carry it. */
function isFree(debated: Debated, flock: readonly Member[], bird: number, others: readonly number[]): boolean {
  const all = outcomeOf(debated, flock, bird, new Map(others.map((founder) => [founder, 'either'])))
  return all !== undefined && rational.isZero(all.p)
}

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

export function pedigreeOf(debated: Debated, flock: readonly Member[], taken: ReadonlyMap<number, Taken>): Pedigree {
  const number = new Map(flock.map(({ name }, i) => [name, i]))
  const unnamed: Bird[] = []
  const parent = (name: string | undefined, sex: 'M' | 'F'): number => {
    if (name !== undefined) return number.get(name)!
    unnamed.push({ id: `unnamed ${unnamed.length}`, sex, prior: priorOf([0], mostCopies(debated, sex)), readings: [] })
    return flock.length + unnamed.length - 1
  }
  const birds = flock.map((member, i): Bird => {
    const founder = isFounder(member)
    const of = mostCopies(debated, member.sex)
    return {
      id: member.name,
      sex: member.sex,
      parents: founder ? undefined : { sire: parent(member.sire, 'M'), dam: parent(member.dam, 'F') },
      prior: founder ? priorOf(copiesTaken(copiesLeft(debated, member), of, taken.get(i) ?? 'fewest'), of) : undefined,
      readings: member.readings,
      copies: member.chicks?.count,
    }
  })
  return { genome: debated.genome, birds: [...birds, ...unnamed] }
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
