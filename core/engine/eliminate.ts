// core/engine/eliminate.ts: the two passes over a bucket tree: up for the whole sum, down for every part of it.
// Message passing with division, Jensen, Lauritzen & Olesen 1990; a zero divided by a zero counts as zero.
import { type Index, indexOf, type Scope, type Tables } from './factor.ts'
import type { Plan } from './plan.ts'

/** What the upward pass leaves: for each bucket its message, and the factor taken out of it. */
export type Collected<T, W, S> = {
  readonly plan: Plan
  readonly tables: Tables<T, W, S>
  readonly given: readonly W[]
  readonly places: readonly Places[]
  readonly up: readonly W[]
  readonly scales: readonly S[]
  /** The joint tables, where they are few enough to be kept for the downward pass. */
  readonly joint: readonly (W | undefined)[]
}

/** Where the cells of a bucket stand in the tables multiplied there, and in its own message. */
type Places = { readonly factors: readonly Index[]; readonly children: readonly Index[]; readonly message: Index }

const keptCells = 1 << 22

/** The upward pass. `given` holds one table for each scope of the plan that has one, in the order of the scopes. */
export function collect<T, W, S>(plan: Plan, given: readonly W[], tables: Tables<T, W, S>): Collected<T, W, S> {
  const places = plan.buckets.map((_, b) => placesOf(plan, b))
  const state = { up: [] as W[], scales: [] as S[], joint: [] as (W | undefined)[] }
  const collected = { plan, tables, given, places, ...state }
  plan.buckets.forEach((_, b) => send(collected, state, b))
  return collected
}

/** The same with one table replaced: only the buckets between it and its root are worked again. */
export function revise<T, W, S>(from: Collected<T, W, S>, factor: number, table: W): Collected<T, W, S> {
  const state = { up: [...from.up], scales: [...from.scales], joint: [...from.joint] }
  const collected = { ...from, given: from.given.with(factor, table), ...state }
  let b = from.plan.buckets.findIndex(({ factors }) => factors.includes(factor))
  for (; b >= 0; b = from.plan.buckets[b]!.parent) send(collected, state, b)
  return collected
}

type Messages<W, S> = { readonly up: W[]; readonly scales: S[]; readonly joint: (W | undefined)[] }

function send<T, W, S>(collected: Collected<T, W, S>, { up, scales, joint }: Messages<W, S>, b: number): void {
  const { plan, tables, places } = collected
  const { cells, variable } = plan.buckets[b]!
  const product = multiplied(collected, b)
  const message = tables.gather(product, places[b]!.message, cells / plan.sizes[variable]!)
  scales[b] = tables.settle(message)
  up[b] = message
  joint[b] = plan.cells <= keptCells ? product : undefined
}

const separatorOf = ({ scope }: { readonly scope: Scope }): Scope => scope.slice(0, -1)

function placesOf({ buckets, scopes, sizes }: Plan, b: number): Places {
  const { scope, factors, children } = buckets[b]!
  const at = (part: Scope): Index => indexOf(scope, part, sizes)
  return {
    factors: factors.map((f) => at(scopes[f]!)),
    children: children.map((child) => at(separatorOf(buckets[child]!))),
    message: at(separatorOf(buckets[b]!)),
  }
}

/** Everything that meets in a bucket, multiplied. Scopes without a table only widen it. */
function multiplied<T, W, S>({ plan, tables, given, places, up }: Collected<T, W, S>, b: number): W {
  const { factors, children, cells } = plan.buckets[b]!
  let product: W | undefined
  const take = (table: W | undefined, at: Index): void => {
    if (table === undefined) return
    if (product === undefined) product = tables.spread(table, at)
    else tables.multiply(product, table, at)
  }
  factors.forEach((f, i) => take(given[f], places[b]!.factors[i]!))
  children.forEach((child, i) => take(up[child], places[b]!.children[i]!))
  return product ?? tables.ones(cells)
}

/** The whole sum of products. */
export function evidence<T, W, S>({ plan, tables, up, scales }: Collected<T, W, S>): { mass: T; scale: S } {
  const roots = up.filter((_, b) => plan.buckets[b]!.parent < 0)
  return {
    mass: roots.reduce((product, message) => tables.ring.times(product, tables.total(message)), tables.ring.one),
    scale: scales.reduce(tables.join, tables.unit),
  }
}

/**
 * The downward pass, worked only where it is asked for.
 *
 * @returns for a scope that meets in some bucket: how the whole sum falls on its cells, up to a common factor
 */
export function distribute<T, W, S>(collected: Collected<T, W, S>): (scope: Scope) => W {
  const { plan, tables, places, up, joint } = collected
  const beliefs: (W | undefined)[] = []
  const belief = (b: number): W => (beliefs[b] ??= believe(b))
  const believe = (b: number): W => {
    const product = joint[b] ?? multiplied(collected, b)
    const { parent, cells, variable } = plan.buckets[b]!
    if (parent < 0) return product
    const place = places[parent]!.children[plan.buckets[parent]!.children.indexOf(b)]!
    const down = tables.over(tables.gather(belief(parent), place, cells / plan.sizes[variable]!), up[b]!)
    tables.settle(down)
    const believed = tables.copy(product)
    tables.multiply(believed, down, places[b]!.message)
    return believed
  }
  return (scope) => {
    if (scope.length === 0) return tables.ones(1)
    const b = scope.reduce((first, v) => Math.min(first, plan.bucketOf[v]!), Infinity)
    const cells = scope.reduce((product, v) => product * plan.sizes[v]!, 1)
    return tables.gather(belief(b), indexOf(plan.buckets[b]!.scope, scope, plan.sizes), cells)
  }
}
