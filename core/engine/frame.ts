// core/engine/frame.ts: a pedigree seen through one question: its lumped groups, and the weight of each diplotype of each bird.
import type { Sex } from '../vocabulary.ts'
import { type Domains, domains } from './domain.ts'
import { founderWeights } from './founder.ts'
import { type Inheritance, inheritance } from './inherit.ts'
import type { Lumped } from './lump.ts'
import { memo, memoOf } from './memo.ts'
import type { Ring } from './num.ts'
import type { Bird, Pedigree } from './pedigree.ts'
import { type Seen, seenThrough } from './seen.ts'
import type { Reading } from './trait.ts'

export type Frame<T> = {
  readonly pedigree: Pedigree
  readonly lumped: readonly Lumped[]
  readonly ring: Ring<T>
  readonly inherit: readonly Inheritance<T>[]
  readonly domains: readonly Domains[]
  readonly seen: (reading: Reading) => Seen<T>
  /** What stands for `own`: birds with equal names have equal weights. */
  readonly ownName: (bird: Bird, sex: Sex, group: number) => string
  /** Weight of a diplotype by what is read of this one group of the bird, and by its prior if it is a founder. */
  readonly own: (bird: Bird, sex: Sex, group: number, diplotype: number) => T
  /** What is read of several groups of the bird at once, and what is the same whatever it is. */
  readonly across: (bird: Bird) => readonly Reading[]
}

export function frame<T>(pedigree: Pedigree, lumped: readonly Lumped[], ring: Ring<T>): Frame<T> {
  const { genome } = pedigree
  const inherit = lumped.map((group) => inheritance(group, ring))
  const seen = memo(
    ({ id }: Reading) => id,
    ({ loci, weight }: Reading): Seen<T> => {
      const { groups, at } = seenThrough(genome, lumped, { loci, value: (sex, codes) => ring.of(weight(sex, codes)) })
      return { groups, at: memo((sex, diplotypes) => sex + diplotypes.join(), at) }
    },
  )
  const sorted = memoOf((bird: Bird) => ({
    across: bird.readings.filter((reading) => seen(reading).groups.length !== 1),
    inOne: lumped.map((_, group) => {
      const own = bird.readings.filter((reading) => isOf(seen(reading), group))
      return { own, name: [origin(bird, lumped[group]!), group, ...own.map(({ id }) => id)].join('\n') }
    }),
  }))
  const start = memo(
    (bird: Bird, sex: Sex, group: number) => origin(bird, lumped[group]!) + sex + group,
    ({ prior }: Bird, sex: Sex, group: number) =>
      new Map(
        [...founderWeights(genome, lumped[group]!, sex, prior?.get(lumped[group]!.from))].map(([code, p]) => [
          code,
          ring.of(p),
        ]),
      ),
  )
  return {
    pedigree,
    lumped,
    ring,
    inherit,
    domains: lumped.map((group, i) => domains(group, (code) => inherit[i]!.germs(code).map((p) => !ring.isZero(p)))),
    seen,
    ownName: (bird, sex, group) => sex + sorted(bird).inOne[group]!.name,
    own: (bird, sex, group, diplotype) => {
      const before = bird.parents ? ring.one : (start(bird, sex, group).get(diplotype) ?? ring.zero)
      const { own } = sorted(bird).inOne[group]!
      return own.reduce((w, reading) => ring.times(w, seen(reading).at(sex, [diplotype])), before)
    },
    across: (bird) => sorted(bird).across,
  }
}

const isOf = ({ groups }: Seen<unknown>, group: number): boolean => groups.length === 1 && groups[0] === group

/** Where its diplotype comes from: its parents, a prior of its own, or the population. */
const origin = ({ id, parents, prior }: Bird, { from }: Lumped): string =>
  parents ? 'bred ' : prior?.has(from) ? `own ${id} ` : 'population '
