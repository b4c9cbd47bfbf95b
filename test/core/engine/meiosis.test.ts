// test/core/engine/meiosis.test.ts: gametes of one linkage group, held against the textbook rules.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { gametes, joinIntervals } from '../../../core/engine/meiosis.ts'
import { f64, formatRatio, ratio, rational } from '../../../core/engine/num.ts'
import { published } from '../../published.ts'

const chances = (one: string, other: string, r: readonly number[]): Record<string, number> =>
  Object.fromEntries(gametes(one.split(''), other.split(''), r, f64).map(({ alleles, p }) => [alleles.join(''), p]))

const trow = { ref: 'Trow 1913, J Genet 2:281-324', status: 'from memory' } as const

test('a bird alike on both strands makes one gamete', () => expect(chances('aB', 'aB', [0.1])).toEqual({ aB: 1 }))

test('at one locus each allele goes into half of them', () => expect(chances('A', 'a', [])).toEqual({ A: 0.5, a: 0.5 }))

test('two linked loci part in r of the gametes', () => {
  const found = chances('AB', 'ab', [0.2])
  expect(found['AB']).toBeCloseTo(0.4, 15)
  expect(found['ab']).toBeCloseTo(0.4, 15)
  expect(found['Ab']).toBeCloseTo(0.1, 15)
  expect(found['aB']).toBeCloseTo(0.1, 15)
})

test('three loci: each interval parts by itself, so a double exchange has the chance r1 r2', () => {
  const found = chances('ABC', 'abc', [0.1, 0.25])
  const wanted = {
    ABC: 0.9 * 0.75,
    abc: 0.9 * 0.75,
    aBC: 0.1 * 0.75,
    Abc: 0.1 * 0.75,
    ABc: 0.9 * 0.25,
    abC: 0.9 * 0.25,
    AbC: 0.1 * 0.25,
    aBc: 0.1 * 0.25,
  }
  expect(Object.keys(found).toSorted()).toEqual(Object.keys(wanted).toSorted())
  for (const [name, p] of Object.entries(wanted)) expect(found[name]).toBeCloseTo(p / 2, 15)
})

test('a locus alike on both strands passes crossovers on to the next one', () => {
  const found = chances('AxB', 'axb', [0.1, 0.25])
  expect(found['AxB']! + found['axb']!).toBeCloseTo(0.9 * 0.75 + 0.1 * 0.25, 15)
  expect(Object.keys(found)).toHaveLength(4)
})

published('two intervals joined: r1 + r2 - 2 r1 r2', trow, () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 50 }), fc.integer({ min: 0, max: 50 }), (a, b) => {
      const [r1, r2] = [ratio(BigInt(a), 100n), ratio(BigInt(b), 100n)]
      expect(formatRatio(joinIntervals(r1, r2, rational))).toBe(
        formatRatio(ratio(BigInt(100 * (a + b) - 2 * a * b), 10_000n)),
      )
    }),
  )
})

test('dropping the middle locus of three leaves the joined interval', () => {
  const three = chances('ABC', 'abc', [0.1, 0.25])
  const two = chances('AC', 'ac', [joinIntervals(0.1, 0.25, f64)])
  const without = (name: string): number =>
    Object.entries(three)
      .filter(([key]) => `${key[0]}${key[2]}` === name)
      .reduce((sum, [, p]) => sum + p, 0)
  for (const [name, p] of Object.entries(two)) expect(p).toBeCloseTo(without(name), 15)
})

test('in fractions the gametes add to one exactly', () => {
  const made = gametes(['A', 'B', 'C'], ['a', 'b', 'c'], [ratio(1n, 3n), ratio(2n, 7n)], rational)
  expect(formatRatio(made.map(({ p }) => p).reduce(rational.plus))).toBe('1')
  expect(made.map(({ alleles, p }) => `${alleles.join('')} ${formatRatio(p)}`)).toContain('ABC 5/21')
})
