// core/vocabulary.ts: the words of inheritance that every part of the project shares. Types only, no data.

/** M = cock, ZZ. F = hen, ZW: one Z, so one allele at every Z locus. */
export type Sex = 'M' | 'F'

/** How far a fact may be trusted, and so how it may be worded. */
export type Status = 'read' | 'common practice' | 'from memory'

/** Who says so. `ref` is author, year and place; for `common practice` and `from memory` it says whose practice or judgement. */
export type Citation = { readonly ref: string; readonly status: Status }

/** A = autosome, Z = the sex chromosome of which a cock has two and a hen one. */
export type Chromosome = 'A' | 'Z'

export type Locus = {
  readonly name: string
  readonly on: Chromosome
  /** Dominant first. `+` marks the wild type. No two loci share an allele symbol. */
  readonly alleles: readonly string[]
  /** What a bird carries where nothing is told or listed. */
  readonly wild: string
  /** One sentence on what it does, where no record of `core/topics.ts` is about it before all others. */
  readonly does?: string
  /** Chromosome and place on it, as far as known. */
  readonly at?: { readonly chromosome: string; readonly place?: string; readonly status: Status }
  readonly sources: readonly Citation[]
}

/**
 * Unphased genotype: locus id -> alleles, dominant first. Two alleles, or one for a hen at a Z locus.
 * A locus that is not listed is wild type.
 */
export type Genotype = Readonly<Record<string, readonly string[]>>

/** Loci of one chromosome in map order; `r[i]` is the recombination fraction between loci i and i+1 (cocks only on the Z). */
export type LinkageGroup = {
  readonly on: Chromosome
  readonly loci: readonly string[]
  readonly r: readonly number[]
  readonly sources: readonly Citation[]
  /** What is uncertain about it, in words; absent where nothing is. */
  readonly doubt?: string
}

/** Low and high bound a range that a keeper may expect to see; likely is the middle of belief. */
export type Span = { readonly low: number; readonly likely: number; readonly high: number }

export type Result<T, F> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: F }
