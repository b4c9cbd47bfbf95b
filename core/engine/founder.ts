// core/engine/founder.ts: what a bird without told parents may be, in one lumped group.
import type { Sex } from '../vocabulary.ts'
import { type Genome, kindsOf, pairCode, singleCode } from './genome.ts'
import { diplotypesOf } from './inherit.ts'
import { classesOf, haplotypeOf, type Lumped } from './lump.ts'
import { type Ratio, rational } from './num.ts'
import type { Prior } from './pedigree.ts'

/** The chance of each diplotype: as told, or from the allele frequencies, in Hardy-Weinberg and linkage equilibrium. */
export function founderWeights(
  genome: Genome,
  lumped: Lumped,
  sex: Sex,
  prior: Prior | undefined,
): ReadonlyMap<number, Ratio> {
  return prior === undefined ? fromFrequencies(genome, lumped, sex) : fromPrior(genome, lumped, prior)
}

function fromPrior(genome: Genome, lumped: Lumped, prior: Prior): ReadonlyMap<number, Ratio> {
  const weights = new Map<number, Ratio>()
  for (const { strands, p } of prior) {
    const [one, other] = strands.map((strand) => haplotypeOf(lumped, genome, strand))
    const code = other === undefined ? singleCode(one!, lumped.haplotypes) : pairCode(one!, other)
    weights.set(code, rational.plus(weights.get(code) ?? rational.zero, p))
  }
  return weights
}

function fromFrequencies(genome: Genome, lumped: Lumped, sex: Sex): ReadonlyMap<number, Ratio> {
  const frequency = haplotypeFrequencies(genome, lumped)
  const two = rational.plus(rational.one, rational.one)
  const chance = (code: number): Ratio => {
    const [a, b] = kindsOf(code, lumped.haplotypes)
    if (b === undefined) return frequency[a]!
    const both = rational.times(frequency[a]!, frequency[b]!)
    return a === b ? both : rational.times(two, both)
  }
  return new Map(diplotypesOf(lumped, sex).map((code) => [code, chance(code)]))
}

function haplotypeFrequencies(genome: Genome, lumped: Lumped): readonly Ratio[] {
  const perLocus = lumped.loci.map((locus, i) => {
    const sums = lumped.standIn[i]!.map(() => rational.zero)
    lumped.classOf[i]!.forEach((c, allele) => {
      sums[c] = rational.plus(sums[c]!, genome.loci[locus]!.freqs?.[allele] ?? rational.zero)
    })
    return sums
  })
  return Array.from({ length: lumped.haplotypes }, (_, haplotype) =>
    classesOf(lumped, haplotype).reduce((p, c, i) => rational.times(p, perLocus[i]![c]!), rational.one),
  )
}
