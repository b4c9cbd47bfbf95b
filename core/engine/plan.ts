// core/engine/plan.ts: how a sum of products is to be worked, and what that will cost, before any arithmetic.
import { cellsOver, type Scope } from './factor.ts'
import { orderOf } from './order.ts'
import { type Clique as Hung, treeOf } from './tree.ts'

/** Variables that meet in one joint table, and what comes together there. */
export type Clique = Hung & {
  /** What the joint table ranges over: `own`, then `shared`. */
  readonly scope: Scope
  readonly cells: number
  /** Cells of a message to or from the parent. */
  readonly messageCells: number
  /** The given tables multiplied here. */
  readonly factors: readonly number[]
  /** The cliques whose message arrives here. */
  readonly children: readonly number[]
}

/** `cliques` come before their parents. `cells` is the whole work of one pass. */
export type Plan = {
  readonly sizes: readonly number[]
  readonly scopes: readonly Scope[]
  readonly cliques: readonly Clique[]
  /** The clique nearest to the root that has all these variables, which must meet in some table. */
  readonly cliqueOf: (scope: Scope) => number
  readonly cells: number
}

const bends = [1.5, 1.75, 1]
const cheapCells = 1e6 // with fewer, another order takes more time than it may save

/**
 * The cheapest of a few orders.
 *
 * @param sizes number of values of each variable
 * @param scopes variables of each table; one without a table may stand in it only to be kept together
 */
export function plan(sizes: readonly number[], scopes: readonly Scope[]): Plan {
  let best: Plan | undefined
  for (const bend of bends) {
    if (best !== undefined && best.cells <= cheapCells) break
    const made = planOf(sizes, scopes, treeOf(orderOf(sizes, scopes, bend), sizes))
    if (best === undefined || made.cells < best.cells) best = made
  }
  return best!
}

function planOf(sizes: readonly number[], scopes: readonly Scope[], tree: readonly Hung[]): Plan {
  const home: number[] = []
  tree.forEach(({ own }, c) => own.forEach((v) => (home[v] = c)))
  const cliqueOf = (scope: Scope): number => scope.reduce((lowest, v) => Math.min(lowest, home[v]!), Infinity)
  const factors: number[][] = tree.map(() => [])
  scopes.forEach((scope, i) => factors[cliqueOf(scope)]?.push(i))
  const children: number[][] = tree.map(() => [])
  tree.forEach(({ parent }, c) => children[parent]?.push(c))
  const cliques = tree.map(({ parent, own, shared }, c): Clique => {
    const sorted = shared.toSorted((a, b) => home[b]! - home[a]! || a - b)
    const scope = [...own, ...sorted]
    const [cells, messageCells] = [cellsOver(scope, sizes), cellsOver(sorted, sizes)]
    return { parent, own, shared: sorted, scope, cells, messageCells, factors: factors[c]!, children: children[c]! }
  })
  return { sizes, scopes, cliques, cliqueOf, cells: cliques.reduce((sum, { cells }) => sum + cells, 0) }
}
