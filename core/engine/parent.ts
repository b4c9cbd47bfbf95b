// core/engine/parent.ts: what a parent of known genotype, or one bred from a mating, hands on of a linkage group.
import type { Sex } from '../vocabulary.ts'
import { type Listed, type Mating, type Parent, wildPair } from './mating.ts'
import { type Gamete, gametes } from './meiosis.ts'
import { f64 } from './num.ts'

export type Strand = readonly string[]
/** A sperm or an egg, with the chance of it. */
export type Germ = Gamete<string, number>
/** What a bird may be: its strands (one where it has a single Z) and the chance of that. */
export type Diplotype = { readonly one: Strand; readonly other: Strand | undefined; readonly p: number }

/**
 * What a parent hands on, chances adding to 1; empty if what was told of it cannot be.
 * Exact as long as the two sides of every mating have no uncertain bird in common.
 */
export const germsOf = (parent: Parent, sex: Sex, listed: Listed): readonly Germ[] =>
  'cross' in parent ? mixed(diplotypesOfBred(parent, sex, listed), listed) : germsOfKnown(parent, sex, listed)

type Known = Extract<Parent, { readonly genotype: unknown }>
type Bred = Extract<Parent, { readonly cross: unknown }>

function germsOfKnown(parent: Known, sex: Sex, { on, loci, r }: Listed): readonly Germ[] {
  const pairs = loci.map((locus) => parent.genotype[locus] ?? wildPair(locus))
  const one = pairs.map((pair) => pair[0]!)
  if (sex === 'F' && on === 'Z') return [{ alleles: one, p: 1 }]
  const other = pairs.map((pair) => pair[1] ?? pair[0]!)
  const unlike = one.filter((allele, i) => allele !== other[i]).length
  if (unlike === 0) return [{ alleles: one, p: 1 }]
  if (unlike === 1 || parent.phase === 'coupling') return gametes(one, other, r, f64)
  if (parent.phase === 'repulsion') return gametes(...turnAbout(one, other), r, f64)
  return gametes(
    one,
    other,
    r.map(() => 1 / 2),
    f64,
  ) // either phase, equally likely
}

function turnAbout(one: Strand, other: Strand): [Strand, Strand] {
  let unlike = 0
  const swaps = one.map((allele, i) => allele !== other[i] && (unlike += 1) % 2 === 0)
  const pick = (here: Strand, there: Strand): Strand => here.map((allele, i) => (swaps[i] ? there[i]! : allele))
  return [pick(one, other), pick(other, one)]
}

function mixed(diplotypes: readonly Diplotype[], { r }: Listed): readonly Germ[] {
  const chance = new Map<string, { alleles: Strand; p: number }>()
  for (const { one, other, p } of diplotypes)
    for (const germ of other === undefined ? [{ alleles: one, p: 1 }] : gametes(one, other, r, f64)) {
      const key = germ.alleles.join(' ')
      chance.set(key, { alleles: germ.alleles, p: (chance.get(key)?.p ?? 0) + p * germ.p })
    }
  return [...chance.values()]
}

function diplotypesOfBred({ cross, genotype }: Bred, sex: Sex, listed: Listed): readonly Diplotype[] {
  const born = offspring(cross, sex, listed)
  const told = listed.loci.flatMap((locus, at) => (genotype?.[locus] ? [{ at, alleles: genotype[locus] }] : []))
  const possible = born.filter(({ one, other }) =>
    told.every(({ at, alleles }) => fits(alleles, one[at]!, other?.[at])),
  )
  const total = possible.reduce((sum, { p }) => sum + p, 0)
  return possible.map((diplotype) => ({ ...diplotype, p: diplotype.p / total }))
}

/** Every egg with every sperm. A daughter has her father's Z alone. */
function offspring({ sire, dam }: Mating, sex: Sex, listed: Listed): readonly Diplotype[] {
  const sperm = germsOf(sire, 'M', listed)
  const eggs = germsOf(dam, 'F', listed)
  if (sex === 'F' && listed.on === 'Z') return sperm.map(({ alleles, p }) => ({ one: alleles, other: undefined, p }))
  return sperm.flatMap((one) => eggs.map((other) => ({ one: one.alleles, other: other.alleles, p: one.p * other.p })))
}

/** One told allele means at least one copy of it. */
function fits([first, second]: readonly string[], one: string, other: string | undefined): boolean {
  if (second === undefined) return one === first || other === first
  return (one === first && other === second) || (one === second && other === first)
}
