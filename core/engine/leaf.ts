// core/engine/leaf.ts: a bird without chicks, summed out on the spot into a table over the diplotypes of its parents.
// Peeling, Elston & Stewart 1971 (Hum Hered 21:523-542).
import { cellsOver, indexOf, type Placed, type Scope, type Tables } from './factor.ts'
import type { Frame } from './frame.ts'
import { combinations, fitsSex } from './narrow.ts'
import type { Part } from './part.ts'

/** The table of a part: over the parents' groups, then the sex, then the leaf's own groups; and summed to the parents. */
export type Litter<W, S> = {
  readonly joint: W
  readonly message: W
  readonly scale: S
  readonly sizes: readonly number[]
}

export function litter<T, W, S>(frame: Frame<T>, tables: Tables<T, W, S>, part: Part<T>): Litter<W, S> {
  const { parents, codes, sexes } = part
  const lists = codes.toSpliced(
    parents.length,
    0,
    sexes.map((_, i) => i),
  )
  const { weights: joint, scale } = tables.table(combinations(lists).map((cell) => weigh(frame, part, cell)))
  const sizes = lists.map(({ length }) => length)
  const [above, below] = [upTo(parents.length), upTo(sizes.length).slice(parents.length)]
  const placed = (weights: W, scope: Scope): Placed<W> => ({ weights, at: indexOf(scope, above, below, sizes) })
  const whole = placed(joint, [...above, ...below])
  const message = tables.sum([whole, placed(tables.ones(1), [])], cellsOver(above, sizes))
  const settled = tables.settle(message)
  return { joint, message, scale: tables.join(scale, settled), sizes }
}

function weigh<T>({ ring, inherit, lumped, own, pedigree }: Frame<T>, part: Part<T>, cell: readonly number[]): T {
  const { bird, groups, across, sexes, parents } = part
  const leaf = pedigree.birds[bird]!
  const sex = sexes[cell[parents.length]!]!
  const codes = cell.slice(parents.length + 1)
  if (!codes.every((code, i) => fitsSex(lumped[groups[i]!]!, code, sex))) return ring.zero
  let weight = ring.over(ring.one, ring.of({ n: BigInt(sexes.length), d: 1n }))
  groups.forEach((group, i) => {
    weight = ring.times(weight, own(leaf, sex, group, codes[i]!))
    if (parents.length > 0) weight = ring.times(weight, inherit[group]!.pass(codes[i]!, cell[2 * i]!, cell[2 * i + 1]!))
  })
  return across.reduce(
    (product, reading) =>
      ring.times(
        product,
        reading.at(
          sex,
          reading.groups.map((group) => codes[groups.indexOf(group)]!),
        ),
      ),
    weight,
  )
}

/** How the belief in one group of a leaf follows from the belief in its parents, itself included. */
export function leafBelief<T, W, S>(
  tables: Tables<T, W, S>,
  part: Part<T>,
  litter: Litter<W, S>,
  parents: W,
  group: number,
): W {
  const { sizes, joint, message } = litter
  const all = upTo(sizes.length)
  const own = part.parents.length + 1 + part.groups.indexOf(group)
  const placed = (weights: W, scope: Scope): Placed<W> => ({
    weights,
    at: indexOf(
      scope,
      [own],
      all.filter((v) => v !== own),
      sizes,
    ),
  })
  const above = placed(tables.over(parents, message).weights, upTo(part.parents.length))
  return tables.sum([placed(joint, all), above], sizes[own]!)
}

const upTo = (n: number): number[] => Array.from({ length: n }, (_, i) => i)
export const cellsOf = (sizes: readonly number[]): number => sizes.reduce((product, size) => product * size, 1)
