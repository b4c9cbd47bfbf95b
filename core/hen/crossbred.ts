// core/hen/crossbred.ts: a bird as the hen model takes it: the lines it is made of, how they are mixed, where they meet.
import { distance } from './distance.ts'
import { crossedShare, gameteOf, type Genome } from './genome.ts'
import type { Stock } from './stock.ts'

/** Two lines that meet in a bird: at what share of its loci, and how far apart they stand. */
export type Meeting = {
  readonly one: Stock
  readonly other: Stock
  readonly crossed: number
  readonly distance: number
}

/** `wholes` and `zs`: share of all its genes, and of its Z, by line, in the order of `stocks`; each adds to 1. */
export type Crossbred = {
  readonly genome: Genome
  readonly stocks: readonly Stock[]
  readonly wholes: readonly number[]
  readonly zs: readonly number[]
  readonly meetings: readonly Meeting[]
}

function meetingsOf(genome: Genome, stocks: readonly Stock[]): readonly Meeting[] {
  return stocks.flatMap((one, at) =>
    stocks.slice(at + 1).flatMap((other) => {
      const crossed = crossedShare(genome, one.id, other.id)
      return crossed > 0 ? [{ one, other, crossed, distance: distance(one, other) }] : []
    }),
  )
}

export function crossbred(genome: Genome, stocks: readonly Stock[]): Crossbred {
  const whole = gameteOf(genome)
  return {
    genome,
    stocks,
    wholes: stocks.map(({ id }) => whole.get(id) ?? 0),
    zs: stocks.map(({ id }) => genome.zs.reduce((sum, z) => sum + (z.get(id) ?? 0), 0) / genome.zs.length),
    meetings: meetingsOf(genome, stocks),
  }
}

/** Share of a bird's own worth by line: all chromosomes alike, but a part `onZ` by its Z, which in a hen is her sire's alone. */
export const lineShares = (bird: Crossbred, onZ: number): readonly number[] =>
  bird.wholes.map((whole, at) => (1 - onZ) * whole + onZ * bird.zs[at]!)

/** Mean of a figure of the lines, by share of genes. */
export const lineMean = (bird: Crossbred, of: (stock: Stock) => number): number =>
  bird.stocks.reduce((sum, stock, at) => sum + bird.wholes[at]! * of(stock), 0)
