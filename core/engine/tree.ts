// core/engine/tree.ts: the tree of cliques that an order of elimination makes, hung from its middle.
// Lauritzen & Spiegelhalter 1988 (J R Stat Soc B 50:157-224). Hung so, no bird is far from the root.
import { cellsOver, type Scope } from './factor.ts'
import type { Order } from './order.ts'

/** Variables that meet in one table. */
export type Clique = {
  /** The clique that takes the message; -1 where there is nothing left to tell. */
  readonly parent: number
  /** Those that the parent does not have. */
  readonly own: Scope
  /** Those that it has too. */
  readonly shared: Scope
}

/** Children before their parents. Every variable is the own one of a single clique, the nearest to the root that has it. */
export function treeOf(order: Order, sizes: readonly number[]): readonly Clique[] {
  const { scopes, near } = cliquesOf(order)
  const weights = scopes.map((scope) => cellsOver(scope, sizes))
  const above = scopes.map(() => -1)
  const found: number[] = [] // parents before children
  const hung = new Set<number>()
  for (const clique of scopes.keys()) {
    if (hung.has(clique)) continue
    const start = found.push(middle(clique, near, weights)) - 1
    for (let i = start; i < found.length; i += 1) {
      const one = found[i]!
      hung.add(one)
      for (const other of near[one]!) if (!hung.has(other)) above[found[found.push(other) - 1]!] = one
    }
  }
  const last = found.length - 1
  const place = new Map(found.map((clique, i) => [clique, last - i]))
  return found.toReversed().map((clique) => {
    const parent = above[clique]!
    const has = (v: number): boolean => parent >= 0 && scopes[parent]!.includes(v)
    const own = scopes[clique]!.filter((v) => !has(v))
    return { parent: place.get(parent) ?? -1, own, shared: scopes[clique]!.filter(has) }
  })
}

/** What meets when its turn comes, without those that a larger one holds whole; and which of them lean on which. */
function cliquesOf(order: Order): { readonly scopes: readonly Scope[]; readonly near: readonly (readonly number[])[] } {
  const turn: number[] = []
  order.forEach(({ variable }, i) => (turn[variable] = i))
  const home: number[] = [] // of each turn
  const scopes: number[][] = []
  const near: number[][] = []
  for (const [i, { variable, meets }] of [...order.entries()].toReversed()) {
    const leans = home[meets.reduce((first, v) => Math.min(first, turn[v]!), Infinity)]
    if (leans !== undefined && scopes[leans]!.length === meets.length) {
      scopes[leans]!.push(variable)
      home[i] = leans
      continue
    }
    home[i] = scopes.push([variable, ...meets]) - 1
    near.push(leans === undefined ? [] : [leans])
    if (leans !== undefined) near[leans]!.push(home[i])
  }
  return { scopes, near }
}

/** The smallest clique of the middle third of the heaviest path of the tree that a clique is in; small, for most questions pass through it. */
function middle(clique: number, near: readonly (readonly number[])[], weights: readonly number[]): number {
  const [end] = heaviestFrom(clique, near, weights)
  const path = heaviestFrom(end!, near, weights)
  const whole = path.reduce((sum, one) => sum + weights[one]!, 0)
  let passed = 0
  const third = path.filter((one) => {
    passed += weights[one]!
    return passed * 3 >= whole && (passed - weights[one]!) * 3 <= whole * 2
  })
  return third.reduce((a, b) => (weights[b]! < weights[a]! ? b : a))
}

/** The heaviest path that starts at a clique, its far end first. */
function heaviestFrom(start: number, near: readonly (readonly number[])[], weights: readonly number[]): number[] {
  const from = new Map([[start, -1]])
  const weight = new Map([[start, weights[start]!]])
  let end = start
  for (const [one, before] of from) {
    if (weight.get(one)! > weight.get(end)!) end = one
    for (const other of near[one]!) {
      if (other === before) continue
      from.set(other, one)
      weight.set(other, weight.get(one)! + weights[other]!)
    }
  }
  const path: number[] = []
  for (let one = end; one >= 0; one = from.get(one)!) path.push(one)
  return path
}
