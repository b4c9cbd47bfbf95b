// core/engine/meiosis.ts: what a parent hands on of one linkage group.
// Haldane 1919: no interference, so the crossovers between neighbours are independent of each other.
import type { Ring } from './num.ts'

/** One kind of egg or sperm: the alleles of the group in map order, and the chance of it. */
export type Gamete<A, T> = { readonly alleles: readonly A[]; readonly p: T }

/** A gamete half made: what it holds so far, and the chance that its end lies on the one strand or on the other. */
type HalfMade<A, T> = { readonly alleles: readonly A[]; readonly onOne: T; readonly onOther: T }

/**
 * The gametes of a bird with two strands, each kind once.
 *
 * @param r recombination fraction between each locus and the next; `r.length` is one less than the loci
 * @returns 2^k gametes for k loci at which the strands differ
 */
export function gametes<A, T>(one: readonly A[], other: readonly A[], r: readonly T[], ring: Ring<T>): Gamete<A, T>[] {
  const half = ring.over(ring.one, ring.plus(ring.one, ring.one))
  let made: HalfMade<A, T>[] = [{ alleles: [], onOne: half, onOther: half }]
  one.forEach((first, i) => {
    const second = other[i]!
    const crossed = i === 0 ? made : made.map((partial) => crossOver(partial, r[i - 1]!, ring))
    made = crossed.flatMap((partial) => take(partial, first, second, ring))
  })
  return made.map(({ alleles, onOne, onOther }) => ({ alleles, p: ring.plus(onOne, onOther) }))
}

const crossOver = <A, T>({ alleles, onOne, onOther }: HalfMade<A, T>, r: T, ring: Ring<T>): HalfMade<A, T> => {
  const stay = ring.minus(ring.one, r)
  return {
    alleles,
    onOne: ring.plus(ring.times(onOne, stay), ring.times(onOther, r)),
    onOther: ring.plus(ring.times(onOne, r), ring.times(onOther, stay)),
  }
}

const take = <A, T>(
  { alleles, onOne, onOther }: HalfMade<A, T>,
  first: A,
  second: A,
  ring: Ring<T>,
): HalfMade<A, T>[] =>
  first === second
    ? [{ alleles: [...alleles, first], onOne, onOther }]
    : [
        { alleles: [...alleles, first], onOne, onOther: ring.zero },
        { alleles: [...alleles, second], onOne: ring.zero, onOther },
      ]

/** The recombination fraction of two intervals laid end to end: an odd number of crossovers shows, an even one does not. */
export function joinIntervals<T>(r1: T, r2: T, ring: Ring<T>): T {
  const both = ring.times(r1, r2)
  return ring.minus(ring.plus(r1, r2), ring.plus(both, both))
}
