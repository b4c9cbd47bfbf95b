// core/engine/leaf.ts: a bird without chicks, summed out on the spot into a table over the diplotypes of its parents.
// Peeling, Elston & Stewart 1971 (Hum Hered 21:523-542).
import type { Sex } from '../vocabulary.ts'
import { indexOf, type Tables } from './factor.ts'
import type { Frame } from './frame.ts'
import { combinations, fitsSex, type Narrowed, sexesOf } from './narrow.ts'
import { type Residual, residual, whole } from './residual.ts'

/** The part of a leaf that hangs together: groups tied by a reading across them, or by the sex nobody knows. */
export type Part<T> = {
  readonly bird: number
  readonly groups: readonly number[]
  readonly across: readonly Residual<T>[]
  readonly sexes: readonly Sex[]
  /** Parts of the same name have the same table. */
  readonly name: string
  /** The parents' groups, as (bird, group), and after them the leaf's own. */
  readonly parents: readonly (readonly [bird: number, group: number])[]
  readonly codes: readonly (readonly number[])[]
}

/** The parts of a leaf. Readings that are the same whatever it is stand with the sex, or in a part without groups. */
export function partsOf<T>(frame: Frame<T>, narrowed: Narrowed, bird: number): readonly Part<T>[] {
  const leaf = frame.pedigree.birds[bird]!
  const sexes = sexesOf(leaf)
  const left = narrowed[bird]!
  const across = frame
    .across(leaf)
    .map((reading) => (sexes.length > 1 ? whole(frame, reading) : residual(frame, sexes[0]!, left, reading)))
  const bySex =
    sexes.length > 1 ? left.flatMap((_, group) => (tellsSex(frame, narrowed, bird, group) ? [group] : [])) : []
  const loose = across.some(({ groups }) => groups.length === 0)
  const ties = [
    ...across.map(({ groups }) => groups).filter(({ length }) => length > 0),
    ...(bySex.length > 0 ? [bySex] : []),
  ]
  const sets = united(
    left.map((_, group) => group),
    ties,
  )
  const [home = -1] = bySex
  return (loose && bySex.length === 0 ? [...sets, []] : sets).map((groups) => {
    const withSex = groups.includes(home) || (groups.length === 0 && sexes.length > 1)
    const own = across.filter(({ groups: [first] }) =>
      first === undefined ? groups.includes(home) || groups.length === 0 : groups.includes(first),
    )
    return part(frame, narrowed, bird, groups, own, withSex ? sexes : sexes.slice(0, 1))
  })
}

/** Does this group of a bird of unknown sex depend on the sex? */
function tellsSex<T>(frame: Frame<T>, narrowed: Narrowed, bird: number, group: number): boolean {
  const leaf = frame.pedigree.birds[bird]!
  if (
    frame.lumped[group]!.on === 'Z' ||
    frame.across(leaf).some((reading) => frame.seen(reading).groups.includes(group))
  )
    return true
  const own = (sex: Sex, code: number): T => frame.own(leaf, sex, group, code)
  return narrowed[bird]![group]!.codes.some(
    (code) => !frame.ring.isZero(frame.ring.minus(own('M', code), own('F', code))),
  )
}

/** Groups gathered into sets so that each tie lies in one set. */
export function united(
  groups: readonly number[],
  ties: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  let sets: number[][] = groups.map((group) => [group])
  for (const tie of ties) {
    const touched = sets.filter((set) => set.some((group) => tie.includes(group)))
    sets = [...sets.filter((set) => !touched.includes(set)), touched.flat().toSorted((a, b) => a - b)]
  }
  return sets
}

function part<T>(
  frame: Frame<T>,
  narrowed: Narrowed,
  bird: number,
  groups: readonly number[],
  across: readonly Residual<T>[],
  sexes: readonly Sex[],
): Part<T> {
  const leaf = frame.pedigree.birds[bird]!
  const { sire, dam } = leaf.parents ?? { sire: -1, dam: -1 }
  const parents = leaf.parents ? groups.flatMap((group) => [[sire, group] as const, [dam, group] as const]) : []
  const domains = [...parents, ...groups.map((group) => [bird, group] as const)].map(
    ([b, group]) => narrowed[b]![group]!,
  )
  const name = [
    sexes.join(''),
    ...groups.map((group) => frame.ownName(leaf, sexes[0]!, group)),
    ...across.map((reading) => reading.name),
    domains.map(({ id }) => id).join(),
  ].join('\n')
  return { bird, groups, across, sexes, name, parents, codes: domains.map(({ codes }) => codes) }
}

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
  const all = upTo(sizes.length)
  const at = indexOf(all, upTo(parents.length), sizes)
  const whole = { weights: joint, at: indexOf(all, all, sizes) }
  const message = tables.sum([whole], at, cellsOf(sizes.slice(0, parents.length)))
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
  const above = { weights: tables.over(parents, message).weights, at: indexOf(all, upTo(part.parents.length), sizes) }
  return tables.sum([{ weights: joint, at: indexOf(all, all, sizes) }, above], indexOf(all, [own], sizes), sizes[own]!)
}

const upTo = (n: number): number[] => Array.from({ length: n }, (_, i) => i)
export const cellsOf = (sizes: readonly number[]): number => sizes.reduce((product, size) => product * size, 1)
