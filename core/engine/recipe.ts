// core/engine/recipe.ts: in what order the tables that meet in a bucket are multiplied, smallest first, down to two.
// The last product is never written down: its cells are summed as they arise.
import { type Index, indexOf, type Scope } from './factor.ts'
import type { Plan } from './plan.ts'

/** Inputs are numbered: the tables given to the bucket, its children's messages, then the products made. */
export type Recipe = {
  readonly steps: readonly { readonly a: number; readonly b: number; readonly atA: Index; readonly atB: Index }[]
  /** The one or two inputs left, as they stand in the joint table; -1 where nothing is given and all is one. */
  readonly last: readonly { readonly of: number; readonly at: Index }[]
  /** Where the joint table stands in the message to the parent, and in those from the children. */
  readonly message: Index
  readonly children: readonly Index[]
}

type Input = { readonly of: number; readonly scope: Scope; readonly cells: number }

/** @param given how many of the plan's scopes have a table; the others stand only for variables to be kept together */
export function recipeOf({ buckets, bucketOf, scopes, sizes }: Plan, b: number, given: number): Recipe {
  const { scope, factors, children } = buckets[b]!
  const separator = (child: number): Scope => buckets[child]!.scope.slice(1)
  const parts = [...factors.filter((f) => f < given).map((f) => scopes[f]!), ...children.map(separator)]
  const cells = (of: Scope): number => of.reduce((product, v) => product * sizes[v]!, 1)
  const inputs = parts.map((part, of): Input => ({ of, scope: part, cells: cells(part) }))
  const steps: Recipe['steps'][number][] = []
  while (inputs.length > 2) {
    inputs.sort((x, y) => y.cells - x.cells)
    const [y, x] = [inputs.pop()!, inputs.pop()!]
    const union = [...new Set([...x.scope, ...y.scope])].sort((v, w) => bucketOf[w]! - bucketOf[v]!)
    steps.push({ a: x.of, b: y.of, atA: indexOf(union, x.scope, sizes), atB: indexOf(union, y.scope, sizes) })
    inputs.push({ of: parts.length + steps.length - 1, scope: union, cells: cells(union) })
  }
  const all = inputs.length > 0 ? inputs : [{ of: -1, scope: [] }]
  return {
    steps,
    last: all.map((input) => ({ of: input.of, at: indexOf(scope, input.scope, sizes) })),
    message: indexOf(scope, separator(b), sizes),
    children: children.map((child) => indexOf(scope, separator(child), sizes)),
  }
}
