// core/engine/parent.ts: what a parent of known genotype, or one bred from a mating, hands on of a linkage group.
import type { Genotype, Sex } from '../vocabulary.ts'
import { dominantFirst, type Hatches, type Listed, type Mating, type Parent, type Phase, wildPair } from './mating.ts'
import { type Gamete, gametes } from './meiosis.ts'
import { f64 } from './num.ts'

export type Strand = readonly string[]
/** A sperm or an egg, with the chance of it. */
export type Germ = Gamete<string, number>
/** What a bird may be: its strands (one where it has a single Z) and the chance of that. */
export type Diplotype = { readonly one: Strand; readonly other: Strand | undefined; readonly p: number }

/**
 * What a parent hands on, chances adding to 1; empty if what was told of it cannot be.
 * Exact as long as the two sides of every mating have no uncertain bird in common (kin.ts).
 */
export const germsOf = (parent: Parent, sex: Sex, listed: Listed, hatches: Hatches | undefined): readonly Germ[] =>
  parent.cross !== undefined
    ? germsOfAny(diplotypesOfBred(parent, sex, listed, hatches), listed)
    : germsOfKnown(parent, sex, listed)

export type Known = Extract<Parent, { readonly genotype: unknown; readonly cross?: never }>
type Bred = Extract<Parent, { readonly cross: unknown }>

function germsOfKnown(parent: Known, sex: Sex, listed: Listed): readonly Germ[] {
  const { one, other } = strandsOf(parent, listed)
  if (sex === 'F' && listed.on === 'Z') return [{ alleles: one, p: 1 }]
  const unlike = one.filter((allele, i) => allele !== other[i]).length
  if (unlike === 0) return [{ alleles: one, p: 1 }]
  const phase = phaseIn(parent, listed)
  if (unlike === 1 || phase === 'coupling') return gametes(one, other, listed.r, f64)
  if (phase === 'repulsion') return gametes(...turnAbout(one, other), listed.r, f64)
  return gametes(
    one,
    other,
    listed.r.map(() => 1 / 2),
    f64,
  ) // any phase, equally likely
}

const phaseIn = ({ phase }: Known, { loci }: Listed): Phase | undefined =>
  typeof phase === 'object' ? loci.map((locus) => phase[locus]).find((told) => told !== undefined) : phase

/** The alleles as the genotype lists them: dominant ones on the one strand. A hen has a Z on `one` alone. */
function strandsOf({ genotype }: Known, { loci }: Listed): { readonly one: Strand; readonly other: Strand } {
  const pairs = loci.map((locus) => genotype[locus] ?? wildPair(locus))
  return { one: pairs.map((pair) => pair[0]!), other: pairs.map((pair) => pair[1] ?? pair[0]!) }
}

/** Every way the alleles of a bird of known genotype may lie on its strands. */
export function diplotypesOfKnown(parent: Known, sex: Sex, listed: Listed): readonly Diplotype[] {
  const { one, other } = strandsOf(parent, listed)
  if (sex === 'F' && listed.on === 'Z') return [{ one, other: undefined, p: 1 }]
  const phase = phaseIn(parent, listed)
  if (phase === 'coupling') return [{ one, other, p: 1 }]
  if (phase === 'repulsion') return [turnAbout(one, other)].map(([a, b]) => ({ one: a, other: b, p: 1 }))
  const [, ...free] = one.flatMap((allele, i) => (allele === other[i] ? [] : [i])) // the first unlike locus may stay
  const ways = free.reduce<(readonly [Strand, Strand])[]>(
    (made, i) => made.flatMap(([a, b]) => [[a, b] as const, [a.with(i, b[i]!), b.with(i, a[i]!)] as const]),
    [[one, other]],
  )
  return ways.map(([a, b]) => ({ one: a, other: b, p: 1 / ways.length }))
}

function turnAbout(one: Strand, other: Strand): [Strand, Strand] {
  let unlike = 0
  const swaps = one.map((allele, i) => allele !== other[i] && (unlike += 1) % 2 === 0)
  const pick = (here: Strand, there: Strand): Strand => here.map((allele, i) => (swaps[i] ? there[i]! : allele))
  return [pick(one, other), pick(other, one)]
}

function germsOfAny(diplotypes: readonly Diplotype[], { r }: Listed): readonly Germ[] {
  const chance = new Map<string, { alleles: Strand; p: number }>()
  for (const { one, other, p } of diplotypes)
    for (const germ of other === undefined ? [{ alleles: one, p: 1 }] : gametes(one, other, r, f64)) {
      const key = germ.alleles.join(' ')
      chance.set(key, { alleles: germ.alleles, p: (chance.get(key)?.p ?? 0) + p * germ.p })
    }
  return [...chance.values()]
}

function diplotypesOfBred(
  { cross, genotype }: Bred,
  sex: Sex,
  listed: Listed,
  hatches: Hatches | undefined,
): readonly Diplotype[] {
  const born = offspring(cross, sex, listed, hatches)
  const told = listed.loci.flatMap((locus, at) => (genotype?.[locus] ? [{ at, alleles: genotype[locus] }] : []))
  const possible = born
    .filter(({ one, other }) => told.every(({ at, alleles }) => fits(alleles, one[at]!, other?.[at])))
    .map((diplotype) => ({ ...diplotype, p: diplotype.p * (hatches?.(genotypeOf(diplotype, listed)) ?? 1) }))
    .filter(({ p }) => p > 0)
  const total = possible.reduce((sum, { p }) => sum + p, 0)
  return possible.map((diplotype) => ({ ...diplotype, p: diplotype.p / total }))
}

const genotypeOf = ({ one, other }: Diplotype, { loci }: Listed): Genotype =>
  Object.fromEntries(
    loci.map((locus, i) => [locus, other === undefined ? [one[i]!] : dominantFirst(locus, one[i]!, other[i]!)]),
  )

/** Every egg with every sperm. A daughter has her father's Z alone. */
function offspring(
  { sire, dam }: Mating,
  sex: Sex,
  listed: Listed,
  hatches: Hatches | undefined,
): readonly Diplotype[] {
  const sperm = germsOf(sire, 'M', listed, hatches)
  const eggs = germsOf(dam, 'F', listed, hatches)
  if (sex === 'F' && listed.on === 'Z') return sperm.map(({ alleles, p }) => ({ one: alleles, other: undefined, p }))
  return sperm.flatMap((one) => eggs.map((other) => ({ one: one.alleles, other: other.alleles, p: one.p * other.p })))
}

/** One told allele means at least one copy of it. */
export function fits([first, second]: readonly string[], one: string, other: string | undefined): boolean {
  if (second === undefined) return one === first || other === first
  return (one === first && other === second) || (one === second && other === first)
}
