// core/engine/residual.ts: what a reading across groups still says of a bird once its diplotypes are narrowed.
import type { Sex } from '../vocabulary.ts'
import type { Domain } from './domain.ts'
import type { Frame } from './frame.ts'
import { combinations } from './narrow.ts'
import type { Reading } from './trait.ts'

/** A weight that depends on some lumped groups; on none where it is the same for all that is left. */
export type Residual<T> = {
  readonly name: string
  readonly groups: readonly number[]
  readonly at: (sex: Sex, diplotypes: readonly number[]) => T
}

/**
 * "Barred" ties barring to the loci of white; but once every white genotype is gone from the bird it says
 * nothing further of them, and the groups come apart. Only the groups that still matter are kept.
 */
export function residual<T>(frame: Frame<T>, sex: Sex, domains: readonly Domain[], reading: Reading): Residual<T> {
  const { groups, at } = frame.seen(reading)
  const codes = groups.map((group) => domains[group]!.codes)
  const matters = groups.map((_, i) =>
    combinations(codes.with(i, [0])).some((others) => {
      const [first, ...rest] = codes[i]!.map((code) => at(sex, others.with(i, code)))
      return rest.some((weight) => !frame.ring.isZero(frame.ring.minus(weight, first!)))
    }),
  )
  const slot = groups.map((_, i) => matters.slice(0, i).filter(Boolean).length)
  const fixed = codes.map((list, i) => (matters[i] ? '' : list[0]))
  return {
    name: `${reading.id} ${sex} ${fixed.join()}`,
    groups: groups.filter((_, i) => matters[i]),
    at: (sex, diplotypes) =>
      at(
        sex,
        groups.map((_, i) => (matters[i] ? diplotypes[slot[i]!]! : codes[i]![0]!)),
      ),
  }
}

/** The same for a bird of unknown sex: nothing can be left out, since what matters may differ by sex. */
export function whole<T>(frame: Frame<T>, reading: Reading): Residual<T> {
  return { name: reading.id, ...frame.seen(reading) }
}
