// core/engine/eliminate.ts: the two passes over a bucket tree: up for the whole sum, down for every part of it.
// Message passing with division, Jensen, Lauritzen & Olesen 1990; a zero divided by a zero counts as zero.
import { type Index, indexOf, type Placed, type Scope, type Tables } from './factor.ts'
import type { Plan } from './plan.ts'
import { type Recipe, recipeOf } from './recipe.ts'

/** What the upward pass leaves, bucket by bucket, and as much of the downward pass as was asked for. */
export type Collected<T, W, S> = {
  readonly plan: Plan
  readonly tables: Tables<T, W, S>
  readonly given: readonly W[]
  readonly recipes: readonly Recipe[]
  /** The message each bucket sends to its parent, and the factor taken out of it. */
  readonly up: readonly W[]
  readonly scales: readonly S[]
  /** The one or two tables whose product is the joint table of the bucket, where they are few enough to be kept. */
  readonly halves: readonly (Halves<W> | undefined)[]
  /** What each bucket is told by its parent: everything outside the tree below it. Filled as it is asked for. */
  readonly down: (Placed<W> | undefined)[]
}
type Halves<W> = readonly [Placed<W>, Placed<W>?]

const keptCells = 1 << 23

/** The upward pass. `given` holds a table for each of the first scopes of the plan; scopes without one only keep variables together. */
export function collect<T, W, S>(plan: Plan, given: readonly W[], tables: Tables<T, W, S>): Collected<T, W, S> {
  const recipes = plan.buckets.map((_, b) => recipeOf(plan, b, given.length))
  const state = { up: [] as W[], scales: [] as S[], halves: [] as (Halves<W> | undefined)[] }
  const collected = { plan, tables, given, recipes, ...state, down: [] }
  plan.buckets.forEach((_, b) => send(collected, state, b))
  return collected
}

/**
 * The same with one table replaced: only the buckets between it and its root are worked again, and these
 * alone are still told the same from above.
 */
export function revise<T, W, S>(from: Collected<T, W, S>, factor: number, table: W): Collected<T, W, S> {
  const state = { up: [...from.up], scales: [...from.scales], halves: [...from.halves] }
  const down: (Placed<W> | undefined)[] = []
  const collected = { ...from, given: from.given.with(factor, table), ...state, down }
  const { buckets } = from.plan
  for (let b = buckets.findIndex(({ factors }) => factors.includes(factor)); b >= 0; b = buckets[b]!.parent) {
    send(collected, state, b)
    down[b] = from.down[b]
  }
  return collected
}

type State<W, S> = { readonly up: W[]; readonly scales: S[]; readonly halves: (Halves<W> | undefined)[] }

function send<T, W, S>(collected: Collected<T, W, S>, { up, scales, halves }: State<W, S>, b: number): void {
  const { plan, tables, recipes } = collected
  const { cells, variable } = plan.buckets[b]!
  const own = halvesOf(collected, b)
  const message = tables.sum(own, recipes[b]!.message, cells / plan.sizes[variable]!)
  scales[b] = tables.settle(message)
  up[b] = message
  halves[b] = plan.cells <= keptCells ? own : undefined
}

/** Follows the recipe of a bucket. */
function halvesOf<T, W, S>({ plan, tables, given, recipes, up }: Collected<T, W, S>, b: number): Halves<W> {
  const { factors, children } = plan.buckets[b]!
  const { steps, last } = recipes[b]!
  const made: W[] = [
    ...factors.flatMap((f) => (f < given.length ? [given[f]!] : [])),
    ...children.map((child) => up[child]!),
  ]
  for (const { a, b, atA, atB } of steps)
    made.push(tables.product({ weights: made[a]!, at: atA }, { weights: made[b]!, at: atB }))
  const [one, two] = last.map(({ of, at }): Placed<W> => ({ weights: of < 0 ? tables.ones(1) : made[of]!, at }))
  return two === undefined ? [one!] : [one!, two]
}

/** The whole sum of products. */
export function evidence<T, W, S>({ plan, tables, up, scales }: Collected<T, W, S>): { mass: T; scale: S } {
  const roots = up.filter((_, b) => plan.buckets[b]!.parent < 0)
  return {
    mass: roots.reduce((product, message) => tables.ring.times(product, tables.total(message)), tables.ring.one),
    scale: scales.reduce(tables.join, tables.unit),
  }
}

/** How the whole sum falls on the cells of a scope, up to a common factor. */
export type Beliefs<W> = {
  /** For a scope whose variables meet in some table. */
  readonly of: (scope: Scope) => W
  /** For each variable by itself, taken where it is cheapest if all of them are wanted. */
  readonly ofEach: () => readonly W[]
}

/** The downward pass, worked only as far as it is asked for. */
export function distribute<T, W, S>(collected: Collected<T, W, S>): Beliefs<W> {
  const { plan, tables, recipes, up, halves, down } = collected
  const { buckets, sizes } = plan
  const fall = (b: number, at: Index, cells: number): W => {
    const [one, two] = halves[b] ?? halvesOf(collected, b)
    const above = buckets[b]!.parent < 0 ? undefined : (down[b] ??= fromAbove(b))
    return tables.sum(two === undefined ? [one, above] : [one, two, above], at, cells)
  }
  const fromAbove = (b: number): Placed<W> => {
    const { parent, cells, variable } = buckets[b]!
    const at = recipes[parent]!.children[buckets[parent]!.children.indexOf(b)]!
    const { weights } = tables.over(fall(parent, at, cells / sizes[variable]!), up[b]!)
    tables.settle(weights)
    return { weights, at: recipes[b]!.message }
  }
  const within = (b: number, scope: Scope): W =>
    fall(
      b,
      indexOf(buckets[b]!.scope, scope, sizes),
      scope.reduce((product, v) => product * sizes[v]!, 1),
    )
  const first = (scope: Scope): number => scope.reduce((earliest, v) => Math.min(earliest, plan.bucketOf[v]!), Infinity)
  return {
    of: (scope) => (scope.length === 0 ? tables.ones(1) : within(first(scope), scope)),
    ofEach: () => smallestBuckets(plan).map((b, v) => within(b, [v])),
  }
}

/** For each variable the smallest bucket it occurs in. */
function smallestBuckets({ buckets, sizes }: Plan): readonly number[] {
  const smallest = sizes.map(() => -1)
  buckets.forEach(({ scope, cells }, b) => {
    for (const v of scope) if (smallest[v]! < 0 || cells < buckets[smallest[v]!]!.cells) smallest[v] = b
  })
  return smallest
}
