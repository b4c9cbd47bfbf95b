// test/core/engine/plan.test.ts: orders of elimination, the trees of cliques they make, and their cost.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Scope } from '../../../core/engine/factor.ts'
import { orderOf } from '../../../core/engine/order.ts'
import { type Plan, plan } from '../../../core/engine/plan.ts'
import { treeOf } from '../../../core/engine/tree.ts'
import { random } from '../../closedFlock.ts'

const product = (numbers: readonly number[]): number => numbers.reduce((a, b) => a * b, 1)
const chainOf = (n: number): readonly Scope[] => Array.from({ length: n - 1 }, (_, v) => [v, v + 1])
const twos = (n: number): readonly number[] => Array.from({ length: n }, () => 2)

type Graph = { readonly sizes: readonly number[]; readonly scopes: readonly Scope[] }
const graphs: fc.Arbitrary<Graph> = fc
  .array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 12 })
  .chain((sizes) =>
    fc
      .array(fc.shuffledSubarray([...sizes.keys()], { minLength: 1, maxLength: Math.min(4, sizes.length) }), {
        minLength: 1,
        maxLength: 14,
      })
      .map((scopes) => ({ sizes, scopes })),
  )

describe('an order', () => {
  const meets = (order: ReturnType<typeof orderOf>): readonly Scope[] =>
    order.map(({ variable, meets }) => [variable, ...meets.toSorted((a, b) => a - b)])

  test('with nothing to join takes the first that joins nothing, and names what each still meets', () => {
    expect(meets(orderOf(twos(4), chainOf(4), 0))).toEqual([[0, 1], [1, 2], [2, 3], [3]])
  })
  const square: readonly Scope[] = [
    [0, 2],
    [2, 1],
    [1, 3],
    [3, 0],
  ]
  test('of a square with two wide corners opposite sums those out, so that they never meet', () => {
    expect(meets(orderOf([2, 2, 9, 9], square, 0)).slice(0, 2)).toEqual([
      [2, 0, 1],
      [0, 1, 3],
    ])
    expect(plan([2, 2, 9, 9], square).cells).toBe(2 * 2 * 9 + 2 * 2 * 9)
  })
  test('counts what is missing by its weight: one wide edge is more than two narrow ones', () => {
    // 0 would join 16-valued 1 and 2; 3 would join 4, 5 and 6 of two values each
    const scopes = [
      [0, 1],
      [0, 2],
      [3, 4],
      [3, 5],
      [3, 6],
    ]
    const order = orderOf([9, 16, 16, 9, 2, 2, 2], [...scopes, [1, 7], [2, 8], [1, 8], [2, 7], [4, 9], [5, 9]], 0)
    const turn = (v: number): number => order.findIndex(({ variable }) => variable === v)
    expect(turn(3)).toBeLessThan(turn(0))
  })
  test('bent, lets one join more that has more around it', () => {
    // 0 joins 1 and 2. 3 joins 5 and 6 by 4 x 4, and has 4, which meets both, around it besides.
    const scopes = [
      [0, 1],
      [0, 2],
      [3, 4, 5],
      [3, 4, 6],
      [5, 7],
      [6, 7],
      [1, 8],
      [2, 8],
      [4, 7],
    ]
    const sizes = [2, 3, 3, 8, 8, 3, 3, 8, 8]
    const first = (bend: number): number => orderOf(sizes, scopes, bend)[0]!.variable
    expect([first(0), first(1.5)]).toEqual([0, 3])
  })
  test('counts afresh what a new edge has changed: held against counting everything at every turn', () => {
    const slow = ({ sizes, scopes }: Graph, bend: number): number[] => {
      const met = sizes.map((_, a) => new Set(scopes.filter((s) => s.includes(a)).flat()))
      met.forEach((around, a) => around.delete(a))
      const weight = (v: number): number => Math.log2(sizes[v]!)
      const left = new Set(sizes.keys())
      const score = (v: number): number => {
        const around = [...met[v]!].toSorted((a, b) => a - b)
        let fill = 0
        for (const a of around) {
          let missing = -weight(a)
          for (const b of around) if (!met[a]!.has(b)) missing += weight(b)
          fill += weight(a) * missing
        }
        return fill / around.reduce((sum, a) => sum + weight(a), 1 + weight(v)) ** bend
      }
      return sizes.map(() => {
        const best = [...left].reduce((one, other) => (score(other) < score(one) - 1e-9 ? other : one))
        left.delete(best)
        for (const a of met[best]!) {
          for (const b of met[best]!) if (a !== b) met[a]!.add(b)
          met[a]!.delete(best)
        }
        return best
      })
    }
    // sizes are powers of two, so that weights are whole and nothing hangs on rounding
    const whole = graphs.map(({ sizes, scopes }) => ({ sizes: sizes.map((size) => 2 ** size), scopes }))
    fc.assert(
      fc.property(whole, fc.constantFrom(0, 1, 2), (graph, bend) => {
        expect(orderOf(graph.sizes, graph.scopes, bend).map(({ variable }) => variable)).toEqual(slow(graph, bend))
      }),
    )
    // more variables than one word of bits has
    const draw = random(7)
    const below = (n: number): number => Math.floor(draw() * n)
    const many: Graph = {
      sizes: Array.from({ length: 75 }, () => 2 ** (1 + below(3))),
      scopes: Array.from({ length: 90 }, () =>
        [below(75), below(75), below(75)].filter((v, i, all) => all.indexOf(v) === i),
      ),
    }
    for (const bend of [0, 1])
      expect(orderOf(many.sizes, many.scopes, bend).map(({ variable }) => variable)).toEqual(slow(many, bend))
  })
})

describe('the tree', () => {
  const tree = (n: number) => treeOf(orderOf(twos(n), chainOf(n), 0), twos(n))

  test('holds no clique that lies within another', () => {
    expect(tree(4).map(({ own, shared }) => [...own, ...shared].toSorted((a, b) => a - b))).toEqual(
      expect.arrayContaining([
        [0, 1],
        [1, 2],
        [2, 3],
      ]),
    )
    expect(tree(4)).toHaveLength(3)
  })
  test('hangs from its middle third, so that no branch is longer than two thirds', () => {
    const made = tree(31)
    const depth = (c: number): number => (c < 0 ? 0 : 1 + depth(made[c]!.parent))
    const deepest = Math.max(...made.map((_, c) => depth(c)))
    expect([made.length, made.at(-1)!.own.length]).toEqual([30, 2])
    expect(deepest).toBeGreaterThanOrEqual(15)
    expect(deepest).toBeLessThanOrEqual(21)
  })
  test.each([
    ['in the middle', 10, true],
    ['at the near end of the middle third', 7, true],
    ['before it', 4, false],
    ['at the far end of the middle third', 12, true],
    ['beyond it', 15, false],
  ])('hangs from a small clique %s: the pair %i', (_, v, is) => {
    const sizes = twos(21).map((size, at) => (at === v || at === v + 1 ? 1 : size))
    const made = treeOf(orderOf(sizes, chainOf(21), 0), sizes)
    expect(
      made
        .at(-1)!
        .own.toSorted((a, b) => a - b)
        .join() === `${v},${v + 1}`,
    ).toBe(is)
  })
  test('hangs from the middle of its weight, not of its length', () => {
    const sizes = twos(21).map((size, v) => (v < 2 ? 50 : size))
    const made = treeOf(orderOf(sizes, chainOf(21), 0), sizes)
    expect(made.at(-1)!.own.toSorted((a, b) => a - b)).toEqual([0, 1])
  })
  test('of parts that do not hang together has a root for each', () => {
    const scopes = [
      [0, 1],
      [2, 3],
    ]
    expect(treeOf(orderOf([2, 3, 2, 3], scopes, 0), [2, 3, 2, 3])).toEqual([
      { parent: -1, own: expect.arrayContaining([0, 1]) as unknown, shared: [] },
      { parent: -1, own: expect.arrayContaining([2, 3]) as unknown, shared: [] },
    ])
  })
})

describe('the plan', () => {
  const cost = ({ cliques }: Plan, sizes: readonly number[]): number =>
    cliques.reduce((sum, { scope }) => sum + product(scope.map((v) => sizes[v]!)), 0)

  test('tells the cells of a chain before any arithmetic: two at a time', () => {
    expect(plan(twos(5), chainOf(5)).cells).toBe(4 * 4)
  })
  test('is the same for the same graph', () => {
    expect(JSON.stringify(plan(twos(9), chainOf(9)))).toBe(JSON.stringify(plan(twos(9), chainOf(9))))
  })
  test('counts every variable once, each clique before its parent, each table in one clique that has it whole', () => {
    fc.assert(
      fc.property(graphs, ({ sizes, scopes }) => {
        const made = plan(sizes, scopes)
        const { cliques, cliqueOf } = made
        expect(cliques.flatMap(({ own }) => own).toSorted((a, b) => a - b)).toEqual([...sizes.keys()])
        expect(cliques.flatMap(({ factors }) => factors).toSorted((a, b) => a - b)).toEqual([...scopes.keys()])
        expect(made.cells).toBe(cost(made, sizes))
        cliques.forEach(({ parent, own, shared, scope, cells, messageCells, children, factors }, c) => {
          expect(scope).toEqual([...own, ...shared])
          expect([cells, messageCells]).toEqual([scope, shared].map((vs) => product(vs.map((v) => sizes[v]!))))
          if (parent < 0) expect(shared).toEqual([])
          else {
            expect(parent).toBeGreaterThan(c)
            expect(cliques[parent]!.scope).toEqual(expect.arrayContaining([...shared]))
            expect(cliques[parent]!.children).toContain(c)
          }
          for (const v of own) expect(cliqueOf([v])).toBe(c)
          expect(children.every((child) => cliques[child]!.parent === c)).toBe(true)
          for (const f of factors) {
            expect(cliqueOf(scopes[f]!)).toBe(c)
            expect(scope).toEqual(expect.arrayContaining([...scopes[f]!]))
          }
        })
      }),
    )
  })
  test('more than thirty-two variables make a ring no wider than three', () => {
    const ring = Array.from({ length: 70 }, (_, v): Scope => [v, (v + 1) % 70])
    expect(Math.max(...plan(twos(70), ring).cliques.map(({ cells }) => cells))).toBe(8)
  })
  test('of a wide graph is the cheapest of several orders, and of a narrow one the first', () => {
    const draw = random(5)
    const tangle = (n: number): Scope[] => {
      const any = (): number => Math.floor(draw() * n)
      return Array.from({ length: n * 2 }, () => [...new Set([any(), any(), any()])])
    }
    const costs = (sizes: readonly number[], scopes: readonly Scope[]): number[] =>
      [1.5, 1.75, 1].map((bend) =>
        treeOf(orderOf(sizes, scopes, bend), sizes).reduce(
          (sum, { own, shared }) => sum + product([...own, ...shared].map((v) => sizes[v]!)),
          0,
        ),
      )
    const wide = Array.from({ length: 6 }, () => tangle(44))
    for (const scopes of wide) expect(plan(twos(44), scopes).cells).toBe(Math.min(...costs(twos(44), scopes)))
    expect(
      new Set(wide.map((scopes) => costs(twos(44), scopes)).map((all) => all.indexOf(Math.min(...all)))).size,
    ).toBeGreaterThan(1)
    const narrow = Array.from({ length: 6 }, () => tangle(16))
    for (const scopes of narrow) expect(plan(twos(16), scopes).cells).toBe(costs(twos(16), scopes)[0])
    expect(narrow.some((scopes) => costs(twos(16), scopes)[0]! > Math.min(...costs(twos(16), scopes)))).toBe(true)
  })
})
