// core/engine/recipe.ts: in what order the tables that meet in a clique are multiplied, smallest first, down to two.
// The last product is never written down: its cells are summed as they arise.
import { cellsOver, type Index, indexOf, type Scope } from './factor.ts'
import type { Plan } from './plan.ts'

/** Inputs are numbered: the tables given to the clique, its children's messages, then the products made. */
export type Recipe = {
  readonly steps: readonly {
    readonly a: number
    readonly b: number
    readonly atA: Index
    readonly atB: Index
    readonly cells: number
  }[]
  /** The two inputs left; -1 where nothing is left and all is one. */
  readonly last: readonly [Input, Input]
  /** Where these stand in the message to the parent. */
  readonly up: readonly Index[]
}
type Input = { readonly of: number; readonly scope: Scope }

/** @param given how many of the plan's scopes have a table; the others stand only for variables to be kept together */
export function recipeOf({ cliques, scopes, sizes }: Plan, c: number, given: number): Recipe {
  const { scope, own, shared, factors, children } = cliques[c]!
  const parts = [
    ...factors.filter((f) => f < given).map((f) => scopes[f]!),
    ...children.map((child) => cliques[child]!.shared),
  ]
  const inputs = parts.map((part, of) => ({ of, scope: part, cells: cellsOver(part, sizes) }))
  const steps: Recipe['steps'][number][] = []
  while (inputs.length > 2) {
    inputs.sort((x, y) => y.cells - x.cells)
    const [y, x] = [inputs.pop()!, inputs.pop()!]
    const union = scope.filter((v) => x.scope.includes(v) || y.scope.includes(v))
    const cells = cellsOver(union, sizes)
    const at = (part: Scope): Index => indexOf(part, union, [], sizes)
    inputs.push({ of: parts.length + steps.length, scope: union, cells })
    steps.push({ a: x.of, b: y.of, atA: at(x.scope), atB: at(y.scope), cells })
  }
  const [one = nothing, two = nothing] = inputs
  return { steps, last: [one, two], up: [one, two].map((part) => indexOf(part.scope, shared, own, sizes)) }
}

const nothing: Input = { of: -1, scope: [] }
