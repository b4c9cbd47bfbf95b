// test/core/hen/shell.test.ts: shell colours of daughters, band by band, and how they are shared out.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { brownScore, shellOf, type BlueShare } from '../../../core/hen/shell.ts'
import { cock, daughter, hen, son, stock } from './stocks.ts'

const line = (id: string, score: number, paleZ = false) => stock(id, { brownScore: score, paleZ })
const none: readonly BlueShare[] = [{ blue: 'no', share: 1 }]
const allBlue: readonly BlueShare[] = [{ blue: 'one copy', share: 1 }]
const leghorn = line('leghorn', 0, true)
const red = line('red', 6)
const marans = line('marans', 9)
const ameraucana = line('ameraucana', 0)
const commonest = (shares: readonly { colour: string }[]): string => shares[0]!.colour

describe('colours of first crosses (keepers’ reports, from memory)', () => {
  const cases = [
    ['red x Rock: brown, not dark', red, line('rock', 5), none, 'brown'],
    ['white-egged line x brown, the white one no Leghorn: tinted', red, line('white', 0), none, 'tinted'],
    ['Leghorn hen under a red cock: tinted', red, leghorn, none, 'tinted'],
    ['Leghorn cock on red hens: paler, cream', leghorn, red, none, 'cream'],
    ['very dark x brown: dark', marans, line('rock', 5), none, 'dark brown'],
    ['very dark x blue: olive', marans, ameraucana, allBlue, 'olive'],
    ['brown x blue: green', line('rock', 5), ameraucana, allBlue, 'green'],
    ['white x blue: blue', ameraucana, leghorn, allBlue, 'blue'],
    ['tinted x blue: blue-green or thereabouts', line('sussex', 3), ameraucana, allBlue, 'blue-green'],
    ['olive back to very dark: olive where blue', marans, line('mid', 4.5), allBlue, 'olive'],
  ] as const
  test.each(cases)('%s', (_name, sire, dam, blue, want) => {
    expect(commonest(shellOf(daughter(cock(sire), hen(dam)), blue))).toBe(want)
  })
})

describe('bands on a blue shell: under 0.8 blue, to 1.5 blue-green, to 3.5 green, beyond olive (judgement, from memory)', () => {
  const bands = [
    [0.1, 'blue'],
    [1.15, 'blue-green'],
    [2.5, 'green'],
    [5, 'olive'],
  ] as const
  test.each(bands)('score %s: %s', (score, want) => {
    const pure = line('pure', score)
    expect(commonest(shellOf(daughter(cock(pure), hen(pure)), allBlue))).toBe(want)
  })
})

test('a Leghorn’s pale Z reaches daughters through her sire, never through her dam', () => {
  const [fromSire, fromDam] = [
    shellOf(daughter(cock(leghorn), hen(red)), none),
    shellOf(daughter(cock(red), hen(leghorn)), none),
  ]
  expect(commonest(fromSire)).not.toBe(commonest(fromDam))
  // an F1 cock out of a Leghorn hen has one such Z: half his daughters get it
  const f1 = son(cock(red), hen(leghorn))
  const back = shellOf(daughter(f1, hen(red)), none)
  expect(back.length).toBeGreaterThan(1)
})

test('half of the daughters of a cock with one copy of blue lay blue-shelled, whatever the brown', () => {
  const half: readonly BlueShare[] = [
    { blue: 'one copy', share: 0.5 },
    { blue: 'no', share: 0.5 },
  ]
  const onBlue = ['blue', 'blue-green', 'green', 'olive']
  const shares = shellOf(daughter(cock(ameraucana), hen(red)), half)
  expect(shares.filter((s) => onBlue.includes(s.colour)).reduce((sum, s) => sum + s.share, 0)).toBeCloseTo(0.5, 12)
})

test('the second generation varies more than the first', () => {
  const f1 = { cock: son(cock(marans), hen(ameraucana)), hen: daughter(cock(marans), hen(ameraucana)) }
  const spread = (bird: Parameters<typeof shellOf>[0]): number => Math.max(...shellOf(bird, none).map((s) => s.share))
  expect(spread(daughter(f1.cock, f1.hen))).toBeLessThan(spread(f1.hen))
})

test('shares add to 1 and no score falls under 0, for any lines and any share of blue', () => {
  const score = fc.double({ min: 0, max: 10, noNaN: true })
  fc.assert(
    fc.property(score, score, fc.boolean(), fc.double({ min: 0, max: 1, noNaN: true }), (a, b, paleZ, blue) => {
      const bird = daughter(cock(line('a', a, paleZ)), hen(line('b', b)))
      const shares = shellOf(bird, [
        { blue: 'two copies', share: blue },
        { blue: 'no', share: 1 - blue },
      ])
      expect(shares.reduce((sum, s) => sum + s.share, 0)).toBeCloseTo(1, 9)
      expect(brownScore(bird)).toBeGreaterThanOrEqual(0)
    }),
  )
})
