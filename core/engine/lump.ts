// core/engine/lump.ts: alleles that nothing read or asked can tell apart become one; loci that then have one allele go.
// Exact: alleles pass through meiosis whole, so merging them commutes with inheritance (Kemeny & Snell 1960, lumpability).
import type { Chromosome, Sex } from '../vocabulary.ts'
import { type Genome, isSingle, kindsOf, pairCode, pairCount, singleCode } from './genome.ts'
import { joinIntervals } from './meiosis.ts'
import { type Ratio, rational } from './num.ts'
import type { Genotypes } from './trait.ts'

/** Something that depends on genotypes: `tell` gives the same text exactly where it makes no difference. */
export type Use = { readonly loci: readonly number[]; readonly tell: (sex: Sex, genotypes: Genotypes) => string }

/** A linkage group with its alleles merged. Haplotypes are numbers in mixed radix, first locus slowest. */
export type Lumped = {
  readonly on: Chromosome
  /** The group it was made of. */
  readonly from: number
  readonly loci: readonly number[]
  /** For each kept locus: the class of each allele, and one allele to stand for each class. */
  readonly classOf: readonly (readonly number[])[]
  readonly standIn: readonly (readonly number[])[]
  readonly r: readonly Ratio[]
  readonly haplotypes: number
}

/** Lumps every group as far as the uses allow; groups of which nothing is left are absent. */
export function lump(genome: Genome, uses: readonly Use[]): readonly Lumped[] {
  const classOf = genome.loci.map((_, locus) => classes(genome, locus, uses))
  return genome.groups.flatMap((group, from) => {
    const kept = group.loci.flatMap((locus, at) => (Math.max(...classOf[locus]!) > 0 ? [at] : []))
    if (kept.length === 0) return []
    const loci = kept.map((at) => group.loci[at]!)
    const standIn = loci.map((locus) => firsts(classOf[locus]!))
    const r = kept.slice(1).map((end, i) => group.r.slice(kept[i], end).reduce((a, b) => joinIntervals(a, b, rational)))
    const haplotypes = standIn.reduce((product, { length }) => product * length, 1)
    return [{ on: group.on, from, loci, classOf: loci.map((locus) => classOf[locus]!), standIn, r, haplotypes }]
  })
}

const firsts = (classOf: readonly number[]): number[] =>
  Array.from({ length: Math.max(...classOf) + 1 }, (_, c) => classOf.indexOf(c))

/** The class of each allele of a locus: alleles are alike if no use can tell one from the other in any company. */
function classes(genome: Genome, locus: number, uses: readonly Use[]): number[] {
  const touching = uses.filter((use) => use.loci.includes(locus))
  const seen = new Map<string, number>()
  return genome.loci[locus]!.alleles.map((_, allele) => {
    const signature = touching.map((use) => inEveryCompany(genome, use, locus, allele)).join('\n')
    return seen.get(signature) ?? (seen.set(signature, seen.size), seen.size - 1)
  })
}

function inEveryCompany(genome: Genome, use: Use, locus: number, allele: number): string {
  const told: string[] = []
  for (const sex of ['M', 'F'] as const)
    for (const genotypes of everyGenotype(genome, use.loci, sex, locus, allele)) told.push(use.tell(sex, genotypes))
  return told.join('\t')
}

/** All genotypes over some loci for one sex, with one copy at `locus` held to be `allele`. */
function everyGenotype(genome: Genome, loci: readonly number[], sex: Sex, locus: number, allele: number): Genotypes[] {
  let made: number[][] = [[]]
  for (const at of loci) {
    const { on, alleles } = genome.loci[at]!
    const codes =
      at === locus ? codesWith(allele, alleles.length, isSingle(on, sex)) : codesOf(alleles.length, isSingle(on, sex))
    made = made.flatMap((genotypes) => codes.map((code) => [...genotypes, code]))
  }
  return made
}

const upTo = (n: number): number[] => Array.from({ length: n }, (_, i) => i)
const codesOf = (kinds: number, single: boolean): number[] =>
  single ? upTo(kinds).map((a) => singleCode(a, kinds)) : upTo(pairCount(kinds))
const codesWith = (allele: number, kinds: number, single: boolean): number[] =>
  single ? [singleCode(allele, kinds)] : upTo(kinds).map((other) => pairCode(allele, other))

/** The haplotype, in a lumped group, of a strand that gives an allele for each locus of the whole group. */
export function haplotypeOf(lumped: Lumped, genome: Genome, strand: readonly number[]): number {
  const whole = genome.groups[lumped.from]!.loci
  return lumped.loci.reduce(
    (code, locus, i) => code * lumped.standIn[i]!.length + lumped.classOf[i]![strand[whole.indexOf(locus)]!]!,
    0,
  )
}

/** The class at each kept locus of a haplotype. */
export function classesOf(lumped: Lumped, haplotype: number): readonly number[] {
  const digits: number[] = []
  let rest = haplotype
  for (const { length } of lumped.standIn.toReversed()) {
    digits.unshift(rest % length)
    rest = Math.floor(rest / length)
  }
  return digits
}

/** The genotype code at each kept locus that a diplotype of a lumped group stands for. */
export function genotypesOf(lumped: Lumped, genome: Genome, diplotype: number): Genotypes {
  const [one, other] = kindsOf(diplotype, lumped.haplotypes).map((haplotype) => classesOf(lumped, haplotype))
  return lumped.loci.map((locus, i) => {
    const first = lumped.standIn[i]![one![i]!]!
    return other === undefined
      ? singleCode(first, genome.loci[locus]!.alleles.length)
      : pairCode(first, lumped.standIn[i]![other[i]!]!)
  })
}
