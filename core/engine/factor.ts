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
export const indexOf = (part: Scope, result: Scope, rest: Scope, sizes: readonly number[]): Index => ({
  to: offsetsOf(result, part, sizes),
  over: offsetsOf(rest, part, sizes),
})

function offsetsOf(scope: Scope, part: Scope, sizes: readonly number[]): Offsets {
  if (scope.length === 0) return single
  let split = scope.length - 1
  let inner = sizes[scope[split]!]!
  for (; split > 0 && inner * sizes[scope[split - 1]!]! <= innerCells; split -= 1) inner *= sizes[scope[split - 1]!]!
  return {
    outer: split === 0 ? single.outer : offsetsIn(scope, 0, split, part, sizes),
    inner: offsetsIn(scope, split, scope.length, part, sizes),
  }
}

const single: Offsets = { outer: new Int32Array(1), inner: new Int32Array(1) }

/** Where the cells over scope[from] to scope[to - 1] stand in a table over `part`. */
function offsetsIn(scope: Scope, from: number, to: number, part: Scope, sizes: readonly number[]): Int32Array {
  let cells = 1
  for (let i = from; i < to; i += 1) cells *= sizes[scope[i]!]!
  const at = new Int32Array(cells)
  let filled = 1 // the first cells, over the fastest variables so far; each further value of the next one repeats them
  for (let i = to - 1; i >= from; i -= 1) {
    const repeats = filled * sizes[scope[i]!]!
    const stride = strideOf(scope[i]!, part, sizes)
    for (let k = filled; k < repeats; k += 1) at[k] = at[k - filled]! + stride
    filled = repeats
  }
  return at
}

/** How far apart the values of a variable stand in a table; nothing where it has no such variable. */
function strideOf(variable: number, part: Scope, sizes: readonly number[]): number {
  let cells = 1
  for (let i = part.length - 1; i >= 0; i -= 1) {
    if (part[i] === variable) return cells
    cells *= sizes[part[i]!]!
  }
  return 0
}

export function cellsOver(scope: Scope, sizes: readonly number[]): number {
  let cells = 1
  for (const v of scope) cells *= sizes[v]!
  return cells
}
