// core/engine/domain.ts: which diplotypes a bird can have at all, given its parents and its chicks.
// Genotype elimination, Lange & Goradia 1987 (Am J Hum Genet 40:250-256), trio by trio.
import { kindsOf } from './genome.ts'
import type { Lumped } from './lump.ts'

/** A set of diplotypes. Equal sets are the same object, so what is worked out for one serves the whole flock. */
export type Domain = { readonly id: number; readonly codes: readonly number[] }

type Trio = readonly [chick: Domain, sire: Domain, dam: Domain]

export type Domains = {
  readonly of: (codes: readonly number[]) => Domain
  /** The same three with everything dropped that the other two forbid; one empty means none of this can be. */
  readonly cut: (...trio: Trio) => Trio
}

const most = 2 ** 17 // domains of one group: far more than any flock makes

/** @param canHandOn which haplotypes a diplotype can hand on, by haplotype */
export function domains(lumped: Lumped, canHandOn: (diplotype: number) => readonly boolean[]): Domains {
  const known = new Map<string, Domain>()
  const cuts = new Map<number, Trio>()
  const of = (codes: readonly number[]): Domain => {
    const key = codes.join()
    const found = known.get(key) ?? { id: known.size, codes }
    known.set(key, found)
    return found
  }
  const cut = (...trio: Trio): Trio => {
    const key = (trio[0].id * most + trio[1].id) * most + trio[2].id
    const found = cuts.get(key)
    if (found !== undefined) return found
    const [chick, sire, dam] = cutTrio(lumped, canHandOn, trio)
    const made: Trio = [of(chick), of(sire), of(dam)]
    cuts.set(key, made)
    return made
  }
  return { of, cut }
}

type Flags = boolean[]

function cutTrio(
  lumped: Lumped,
  canHandOn: (diplotype: number) => readonly boolean[],
  [chick, sire, dam]: Trio,
): readonly [chick: number[], sire: number[], dam: number[]] {
  const none = (): Flags => Array.from({ length: lumped.haplotypes }, () => false)
  const handedOn = ({ codes }: Domain): Flags => {
    const flags = none()
    for (const code of codes) canHandOn(code).forEach((can, haplotype) => can && (flags[haplotype] = true))
    return flags
  }
  const [sperm, eggs] = [handedOn(sire), handedOn(dam)]
  const [fromSire, fromDam] = [none(), none()] // what some chick can have from each
  const kept = chick.codes.filter((code) => {
    const [a, b] = kindsOf(code, lumped.haplotypes)
    if (b === undefined) {
      if (!sperm[a]) return false // a hen's one Z is her father's, and says nothing of her dam
      fromSire[a] = true
      fromDam.fill(true)
      return true
    }
    const ways = [
      [a, b],
      [b, a],
    ].filter(([s, d]) => sperm[s!] && eggs[d!])
    for (const [s, d] of ways) [fromSire[s!], fromDam[d!]] = [true, true]
    return ways.length > 0
  })
  const gives = (code: number, wanted: Flags): boolean =>
    canHandOn(code).some((can, haplotype) => can && wanted[haplotype])
  return [kept, sire.codes.filter((code) => gives(code, fromSire)), dam.codes.filter((code) => gives(code, fromDam))]
}
