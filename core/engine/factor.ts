// core/engine/factor.ts: what is asked of tables of nonnegative weights over small variables, and where their cells stand in each other.
import type { Ring } from './num.ts'

/** The variables of a table, slowest first; the table is row-major. */
export type Scope = readonly number[]

/**
 * Where each cell of a large table stands in a smaller one: cell i * inner.length + j of the large table
 * is cell outer[i] + inner[j] of the small one. Two short lists in place of one as long as the table.
 */
export type Index = { readonly outer: Int32Array; readonly inner: Int32Array }

/** A small table, and where the cells of a large one stand in it. */
export type Placed<W> = { readonly weights: W; readonly at: Index }

/** One to three tables to be multiplied. */
export type Product<W> = readonly [Placed<W>, (Placed<W> | undefined)?, (Placed<W> | undefined)?]

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
  readonly sum: (of: Product<W>, at: Index, cells: number) => W
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
  let cells = 1
  for (let i = from; i < to; i += 1) cells *= sizes[scope[i]!]!
  const at = new Int32Array(cells)
  let filled = 1 // the first cells, over the fastest variables so far; each further value of the next one repeats them
  for (let i = to - 1; i >= from; i -= 1) {
    const repeats = filled * sizes[scope[i]!]!
    for (let k = filled; k < repeats; k += 1) at[k] = at[k - filled]! + strides[i]!
    filled = repeats
  }
  return at
}
