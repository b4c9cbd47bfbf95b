// core/engine/factor.ts: tables of nonnegative weights over small variables: multiply, sum out, divide, in doubles or fractions.
import { f64, gcd, ratio, type Ratio, rational, type Ring } from './num.ts'

/** The variables of a table, slowest first; the table is row-major. */
export type Scope = readonly number[]

/**
 * Where each cell of a large table stands in a smaller one: cell i * inner.length + j of the large table
 * is cell outer[i] + inner[j] of the small one. Two short lists in place of one as long as the table.
 */
export type Index = { readonly outer: Int32Array; readonly inner: Int32Array }

/** A small table, and where the cells of a large one stand in it. */
export type Placed<W> = { readonly weights: W; readonly at: Index }

/** Weights, and the factor by which all of them are to be multiplied. */
export type Scaled<W, S> = { readonly weights: W; readonly scale: S }

/**
 * Tables W of numbers T. S is a common factor taken out of a table, so that long products neither vanish
 * (doubles: a power of two, hence exact) nor grow without need (fractions: a fraction).
 * The work of the engine is done in the loops of `product` and `sum`.
 */
export type Tables<T, W, S> = {
  readonly ring: Ring<T>
  readonly table: (cells: readonly T[]) => Scaled<W, S>
  readonly ones: (cells: number) => W
  /** The large table whose cell k is a[at k] * b[at k]. */
  readonly product: (a: Placed<W>, b: Placed<W>) => W
  /** The product of one to three tables, never written down, summed into the small table that `at` points to. */
  readonly sum: (of: readonly (Placed<W> | undefined)[], at: Index, cells: number) => W
  /** a / b cell by cell; 0 / 0 = 0. */
  readonly over: (a: W, b: W) => Scaled<W, S>
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
  const strides = scope.map(() => 0)
  let cells = 1
  for (let i = part.length - 1; i >= 0; i -= 1) {
    strides[scope.indexOf(part[i]!)] = cells
    cells *= sizes[part[i]!]!
  }
  let split = scope.length
  let inner = 1
  while (split > 0 && (split === scope.length || inner * sizes[scope[split - 1]!]! <= innerCells)) {
    split -= 1
    inner *= sizes[scope[split]!]!
  }
  return { outer: offsets(scope, strides, sizes, 0, split), inner: offsets(scope, strides, sizes, split, scope.length) }
}

function offsets(
  scope: Scope,
  strides: readonly number[],
  sizes: readonly number[],
  from: number,
  to: number,
): Int32Array {
  let at = Int32Array.of(0)
  for (let i = from; i < to; i += 1) {
    const size = sizes[scope[i]!]!
    const next = new Int32Array(at.length * size)
    for (let k = 0, n = 0; k < at.length; k += 1)
      for (let s = 0; s < size; s += 1, n += 1) next[n] = at[k]! + s * strides[i]!
    at = next
  }
  return at
}

type Doubles = Placed<Float64Array>

function sumOne(sums: Float64Array, { outer, inner }: Index, one: Doubles): void {
  const [a, innerA] = [one.weights, one.at.inner]
  for (let i = 0; i < outer.length; i += 1) {
    const [base, baseA] = [outer[i]!, one.at.outer[i]!]
    for (let j = 0; j < inner.length; j += 1) sums[base + inner[j]!]! += a[baseA + innerA[j]!]!
  }
}

function sumTwo(sums: Float64Array, { outer, inner }: Index, one: Doubles, two: Doubles): void {
  const [a, innerA, b, innerB] = [one.weights, one.at.inner, two.weights, two.at.inner]
  for (let i = 0; i < outer.length; i += 1) {
    const [base, baseA, baseB] = [outer[i]!, one.at.outer[i]!, two.at.outer[i]!]
    for (let j = 0; j < inner.length; j += 1) sums[base + inner[j]!]! += a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]!
  }
}

function sumThree(sums: Float64Array, { outer, inner }: Index, one: Doubles, two: Doubles, three: Doubles): void {
  const [a, innerA, b, innerB] = [one.weights, one.at.inner, two.weights, two.at.inner]
  const [c, innerC] = [three.weights, three.at.inner]
  for (let i = 0; i < outer.length; i += 1) {
    const [base, baseA, baseB, baseC] = [outer[i]!, one.at.outer[i]!, two.at.outer[i]!, three.at.outer[i]!]
    for (let j = 0; j < inner.length; j += 1)
      sums[base + inner[j]!]! += a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]! * c[baseC + innerC[j]!]!
  }
}

export const doubles: Tables<number, Float64Array, number> = {
  ring: f64,
  table: (cells) => ({ weights: Float64Array.from(cells), scale: 0 }),
  ones: (cells) => new Float64Array(cells).fill(1),
  product: ({ weights: a, at: atA }, { weights: b, at: atB }) => {
    const [innerA, innerB] = [atA.inner, atB.inner]
    const into = new Float64Array(atA.outer.length * innerA.length)
    for (let i = 0, k = 0; i < atA.outer.length; i += 1) {
      const [baseA, baseB] = [atA.outer[i]!, atB.outer[i]!]
      for (let j = 0; j < innerA.length; j += 1, k += 1) into[k] = a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]!
    }
    return into
  },
  sum: ([one, two, three], at, cells) => {
    const sums = new Float64Array(cells)
    if (one === undefined) return sums
    if (two === undefined) sumOne(sums, at, one)
    else if (three === undefined) sumTwo(sums, at, one, two)
    else sumThree(sums, at, one, two, three)
    return sums
  },
  over: (a, b) => ({ weights: a.map((x, i) => (x === 0 ? 0 : x / b[i]!)), scale: 0 }),
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
  product: (a, b) => {
    const other = cellsOf(b)
    return cellsOf(a).map((x, k) => x * other[k]!)
  },
  sum: (of, at, cells) => {
    const sums = Array.from({ length: cells }, () => 0n)
    const factors = of.filter((placed) => placed !== undefined).map(cellsOf)
    placesOf(at).forEach((place, k) => (sums[place]! += factors.reduce((product, cells) => product * cells[k]!, 1n)))
    return sums
  },
  over: (a, b) => {
    const shared = b.reduce((sum, x) => (x === 0n ? sum : lcm(sum, x)), 1n)
    return { weights: a.map((x, i) => (x === 0n ? 0n : x * (shared / b[i]!))), scale: ratio(1n, shared) }
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
  raise: ({ n, d }, times) => (times < 0 ? raised(d, n, -times) : raised(n, d, times)),
  value: rational.times,
}

const raised = (n: bigint, d: bigint, times: number): Ratio => ({ n: n ** BigInt(times), d: d ** BigInt(times) })
const placesOf = ({ outer, inner }: Index): number[] => [...outer].flatMap((base) => Array.from(inner, (j) => base + j))
const cellsOf = ({ weights, at }: Placed<bigint[]>): bigint[] => placesOf(at).map((place) => weights[place]!)
const lcm = (a: bigint, b: bigint): bigint => (a / gcd(a, b)) * b
