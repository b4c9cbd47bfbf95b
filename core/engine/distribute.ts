// core/engine/distribute.ts: messages down a tree of cliques, and how the whole sum falls on the cells of a scope.
// Message passing with division, Jensen, Lauritzen & Olesen 1990; a zero divided by a zero counts as zero.
import { type Collected, halvesOf, upFrom } from './eliminate.ts'
import { cellsOver, indexOf, type Placed, type Scope } from './factor.ts'

/** How the whole sum falls on the cells of a scope whose variables meet in some table, up to a common factor. */
export type Beliefs<W> = {
  /** Taken nearest to the root: cheapest if little else is asked. */
  readonly of: (scope: Scope) => W
  /** Taken from the smallest table that has it: cheapest if everything is asked. */
  readonly amongAll: (scope: Scope) => W
}

/** The downward pass, worked only as far as it is asked for. */
export function distribute<T, W, S>(collected: Collected<T, W, S>): Beliefs<W> {
  const { plan, tables } = collected
  const within = (c: number, scope: Scope): W => fall(collected, c, scope)
  const between = (c: number, scope: Scope): W => {
    const { shared } = plan.cliques[c]!
    const at = indexOf(shared, scope, without(shared, scope), plan.sizes)
    const of = [upFrom(collected, c), downTo(collected, c)].map((weights) => ({ weights, at }))
    return tables.sum([of[0]!, of[1]!], cellsOver(scope, plan.sizes))
  }
  return {
    of: (scope) => (scope.length === 0 ? tables.ones(1) : within(plan.cliqueOf(scope), scope)),
    amongAll: (scope) => {
      if (scope.length === 0) return tables.ones(1)
      const { clique, message } = smallest(collected, scope)
      return (message ? between : within)(clique, scope)
    },
  }
}

/** The joint table of a clique, with all it is told, summed to a scope. */
function fall<T, W, S>(collected: Collected<T, W, S>, c: number, scope: Scope): W {
  const { plan, tables, recipes } = collected
  const clique = plan.cliques[c]!
  const rest = without(clique.scope, scope)
  const placed = (weights: W, part: Scope): Placed<W> => ({ weights, at: indexOf(part, scope, rest, plan.sizes) })
  const [one, two] = halvesOf(collected, c)
  const { last } = recipes[c]!
  const above = clique.parent < 0 ? undefined : placed(downTo(collected, c), clique.shared)
  return tables.sum([placed(one, last[0].scope), placed(two, last[1].scope), above], cellsOver(scope, plan.sizes))
}

function downTo<T, W, S>(collected: Collected<T, W, S>, c: number): W {
  const { plan, tables, down } = collected
  const { parent, shared } = plan.cliques[c]!
  const known = down[c]
  if (known !== undefined) return known
  const { weights } = tables.over(fall(collected, parent, shared), upFrom(collected, c))
  tables.settle(weights)
  down[c] = weights
  return weights
}

const without = (scope: Scope, part: Scope): Scope => scope.filter((v) => !part.includes(v))

/** Where a scope is summed out of the fewest cells: of a joint table, or of a message between a clique and its parent. */
function smallest<T, W, S>({ plan }: Collected<T, W, S>, scope: Scope): { clique: number; message: boolean } {
  const { cliques } = plan
  const found = [plan.cliqueOf(scope)]
  let best = { clique: found[0]!, message: false, cells: cliques[found[0]!]!.cells }
  const consider = (clique: number, message: boolean, cells: number): void => {
    if (cells < best.cells) best = { clique, message, cells }
  }
  for (const c of found) {
    consider(c, false, cliques[c]!.cells)
    for (const child of cliques[c]!.children) {
      if (!scope.every((v) => cliques[child]!.shared.includes(v))) continue
      consider(child, true, cliques[child]!.messageCells)
      found.push(child)
    }
  }
  return best
}
