// core/engine/gather.ts: tables collected into a graph: those over the same variables become one.
import { cellsOver, indexOf, type Scaled, type Scope, type Tables } from './factor.ts'

/** Variables by size, tables by scope, and a single cell by which the whole is to be multiplied besides. */
export type Graph<W, S> = {
  readonly sizes: readonly number[]
  readonly scopes: readonly Scope[]
  readonly given: readonly W[]
  readonly constant: Scaled<W, S>
}

export type Gatherer<W, S> = {
  readonly add: (scope: Scope, weights: W, scale: S) => void
  readonly done: () => Graph<W, S>
}

/** Collects tables: those over the same variables become one, those over none multiply the whole. */
export function gatherer<T, W, S>(sizes: readonly number[], tables: Tables<T, W, S>): Gatherer<W, S> {
  const constant = { weights: tables.ones(1), scale: tables.unit }
  const found = new Map<string, { readonly scope: Scope; readonly weights: W }>()
  const times = (scope: Scope, a: W, b: W): W => {
    const at = indexOf(scope, scope, [], sizes)
    return tables.sum(
      [
        { weights: a, at },
        { weights: b, at },
      ],
      cellsOver(scope, sizes),
    )
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
