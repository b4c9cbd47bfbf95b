// test/core/engine/num.test.ts: fractions read, reckoned and turned into doubles.
import fc from 'fast-check'
import { Fraction } from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { f64, formatRatio, ratio, rational, readRatio, toNumber } from '../../../core/engine/num.ts'

const text = (x: string | number): string | undefined => {
  const read = readRatio(x)
  return read && formatRatio(read)
}

describe('a fraction is read as its digits say', () => {
  test.each([
    ['1/4', '1/4'],
    ['2/8', '1/4'],
    ['0.025', '1/40'],
    [0.1, '1/10'],
    ['1e-3', '1/1000'],
    ['2.5E2', '250'],
    ['.5', '1/2'],
    ['3.', '3'],
    [' 7 ', '7'],
    ['-1/2', '-1/2'],
    ['1/-2', '-1/2'],
    ['+3/9', '1/3'],
    ['0.5/0.25', '2'],
    ['0/5', '0'],
    [1e21, '1000000000000000000000'],
  ])('%s is %s', (given, wanted) => expect(text(given)).toBe(wanted))

  test.each(['', '.', 'half', '1/0', '1/2/3', '1,5', '1/', '/2', 'NaN', '0x10', '1e99999', Number.NaN])(
    '%s is none',
    (given) => expect(text(given)).toBeUndefined(),
  )
})

const parts = fc.tuple(fc.bigInt(-1000n, 1000n), fc.bigInt(1n, 1000n))
const asText = (n: bigint, d: bigint): string => new Fraction(n, d).toFraction()

test('sums, differences, products and quotients are those of fraction.js', () => {
  fc.assert(
    fc.property(parts, parts, ([n1, d1], [n2, d2]) => {
      const [a, b] = [ratio(n1, d1), ratio(n2, d2)]
      const [x, y] = [new Fraction(n1, d1), new Fraction(n2, d2)]
      expect(formatRatio(a)).toBe(asText(n1, d1))
      expect(formatRatio(rational.plus(a, b))).toBe(x.add(y).toFraction())
      expect(formatRatio(rational.minus(a, b))).toBe(x.sub(y).toFraction())
      expect(formatRatio(rational.times(a, b))).toBe(x.mul(y).toFraction())
      if (n2 !== 0n) expect(formatRatio(rational.over(a, b))).toBe(x.div(y).toFraction())
      expect(rational.isZero(a)).toBe(n1 === 0n)
      expect(rational.of(a)).toEqual(a)
    }),
  )
})

test('doubles reckon as doubles do', () => {
  expect([f64.plus(1, 2), f64.minus(1, 2), f64.times(3, 2), f64.over(1, 4), f64.zero, f64.one]).toEqual([
    3, -1, 6, 0.25, 0, 1,
  ])
  expect([f64.isZero(0), f64.isZero(1e-300), f64.of(ratio(1n, 8n))]).toEqual([true, false, 0.125])
  expect([formatRatio(rational.zero), formatRatio(rational.one)]).toEqual(['0', '1'])
})

describe('a fraction too long for doubles still has its value', () => {
  test('above and below the range of its halves', () => {
    expect(toNumber(ratio(3n ** 900n, 2n * 3n ** 900n))).toBe(1 / 2)
    expect(toNumber(ratio(3n ** 900n, 3n ** 901n + 1n)) * 3).toBeCloseTo(1, 15)
    expect(toNumber({ n: 7n << 2000n, d: 1n << 1990n })).toBe(7168)
  })
  test('down to the smallest double, and to nothing beyond', () => {
    expect(toNumber({ n: 1n, d: 1n << 1040n })).toBe(2 ** -1040)
    expect(toNumber({ n: 3n, d: 1n << 1005n })).toBe(3 * 2 ** -1005)
    expect(toNumber({ n: 1n, d: 1n << 1200n })).toBe(0)
  })
  test('and up to the largest', () => expect(toNumber({ n: 5n << 1010n, d: 1n })).toBe(5 * 2 ** 1010))
  test('negative ones too', () => expect(toNumber({ n: -(7n << 2000n), d: 1n << 2001n })).toBe(-3.5))
})
