// core/hen/distance.ts: the distance class of two lines, from the table of kindreds.
import { distanceOf, kindred, kinPairs } from '../data/hen/distance.ts'
import type { Stock } from './stock.ts'

type Placed = Pick<Stock, 'id' | 'family' | 'type'>

const kindredByFamily = new Map(Object.entries(kindred).flatMap(([name, families]) => families.map((f) => [f, name])))

/** The kindred of a breed family, or the family itself where it stands alone. */
export const kindredOf = (family: string): string => kindredByFamily.get(family) ?? family

/** A landrace, a bantam or stock of no breed: what its crosses gain is doubtful twice over. */
export const isWide = ({ family, type }: Pick<Placed, 'family' | 'type'>): boolean =>
  type === 'landrace' || type === 'bantam' || kindredOf(family) === 'mixed'

function kinship(one: string, other: string): number | undefined {
  const names = (family: string): readonly string[] => [family, kindredOf(family)]
  return kinPairs.find(
    ([a, b]) =>
      (names(one).includes(a) && names(other).includes(b)) || (names(one).includes(b) && names(other).includes(a)),
  )?.[2]
}

function unrelated(one: Placed, other: Placed): number {
  if (kindredOf(one.family) === 'mixed' || kindredOf(other.family) === 'mixed') return distanceOf.mixed
  if (isWide(one) || isWide(other)) return distanceOf.wide
  return one.type === other.type ? distanceOf.sameWeight : distanceOf.heavyLight
}

function between(one: Placed, other: Placed): number {
  if (one.family === other.family) return distanceOf.sameFamily
  if (kindredOf(one.family) === kindredOf(other.family)) return distanceOf.kindred
  return kinship(one.family, other.family) ?? unrelated(one, other)
}

/** 0 within one line, 0.3 within a breed, 0.5 for kindred breeds, 1 for unrelated heavy breeds, 1.3 for heavy x light. */
export const distance = (one: Placed, other: Placed): number =>
  one.id === other.id ? distanceOf.sameLine : between(one, other)
