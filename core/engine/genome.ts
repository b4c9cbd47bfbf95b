// core/engine/genome.ts: loci, linkage groups, and the numbers that stand for genotypes.
import type { Chromosome } from '../vocabulary.ts'
import type { Ratio } from './num.ts'

/** A locus as the engine knows it: alleles by number, in the order of `alleles`. */
export type GeneLocus = {
  readonly id: string
  readonly on: Chromosome
  readonly alleles: readonly string[]
  /** How often each allele is met among unrelated birds. */
  readonly freqs?: readonly Ratio[] | undefined
}

/** Loci by number in map order; `r[i]` lies between loci i and i+1. Cocks alone recombine on the Z. */
export type GeneGroup = { readonly on: Chromosome; readonly loci: readonly number[]; readonly r: readonly Ratio[] }

export type Genome = { readonly loci: readonly GeneLocus[]; readonly groups: readonly GeneGroup[] }

/*
 * Unordered pairs out of n kinds (alleles of a locus, or haplotypes of a group) are numbered 0 to
 * n(n+1)/2 - 1; after them come the n single ones, which a hen has on her one Z. No effect of the
 * parent an allele came from is modelled, so ordered pairs would be waste.
 */
export const pairCode = (a: number, b: number): number => (a <= b ? (b * (b + 1)) / 2 + a : (a * (a + 1)) / 2 + b)
export const pairCount = (kinds: number): number => (kinds * (kinds + 1)) / 2
export const singleCode = (a: number, kinds: number): number => pairCount(kinds) + a

/** The two kinds of a pair, lower first, or the one kind of a single. */
export function kindsOf(code: number, kinds: number): readonly [number, number] | readonly [number] {
  if (code >= pairCount(kinds)) return [code - pairCount(kinds)]
  const b = Math.floor((Math.sqrt(8 * code + 1) - 1) / 2)
  return [code - (b * (b + 1)) / 2, b]
}

/** Does a bird of this sex have one copy in place of two? */
export const isSingle = (on: Chromosome, sex: 'M' | 'F'): boolean => on === 'Z' && sex === 'F'
