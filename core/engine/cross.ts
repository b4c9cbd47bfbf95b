// core/engine/cross.ts: what chicks a mating gives, one small distribution for each linkage group. The hot path.
import type { Genotype, LinkageGroup } from '../vocabulary.ts'
import { chicksOfKin, isRelated } from './kin.ts'
import { dominantFirst, type Hatches, type Listed, listedLoci, type Mating } from './mating.ts'
import { type Germ, germsOf, type Strand } from './parent.ts'

export type ChickClass = { readonly genotype: Genotype; readonly p: number }

/** The chicks at those loci of one group that anybody in the pedigree lists; p adds to 1 in each sex. */
export type ChickGroup = {
  readonly loci: readonly string[]
  readonly M: readonly ChickClass[]
  readonly F: readonly ChickClass[]
}

const allWild: readonly ChickClass[] = [{ genotype: {}, p: 1 }]
const nothingListed: ChickGroup = { loci: [], M: allWild, F: allWild }

/**
 * The chicks of a mating, group by group in the order given; groups are independent of one another.
 * Where several loci of a group are unlike in a parent whose phase nobody tells, both phases are taken
 * as equally likely, which for one chick is the same as free recombination. Where what is told of a
 * cross-bred parent cannot be, its group has no classes.
 *
 * @param hatches of parents that are bred themselves, and so lived: none of them is of a genotype that dies in
 *        the egg. The chicks are counted as embryos.
 */
export const chickGroups = (
  mating: Mating,
  groups: readonly LinkageGroup[],
  hatches?: Hatches,
): readonly ChickGroup[] =>
  groups.map((group) => {
    const listed = listedLoci(mating, group)
    if (listed.loci.length === 0) return nothingListed
    return isRelated(mating, listed) ? ofKin(mating, listed, hatches) : chicks(mating, listed, hatches)
  })

function ofKin(mating: Mating, listed: Listed, hatches: Hatches | undefined): ChickGroup {
  const M = chicksOfKin(mating, 'M', listed, hatches)
  return { loci: listed.loci, M, F: listed.on === 'A' ? M : chicksOfKin(mating, 'F', listed, hatches) }
}

function chicks({ sire, dam }: Mating, listed: Listed, hatches: Hatches | undefined): ChickGroup {
  const sperm = germsOf(sire, 'M', listed, hatches)
  const eggs = germsOf(dam, 'F', listed, hatches)
  const sons = unite(sperm, eggs, listed.loci)
  const F = listed.on === 'A' ? sons : sperm.map(({ alleles, p }) => ({ genotype: single(alleles, listed.loci), p }))
  return { loci: listed.loci, M: sons, F }
}

function single(alleles: Strand, loci: readonly string[]): Genotype {
  const genotype: Record<string, readonly string[]> = {}
  for (let i = 0; i < loci.length; i += 1) genotype[loci[i]!] = [alleles[i]!]
  return genotype
}

function unite(sperm: readonly Germ[], eggs: readonly Germ[], loci: readonly string[]): readonly ChickClass[] {
  const classes = new Map<string, { genotype: Genotype; p: number }>()
  for (const one of sperm)
    for (const other of eggs) {
      const { key, genotype } = pairUp(one.alleles, other.alleles, loci)
      const same = classes.get(key)
      if (same === undefined) classes.set(key, { genotype, p: one.p * other.p })
      else same.p += one.p * other.p
    }
  return [...classes.values()]
}

function pairUp(one: Strand, other: Strand, loci: readonly string[]): { key: string; genotype: Genotype } {
  const genotype: Record<string, readonly string[]> = {}
  let key = ''
  for (let i = 0; i < loci.length; i += 1) {
    const pair = dominantFirst(loci[i]!, one[i]!, other[i]!)
    genotype[loci[i]!] = pair
    key += `${pair[0]} ${pair[1]} `
  }
  return { key, genotype }
}
