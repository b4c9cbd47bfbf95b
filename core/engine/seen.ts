// core/engine/seen.ts: readings and questions as functions of diplotypes, once the alleles are lumped.
import type { Sex } from '../vocabulary.ts'
import { type Genome, isSingle, singleCode } from './genome.ts'
import { genotypesOf, type Lumped } from './lump.ts'
import type { Genotypes } from './trait.ts'

/** Something that depends on the diplotypes of a bird in some lumped groups, and on its sex. */
export type Seen<R> = {
  /** Lumped groups by number, rising. */
  readonly groups: readonly number[]
  /** `diplotypes` in the order of `groups`. */
  readonly at: (sex: Sex, diplotypes: readonly number[]) => R
}

/**
 * A function of genotypes seen through lumping: each genotype is put together from stand-in alleles,
 * which by construction makes no difference to the value.
 */
export function seenThrough<R>(
  genome: Genome,
  lumped: readonly Lumped[],
  of: { readonly loci: readonly number[]; readonly value: (sex: Sex, genotypes: Genotypes) => R },
): Seen<R> {
  const groupOf = (locus: number): number => lumped.findIndex(({ loci }) => loci.includes(locus))
  const groups = [...new Set(of.loci.map(groupOf))].filter((group) => group >= 0).toSorted((a, b) => a - b)
  const places = of.loci.map((locus) => {
    const group = groupOf(locus)
    return { locus, slot: groups.indexOf(group), at: lumped[group]?.loci.indexOf(locus) ?? -1 }
  })
  const at = (sex: Sex, diplotypes: readonly number[]): R => {
    const parts = groups.map((group, slot) => genotypesOf(lumped[group]!, genome, diplotypes[slot]!))
    const any = (locus: number): number => anyGenotype(genome, locus, sex)
    return of.value(
      sex,
      places.map(({ locus, slot, at }) => (slot < 0 ? any(locus) : parts[slot]![at]!)),
    )
  }
  return { groups, at }
}

/** A genotype at a locus whose alleles all do the same. */
const anyGenotype = (genome: Genome, locus: number, sex: Sex): number => {
  const { on, alleles } = genome.loci[locus]!
  return isSingle(on, sex) ? singleCode(0, alleles.length) : 0
}
