// test/core/engine/eliminate.test.ts: sums of products over random graphs of tables, held against adding up every cell.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { collect, distribute, evidence, revise } from '../../../core/engine/eliminate.ts'
import { doubles } from '../../../core/engine/doubles.ts'
import { indexOf, type Scope, type Tables } from '../../../core/engine/factor.ts'
import { fractions } from '../../../core/engine/fractions.ts'
import { formatRatio, ratio, type Ratio } from '../../../core/engine/num.ts'
import { plan } from '../../../core/engine/plan.ts'
import { runs } from '../../runs.ts'

type Graph = {
  readonly sizes: readonly number[]
  readonly scopes: readonly Scope[]
  readonly cells: readonly (readonly number[])[]
}

const product = (numbers: readonly number[]): number => numbers.reduce((a, b) => a * b, 1)

/** Up to six variables of one to three values, and up to nine tables of whole numbers, zeros among them. */
const graphs: fc.Arbitrary<Graph> = fc
  .array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 6 })
  .chain((sizes) =>
    fc
      .array(fc.shuffledSubarray([...sizes.keys()], { minLength: 1, maxLength: Math.min(3, sizes.length) }), {
        minLength: 1,
        maxLength: 9,
      })
      .chain((scopes) =>
        fc
          .tuple(
            ...scopes.map((scope) =>
              fc.array(fc.integer({ min: 0, max: 3 }), {
                minLength: product(scope.map((v) => sizes[v]!)),
                maxLength: product(scope.map((v) => sizes[v]!)),
              }),
            ),
          )
          .map((cells) => ({ sizes, scopes, cells })),
      ),
  )

/** Every way to set the variables, with the product of all tables. */
function everyCell({ sizes, scopes, cells }: Graph): { readonly at: readonly number[]; readonly p: number }[] {
  const all = sizes.reduce<number[][]>(
    (made, size) => made.flatMap((one) => Array.from({ length: size }, (_, v) => [...one, v])),
    [[]],
  )
  return all.map((at) => ({
    at,
    p: product(scopes.map((scope, f) => cells[f]![scope.reduce((cell, v) => cell * sizes[v]! + at[v]!, 0)]!)),
  }))
}

const whole = (graph: Graph): number => everyCell(graph).reduce((sum, { p }) => sum + p, 0)

function over(graph: Graph, scope: Scope): number[] {
  const sums = Array.from({ length: product(scope.map((v) => graph.sizes[v]!)) }, () => 0)
  for (const { at, p } of everyCell(graph)) sums[scope.reduce((cell, v) => cell * graph.sizes[v]! + at[v]!, 0)]! += p
  return sums
}

const asRatios = (cells: readonly number[]): Ratio[] => cells.map((x) => ratio(BigInt(x)))

function run<T, W, S>(
  { sizes, scopes }: Graph,
  cells: readonly (readonly T[])[],
  tables: Tables<T, W, S>,
  keep: readonly Scope[] = [],
) {
  const made = cells.map((list) => tables.table(list))
  const collected = collect(
    plan(sizes, [...scopes, ...keep]),
    made.map(({ weights }) => weights),
    tables,
  )
  const { mass, scale } = evidence(collected)
  const taken = made.reduce((all, { scale }) => tables.join(all, scale), scale)
  return { collected, total: tables.value(mass, taken) }
}

test('the whole sum, in doubles and in fractions', () => {
  fc.assert(
    fc.property(graphs, (graph) => {
      expect(run(graph, graph.cells, doubles).total).toBeCloseTo(whole(graph), 9)
      expect(formatRatio(run(graph, graph.cells.map(asRatios), fractions).total)).toBe(String(whole(graph)))
    }),
    { numRuns: runs(100) },
  )
})

test('every variable by itself, and every scope of a table, share the whole as they should', () => {
  fc.assert(
    fc.property(graphs, (graph) => {
      fc.pre(whole(graph) > 0)
      const { collected } = run(graph, graph.cells.map(asRatios), fractions)
      const beliefs = distribute(collected)
      const shares = (scope: Scope): string[] =>
        over(graph, scope).map((x) => formatRatio(ratio(BigInt(x), BigInt(whole(graph)))))
      for (const scope of graph.scopes)
        expect(fractions.shares(beliefs.of(scope)).map(formatRatio)).toEqual(shares(scope))
      beliefs.ofEach().forEach((weights, v) => expect(fractions.shares(weights).map(formatRatio)).toEqual(shares([v])))
    }),
    { numRuns: runs(100) },
  )
})

test('a scope without a table keeps its variables together and changes nothing else', () => {
  fc.assert(
    fc.property(graphs, (graph) => {
      fc.pre(whole(graph) > 0)
      const all = [...graph.sizes.keys()].slice(0, 4)
      const { collected, total } = run(graph, graph.cells, doubles, [all])
      expect(total).toBeCloseTo(whole(graph), 9)
      const sums = over(graph, all)
      doubles
        .shares(distribute(collected).of(all))
        .forEach((p, cell) => expect(p).toBeCloseTo(sums[cell]! / whole(graph), 12))
    }),
    { numRuns: runs(100) },
  )
})

test('one table replaced gives what a fresh start gives, and leaves the old result alone', () => {
  fc.assert(
    fc.property(graphs, fc.nat(), fc.nat(), (graph, which, salt) => {
      const f = which % graph.scopes.length
      const changed = graph.cells[f]!.map((_, i) => 1 + ((i + salt) % 3))
      const fresh = { ...graph, cells: graph.cells.with(f, changed) }
      fc.pre(whole(fresh) > 0)
      const before = run(graph, graph.cells, doubles)
      const after = revise(before.collected, f, Float64Array.from(changed))
      const { mass, scale } = evidence(after)
      expect(doubles.value(mass, scale)).toBeCloseTo(whole(fresh), 9)
      distribute(after)
        .ofEach()
        .forEach((weights, v) => {
          const sums = over(fresh, [v])
          doubles.shares(weights).forEach((p, i) => expect(p).toBeCloseTo(sums[i]! / whole(fresh), 12))
        })
      expect(run(graph, graph.cells, doubles).total).toBeCloseTo(before.total, 12)
    }),
    { numRuns: runs(100) },
  )
})

describe('the plan', () => {
  const chain: readonly Scope[] = [
    [0, 1],
    [1, 2],
    [2, 3],
    [3, 4],
  ]

  test('tells the cells of a chain before any arithmetic: two at a time, and the last alone', () => {
    const { cells, buckets } = plan([2, 2, 2, 2, 2], chain)
    expect(cells).toBe(4 * 4 + 2)
    expect(buckets.filter(({ parent }) => parent < 0)).toHaveLength(1)
  })
  test('gives each part that hangs together a root of its own', () => {
    const { buckets } = plan(
      [2, 3, 2, 3],
      [
        [0, 1],
        [2, 3],
      ],
    )
    expect(buckets.filter(({ parent }) => parent < 0)).toHaveLength(2)
  })
  test('of a square with two wide corners opposite sums those out, so that they never meet', () => {
    const { cells } = plan(
      [2, 2, 9, 9],
      [
        [0, 2],
        [2, 1],
        [1, 3],
        [3, 0],
      ],
    )
    expect(cells).toBe(2 * 2 * 9 + 2 * 2 * 9 + 4 + 2)
  })
  test('counts every variable once, each bucket before its parent, each table in one bucket', () => {
    fc.assert(
      fc.property(graphs, ({ sizes, scopes }) => {
        const { buckets, bucketOf, cells } = plan(sizes, scopes)
        expect(buckets.map(({ variable }) => variable).toSorted((a, b) => a - b)).toEqual([...sizes.keys()])
        expect(buckets.flatMap(({ factors }) => factors).toSorted((a, b) => a - b)).toEqual([...scopes.keys()])
        expect(cells).toBe(buckets.reduce((sum, { scope }) => sum + product(scope.map((v) => sizes[v]!)), 0))
        buckets.forEach(({ parent, variable, scope, children, factors }, b) => {
          expect(bucketOf[variable]).toBe(b)
          expect(scope[0]).toBe(variable)
          if (parent >= 0) expect(parent).toBeGreaterThan(b)
          for (const child of children) expect(buckets[child]!.parent).toBe(b)
          for (const f of factors) expect(scope).toEqual(expect.arrayContaining([...scopes[f]!]))
        })
      }),
    )
  })
  test('more than thirty-two variables make a ring no wider than three', () => {
    const n = 70
    const ring = Array.from({ length: n }, (_, v): Scope => [v, (v + 1) % n])
    const { buckets } = plan(
      ring.map(() => 2),
      ring,
    )
    expect(Math.max(...buckets.map(({ cells }) => cells))).toBe(8)
  })
})

test('a message, up or down, has a cell for each way its separator can be, and no more', () => {
  const sizes = [2, 3, 4, 5]
  const scopes = [
    [0, 1],
    [1, 2],
    [2, 3],
  ]
  const order = plan(sizes, scopes)
  const given = scopes.map((scope) => new Float64Array(product(scope.map((v) => sizes[v]!))).fill(1))
  const collected = collect(order, given, doubles)
  distribute(collected).ofEach()
  order.buckets.forEach(({ scope, parent }, b) => {
    const cells = product(scope.slice(1).map((v) => sizes[v]!))
    expect(collected.up[b]).toHaveLength(cells)
    if (parent >= 0 && collected.down[b] !== undefined) expect(collected.down[b].weights).toHaveLength(cells)
  })
  expect(collected.down.filter((told) => told !== undefined).length).toBeGreaterThan(0)
})

describe('an index', () => {
  test('splits a long table in two short lists and finds every cell', () => {
    const sizes = [7, 5, 11, 3, 4]
    const scope = [3, 0, 2, 1, 4]
    const { outer, inner } = indexOf(scope, [2, 3], sizes)
    expect(outer.length * inner.length).toBe(product(sizes))
    expect(inner.length).toBeLessThanOrEqual(256)
    let cell = 0
    for (let a = 0; a < 3; a += 1)
      for (let b = 0; b < 7; b += 1)
        for (let c = 0; c < 11; c += 1)
          for (let d = 0; d < 20; d += 1) {
            expect(outer[Math.floor(cell / inner.length)]! + inner[cell % inner.length]!).toBe(c * 3 + a)
            cell += 1
          }
  })
  test('of a single variable larger than the inner list still has one', () => {
    const { outer, inner } = indexOf([0], [0], [1000])
    expect([outer.length, inner.length, inner[999]]).toEqual([1, 1000, 999])
  })
  test('fills the inner list to its brim and not beyond', () => {
    expect(indexOf([0, 1, 2], [0], [2, 16, 16]).inner.length).toBe(256)
    expect(indexOf([0, 1, 2], [0], [2, 17, 16]).inner.length).toBe(16)
  })
})

describe('tables', () => {
  test('doubles take out powers of two only, and leave zeros alone', () => {
    const weights = Float64Array.of(3, 12, 0)
    expect(doubles.settle(weights)).toBe(3)
    expect([...weights]).toEqual([3 / 8, 12 / 8, 0])
    expect(doubles.settle(Float64Array.of(0, 0))).toBe(0)
    const tiny = Float64Array.of(2 ** -900)
    expect([doubles.settle(tiny), tiny[0]]).toEqual([-900, 1])
  })
  test('fractions take out what the cells share', () => {
    const weights = [6n, 9n, 0n]
    expect(formatRatio(fractions.settle(weights))).toBe('3')
    expect(weights).toEqual([2n, 3n, 0n])
    expect(formatRatio(fractions.settle([0n]))).toBe('1')
    const { weights: cells, scale } = fractions.table([ratio(1n, 6n), ratio(1n, 4n), ratio(0n)])
    expect([cells, formatRatio(scale)]).toEqual([[2n, 3n, 0n], '1/12'])
  })
  test('nothing divided by nothing is nothing', () => {
    expect([...doubles.over(Float64Array.of(0, 1, 0), Float64Array.of(0, 4, 2)).weights]).toEqual([0, 0.25, 0])
    const { weights, scale } = fractions.over([0n, 1n, 0n, 1n], [0n, 4n, 2n, 6n])
    expect([weights, formatRatio(scale)]).toEqual([[0n, 3n, 0n, 2n], '1/12'])
  })
  test('powers and factors are raised together, backwards too', () => {
    expect([...doubles.power(Float64Array.of(0.5, 2), 3)]).toEqual([0.125, 8])
    expect(fractions.power([2n, 3n], 3)).toEqual([8n, 27n])
    expect([doubles.raise(3, 4), doubles.raise(3, -1)]).toEqual([12, -3])
    expect(formatRatio(fractions.raise(ratio(2n, 3n), 2))).toBe('4/9')
    expect(formatRatio(fractions.raise(ratio(2n, 3n), -2))).toBe('9/4')
  })
  test('a long product of small numbers keeps its size beside it', () => {
    const sizes = Array.from({ length: 400 }, () => 2)
    const scopes = sizes.slice(1).map((_, v): Scope => [v, v + 1])
    const small = Float64Array.of(2 ** -9, 2 ** -9, 2 ** -9, 2 ** -9)
    const { mass, scale } = evidence(
      collect(
        plan(sizes, scopes),
        scopes.map(() => small),
        doubles,
      ),
    )
    expect(Math.log2(mass) + scale).toBe(400 - 9 * 399)
  })
})
