// test/core/answers/countedSummary.test.ts: chicks counted, held against what their mating gives; the chances are counted by hand.
import { describe, expect, test } from 'vitest'
import { resolve } from '../../../core/resolve.ts'
import type { BirdRef, Tally } from '../../../core/question.ts'

const summary = (sires: readonly string[], dam: string, counted: readonly Tally[]): string => {
  const bird = (breed: string): BirdRef => ({ breed })
  const answer = resolve({
    kind: 'cross',
    matings: sires.map((sire) => ({ sire: bird(sire), dam: bird(dam) })),
    aspects: [],
    counted,
    assumed: [],
    manner: { symbols: false, units: 'both' },
  })
  return answer.kind === 'cross' ? answer.summary : answer.kind
}

describe('chicks counted, against what the mating gives', () => {
  test('thirteen of thirteen where half should be so come once in 2^13 = 8192', () =>
    expect(summary(['Buff Orpington'], 'Barred Plymouth Rock', [{ count: 13, look: 'spot' }])).toMatch(
      /^Hardly luck: half should have a head spot, and 13 of 13 comes once in about 8200/u,
    ))
  test('five or more of eight come (56+28+8+1)/256 = 36 times in 100', () =>
    expect(
      summary(['Blue Orpington'], 'Splash Orpington', [
        { count: 5, look: 'splash' },
        { count: 3, look: 'blue' },
      ]),
    ).toMatch(/^Normal: half should be splash, and 5 of 8 or more comes 36 times in 100/u))
  test('fifteen or more of nineteen come 5036/524288, once in about 100', () =>
    expect(
      summary(['Blue Orpington'], 'Black bird', [
        { count: 15, look: 'black' },
        { count: 4, look: 'blue' },
      ]),
    ).toMatch(/^Hardly luck: half should be black, and 15 of 19 or more comes once in about 100/u))
  test('a chick that cannot be speaks of another bird, and no chance is told', () =>
    expect(summary(['Splash bird'], 'Black bird', [{ count: 1, look: 'black' }])).toMatch(/^Not from these two/u))
  test('a recessive that shows has come from both, also from one that hides it', () =>
    expect(
      summary(['Lavender Orpington'], 'Black Orpington', [
        { count: 2, look: 'lavender' },
        { count: 10, look: 'lavender', shows: false },
      ]),
    ).toMatch(/^A lavender chick has a copy from each parent/u))
  test('barred chicks are black in the down, and still no black ones', () =>
    expect(
      summary(['Black Copper Marans'], 'Barred Plymouth Rock', [
        { count: 4, look: 'barred' },
        { count: 4, look: 'black' },
      ]),
    ).toBe('Normal: half should be barred, and 4 of 8 is just about that.'))
  test('of two cocks, the one that gives no such chick is out', () =>
    expect(
      summary(['Splash bird', 'Blue bird'], 'Black bird', [
        { count: 7, look: 'blue' },
        { count: 5, look: 'black' },
      ]),
    ).toBe('Blue: a splash cock gives no black chick with these hens.'))
  test('a chick without what every chick must have is told as what they give alone', () =>
    expect(
      summary(['Silver Laced Wyandotte'], 'Golden Laced Wyandotte', [
        { count: 9, look: 'silver' },
        { count: 3, look: 'silver', shows: false },
      ]),
    ).toMatch(/^Not from these two: they give only silver chicks\./u))
  test('a word that tells nothing of the looks leaves the usual answer', () =>
    expect(summary(['Blue Orpington'], 'Black Orpington', [{ count: 4, look: 'tame' }])).toMatch(/^Half blue/u))
})
