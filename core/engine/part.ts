// core/engine/part.ts: a bird without chicks, taken apart into what hangs together.
import type { Sex } from '../vocabulary.ts'
import type { Frame } from './frame.ts'
import { type Narrowed, sexesOf } from './narrow.ts'
import { type Residual, residual, whole } from './residual.ts'
import { united } from './united.ts'

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
