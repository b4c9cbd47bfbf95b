// test/core/engine/sum.test.ts: products of two or three tables, summed, held against adding up cell by cell.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { doubles } from '../../../core/engine/doubles.ts'
import { indexOf, type Offsets, type Product, type Scope } from '../../../core/engine/factor.ts'
import { fractions } from '../../../core/engine/fractions.ts'

const product = (numbers: readonly number[]): number => numbers.reduce((a, b) => a * b, 1)
const cellsOf = (scope: Scope, sizes: readonly number[]): number => product(scope.map((v) => sizes[v]!))

/** Every way to set some variables, slowest first. */
const settings = (scope: Scope, sizes: readonly number[]): ReadonlyMap<number, number>[] =>
  scope.reduce<ReadonlyMap<number, number>[]>(
    (made, v) => made.flatMap((one) => Array.from({ length: sizes[v]! }, (_, x) => new Map([...one, [v, x]]))),
    [new Map()],
  )
const cellAt = (scope: Scope, sizes: readonly number[], at: ReadonlyMap<number, number>): number =>
  scope.reduce((cell, v) => cell * sizes[v]! + at.get(v)!, 0)

type Sum = {
  readonly sizes: readonly number[]
  readonly result: Scope
  readonly rest: Scope
  readonly tables: readonly { readonly scope: Scope; readonly cells: readonly number[] }[]
}

/** Whole numbers, so that doubles are exact. */
const cellsFor = (scope: Scope, sizes: readonly number[], salt: number): number[] =>
  Array.from({ length: cellsOf(scope, sizes) }, (_, i) => (i * 7 + salt * 3) % 5)

function plainly({ sizes, result, rest, tables }: Sum): number[] {
  return settings(result, sizes).map((to) =>
    settings(rest, sizes).reduce((sum, over) => {
      const at = new Map([...to, ...over])
      return sum + product(tables.map(({ scope, cells }) => cells[cellAt(scope, sizes, at)]!))
    }, 0),
  )
}

function byEngine({ sizes, result, rest, tables }: Sum): void {
  const wanted = plainly({ sizes, result, rest, tables })
  const placed = <W>(make: (cells: readonly number[]) => W): Product<W> => {
    const all = tables.map(({ scope, cells }) => ({ weights: make(cells), at: indexOf(scope, result, rest, sizes) }))
    return [all[0]!, all[1]!, all[2]]
  }
  expect([
    ...doubles.sum(
      placed((cells) => Float64Array.from(cells)),
      wanted.length,
    ),
  ]).toEqual(wanted)
  expect(
    fractions
      .sum(
        placed((cells) => cells.map(BigInt)),
        wanted.length,
      )
      .map(Number),
  ).toEqual(wanted)
}

const sums: fc.Arbitrary<Sum> = fc
  .array(fc.integer({ min: 1, max: 5 }), { minLength: 1, maxLength: 5 })
  .chain((sizes) => {
    const part = fc.shuffledSubarray([...sizes.keys()])
    return fc.tuple(part, part, fc.array(part, { minLength: 2, maxLength: 3 })).map(([all, result, parts]) => ({
      sizes,
      result,
      rest: [...sizes.keys()].filter(
        (v) => !result.includes(v) && (all.includes(v) || parts.some((p) => p.includes(v))),
      ),
      tables: parts.map((scope, i) => ({ scope, cells: cellsFor(scope, sizes, i) })),
    }))
  })

test('any two or three tables, whichever of the two ways through the cells is longer', () => {
  fc.assert(fc.property(sums, byEngine), { numRuns: 300 })
})

describe('lists in two parts', () => {
  const sizes = [3, 17, 16, 2, 5]
  test.each([
    ['a long result, one thing summed over', [1, 2, 4], []],
    ['a long result, two', [1, 2, 4], [3]],
    ['a long result, three', [4, 1, 2], [0]],
    ['a long result, six', [1, 2], [0, 3]],
    ['a long sum, one result', [], [1, 2, 3]],
    ['a long sum, three results', [0], [2, 1, 3]],
    ['both long', [1, 2], [4, 0, 3]],
  ])('%s', (_, result, rest) => {
    const all = [...result, ...rest].toSorted((a, b) => a - b)
    for (const parts of [
      [all, rest],
      [result.slice(1), all.toReversed(), rest.slice(1)],
      [all, result, []],
    ])
      byEngine({ sizes, result, rest, tables: parts.map((scope, i) => ({ scope, cells: cellsFor(scope, sizes, i) })) })
  })
})

describe('an index', () => {
  const long = ({ outer, inner }: Offsets): number[] => [...outer].flatMap((base) => Array.from(inner, (j) => base + j))

  test('finds every cell, of the result and of what is summed over', () => {
    const sizes = [7, 5, 11, 3, 4]
    const { to, over } = indexOf([2, 3], [3, 0, 2], [1, 4], sizes)
    const wanted = [0, 1, 2].flatMap((a) =>
      Array.from({ length: 7 }, () => [...Array(11).keys()].map((c) => c * 3 + a)),
    )
    expect(long(to)).toEqual(wanted.flat())
    expect(long(over)).toEqual(Array.from({ length: 20 }, () => 0))
  })
  test('of a single variable larger than the inner list still has one', () => {
    const { outer, inner } = indexOf([0], [0], [], [1000]).to
    expect([outer.length, inner.length, inner[999]]).toEqual([1, 1000, 999])
  })
  test('fills the inner list to its brim and not beyond', () => {
    expect(indexOf([0], [0, 1, 2], [], [2, 16, 16]).to.inner.length).toBe(256)
    expect(indexOf([0], [], [0, 1, 2], [2, 17, 16]).over.inner.length).toBe(16)
  })
})
