// test/genotypes.ts: any genotype of either sex, for laws that hold over all of them.
import * as fc from 'fast-check'
import { loci, locusIds, type LocusId } from '../core/data/loci.ts'
import { inOrder } from '../core/genotype.ts'
import type { Genotype, Sex } from '../core/vocabulary.ts'

const allele = (id: LocusId) => fc.constantFrom<string>(...loci[id].alleles)
const pair = (id: LocusId, sex: Sex): fc.Arbitrary<readonly string[]> =>
  loci[id].on === 'Z' && sex === 'F'
    ? allele(id).map((one) => [one])
    : fc.oneof(
        allele(id).map((one) => [one, one]),
        fc.tuple(allele(id), allele(id)).map((two) => inOrder(id, two)),
      )

const sexes = fc.constantFrom<Sex>('M', 'F')

/** Every locus listed. */
export const genotypeOf = (sex: Sex): fc.Arbitrary<Genotype> =>
  fc
    .tuple(...locusIds.map((id) => pair(id, sex)))
    .map((pairs) => Object.fromEntries(locusIds.map((id, i) => [id, pairs[i]!])))

/** A sex with a full genotype of it. */
export const birds = sexes.chain((sex) => genotypeOf(sex).map((genotype) => ({ sex, genotype })))

/** A sex with some loci listed. */
export const partBirds = birds.chain(({ sex, genotype }) =>
  fc.subarray([...locusIds], { minLength: 1 }).map((kept) => ({
    sex,
    genotype: Object.fromEntries(kept.map((id) => [id, genotype[id]!])),
  })),
)
