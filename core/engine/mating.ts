// core/engine/mating.ts: a mating as it is told: two parents, each of known genotype or bred from a mating itself.
import { loci as book } from '../data/loci.ts'
import type { Genotype, LinkageGroup, Locus } from '../vocabulary.ts'
import { joinIntervals } from './meiosis.ts'
import { f64 } from './num.ts'

/**
 * How the alleles of a bird lie on its two strands where it has two unlike ones at several loci of a
 * group: `coupling` = the dominant ones together, `repulsion` = turn about, in map order.
 */
export type Phase = 'coupling' | 'repulsion'

/**
 * A parent of known genotype (loci not listed are wild), or one bred from a mating, whose `genotype` is
 * then a reading: what is known of that very bird, one allele where only one copy is told.
 * The same object, or the same `name`, in two places is the same bird.
 */
export type Parent =
  | {
      readonly genotype: Genotype
      /** Of all groups alike, or by a locus of the group. Not told: either phase, equally likely. */
      readonly phase?: Phase | Readonly<Record<string, Phase>> | undefined
      readonly name?: string | undefined
      readonly cross?: never
    }
  | { readonly cross: Mating; readonly genotype?: Genotype | undefined; readonly name?: string | undefined }

export type Mating = { readonly sire: Parent; readonly dam: Parent }

/** The chance that an embryo of this genotype, told for some loci, hatches; compared with one that surely does. */
export type Hatches = (genotype: Genotype) => number

/** The loci of one group that somebody in a pedigree lists, with the fractions between them. */
export type Listed = {
  readonly on: LinkageGroup['on']
  readonly loci: readonly string[]
  readonly r: readonly number[]
}

export function listedLoci({ sire, dam }: Mating, { on, loci, r }: LinkageGroup): Listed {
  const kept = loci.filter((locus) => lists(sire, locus) || lists(dam, locus))
  if (kept.length === loci.length) return { on, loci, r }
  const at = kept.map((locus) => loci.indexOf(locus))
  const between = at.slice(1).map((end, i) => r.slice(at[i], end).reduce((a, b) => joinIntervals(a, b, f64)))
  return { on, loci: kept, r: between }
}

const lists = (parent: Parent, locus: string): boolean =>
  parent.genotype?.[locus] !== undefined ||
  (parent.cross !== undefined && (lists(parent.cross.sire, locus) || lists(parent.cross.dam, locus)))

const locusOf = (id: string): Locus | undefined => (book as Readonly<Record<string, Locus>>)[id]

export const wildPair = (locus: string): readonly string[] => {
  const wild = locusOf(locus)?.wild ?? '+'
  return [wild, wild]
}

const rank = (locus: string, allele: string): number => locusOf(locus)?.alleles.indexOf(allele) ?? 0

/** Two alleles as a genotype is written; alleles the book does not know keep the order given. */
export const dominantFirst = (locus: string, one: string, other: string): readonly string[] =>
  one === other || rank(locus, one) <= rank(locus, other) ? [one, other] : [other, one]
