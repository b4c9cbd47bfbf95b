// core/engine/factor.ts: what is asked of tables of nonnegative weights over small variables, and where their cells stand in each other.
import type { Ring } from './num.ts'

/** The variables of a table, slowest first; the table is row-major. */
export type Scope = readonly number[]

/** Where a row of cells stands in some table: cell i * inner.length + j at outer[i] + inner[j]. Two short lists in place of a long one. */
export type Offsets = { readonly outer: Int32Array; readonly inner: Int32Array }

/**
 * Where the cells that make up a sum stand in one of the tables multiplied there: what goes into cell k of the
 * result stands at to(k) + over(r), for every r that is summed over.
 */
export type Index = { readonly to: Offsets; readonly over: Offsets }

/** A table, and where it stands in a sum. */
export type Placed<W> = { readonly weights: W; readonly at: Index }

/** Two or three tables to be multiplied. */
export type Product<W> = readonly [Placed<W>, Placed<W>, (Placed<W> | undefined)?]

/** Weights, and the factor by which all of them are to be multiplied. */
export type Scaled<W, S> = { readonly weights: W; readonly scale: S }

/**
 * Tables W of numbers T. S is a common factor taken out of a table, so that long products neither vanish
 * (doubles: a power of two, hence exact) nor grow without need (fractions: a fraction).
 * The work of the engine is done in the loops of `sum`.
 */
export type Tables<T, W, S> = {
  readonly ring: Ring<T>
  readonly table: (cells: readonly T[]) => Scaled<W, S>
  readonly ones: (cells: number) => W
  /** The product of two or three tables, never written down, summed into a table of so many cells. */
  readonly sum: (of: Product<W>, cells: number) => W
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

/** Where a table over `part` stands in a sum into a table over `result` of what ranges over `rest` besides; all of `part` occurs there. */
export function indexOf(part: Scope, result: Scope, rest: Scope, sizes: readonly number[]): Index {
  const strides = new Map<number, number>()
  let cells = 1
  for (let i = part.length - 1; i >= 0; i -= 1) {
    strides.set(part[i]!, cells)
    cells *= sizes[part[i]!]!
  }
  return { to: offsetsOf(result, strides, sizes), over: offsetsOf(rest, strides, sizes) }
}

function offsetsOf(scope: Scope, strides: ReadonlyMap<number, number>, sizes: readonly number[]): Offsets {
  let split = scope.length
  let inner = 1
  while (split > 0 && (split === scope.length || inner * sizes[scope[split - 1]!]! <= innerCells)) {
    split -= 1
    inner *= sizes[scope[split]!]!
  }
  const offsets = (from: number, to: number): Int32Array => offsetsIn(scope.slice(from, to), strides, sizes)
  return { outer: offsets(0, split), inner: offsets(split, scope.length) }
}

function offsetsIn(scope: Scope, strides: ReadonlyMap<number, number>, sizes: readonly number[]): Int32Array {
  const at = new Int32Array(cellsOver(scope, sizes))
  let filled = 1 // the first cells, over the fastest variables so far; each further value of the next one repeats them
  for (let i = scope.length - 1; i >= 0; i -= 1) {
    const repeats = filled * sizes[scope[i]!]!
    const stride = strides.get(scope[i]!) ?? 0
    for (let k = filled; k < repeats; k += 1) at[k] = at[k - filled]! + stride
    filled = repeats
  }
  return at
}

export const cellsOver = (scope: Scope, sizes: readonly number[]): number =>
  scope.reduce((product, v) => product * sizes[v]!, 1)
