// core/engine/inherit.ts: one lumped linkage group: what each diplotype hands on, and what it makes with another.
import { isSingle, kindsOf, pairCount, singleCode } from './genome.ts'
import { classesOf, type Lumped } from './lump.ts'
import { gametes } from './meiosis.ts'
import type { Ring } from './num.ts'
import type { Sex } from '../vocabulary.ts'

export type Inheritance<T> = {
  /** The chance of each haplotype among the germs of a diplotype, by haplotype. */
  readonly germs: (diplotype: number) => readonly T[]
  /** The chance of a chick of this diplotype. A single is a hen's one Z, which is her father's. */
  readonly pass: (chick: number, sire: number, dam: number) => T
}

export function inheritance<T>(lumped: Lumped, ring: Ring<T>): Inheritance<T> {
  const r = lumped.r.map(ring.of)
  const rows: (readonly T[])[] = []
  const germs = (diplotype: number): readonly T[] => (rows[diplotype] ??= germsOf(lumped, diplotype, r, ring))
  const pass = (chick: number, sire: number, dam: number): T => {
    const [a, b] = kindsOf(chick, lumped.haplotypes)
    const sperm = germs(sire)
    if (b === undefined) return sperm[a]!
    const eggs = germs(dam)
    const one = ring.times(sperm[a]!, eggs[b]!)
    return a === b ? one : ring.plus(one, ring.times(sperm[b]!, eggs[a]!))
  }
  return { germs, pass }
}

function germsOf<T>(lumped: Lumped, diplotype: number, r: readonly T[], ring: Ring<T>): readonly T[] {
  const [one, other] = kindsOf(diplotype, lumped.haplotypes)
  const row = Array.from({ length: lumped.haplotypes }, () => ring.zero)
  if (other === undefined || one === other) row[one] = ring.one
  else
    for (const { alleles, p } of gametes(classesOf(lumped, one), classesOf(lumped, other), r, ring)) {
      const haplotype = alleles.reduce((code, allele, i) => code * lumped.standIn[i]!.length + allele, 0)
      row[haplotype] = p
    }
  return row
}

/** Every diplotype a bird of this sex might have in the group; of either sex where the sex is not known. */
export function diplotypesOf(lumped: Lumped, sex: Sex | 'U'): readonly number[] {
  const kinds = lumped.haplotypes
  const pairs = Array.from({ length: pairCount(kinds) }, (_, code) => code)
  const singles = Array.from({ length: kinds }, (_, a) => singleCode(a, kinds))
  if (sex === 'U' && lumped.on === 'Z') return [...pairs, ...singles]
  return sex !== 'U' && isSingle(lumped.on, sex) ? singles : pairs
}
