// core/engine/eliminate.ts: messages up a tree of cliques: for the whole sum, and to be worked again where one table changes.
import { indexOf, type Tables } from './factor.ts'
import type { Plan } from './plan.ts'
import { type Recipe, recipeOf } from './recipe.ts'

/** What is known so far, clique by clique. What is missing is worked when it is asked for, and then kept. */
export type Collected<T, W, S> = {
  readonly plan: Plan
  readonly tables: Tables<T, W, S>
  readonly given: readonly W[]
  readonly recipes: readonly Recipe[]
  /** The two tables whose product is the joint table of the clique; not kept where there are many. */
  readonly halves: (readonly [W, W] | undefined)[]
  /** The message of each clique to its parent, and the factor taken out of it. */
  readonly up: (W | undefined)[]
  readonly scales: S[]
  /** What each clique is told by its parent: everything outside the tree below it. */
  readonly down: (W | undefined)[]
  /** The whole sum of products, and the factor taken out of it. */
  readonly whole: Whole<T, S>
}
type Whole<T, S> = { readonly mass: T; readonly scale: S }

const keptCells = 1 << 23

/** `given` holds a table for each of the first scopes of the plan; scopes without one only keep variables together. */
export function collect<T, W, S>(plan: Plan, given: readonly W[], tables: Tables<T, W, S>): Collected<T, W, S> {
  const recipes = plan.cliques.map((_, c) => recipeOf(plan, c, given.length))
  const nothing = { halves: [], up: [], scales: [], down: [], whole: { mass: tables.ring.one, scale: tables.unit } }
  const collected: Collected<T, W, S> = { plan, tables, given, recipes, ...nothing }
  const roots = plan.cliques.flatMap(({ parent }, c) => {
    const message = upFrom(collected, c)
    return parent < 0 ? [tables.total(message)] : []
  })
  const mass = roots.reduce(tables.ring.times, tables.ring.one)
  return { ...collected, whole: { mass, scale: collected.scales.reduce(tables.join, tables.unit) } }
}

/**
 * The same with one table replaced. Only the messages from its clique to the root no longer hold, and what
 * these cliques are told from above still does. The whole sum is taken where such a telling is first met.
 *
 * @param table nothing where the one before it is nothing: what was told there is not known
 */
export function revise<T, W, S>(from: Collected<T, W, S>, factor: number, table: W): Collected<T, W, S> {
  const { plan, given, tables } = from
  const path = pathUp(plan, plan.cliqueOf(plan.scopes[factor]!))
  const stale = new Set(path)
  const unless = <M>(made: readonly M[], is: boolean): (M | undefined)[] =>
    plan.cliques.map((_, c) => (stale.has(c) === is ? undefined : made[c]))
  const state = { halves: unless(from.halves, true), up: unless(from.up, true), down: unless(from.down, false) }
  const revised = { ...from, given: given.with(factor, table), ...state, scales: [...from.scales] }
  const { mass, scale } = changeOf(from, revised, path)
  return {
    ...revised,
    whole: { mass: tables.ring.times(from.whole.mass, mass), scale: tables.join(from.whole.scale, scale) },
  }
}

function pathUp({ cliques }: Plan, from: number): readonly number[] {
  const path: number[] = []
  for (let c = from; c >= 0; c = cliques[c]!.parent) path.push(c)
  return path
}

/** By what the whole sum is multiplied. */
function changeOf<T, W, S>(from: Collected<T, W, S>, to: Collected<T, W, S>, path: readonly number[]): Whole<T, S> {
  const { tables, plan, down } = from
  const known = path.findIndex((c) => plan.cliques[c]!.parent < 0 || down[c] !== undefined)
  const [before, after] = [from, to].map((one) => sumThrough(one, path[known]!))
  const scale = path
    .slice(0, known + 1)
    .reduce((all, c) => tables.join(all, tables.join(to.scales[c]!, tables.raise(from.scales[c]!, -1))), tables.unit)
  return { mass: tables.ring.over(after!, before!), scale }
}

/** The whole sum as it passes between a clique and its parent, up to the factors taken out. */
function sumThrough<T, W, S>(collected: Collected<T, W, S>, c: number): T {
  const { plan, tables, down } = collected
  const { shared } = plan.cliques[c]!
  const at = indexOf(shared, [], shared, plan.sizes)
  const told = down[c]
  const message = upFrom(collected, c)
  return tables.total(
    told === undefined
      ? message
      : tables.sum(
          [
            { weights: message, at },
            { weights: told, at },
          ],
          1,
        ),
  )
}

export function upFrom<T, W, S>(collected: Collected<T, W, S>, c: number): W {
  const { plan, tables, recipes, up, scales } = collected
  const known = up[c]
  if (known !== undefined) return known
  const [one, two] = halvesOf(collected, c)
  const [atOne, atTwo] = recipes[c]!.up
  const message = tables.sum(
    [
      { weights: one, at: atOne! },
      { weights: two, at: atTwo! },
    ],
    plan.cliques[c]!.messageCells,
  )
  scales[c] = tables.settle(message)
  up[c] = message
  return message
}

/** Follows the recipe of a clique. */
export function halvesOf<T, W, S>(collected: Collected<T, W, S>, c: number): readonly [W, W] {
  const { plan, tables, given, recipes, halves } = collected
  const known = halves[c]
  if (known !== undefined) return known
  const { factors, children } = plan.cliques[c]!
  const { steps, last } = recipes[c]!
  const made: W[] = [
    ...factors.flatMap((f) => (f < given.length ? [given[f]!] : [])),
    ...children.map((child) => upFrom(collected, child)),
  ]
  for (const { a, b, atA, atB, cells } of steps)
    made.push(
      tables.sum(
        [
          { weights: made[a]!, at: atA },
          { weights: made[b]!, at: atB },
        ],
        cells,
      ),
    )
  const [one, two] = last.map(({ of }) => made[of] ?? tables.ones(1))
  const own = [one!, two!] as const
  if (plan.cells <= keptCells) halves[c] = own
  return own
}
