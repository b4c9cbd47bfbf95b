// core/engine/model.ts: birds into tables: a variable for each breeding bird and group, a table for each trio.
import type { Scope, Tables } from './factor.ts'
import type { Frame } from './frame.ts'
import { gatherer, type Gatherer, type Graph } from './gather.ts'
import { cellsOf, type Litter, litter } from './leaf.ts'
import type { Narrowed } from './narrow.ts'
import type { Outcome, TooMuch } from './outcome.ts'
import { type Part, partsOf } from './part.ts'
import { addBirds, type Place } from './trio.ts'

/** A part of a leaf that was summed out, and where it meets the graph. */
export type Leaf<T, W, S> = {
  readonly part: Part<T>
  readonly litter: Litter<W, S>
  readonly scope: Scope
  /** The same object for parts alike in all but the bird: equal brothers and sisters. */
  readonly alike: object
}

export type Model<T, W, S> = Graph<W, S> & {
  /** The variable of a bird and group; undefined where one diplotype is left, or where the bird is a leaf. */
  readonly variable: (bird: number, group: number) => number | undefined
  readonly birdOf: (variable: number) => number
  readonly leaves: ReadonlyMap<number, readonly Leaf<T, W, S>[]>
}

const leafCells = 4096 // a leaf with a larger table is left to the order of elimination

type Wanted = {
  /** The birds to count in, parents included. */
  readonly matters: readonly number[]
  /** Birds that must stay variables though they have no chicks, because several of their groups are asked about at once. */
  readonly together: readonly number[]
  /** Cells beyond which no table is made. */
  readonly budget: number
}

export function compile<T, W, S>(
  frame: Frame<T>,
  narrowed: Narrowed,
  tables: Tables<T, W, S>,
  { matters, together, budget }: Wanted,
): Outcome<Model<T, W, S>> {
  const { birds } = frame.pedigree
  const parents = new Set(matters.flatMap((bird) => Object.values(birds[bird]!.parents ?? {})))
  const parts = new Map<number, readonly Part<T>[]>()
  for (const bird of matters.filter((bird) => !parents.has(bird) && !together.includes(bird))) {
    const own = partsOf(frame, narrowed, bird)
    const small = own.every(({ codes }) => cellsOf(codes.map(({ length }) => length)) <= leafCells)
    if (small || birds[bird]!.sex === 'U' || birds[bird]!.copies !== undefined) parts.set(bird, own)
  }
  const whole = matters.filter((bird) => !parts.has(bird))
  const large = firstBeyond(frame, narrowed, whole, parts, budget)
  if (large !== undefined) return large
  const places = whole.flatMap((bird) => narrowed[bird]!.map((_, group): Place => [bird, group]))
  const open = places.filter(([bird, group]) => narrowed[bird]![group]!.codes.length > 1)
  const numbers = new Map(open.map(([bird, group], i) => [bird * frame.lumped.length + group, i]))
  const variable = (bird: number, group: number): number | undefined => numbers.get(bird * frame.lumped.length + group)
  const graph = gatherer(
    open.map(([bird, group]) => narrowed[bird]![group]!.codes.length),
    tables,
  )
  const scopeOf = (of: readonly Place[]): Scope => of.flatMap(([bird, group]) => variable(bird, group) ?? [])
  addBirds(frame, narrowed, tables, whole, (of, table) => graph.add(scopeOf(of), table.weights, table.scale))
  const leaves = addLeaves(frame, tables, parts, scopeOf, graph)
  return { kind: 'answer', answer: { ...graph.done(), variable, birdOf: (v) => open[v]![0], leaves } }
}

/** The first table that would be too large, before any is made: of a bird with its parents, or of a part of a leaf. */
function firstBeyond<T>(
  { pedigree }: Frame<T>,
  narrowed: Narrowed,
  whole: readonly number[],
  parts: ReadonlyMap<number, readonly Part<T>[]>,
  budget: number,
): TooMuch | undefined {
  const trio = (bird: number): readonly number[] => [bird, ...Object.values(pedigree.birds[bird]!.parents ?? {})]
  const cellsFor = (lists: readonly (readonly number[])[]): number => cellsOf(lists.map(({ length }) => length))
  for (const bird of [...whole, ...parts.keys()]) {
    const tables =
      parts.get(bird)?.map(({ codes }) => cellsFor(codes)) ??
      narrowed[bird]!.map((_, group) => cellsFor(trio(bird).map((one) => narrowed[one]![group]!.codes)))
    const cells = Math.max(...tables)
    if (cells > budget) return { kind: 'too-large', cells, budget, widest: trio(bird) }
  }
  return undefined
}

function addLeaves<T, W, S>(
  frame: Frame<T>,
  tables: Tables<T, W, S>,
  parts: ReadonlyMap<number, readonly Part<T>[]>,
  scopeOf: (of: readonly Place[]) => Scope,
  graph: Gatherer<W, S>,
): ReadonlyMap<number, readonly Leaf<T, W, S>[]> {
  const made = new Map<string, Litter<W, S>>()
  const groups = new Map<string, { readonly scope: Scope; readonly litter: Litter<W, S>; n: number }>()
  const leaves = new Map<number, readonly Leaf<T, W, S>[]>()
  for (const [bird, own] of parts)
    leaves.set(
      bird,
      own.map((part) => {
        const table = made.get(part.name) ?? litter(frame, tables, part)
        made.set(part.name, table)
        const scope = scopeOf(part.parents)
        const key = `${scope.join()}\n${part.name}`
        const alike = groups.get(key) ?? { scope, litter: table, n: 0 }
        groups.set(key, alike)
        alike.n += frame.pedigree.birds[bird]!.copies ?? 1
        return { part, litter: table, scope: alike.scope, alike }
      }),
    )
  for (const { scope, litter, n } of groups.values())
    graph.add(scope, tables.power(litter.message, n), tables.raise(litter.scale, n))
  return leaves
}
