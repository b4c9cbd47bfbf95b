// test/core/cross/laws.test.ts: what must hold of any mating in the catalogue.
import { describe, expect, test } from 'vitest'
import * as fc from 'fast-check'
import { breeds } from '../../../core/breeds.ts'
import { mate } from '../../../core/cross/mate.ts'
import type { BirdRef, ToldGenotype } from '../../../core/question.ts'

const anyBreed: fc.Arbitrary<BirdRef> = fc.constantFrom(...breeds).map(({ name }) => ({ breed: name }))
const plain = { hen: false, reverse: false }
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0)
const runs = { numRuns: 150 }

test('weights of the cases add to 1, and so do the shares of each sex', () => {
  fc.assert(
    fc.property(anyBreed, anyBreed, (sire, dam) => {
      const { cases } = mate(sire, dam, plain)
      expect(sum(cases.map(({ weight }) => weight))).toBeCloseTo(1, 9)
      for (const { cockerels, pullets } of cases) {
        expect(sum(cockerels.map(({ share }) => share))).toBeCloseTo(1, 9)
        expect(sum(pullets.map(({ share }) => share))).toBeCloseTo(1, 9)
      }
    }),
    runs,
  )
})

test('the same mating always gets the same answer', () => {
  fc.assert(
    fc.property(anyBreed, anyBreed, (sire, dam) => {
      expect(mate({ ...sire }, { ...dam }, plain)).toEqual(mate(sire, dam, plain))
    }),
    { numRuns: 30 },
  )
})

describe('a hen’s Z never reaches her daughters', () => {
  const zPair = fc.constantFrom(['S', 'S'], ['S', 's+'], ['s+', 's+'])
  const alleles = (
    kinds: readonly { readonly look: { readonly chick: { readonly ground: string } }; readonly share: number }[],
  ): string => kinds.map(({ look, share }) => `${look.chick.ground} ${share.toFixed(6)}`).join()
  test('daughters of one cock are alike whatever Z the hen has', () => {
    fc.assert(
      fc.property(zPair, (sire) => {
        const ground = { E: ['e^Wh', 'e^Wh'], Co: ['Co', 'Co'] }
        const cock: BirdRef = { genotype: { ...ground, S: sire } }
        const [silver, gold] = ['S', 's+'].map(
          (z) => mate(cock, { genotype: { ...ground, S: [z], B: [z === 'S' ? 'B' : 'b+'] } }, plain).cases[0]!,
        )
        expect(alleles(silver!.pullets)).toBe(alleles(gold!.pullets))
      }),
    )
  })
})

test('an autosomal cross does not care which parent is which', () => {
  const pair = fc.tuple(
    fc.constantFrom('E', 'e^Wh', 'e+', 'e^b', 'E^R'),
    fc.constantFrom('E', 'e^Wh', 'e+', 'e^b', 'E^R'),
  )
  const blue = fc.constantFrom(['Bl', 'Bl'], ['Bl', 'bl+'], ['bl+', 'bl+'])
  const order = ['E', 'E^R', 'e^Wh', 'e+', 'e^b']
  const bird = fc
    .record({ e: pair, bl: blue })
    .map(({ e, bl }): ToldGenotype => ({ E: e.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)), Bl: [...bl] }))
  const looks = (one: ToldGenotype, other: ToldGenotype): unknown => {
    const { cockerels, pullets } = mate(
      { genotype: { ...one, S: ['s+', 's+'] } },
      { genotype: { ...other, S: ['s+'] } },
      plain,
    ).cases[0]!
    const words = (kinds: typeof cockerels): readonly string[] =>
      kinds.map(({ down, adult, share }) => `${down}/${adult} ${share.toFixed(9)}`).toSorted()
    return [words(cockerels), words(pullets)]
  }
  fc.assert(
    fc.property(bird, bird, (one, other) => {
      expect(looks(one, other)).toEqual(looks(other, one))
    }),
  )
})

describe('first crosses bred on', () => {
  const redSexLink: BirdRef = { cross: { sire: { breed: 'Rhode Island Red' }, dam: { breed: 'Light Sussex' } } }
  test('red sex-link to red sex-link: gold and silver in both sexes, half each (S/s+ x s+/-)', () => {
    const { cases } = mate(redSexLink, redSexLink, plain)
    for (const kinds of [cases[0]!.cockerels, cases[0]!.pullets]) {
      const gold = sum(kinds.filter(({ look }) => look.chick.ground === 'gold').map(({ share }) => share))
      expect(gold).toBeCloseTo(1 / 2, 9)
    }
    expect(cases[0]!.sexing.verdict).toBe('no')
  })

  test('black sex-link to black sex-link: half of each sex barred, three quarters black-based', () => {
    const blackSexLink: BirdRef = {
      cross: { sire: { breed: 'Rhode Island Red' }, dam: { breed: 'Barred Plymouth Rock' } },
    }
    const [first] = mate(blackSexLink, blackSexLink, plain).cases
    for (const kinds of [first!.cockerels, first!.pullets]) {
      expect(sum(kinds.filter(({ look }) => look.plumage.barring !== 'none').map(({ share }) => share))).toBeCloseTo(
        1 / 2,
        6,
      )
      expect(sum(kinds.filter(({ look }) => look.chick.colour === 'black').map(({ share }) => share))).toBeCloseTo(
        3 / 4,
        1,
      )
    }
  })

  test('back to the cock: (red x barred) hens under a red cock give no barred chick', () => {
    const hens: BirdRef = { cross: { sire: { breed: 'Rhode Island Red' }, dam: { breed: 'Barred Plymouth Rock' } } }
    const [first] = mate({ breed: 'Rhode Island Red' }, hens, plain).cases
    expect([...first!.cockerels, ...first!.pullets].every(({ look }) => look.plumage.barring === 'none')).toBe(true)
  })
})
