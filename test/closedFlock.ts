// test/closedFlock.ts: made-up flocks for tests and benches, the same for the same seed.
import { ratio, rational } from '../core/engine/num.ts'
import type { Bird, Pedigree } from '../core/engine/pedigree.ts'
import { readState, type Trait } from '../core/engine/trait.ts'

/** Even random numbers in [0, 1): mulberry32. */
export function random(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32
  }
}

/** Recessive white, which shows in birds with two copies alone. Genotype codes: 0 C/C, 1 C/c, 2 c/c. */
export const white: Trait = {
  id: 'white',
  loci: [0],
  states: ['coloured', 'white'],
  given: (_sex, [code]) => (code === 2 ? [rational.zero, rational.one] : [rational.one, rational.zero]),
}
export const genome: Pedigree['genome'] = {
  loci: [{ id: 'C', on: 'A', alleles: ['C', 'c'], freqs: [ratio(17n, 20n), ratio(3n, 20n)] }],
  groups: [{ on: 'A', loci: [0], r: [] }],
}

export type FlockShape = {
  readonly birds: number
  readonly cocks: number
  readonly hens: number
  readonly chicks: number
}

/**
 * A closed flock with one recessive: every generation some of the last one's chicks breed, each hen goes to
 * one cock, and four birds of five are read without mistake. Genes are dropped down the pedigree first, so
 * the readings can be true.
 */
export function closedFlock({ birds, cocks, hens, chicks }: FlockShape, seed: number): Pedigree {
  const draw = random(seed)
  const pick = <T>(from: readonly T[]): T => from[Math.floor(draw() * from.length)]!
  const made: Bird[] = []
  const genes: (readonly [number, number])[] = []
  const founder = (): number => (draw() < 0.15 ? 1 : 0)
  const add = (sex: 'M' | 'F', parents?: { readonly sire: number; readonly dam: number }): number => {
    const pair = parents
      ? ([pick(genes[parents.sire]!), pick(genes[parents.dam]!)] as const)
      : ([founder(), founder()] as const)
    const readings = draw() < 0.8 ? [readState(white, pair[0] + pair[1] === 2 ? 1 : 0)] : []
    genes.push(pair)
    return made.push({ id: `b${made.length}`, sex, ...(parents ? { parents } : {}), readings }) - 1
  }
  let sires = Array.from({ length: cocks }, () => add('M'))
  let dams = Array.from({ length: hens }, () => add('F'))
  while (made.length < birds) {
    const cockOf = dams.map((_, i) => sires[i % sires.length]!)
    const born: number[] = []
    for (let i = 0; i < chicks && made.length < birds; i += 1) {
      const hen = Math.floor(draw() * dams.length)
      born.push(add(draw() < 0.5 ? 'M' : 'F', { sire: cockOf[hen]!, dam: dams[hen]! }))
    }
    const some = (sex: 'M' | 'F', n: number, last: readonly number[]): readonly number[] => {
      const all = born.filter((bird) => made[bird]!.sex === sex)
      const chosen = Array.from(
        { length: Math.min(n, all.length) },
        () => all.splice(Math.floor(draw() * all.length), 1)[0]!,
      )
      return chosen.length > 0 ? chosen : last
    }
    sires = [...some('M', cocks, sires)]
    dams = [...some('F', hens, dams)]
  }
  return { genome, birds: made }
}
