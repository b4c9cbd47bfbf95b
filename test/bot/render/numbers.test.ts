// test/bot/render/numbers.test.ts: numbers as keepers say them.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { belief, inHundred, money, percent, plural, share } from '../../../bot/render/numbers.ts'
import { estimate, kilograms, range } from '../../../bot/render/measures.ts'

test.each([
  [1, 'all'],
  [1 / 2, 'half'],
  [1 / 4, 'a quarter'],
  [3 / 4, 'three quarters'],
  [1 / 3, 'a third'],
  [3 / 8, '3 in 8'],
  [9 / 16, '9 in 16'],
  [0.47, 'about 47 in 100'],
  [0.004, 'under 1 in 100'],
])('a share of %d is said as %s', (of, words) => {
  expect(share(of)).toBe(words)
})

test('what is not certain is never said as all or none', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, minExcluded: true, maxExcluded: true, noNaN: true }), (chance) => {
      expect(inHundred(chance)).not.toMatch(/^(?:all|none)$|\b(?:0|100) in 100/)
    }),
  )
})

test('belief is a word that grows with its weight, never a figure', () => {
  expect([0.05, 0.3, 0.5, 0.7, 0.95].map(belief)).toEqual([
    'unlikely',
    'less likely',
    'as likely as not',
    'likely',
    'very likely',
  ])
})

test('plurals, percents and money follow the language', () => {
  expect([plural(1, 'egg'), plural(2, 'egg'), plural(0, 'egg')]).toEqual(['1 egg', '2 eggs', '0 eggs'])
  expect([percent(0.5), percent(0.375)]).toEqual(['50 %', '37.5 %'])
  expect([money(3.2, '£'), money(-0.5, '$')]).toEqual(['£3.20', '-$0.50'])
})

test('ranges are rounded to what a keeper can use', () => {
  expect(range({ low: 183.4, likely: 221, high: 262.2 })).toBe('185 to 260')
  expect(range({ low: 1.64, likely: 1.9, high: 2.31 })).toBe('1.6 to 2.3')
  expect(estimate({ low: 183, likely: 221, high: 262 }, 'read', 'eggs')).toBe('about 220 eggs (185 to 260)')
  expect(kilograms(2.6, 'both')).toBe('2.6 kg (5.7 lb)')
})
