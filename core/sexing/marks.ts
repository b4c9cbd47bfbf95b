// core/sexing/marks.ts: pure breeds whose sexes differ in the marks of the down: counted ones, and any other with the stripes of the wild type.
import { markedBreeds, signs, stripedDown } from '../data/signs.ts'
import type { Status } from '../vocabulary.ts'
import type { Hatch } from './hatch.ts'

type Marks = {
  /** Chance of a mark by sex. */
  readonly female: number
  readonly male: number
  readonly mark: string
  readonly basis: string
  readonly status: Status
  /** Whether the chances are those of this breed, so that a figure may be given. */
  readonly counted: boolean
  readonly breaks: readonly string[]
}

/** Share of each sex that must have striped down before its stripes are worth a look. */
const mostly = 0.75

const isStriped = ({ M, F }: Hatch): boolean =>
  [M, F].every(
    (sex) => sex.reduce((sum, { share, look }) => (look.chick.pattern === 'striped' ? sum + share : sum), 0) >= mostly,
  )

/** @param pure name of the breed where both parents are of one breed */
export function marksOf(hatch: Hatch, pure: string | undefined): Marks | undefined {
  const row = markedBreeds.find(({ breed }) => breed === pure)
  if (row) return { ...row, status: 'read', counted: true, breaks: signs.marks.breaks }
  return pure !== undefined && isStriped(hatch) ? { ...stripedDown, status: 'from memory', counted: false } : undefined
}
