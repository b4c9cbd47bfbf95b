// core/engine/pedigree.ts: birds, their parents, what is known of the founders, and what was read.
import type { Sex } from '../vocabulary.ts'
import type { Genome } from './genome.ts'
import type { Ratio } from './num.ts'
import type { Reading } from './trait.ts'

/** What a founder may be in one group: one or two strands (an allele for each locus of the group), with the chance of it. */
export type Prior = readonly { readonly strands: readonly (readonly number[])[]; readonly p: Ratio }[]

export type Bird = {
  readonly id: string
  /** U: not known, either sex with chance 1/2. Such a bird has no chicks. */
  readonly sex: Sex | 'U'
  readonly parents?: { readonly sire: number; readonly dam: number } | undefined
  /** By group, for founders. A group without one follows from the allele frequencies, in Hardy-Weinberg and linkage equilibrium. */
  readonly prior?: ReadonlyMap<number, Prior> | undefined
  readonly readings: readonly Reading[]
  /** A bird without chicks may stand for several brothers or sisters, on each of which the same was read. */
  readonly copies?: number | undefined
}

export type Pedigree = { readonly genome: Genome; readonly birds: readonly Bird[] }
