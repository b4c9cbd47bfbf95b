// core/engine/trio.ts: the tables of birds that stay variables: each with its parents, and readings that tie its groups.
import type { Scaled, Tables } from './factor.ts'
import type { Frame } from './frame.ts'
import { combinations, type Narrowed } from './narrow.ts'
import { residual } from './residual.ts'

/** One linkage group of one bird. */
export type Place = readonly [bird: number, group: number]

/** One table for each bird and group, equal ones made once; and one for each reading that still ties groups. */
export function addBirds<T, W, S>(
  frame: Frame<T>,
  narrowed: Narrowed,
  tables: Tables<T, W, S>,
  whole: readonly number[],
  add: (of: readonly Place[], table: Scaled<W, S>) => void,
): void {
  const made = new Map<string, Scaled<W, S>>()
  for (const number of whole) {
    const bird = frame.pedigree.birds[number]!
    const sex = bird.sex === 'F' ? 'F' : 'M'
    const left = narrowed[number]!
    left.forEach((_, group) => {
      const of: Place[] = [number, ...(bird.parents ? [bird.parents.sire, bird.parents.dam] : [])].map((b) => [
        b,
        group,
      ])
      const domains = of.map(([b]) => narrowed[b]![group]!)
      const [own, sire, dam] = domains
      const name = `${frame.ownName(bird, sex, group)}\n${domains.map(({ id }) => id).join()}`
      const cells = (): T[] =>
        own!.codes.flatMap((code) => {
          const weight = frame.own(bird, sex, group, code)
          if (sire === undefined) return [weight]
          return sire.codes.flatMap((one) =>
            dam!.codes.map((other) => frame.ring.times(weight, frame.inherit[group]!.pass(code, one, other))),
          )
        })
      const table = made.get(name) ?? tables.table(cells())
      made.set(name, table)
      add(of, table)
    })
    for (const reading of frame.across(bird)) {
      const { groups, at } = residual(frame, sex, left, reading)
      const cells = combinations(groups.map((group) => left[group]!.codes)).map((codes) => at(sex, codes))
      add(
        groups.map((group) => [number, group]),
        tables.table(cells),
      )
    }
  }
}
