// test/core/engine/eliminate.test.ts: sums of products over random graphs of tables, held against adding up every cell.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { distribute } from '../../../core/engine/distribute.ts'
import { doubles } from '../../../core/engine/doubles.ts'
import { collect, revise } from '../../../core/engine/eliminate.ts'
import type { Scope, Tables } from '../../../core/engine/factor.ts'
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
  const { mass, scale } = collected.whole
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
      for (const scope of [[], ...graph.sizes.map((_, v) => [v]), ...graph.scopes]) {
        expect(fractions.shares(beliefs.of(scope)).map(formatRatio)).toEqual(shares(scope))
        expect(fractions.shares(beliefs.amongAll(scope)).map(formatRatio)).toEqual(shares(scope))
      }
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

describe('tables multiplied into one after another', () => {
  const replaced = (graph: Graph, changes: readonly (readonly [which: number, salt: number])[], asked: boolean) => {
    const before = run(graph, graph.cells.map(asRatios), fractions)
    const chance = distribute(before.collected).of([0])
    let [now, after] = [graph, before.collected]
    for (const [which, salt] of changes) {
      const f = which % graph.scopes.length
      const changed = now.cells[f]!.map((x, i) => x * ((i + salt) % 3))
      now = { ...now, cells: now.cells.with(f, changed) }
      if (whole(now) === 0) return { now, after: revise(after, f, changed.map(BigInt)) }
      after = revise(after, f, changed.map(BigInt))
      if (asked) distribute(after).of([graph.sizes.length - 1])
    }
    expect(distribute(before.collected).of([0])).toEqual(chance)
    return { now, after }
  }
  test.each([
    ['with a question after each', true],
    ['and nothing asked between', false],
  ])('give what a fresh start gives, %s, and leave the old result alone', (_, asked) => {
    fc.assert(
      fc.property(graphs, fc.array(fc.tuple(fc.nat(), fc.nat()), { minLength: 1, maxLength: 3 }), (graph, changes) => {
        fc.pre(whole(graph) > 0)
        const { now, after } = replaced(graph, changes, asked)
        const taken = graph.cells.map((list, f) =>
          now.cells[f] === list ? fractions.table(asRatios(list)).scale : ratio(1n),
        )
        const { mass, scale } = after.whole
        expect(formatRatio(fractions.value(mass, taken.reduce(fractions.join, scale)))).toBe(String(whole(now)))
        if (whole(now) === 0) return
        const beliefs = distribute(after)
        for (const scope of graph.scopes) {
          const shares = over(now, scope).map((x) => formatRatio(ratio(BigInt(x), BigInt(whole(now)))))
          expect(fractions.shares(beliefs.of(scope)).map(formatRatio)).toEqual(shares)
          expect(fractions.shares(beliefs.amongAll(scope)).map(formatRatio)).toEqual(shares)
        }
      }),
      { numRuns: runs(100) },
    )
  })
  test('work only the messages that change, up to where the telling from above is known', () => {
    const sizes = Array.from({ length: 20 }, () => 2)
    const scopes = sizes.slice(1).map((_, v): Scope => [v, v + 1])
    const given = scopes.map(() => Float64Array.of(1, 2, 3, 4))
    const order = plan(sizes, scopes)
    const before = collect(order, given, doubles)
    const leaf = order.cliques.findIndex(({ children }) => children.length === 0)
    const [factor] = order.cliques[leaf]!.factors
    const fromRoot = revise(before, factor!, Float64Array.of(4, 3, 2, 1))
    distribute(before).of(order.cliques[leaf]!.own)
    const fromThere = revise(before, factor!, Float64Array.of(4, 3, 2, 1))
    const worked = ({ up }: typeof before): number[] =>
      order.cliques.flatMap((_, c) => (up[c] !== undefined && up[c] !== before.up[c] ? [c] : []))
    expect(worked(fromThere)).toEqual([leaf])
    expect(worked(fromRoot).length).toBeGreaterThan(5)
    expect(fromThere.whole.mass * 2 ** (fromThere.whole.scale - fromRoot.whole.scale)).toBeCloseTo(
      fromRoot.whole.mass,
      12,
    )
    expect(fromThere.down.filter((told) => told !== undefined)).toEqual(
      before.down.filter((told, c) => told !== undefined && fromThere.up[c] !== before.up[c]),
    )
  })
})

test('a message, up or down, has a cell for each way that what is shared can be, and no more', () => {
  const sizes = [2, 3, 4, 5]
  const scopes = [
    [0, 1],
    [1, 2],
    [2, 3],
  ]
  const order = plan(sizes, scopes)
  const given = scopes.map((scope) => new Float64Array(product(scope.map((v) => sizes[v]!))).fill(1))
  const collected = collect(order, given, doubles)
  for (const scope of scopes) distribute(collected).of(scope)
  order.cliques.forEach(({ shared, parent, messageCells }, c) => {
    expect(messageCells).toBe(product(shared.map((v) => sizes[v]!)))
    expect(collected.up[c]).toHaveLength(messageCells)
    expect(collected.down[c]?.length).toBe(parent < 0 ? undefined : messageCells)
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
    const { mass, scale } = collect(
      plan(sizes, scopes),
      scopes.map(() => small),
      doubles,
    ).whole
    expect(Math.log2(mass) + scale).toBe(400 - 9 * 399)
  })
})
