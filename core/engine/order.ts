// core/engine/order.ts: an order in which to sum variables out, chosen one by one on the graph of those that share a table.
// Weighted min-fill (Kjærulff 1990), where a variable with much around it may also join more.
import type { Scope } from './factor.ts'

/** The variables in order, each with those it still meets when its turn comes. */
export type Order = readonly { readonly variable: number; readonly meets: Scope }[]

/**
 * The next is the variable that joins least: the weight of the edges it would add, over the weight of
 * everything it meets to the power `bend`. With 0 this is min-fill itself.
 */
export function orderOf(sizes: readonly number[], scopes: readonly Scope[], bend: number): Order {
  const graph = interaction(sizes, scopes)
  const score = new Float64Array(sizes.length).fill(Number.NaN) // NaN: to be counted afresh
  const left = sizes.map((_, variable) => variable)
  return sizes.map(() => {
    const variable = takeBest(left, score, (v) => graph.fill(v, bend))
    const meets = graph.neighbours(variable)
    for (const touched of graph.remove(variable, meets)) score[touched] = Number.NaN
    return { variable, meets }
  })
}

function takeBest(left: number[], score: Float64Array, count: (variable: number) => number): number {
  let best = 0
  for (let i = 0; i < left.length; i += 1) {
    const variable = left[i]!
    if (Number.isNaN(score[variable])) score[variable] = count(variable)
    if (score[variable]! < score[left[best]!]!) best = i
  }
  return left.splice(best, 1)[0]!
}

/** Which variables still meet in a table, as one row of bits for each. */
type Interaction = {
  readonly neighbours: (variable: number) => readonly number[]
  /** Weight of the edges that summing this variable out would add, over the bent weight of all that meets then. */
  readonly fill: (variable: number, bend: number) => number
  /** Sums it out: joins its neighbours, and names the variables whose fill may have changed. */
  readonly remove: (variable: number, neighbours: readonly number[]) => readonly number[]
}

function interaction(sizes: readonly number[], scopes: readonly Scope[]): Interaction {
  const words = (sizes.length + 31) >> 5
  const rows = new Int32Array(sizes.length * words)
  const bits = Float64Array.from(sizes, (size) => Math.log2(size))
  const row = (variable: number): Int32Array => rows.subarray(variable * words, (variable + 1) * words)
  const meets = (a: number, b: number): boolean => ((rows[a * words + (b >> 5)]! >> (b & 31)) & 1) === 1
  const turn = (a: number, b: number): void => void (rows[a * words + (b >> 5)]! ^= 1 << (b & 31))
  const neighbours = (variable: number): number[] => bitsOf(row(variable))
  /** Joins what is apart, and adds to `near` those that both ends of a new edge already met. */
  const joinAll = (group: Scope, near: Int32Array): void => {
    group.forEach((a, i) => {
      for (const b of group.slice(i + 1)) {
        if (meets(a, b)) continue
        for (let w = 0; w < words; w += 1) near[w]! |= rows[a * words + w]! & rows[b * words + w]!
        turn(a, b)
        turn(b, a)
      }
    })
  }
  for (const scope of scopes) joinAll(scope, new Int32Array(words))
  return {
    neighbours,
    fill: (variable, bend) => {
      let fill = 0
      let weight = 1 + bits[variable]! // one, so that it is never nothing
      for (let v = 0; v < words; v += 1)
        for (let around = rows[variable * words + v]!; around !== 0; around &= around - 1) {
          const a = v * 32 + lowest(around)
          let missing = -bits[a]!
          for (let w = 0; w < words; w += 1)
            for (let apart = rows[variable * words + w]! & ~rows[a * words + w]!; apart !== 0; apart &= apart - 1)
              missing += bits[w * 32 + lowest(apart)]!
          fill += bits[a]! * missing
          weight += bits[a]!
        }
      return fill / weight ** bend
    },
    remove: (variable, around) => {
      for (const a of around) turn(a, variable)
      const touched = new Int32Array(words)
      joinAll(around, touched)
      for (const a of around) touched[a >> 5]! |= 1 << (a & 31)
      return bitsOf(touched)
    },
  }
}

const lowest = (word: number): number => 31 - Math.clz32(word & -word)

function bitsOf(row: Int32Array): number[] {
  const found: number[] = []
  for (let w = 0; w < row.length; w += 1)
    for (let bits = row[w]!; bits !== 0; bits &= bits - 1) found.push(w * 32 + lowest(bits))
  return found
}
