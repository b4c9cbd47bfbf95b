// core/engine/item.ts: one thing asked of a bird: a trait, a genotype, whether it carries an allele, how its alleles lie.
import type { Sex } from '../vocabulary.ts'
import { type GeneLocus, type Genome, isSingle, kindsOf } from './genome.ts'
import { classesOf, type Lumped, type Use } from './lump.ts'
import { formatRatio, type Ratio, rational } from './num.ts'
import { type Seen, seenThrough } from './seen.ts'
import type { Genotypes, Trait } from './trait.ts'

/** What a diplotype may answer, by name, with the chance of it. */
export type Classes = readonly { readonly name: string; readonly p: Ratio }[]

export type Item = {
  /** What must not be lumped together. */
  readonly uses: readonly Use[]
  readonly through: (lumped: readonly Lumped[]) => Seen<Classes>
}

function item(genome: Genome, loci: readonly number[], classes: (sex: Sex, genotypes: Genotypes) => Classes): Item {
  const tell = (sex: Sex, genotypes: Genotypes): string =>
    classes(sex, genotypes)
      .map(({ name, p }) => `${name}=${formatRatio(p)}`)
      .join('|')
  const through = (lumped: readonly Lumped[]): Seen<Classes> => seenThrough(genome, lumped, { loci, value: classes })
  return { uses: [{ loci, tell }], through }
}

const surely = (name: string): Classes => [{ name, p: rational.one }]

/** A fresh reading of a trait: what was read of it before counts only through the genotype. */
export const askTrait = (genome: Genome, trait: Trait): Item =>
  item(genome, trait.loci, (sex, genotypes) =>
    trait.given(sex, genotypes).flatMap((p, i) => (rational.isZero(p) ? [] : [{ name: trait.states[i]!, p }])),
  )

/** 'S/s', and 'S/-' for the one copy of a hen. */
export const genotypeName = ({ alleles }: GeneLocus, code: number): string => {
  const [a, b] = kindsOf(code, alleles.length)
  return `${alleles[a]}/${b === undefined ? '-' : alleles[b]}`
}

export const askGenotype = (genome: Genome, locus: number): Item =>
  item(genome, [locus], (_sex, [code]) => surely(genotypeName(genome.loci[locus]!, code!)))

/** 'yes' for at least one copy, else 'no'. */
export const askCarries = (genome: Genome, locus: number, allele: number): Item =>
  item(genome, [locus], (_sex, [code]) =>
    surely(kindsOf(code!, genome.loci[locus]!.alleles.length).includes(allele) ? 'yes' : 'no'),
  )

/** The haplotypes of a group, 'S K|s k', lower allele numbers first; a single one for a hen's Z. */
export function askPhase(genome: Genome, group: number): Item {
  const { loci, on } = genome.groups[group]!
  const uses = loci.map((locus): Use => ({ loci: [locus], tell: (_sex, [code]) => String(code) }))
  const through = (lumped: readonly Lumped[]): Seen<Classes> => {
    const number = lumped.findIndex(({ from }) => from === group)
    if (number < 0) return { groups: [], at: (sex) => surely(onlyPhase(genome, loci, isSingle(on, sex))) }
    return { groups: [number], at: (_sex, [code]) => surely(phaseName(genome, loci, lumped[number]!, code!)) }
  }
  return { uses, through }
}

const phaseName = (genome: Genome, loci: readonly number[], lumped: Lumped, diplotype: number): string =>
  kindsOf(diplotype, lumped.haplotypes)
    .map((haplotype) => {
      const classes = classesOf(lumped, haplotype)
      return loci.map((locus) => genome.loci[locus]!.alleles[classes[lumped.loci.indexOf(locus)] ?? 0]).join(' ')
    })
    .join('|')

/** Where every locus of the group has a single allele. */
const onlyPhase = (genome: Genome, loci: readonly number[], single: boolean): string => {
  const strand = loci.map((locus) => genome.loci[locus]!.alleles[0]).join(' ')
  return single ? strand : `${strand}|${strand}`
}
