// core/engine/trait.ts: what a genotype shows, and what a reading says of the genotypes it may have come from.
import type { Sex } from '../vocabulary.ts'
import { type Ratio, rational } from './num.ts'

/** Genotypes by code (genome.ts), in the order of the loci that a trait or a reading names. */
export type Genotypes = readonly number[]

/** Penetrance: the chance of each state, in the order of `states`. Pure, and asked only of genotypes that can occur. */
export type Trait = {
  readonly id: string
  readonly loci: readonly number[]
  readonly states: readonly string[]
  readonly given: (sex: Sex, genotypes: Genotypes) => readonly Ratio[]
}

/**
 * Something seen on a bird: the chance of seeing it, by genotype. Readings are independent of each other
 * given the genotypes. A chance strictly between 0 and 1 is a sign that may fail or be misread.
 */
export type Reading = {
  /** Readings of the same id are the same function. */
  readonly id: string
  /** What was read, for people: 'white: coloured', 'S: S/s'. */
  readonly says: string
  readonly loci: readonly number[]
  readonly weight: (sex: Sex, genotypes: Genotypes) => Ratio
}

export const readState = (trait: Trait, state: number): Reading => ({
  id: `state ${trait.id} ${state}`,
  says: `${trait.id}: ${trait.states[state]}`,
  loci: trait.loci,
  weight: (sex, genotypes) => trait.given(sex, genotypes)[state]!,
})

export const readGenotype = (locus: number, code: number, says: string): Reading => ({
  id: `genotype ${locus} ${code}`,
  says,
  loci: [locus],
  weight: (_sex, [genotype]) => (genotype === code ? rational.one : rational.zero),
})
