// test/core/answers/crossSummary.test.ts: the first line of a cross says what was asked: the looks, or how to sex.
import { expect, test } from 'vitest'
import { answerCross } from '../../../core/answers/cross.ts'
import type { Aspect } from '../../../core/question.ts'

const summary = (sire: string, dam: string, ...aspects: readonly Aspect[]): string =>
  answerCross({
    kind: 'cross',
    matings: [{ sire: { breed: sire }, dam: { breed: dam } }],
    aspects,
    assumed: [],
    manner: { symbols: false, units: 'metric' },
  }).summary

test('splash on black gives blue alone, and that is said first', () => {
  expect(summary('Splash bird', 'Black bird')).toMatch(/^All grow up blue; not sexable at hatch: /u)
})
test('one ground colour is told first though cocks and hens are edged otherwise', () => {
  expect(summary('Splash Andalusian', 'Black Andalusian')).toMatch(/^All grow up blue; not sexable at hatch/u)
})
test('asked how they look, the looks stand before the sexing', () => {
  expect(summary('Rhode Island Red', 'Barred Plymouth Rock', 'adults')).toBe(
    'Cockerels grow up black-and-white barred, pullets black; sexable at hatch by head spot.',
  )
})
test('asked how to sex, the sexing stands first', () => {
  expect(summary('Rhode Island Red', 'Barred Plymouth Rock', 'adults', 'sexing')).toMatch(
    /^Yes, at hatch by head spot/u,
  )
  expect(summary('Splash bird', 'Black bird', 'sexing')).toMatch(/^Not sexable at hatch: /u)
})
