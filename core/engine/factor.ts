// core/engine/factor.ts: tables of nonnegative weights over small variables: multiply, sum out, divide, in doubles or fractions.
import { f64, gcd, ratio, type Ratio, rational, type Ring } from './num.ts'

/** The variables of a table, slowest first; the table is row-major. */
export type Scope = readonly number[]

/**
 * Where each cell of a large table stands in a smaller one: cell i * inner.length + j of the large table
 * is cell outer[i] + inner[j] of the small one. Two short lists in place of one as long as the table.
 */
export type Index = { readonly outer: Int32Array; readonly inner: Int32Array }

/**
 * Tables W of numbers T. S is a common factor taken out of a table, so that long products neither vanish
 * (doubles: a power of two, hence exact) nor grow without need (fractions: a fraction).
 * The work of the engine is done in the loops `spread`, `multiply`, `gather` and `over`.
 */
export type Tables<T, W, S> = {
  readonly ring: Ring<T>
  readonly table: (cells: readonly T[]) => { readonly weights: W; readonly scale: S }
  readonly ones: (cells: number) => W
  readonly copy: (weights: W) => W
  /** The large table that holds from[at i] in cell i. */
  readonly spread: (from: W, at: Index) => W
  /** into[i] *= from[at i] */
  readonly multiply: (into: W, from: W, at: Index) => void
  /** The small table in which cell k is the sum of all from[i] with at i = k. */
  readonly gather: (from: W, at: Index, cells: number) => W
  /** a / b cell by cell, up to one common factor; 0 / 0 = 0. */
  readonly over: (a: W, b: W) => W
  readonly power: (a: W, n: number) => W
  /** Takes the common factor out of a table in place. */
  readonly settle: (weights: W) => S
  readonly total: (weights: W) => T
  /** Each cell as a share of the whole, which must not be zero. */
  readonly shares: (weights: W) => readonly T[]
  readonly unit: S
  readonly join: (a: S, b: S) => S
  readonly raise: (a: S, n: number) => S
  readonly value: (mass: T, scale: S) => T
}

const innerCells = 256

/** Where the cells of a table over `scope` stand in one over `part`, whose variables all occur in `scope`. */
export function indexOf(scope: Scope, part: Scope, sizes: readonly number[]): Index {
  const stride = new Map<number, number>()
  let cells = 1
  for (const variable of part.toReversed()) {
    stride.set(variable, cells)
    cells *= sizes[variable]!
  }
  let split = scope.length
  for (let inner = 1; split > 0; split -= 1) {
    inner *= sizes[scope[split - 1]!]!
    if (inner > innerCells && split < scope.length) break
  }
  const offsets = (variables: Scope): Int32Array => offsetsOf(variables.map((v) => [sizes[v]!, stride.get(v) ?? 0]))
  return { outer: offsets(scope.slice(0, split)), inner: offsets(scope.slice(split)) }
}

function offsetsOf(steps: readonly (readonly [size: number, stride: number])[]): Int32Array {
  let at = Int32Array.of(0)
  for (const [size, stride] of steps) {
    const next = new Int32Array(at.length * size)
    for (let i = 0; i < next.length; i += 1) next[i] = at[Math.floor(i / size)]! + (i % size) * stride
    at = next
  }
  return at
}

export const doubles: Tables<number, Float64Array, number> = {
  ring: f64,
  table: (cells) => ({ weights: Float64Array.from(cells), scale: 0 }),
  ones: (cells) => new Float64Array(cells).fill(1),
  copy: (weights) => weights.slice(),
  spread: (from, { outer, inner }) => {
    const into = new Float64Array(outer.length * inner.length)
    for (let i = 0, k = 0; i < outer.length; i += 1) {
      const base = outer[i]!
      for (let j = 0; j < inner.length; j += 1, k += 1) into[k] = from[base + inner[j]!]!
    }
    return into
  },
  multiply: (into, from, { outer, inner }) => {
    for (let i = 0, k = 0; i < outer.length; i += 1) {
      const base = outer[i]!
      for (let j = 0; j < inner.length; j += 1, k += 1) into[k]! *= from[base + inner[j]!]!
    }
  },
  gather: (from, { outer, inner }, cells) => {
    const sums = new Float64Array(cells)
    for (let i = 0, k = 0; i < outer.length; i += 1) {
      const base = outer[i]!
      for (let j = 0; j < inner.length; j += 1, k += 1) sums[base + inner[j]!]! += from[k]!
    }
    return sums
  },
  over: (a, b) => a.map((x, i) => (x === 0 ? 0 : x / b[i]!)),
  power: (a, n) => a.map((x) => x ** n),
  settle: (weights) => {
    let largest = 0
    for (const x of weights) if (x > largest) largest = x
    const exponent = largest === 0 ? 0 : Math.floor(Math.log2(largest))
    if (exponent !== 0) for (let i = 0; i < weights.length; i += 1) weights[i]! *= 2 ** -exponent
    return exponent
  },
  total: (weights) => weights.reduce((sum, x) => sum + x, 0),
  shares: (weights) => {
    const total = doubles.total(weights)
    return Array.from(weights, (x) => x / total)
  },
  unit: 0,
  join: (a, b) => a + b,
  raise: (a, n) => a * n,
  value: (mass, scale) => mass * 2 ** scale,
}

export const fractions: Tables<Ratio, bigint[], Ratio> = {
  ring: rational,
  table: (cells) => {
    const shared = cells.reduce((sum, { d }) => lcm(sum, d), 1n)
    const weights = cells.map(({ n, d }) => (n * shared) / d)
    return { weights, scale: rational.over(fractions.settle(weights), ratio(shared)) }
  },
  ones: (cells) => Array.from({ length: cells }, () => 1n),
  copy: (weights) => [...weights],
  spread: (from, { outer, inner }) => [...outer].flatMap((base) => Array.from(inner, (j) => from[base + j]!)),
  multiply: (into, from, { outer, inner }) => {
    let k = 0
    for (const base of outer) for (const j of inner) into[k++]! *= from[base + j]!
  },
  gather: (from, { outer, inner }, cells) => {
    const sums = Array.from({ length: cells }, () => 0n)
    let k = 0
    for (const base of outer) for (const j of inner) sums[base + j]! += from[k++]!
    return sums
  },
  over: (a, b) => {
    const shared = b.reduce((sum, x) => (x === 0n ? sum : lcm(sum, x)), 1n)
    return a.map((x, i) => (x === 0n ? 0n : x * (shared / b[i]!)))
  },
  power: (a, n) => a.map((x) => x ** BigInt(n)),
  settle: (weights) => {
    const shared = weights.reduce(gcd, 0n)
    if (shared > 1n) weights.forEach((x, i) => (weights[i] = x / shared))
    return ratio(shared === 0n ? 1n : shared)
  },
  total: (weights) => ratio(weights.reduce((sum, x) => sum + x, 0n)),
  shares: (weights) => {
    const total = weights.reduce((sum, x) => sum + x, 0n)
    return weights.map((x) => ratio(x, total))
  },
  unit: rational.one,
  join: rational.times,
  raise: (a, n) => ({ n: a.n ** BigInt(n), d: a.d ** BigInt(n) }),
  value: rational.times,
}

const lcm = (a: bigint, b: bigint): bigint => (a / gcd(a, b)) * b
