// test/core/cross/carried.test.ts: what chicks carry unseen, counted by hand from Mendel's rules.
import { expect, test } from 'vitest'
import { resolve } from '../../../core/resolve.ts'
import type { BirdRef } from '../../../core/question.ts'

function carried(sire: BirdRef, dam: BirdRef) {
  const manner = { symbols: false, units: 'both' } as const
  const answer = resolve({ kind: 'cross', matings: [{ sire, dam }], aspects: [], assumed: [], manner })
  if (answer.kind !== 'cross') throw new Error('want a cross')
  return answer.crosses[0]?.cases[0]?.carried
}
const black = (genotype: NonNullable<BirdRef['genotype']>): BirdRef => ({ genotype: { E: ['E', 'E'], ...genotype } })

test('of a black split to lavender with a clear mate, half of the chicks carry it', () => {
  expect(carried(black({ lav: ['Lav+', 'lav'] }), black({ lav: ['Lav+', 'Lav+'] }))).toEqual([
    { allele: 'lav', name: 'lavender', cockerels: 0.5, pullets: 0.5 },
  ])
})

test('two splits: half carry it unseen, for the quarter that shows it hides nothing', () => {
  const split = black({ lav: ['Lav+', 'lav'] })
  expect(carried(split, split)).toMatchObject([{ allele: 'lav', cockerels: 0.5, pullets: 0.5 }])
})

test('a chocolate cock on black hens: every son carries chocolate, no daughter does, for she shows it', () => {
  expect(carried(black({ choc: ['choc', 'choc'] }), black({ choc: ['Choc+'] }))).toEqual([
    { allele: 'choc', name: 'chocolate', cockerels: 1, pullets: 0 },
  ])
})

test('nothing is carried where neither parent has anything to hide', () => {
  expect(carried(black({}), black({}))).toEqual([])
})
