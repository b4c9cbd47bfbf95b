// test/core/engine/blocks.test.ts: independent blocks multiplied out, whole and from the top.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Block, fullBlocks, topClasses } from '../../../core/engine/blocks.ts'

const blocks: fc.Arbitrary<readonly Block<string>[]> = fc
  .array(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 4 }), { maxLength: 4 })
  .map((all) =>
    all.map((weights, b) => weights.map((w, i) => ({ value: `${b}${i}`, p: w / weights.reduce((a, c) => a + c, 0) }))),
  )

test('every outcome once, with the product of its chances', () => {
  expect(fullBlocks([])).toEqual([{ values: [], p: 1 }])
  const coin = [
    { value: 'a', p: 1 / 4 },
    { value: 'b', p: 3 / 4 },
  ]
  expect(fullBlocks([coin, [{ value: 'x', p: 1 }]])).toEqual([
    { values: ['a', 'x'], p: 1 / 4 },
    { values: ['b', 'x'], p: 3 / 4 },
  ])
})

test('from the top: all of them, likeliest first, each once', () => {
  fc.assert(
    fc.property(blocks, (some) => {
      const all = fullBlocks(some)
      const top = [...topClasses(some)]
      expect(top.map(({ values }) => values.join()).toSorted()).toEqual(
        all.map(({ values }) => values.join()).toSorted(),
      )
      top.slice(1).forEach(({ p }, i) => expect(p).toBeLessThanOrEqual(top[i]!.p))
      expect(top.reduce((sum, { p }) => sum + p, 0)).toBeCloseTo(1, 12)
    }),
  )
})

test('the likeliest few of many blocks are had without the rest', () => {
  const coin = [
    { value: 0, p: 0.25 },
    { value: 1, p: 0.75 },
  ]
  const top = topClasses(Array.from({ length: 40 }, () => coin))
  const first = [top.next().value!, top.next().value!]
  expect(first[0]).toEqual({ values: Array.from({ length: 40 }, () => 1), p: 0.75 ** 40 })
  expect(first[1]!.values.reduce((a: number, b: number) => a + b, 0)).toBe(39)
})

test('a block that cannot be leaves nothing', () => expect([...topClasses([[{ value: 1, p: 1 }], []])]).toEqual([]))
