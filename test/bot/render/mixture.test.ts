// test/bot/render/mixture.test.ts: looks with their shares in one phrase, what they have in common said once.
import { expect, test } from 'vitest'
import { mixture as told, type Group } from '../../../bot/render/mixture.ts'
import { usualTelling } from '../../../bot/render/chicks.ts'

const mixture = (groups: readonly Group[]) => told(groups, usualTelling)
const groups = (...pairs: readonly (readonly [string, number])[]) => pairs.map(([words, share]) => ({ words, share }))

test.each([
  [groups(['black', 1]), 'black'],
  [groups(['blue', 0.5], ['black', 0.5]), 'half blue, half black'],
  [
    groups(['blue-grey, pale-bellied', 0.5], ['black, pale-bellied', 0.5]),
    'half blue-grey, half black, all pale-bellied',
  ],
  [
    groups(['black, perhaps with a little red in the hackle', 0.5], ['black with red in the hackle', 0.5]),
    'black: half perhaps with a little red in the hackle, half with red in the hackle',
  ],
  [groups(['barred', 0.75], ['barred with gold', 0.25]), 'barred: three quarters plain, a quarter with gold'],
  [
    groups(['blue', 0.75], ['splash: pale with blue flecks', 0.25]),
    'three quarters blue, a quarter splash (pale with blue flecks)',
  ],
  [
    groups(['red with black tail', 0.5], ['red with white tail', 0.5]),
    'red: half with black tail, half with white tail',
  ],
])('%j reads %s', (all, phrase) => {
  expect(mixture(all)).toBe(phrase)
})

test('beyond four kinds, and below two in a hundred, kinds are not named one by one', () => {
  const many = groups(['a', 0.3], ['b', 0.3], ['c', 0.2], ['d', 0.1], ['e', 0.1])
  expect(mixture(many)).toMatch(/and a few other kinds$/)
  expect(mixture(many)).not.toContain(' e')
  expect(mixture(groups(['a', 0.99], ['b', 0.01]))).toMatch(/a; and a few other kinds$/)
})
