// test/core/engine/genome.test.ts: the numbers that stand for genotypes.
import { expect, test } from 'vitest'
import { isSingle, kindsOf, pairCode, pairCount, singleCode } from '../../../core/engine/genome.ts'

test('pairs are numbered without gaps, whichever of the two is named first', () => {
  for (let kinds = 1; kinds <= 24; kinds += 1) {
    const codes = new Set<number>()
    for (let a = 0; a < kinds; a += 1)
      for (let b = 0; b < kinds; b += 1) {
        const code = pairCode(a, b)
        expect(kindsOf(code, kinds)).toEqual([Math.min(a, b), Math.max(a, b)])
        codes.add(code)
      }
    expect(codes.size).toBe(pairCount(kinds))
    expect(Math.max(...codes)).toBe(pairCount(kinds) - 1)
  }
})

test('the single ones come after the pairs', () => {
  expect(singleCode(0, 3)).toBe(6)
  expect(kindsOf(6, 3)).toEqual([0])
  expect(kindsOf(8, 3)).toEqual([2])
})

test('only a hen has one copy, and only on the Z', () => {
  expect([isSingle('Z', 'F'), isSingle('Z', 'M'), isSingle('A', 'F'), isSingle('A', 'M')]).toEqual([
    true,
    false,
    false,
    false,
  ])
})
