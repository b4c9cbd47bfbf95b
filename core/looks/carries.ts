// core/looks/carries.ts: what a genotype carries, asked by allele; a locus that is not listed is wild type.
import { loci, locusIds, type AlleleId, type LocusId } from '../data/loci.ts'
import type { Genotype, Sex } from '../vocabulary.ts'

export type Bird = { readonly sex: Sex; readonly genotype: Genotype }

type Place = { readonly locus: LocusId; readonly wild: boolean; readonly onZ: boolean }
const places: ReadonlyMap<string, Place> = new Map(
  locusIds.flatMap((locus) =>
    loci[locus].alleles.map((allele): [string, Place] => [
      allele,
      { locus, wild: loci[locus].wild === allele, onZ: loci[locus].on === 'Z' },
    ]),
  ),
)

/** Copies of an allele: 0, 1 or 2; a hen has at most 1 at a Z locus. */
export function copies({ sex, genotype }: Bird, allele: AlleleId): number {
  const { locus, wild, onZ } = places.get(allele)!
  const carried = genotype[locus]
  if (carried === undefined) return wild ? (onZ && sex === 'F' ? 1 : 2) : 0
  let found = 0
  for (const one of carried) if (one === allele) found += 1
  return found
}

/** At least one copy. */
export const has = (bird: Bird, allele: AlleleId): boolean => copies(bird, allele) > 0

/** Every copy the bird has at that locus: two, or a hen's one at a Z locus. */
export function pure(bird: Bird, allele: AlleleId): boolean {
  const { locus, wild } = places.get(allele)!
  return bird.genotype[locus]?.every((one) => one === allele) ?? wild
}
