// core/engine/model.ts: birds into tables: a variable for each breeding bird and group, a table for each trio.
import { indexOf, type Scaled, type Scope, type Tables } from './factor.ts'
import type { Frame } from './frame.ts'
import { cellsOf, type Litter, litter, type Part, partsOf } from './leaf.ts'
import { combinations, type Narrowed } from './narrow.ts'
import { residual } from './residual.ts'

/** A part of a leaf that was summed out, and where it meets the graph. */
export type Leaf<T, W, S> = { readonly part: Part<T>; readonly litter: Litter<W, S>; readonly scope: Scope }

export type Model<T, W, S> = {
  readonly sizes: readonly number[]
  readonly scopes: readonly Scope[]
  readonly given: readonly W[]
  /** A single cell and its scale: what multiplies the whole sum besides. */
  readonly constant: Scaled<W, S>
  /** The variable of a bird and group; undefined where one diplotype is left, or where the bird is a leaf. */
  readonly variable: (bird: number, group: number) => number | undefined
  readonly birdOf: (variable: number) => number
  readonly leaves: ReadonlyMap<number, readonly Leaf<T, W, S>[]>
}

type Place = readonly [bird: number, group: number]

const leafCells = 4096 // a leaf with a larger table is left to the order of elimination

/**
 * @param matters the birds to count in, parents included
 * @param together birds that must stay variables though they have no chicks, because several of their groups are asked about at once
 */
export function compile<T, W, S>(
  frame: Frame<T>,
  narrowed: Narrowed,
  tables: Tables<T, W, S>,
  matters: readonly number[],
  together: readonly number[],
): Model<T, W, S> {
  const { birds } = frame.pedigree
  const parents = new Set(matters.flatMap((bird) => Object.values(birds[bird]!.parents ?? {})))
  const parts = new Map<number, readonly Part<T>[]>()
  for (const bird of matters.filter((bird) => !parents.has(bird) && !together.includes(bird))) {
    const own = partsOf(frame, narrowed, bird)
    const small = own.every(({ codes }) => cellsOf(codes.map(({ length }) => length)) <= leafCells)
    if (small || birds[bird]!.sex === 'U' || birds[bird]!.copies !== undefined) parts.set(bird, own)
  }
  const whole = matters.filter((bird) => !parts.has(bird))
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
  return { ...graph.done(), variable, birdOf: (v) => open[v]![0], leaves }
}

/** One table for each bird and group, equal ones made once; and one for each reading that still ties groups. */
function addBirds<T, W, S>(
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
      const name = `${frame.ownName(bird, sex, group)}\n${domains.map(({ id }) => id).join()}`
      const cells = (): T[] =>
        combinations(domains.map(({ codes }) => codes)).map(([code, sire, dam]) => {
          const own = frame.own(bird, sex, group, code!)
          return sire === undefined ? own : frame.ring.times(own, frame.inherit[group]!.pass(code!, sire, dam!))
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

function addLeaves<T, W, S>(
  frame: Frame<T>,
  tables: Tables<T, W, S>,
  parts: ReadonlyMap<number, readonly Part<T>[]>,
  scopeOf: (of: readonly Place[]) => Scope,
  graph: Gatherer<W, S>,
): ReadonlyMap<number, readonly Leaf<T, W, S>[]> {
  const made = new Map<string, Litter<W, S>>()
  const alike = new Map<string, { readonly scope: Scope; readonly litter: Litter<W, S>; n: number }>()
  const leaves = new Map<number, readonly Leaf<T, W, S>[]>()
  for (const [bird, own] of parts)
    leaves.set(
      bird,
      own.map((part) => {
        const table = made.get(part.name) ?? litter(frame, tables, part)
        made.set(part.name, table)
        const scope = scopeOf(part.parents)
        const key = `${scope.join()}\n${part.name}`
        const group = alike.get(key) ?? { scope, litter: table, n: 0 }
        alike.set(key, { ...group, n: group.n + (frame.pedigree.birds[bird]!.copies ?? 1) })
        return { part, litter: table, scope }
      }),
    )
  for (const { scope, litter, n } of alike.values())
    graph.add(scope, tables.power(litter.message, n), tables.raise(litter.scale, n))
  return leaves
}

type Gatherer<W, S> = {
  readonly add: (scope: Scope, weights: W, scale: S) => void
  readonly done: () => Pick<Model<unknown, W, S>, 'sizes' | 'scopes' | 'given' | 'constant'>
}

/** Collects tables: those over the same variables become one, those over none multiply the whole. */
function gatherer<T, W, S>(sizes: readonly number[], tables: Tables<T, W, S>): Gatherer<W, S> {
  const constant = { weights: tables.ones(1), scale: tables.unit }
  const found = new Map<string, { readonly scope: Scope; readonly weights: W }>()
  const times = (scope: Scope, a: W, b: W): W => {
    const at = indexOf(scope, scope, sizes)
    return tables.product({ weights: a, at }, { weights: b, at })
  }
  const add = (scope: Scope, weights: W, scale: S): void => {
    constant.scale = tables.join(constant.scale, scale)
    if (scope.length === 0) {
      constant.weights = times(scope, constant.weights, weights)
      constant.scale = tables.join(constant.scale, tables.settle(constant.weights))
      return
    }
    const key = scope.join()
    const before = found.get(key)
    found.set(key, { scope, weights: before === undefined ? weights : times(scope, before.weights, weights) })
  }
  const done = () => {
    const all = [...found.values()]
    return { sizes, scopes: all.map(({ scope }) => scope), given: all.map(({ weights }) => weights), constant }
  }
  return { add, done }
}
