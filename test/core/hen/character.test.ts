// test/core/hen/character.test.ts: temper, cold and heat of a cross from the words of its lines.
import { describe, expect, test } from 'vitest'
import { coldScore, flightiness, hardinessOf, heatScore, sharpness, temperWords } from '../../../core/hen/character.ts'
import type { Stock } from '../../../core/hen/stock.ts'
import { cock, daughter, hen, stock } from './stocks.ts'

const of = (one: Partial<Stock>, other: Partial<Stock> = one): ReturnType<typeof daughter> =>
  daughter(cock(stock('one', one)), hen(stock('other', other)))

describe('temper: the mean of the lines, from 0 very calm to 4 wild', () => {
  test.each([
    [0, 0, 'very calm'],
    [0, 1, 'calm'],
    [1, 1, 'calm'],
    [1, 2, 'fairly calm, alert'],
    [2, 2, 'active'],
    [1, 3, 'active'],
    [2, 3, 'flighty'],
    [3, 3, 'flighty'],
    [4, 4, 'wild and flighty'],
  ])('%s and %s: %s', (one, other, words) => {
    expect(temperWords(of({ calm: one }, { calm: other }))).toBe(words)
    expect(flightiness(of({ calm: one }, { calm: other }))).toBe((one + other) / 2)
  })
  test('one assertive line of two is said, one of four is not', () => {
    const half = of({ sharp: true }, { sharp: false })
    expect(temperWords(half)).toBe('calm, some assertive')
    expect(sharpness(half)).toBe(0.5)
    const quarter = daughter(cock(stock('third')), {
      ...half,
      genome: half.genome,
      stocks: half.stocks,
    })
    expect(sharpness(quarter)).toBe(0.25)
    expect(temperWords(quarter)).toBe('calm')
  })
})

describe('cold and heat: the mean of the lines, from 0 poor to 2 good', () => {
  test.each([
    [0, 0, 'poor'],
    [0, 1, 'poor'],
    [1, 1, 'fair'],
    [0, 2, 'fair'],
    [1, 2, 'good'],
    [2, 2, 'good'],
  ])('%s and %s: %s', (one, other, words) => {
    const bird = of({ cold: one, heat: one }, { cold: other, heat: other })
    expect(hardinessOf(bird)).toEqual({ cold: words, heat: words })
    expect([coldScore(bird), heatScore(bird)]).toEqual([(one + other) / 2, (one + other) / 2])
  })
  test('cold and heat are not mixed up', () =>
    expect(hardinessOf(of({ cold: 2, heat: 0 }))).toEqual({ cold: 'good', heat: 'poor' }))

  const nips = (one: Partial<Stock>, other?: Partial<Stock>): boolean =>
    hardinessOf(of(one, other)).cold.includes('large combs nip in frost')
  test('large single combs nip, and the single combs of light breeds, which are large', () => {
    expect(nips({ comb: 'single, large', type: 'heavy' })).toBe(true)
    expect(nips({ comb: 'single', type: 'light' })).toBe(true)
    expect(hardinessOf(of({ comb: 'single', type: 'light' })).cold).toBe('good, large combs nip in frost')
  })
  test('other combs do not', () => {
    expect(nips({ comb: 'single', type: 'heavy' })).toBe(false)
    expect(nips({ comb: 'rose', type: 'light' })).toBe(false)
    expect(nips({ comb: 'rose, large', type: 'heavy' })).toBe(false)
  })
  test('of half the lines is enough to be said', () =>
    expect(nips({ comb: 'single', type: 'light' }, { comb: 'pea', type: 'heavy' })).toBe(true))
})
