// core/engine/plan.ts: the order in which variables are summed out, and what that will cost, before any arithmetic.
// Min-fill (Kjærulff 1990) on the graph of variables that share a table; every result is a bucket tree (Dechter 1999).
import type { Scope } from './factor.ts'

/** One variable to be summed out of everything that touches it. */
type Bucket = {
  readonly variable: number
  /** What the joint table ranges over: `variable`, slowest, so that it is summed out over a distance; then the later ones, latest first. */
  readonly scope: Scope
  readonly cells: number
  /** The given tables multiplied here. */
  readonly factors: readonly number[]
  /** The buckets whose message arrives here. */
  readonly children: readonly number[]
  /** The bucket that takes the message; -1 where there is nothing left to tell. */
  readonly parent: number
}

/** `buckets` in order of elimination: a bucket comes before its parent. `cells` is the whole work of one pass. */
export type Plan = {
  readonly sizes: readonly number[]
  readonly scopes: readonly Scope[]
  readonly buckets: readonly Bucket[]
  /** Which bucket sums out each variable. */
  readonly bucketOf: readonly number[]
  readonly cells: number
}

/**
 * @param sizes number of values of each variable
 * @param scopes variables of each table; one without a table may stand in it only to be kept together
 */
export function plan(sizes: readonly number[], scopes: readonly Scope[]): Plan {
  const graph = interaction(sizes.length, scopes)
  const weight = sizes.map((size) => Math.log2(size))
  const order: number[] = []
  const separators: number[][] = []
  const score = new Float64Array(sizes.length).fill(Number.NaN) // NaN: to be counted afresh
  const left = sizes.map((_, variable) => variable)
  while (left.length > 0) {
    const variable = takeBest(left, score, graph, weight)
    const neighbours = graph.neighbours(variable)
    order.push(variable)
    separators.push(neighbours)
    for (const touched of graph.remove(variable, neighbours)) score[touched] = Number.NaN
  }
  return bucketTree(sizes, scopes, order, separators)
}

function takeBest(left: number[], score: Float64Array, graph: Interaction, weight: readonly number[]): number {
  let best = 0
  for (let i = 0; i < left.length; i += 1) {
    const variable = left[i]!
    if (Number.isNaN(score[variable])) score[variable] = graph.fill(variable, weight)
    if (score[variable]! < score[left[best]!]!) best = i
  }
  return left.splice(best, 1)[0]!
}

function bucketTree(
  sizes: readonly number[],
  scopes: readonly Scope[],
  order: readonly number[],
  separators: readonly (readonly number[])[],
): Plan {
  const bucketOf = sizes.map(() => -1)
  order.forEach((variable, i) => (bucketOf[variable] = i))
  const earliest = (variables: Scope): number => variables.reduce((first, v) => Math.min(first, bucketOf[v]!), Infinity)
  const factors: number[][] = order.map(() => [])
  scopes.forEach((scope, i) => factors[earliest(scope)]?.push(i))
  const children: number[][] = order.map(() => [])
  const buckets = order.map((variable, i): Bucket => {
    const separator = separators[i]!.toSorted((a, b) => bucketOf[b]! - bucketOf[a]!)
    const parent = separator.length === 0 ? -1 : bucketOf[separator.at(-1)!]!
    children[parent]?.push(i)
    const scope = [variable, ...separator]
    const cells = scope.reduce((product, v) => product * sizes[v]!, 1)
    return { variable, scope, cells, factors: factors[i]!, children: children[i]!, parent }
  })
  return { sizes, scopes, buckets, bucketOf, cells: buckets.reduce((sum, { cells }) => sum + cells, 0) }
}

/** Which variables still meet in a table, as one row of bits for each. */
type Interaction = {
  readonly neighbours: (variable: number) => number[]
  /** Weight of the edges that summing this variable out would add; among equals, what it leaves behind. */
  readonly fill: (variable: number, weight: readonly number[]) => number
  /** Sums it out: joins its neighbours, and names the variables whose fill may have changed. */
  readonly remove: (variable: number, neighbours: readonly number[]) => readonly number[]
}

const tieBreak = 1e-3

function interaction(variables: number, scopes: readonly Scope[]): Interaction {
  const words = (variables + 31) >> 5
  const rows = new Int32Array(variables * words)
  const join = (a: number, b: number): void => void (rows[a * words + (b >> 5)]! |= 1 << (b & 31))
  const part = (a: number, b: number): void => void (rows[a * words + (b >> 5)]! &= ~(1 << (b & 31)))
  const joinAll = (group: Scope): void => {
    for (const a of group) for (const b of group) if (a !== b) join(a, b)
  }
  const neighbours = (variable: number): number[] => bitsOf(rows.subarray(variable * words, (variable + 1) * words))
  scopes.forEach(joinAll)
  return {
    neighbours,
    fill: (variable, weight) => {
      const around = neighbours(variable)
      let sum = around.reduce((left, a) => left + weight[a]! * tieBreak, 0)
      for (const a of around) {
        let missing = -weight[a]!
        for (let w = 0; w < words; w += 1) {
          let bits = rows[variable * words + w]! & ~rows[a * words + w]!
          for (; bits !== 0; bits &= bits - 1) missing += weight[w * 32 + 31 - Math.clz32(bits & -bits)]!
        }
        sum += weight[a]! * missing
      }
      return sum
    },
    remove: (variable, around) => {
      const touched = new Set(around)
      for (const a of around) {
        part(a, variable)
        for (const b of neighbours(a)) touched.add(b)
      }
      joinAll(around)
      return [...touched]
    },
  }
}

function bitsOf(row: Int32Array): number[] {
  const found: number[] = []
  row.forEach((word, w) => {
    for (let bits = word; bits !== 0; bits &= bits - 1) found.push(w * 32 + 31 - Math.clz32(bits & -bits))
  })
  return found
}
