// core/engine/kin.ts: a mating whose two sides have an uncertain bird in common: brother and sister, half-sibs, back-cross.
// Chaining the parents' own distributions would be wrong there, so the pedigree is asked as a whole.
import type { Genotype, Sex } from '../vocabulary.ts'
import { askBird } from './ask.ts'
import { doubles } from './doubles.ts'
import { type Genome, kindsOf } from './genome.ts'
import { askGenotype } from './item.ts'
import { dominantFirst, type Hatches, type Listed, type Mating, type Parent, wildPair } from './mating.ts'
import { type Ratio, rational, readRatio } from './num.ts'
import { diplotypesOfKnown, fits, type Known } from './parent.ts'
import type { Bird, Prior } from './pedigree.ts'
import type { Reading } from './trait.ts'

/** What is one bird wherever it stands: its name, or else the object itself. */
const identity = (parent: Parent): unknown => parent.name ?? parent

/** Does a bird whose strands are not certain stand in two places of the pedigree? */
export function isRelated(mating: Mating, listed: Listed): boolean {
  const met = new Set<unknown>()
  const meet = (parent: Parent): boolean => {
    const again = met.has(identity(parent))
    met.add(identity(parent))
    if (parent.cross === undefined) return again && diplotypesOfKnown(parent, 'M', listed).length > 1
    return again || meet(parent.cross.sire) || meet(parent.cross.dam)
  }
  const nested = mating.sire.cross !== undefined || mating.dam.cross !== undefined
  return nested && (meet(mating.sire) || meet(mating.dam))
}

/** The chicks of one sex; none where what is told of the parents cannot be. */
export function chicksOfKin(
  mating: Mating,
  sex: Sex,
  listed: Listed,
  hatches: Hatches | undefined,
): readonly { readonly genotype: Genotype; readonly p: number }[] {
  const genome = genomeOf(mating, listed)
  const birds: Bird[] = []
  const numbers = new Map<unknown, number>()
  const add = (parent: Parent, sex: Sex): number => {
    const known = numbers.get(identity(parent))
    if (known !== undefined) return known
    const bird = parent.cross === undefined ? founder(parent, sex, genome, listed) : bred(parent.cross, sex)
    const readings = parent.cross === undefined ? [] : readingsOf(parent.genotype ?? {}, genome, hatches)
    numbers.set(identity(parent), birds.push({ ...bird, readings }) - 1)
    return birds.length - 1
  }
  const bred = ({ sire, dam }: Mating, sex: Sex): Omit<Bird, 'readings'> => ({
    id: 'bred',
    sex,
    parents: { sire: add(sire, 'M'), dam: add(dam, 'F') },
  })
  const chick = birds.push({ ...bred(mating, sex), readings: [] }) - 1
  const items = genome.loci.map((_, locus) => askGenotype(genome, locus))
  const outcome = askBird({ genome, birds }, chick, items, doubles)
  if (outcome.kind !== 'answer') return []
  return [...outcome.answer.classes].map(([name, p]) => ({ genotype: genotypeNamed(name, listed), p }))
}

function genotypeNamed(name: string, { loci }: Listed): Genotype {
  const parts = name.split('|').map((pair) => pair.split('/').filter((allele) => allele !== '-'))
  return Object.fromEntries(
    loci.map((locus, i) => {
      const [one, other] = parts[i]!
      return [locus, other === undefined ? [one!] : dominantFirst(locus, one!, other)]
    }),
  )
}

/** The loci of the group with those alleles that somebody in the pedigree has. */
function genomeOf(mating: Mating, { on, loci, r }: Listed): Genome {
  const alleles = (parent: Parent, locus: string): readonly string[] =>
    parent.cross === undefined
      ? (parent.genotype[locus] ?? wildPair(locus))
      : [...alleles(parent.cross.sire, locus), ...alleles(parent.cross.dam, locus)]
  const all = (locus: string): readonly string[] => [
    ...new Set([...alleles(mating.sire, locus), ...alleles(mating.dam, locus)]),
  ]
  return {
    loci: loci.map((id) => ({ id, on, alleles: all(id) })),
    groups: [{ on, loci: loci.map((_, i) => i), r: r.map(exactly) }],
  }
}

const exactly = (x: number): Ratio => readRatio(x) ?? rational.zero

function founder(parent: Known, sex: Sex, genome: Genome, listed: Listed): Omit<Bird, 'readings'> {
  const strand = (alleles: readonly string[]): readonly number[] =>
    alleles.map((allele, i) => genome.loci[i]!.alleles.indexOf(allele))
  const prior: Prior = diplotypesOfKnown(parent, sex, listed).map(({ one, other, p }) => ({
    strands: other === undefined ? [strand(one)] : [strand(one), strand(other)],
    p: exactly(p),
  }))
  return { id: `founder ${JSON.stringify(prior.map(({ strands }) => strands))}`, sex, prior: new Map([[0, prior]]) }
}

/** What is told of a bred bird, and that it hatched. */
function readingsOf(told: Genotype, genome: Genome, hatches: Hatches | undefined): readonly Reading[] {
  const allelesOf = (locus: number, code: number): readonly string[] =>
    kindsOf(code, genome.loci[locus]!.alleles.length).map((allele) => genome.loci[locus]!.alleles[allele]!)
  const seen = genome.loci.flatMap(({ id }, locus): Reading[] => {
    const alleles = told[id]
    if (alleles === undefined) return []
    const weight = (code: number): Ratio => {
      const [one, other] = allelesOf(locus, code)
      return fits(alleles, one!, other) ? rational.one : rational.zero
    }
    return [{ id: `${id} ${alleles.join()}`, says: id, loci: [locus], weight: (_sex, [code]) => weight(code!) }]
  })
  if (hatches === undefined) return seen
  const alive: Reading = {
    id: 'hatched',
    says: 'hatched',
    loci: genome.loci.map((_, locus) => locus),
    weight: (_sex, codes) =>
      exactly(
        hatches(
          Object.fromEntries(
            genome.loci.map(({ id }, i) => {
              const [one, other] = allelesOf(i, codes[i]!)
              return [id, other === undefined ? [one!] : dominantFirst(id, one!, other)]
            }),
          ),
        ),
      ),
  }
  return [...seen, alive]
}
