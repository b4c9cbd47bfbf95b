// test/core/answers/shownSummary.test.ts: how many chicks show what was asked: the published ratios, in words.
import { describe, expect, test } from 'vitest'
import { answerCross } from '../../../core/answers/cross.ts'
import type { BirdRef, CrossQuestion } from '../../../core/question.ts'

const summary = (sire: BirdRef, dam: BirdRef, ...shown: NonNullable<CrossQuestion['shown']>): string =>
  answerCross({
    kind: 'cross',
    matings: [{ sire, dam }],
    aspects: [],
    shown,
    assumed: [],
    manner: { symbols: false, units: 'metric' },
  }).summary
const genes = (genotype: BirdRef['genotype']): BirdRef => ({ genotype })

describe('published ratios', () => {
  // Bateson & Saunders 1902; Bateson & Punnett 1905: rose on rose of the first cross, three to one
  test('rose comb in the second generation: three quarters', () => {
    const rose = genes({ R: ['R', 'r+'] })
    expect(summary(rose, rose, 'rose comb', 'single comb')).toBe('Three quarters rose-combed; a quarter single-combed.')
  })
  // Bateson & Punnett 1906: blue Andalusians among themselves, 1 black : 2 blue : 1 splashed white
  test('blue on blue: half blue, a quarter black, a quarter splash', () => {
    const blue = genes({ E: ['E', 'E'], Bl: ['Bl', 'bl+'] })
    expect(summary(blue, blue, 'blue', 'black', 'splash')).toBe('Half blue; a quarter black; a quarter splash.')
  })
  // Spillman 1908; Goodale 1909: barring lies on the Z, so a barred hen gives it to her sons alone
  test('a barred hen bars her sons and none of her daughters', () => {
    expect(summary({ breed: 'Rhode Island Red' }, { breed: 'Barred Plymouth Rock' }, 'barred')).toBe(
      'Barred: all cockerels, no pullets.',
    )
  })
})

describe('what none shows is said to be carried, or not', () => {
  test('lavender on black: none, and all carry it', () => {
    const black = genes({ E: ['E', 'E'] })
    expect(summary(genes({ E: ['E', 'E'], lav: ['lav', 'lav'] }), black, 'lavender', 'split')).toBe(
      'None lavender, all carry it unseen; all split to lavender.',
    )
    expect(summary(black, black, 'lavender', 'split')).toBe('None lavender; none is split to anything that I know of.')
  })
  test('a chocolate gene on the Z of the cock alone: his sons carry it, his daughters show it', () => {
    const choc = genes({ E: ['E', 'E'], choc: ['choc', 'choc'] })
    expect(summary(choc, genes({ E: ['E', 'E'] }), 'chocolate', 'split')).toBe(
      'Chocolate: no cockerels, all pullets; split to chocolate: all cockerels, no pullets.',
    )
  })
})

test('where the parents leave it open, the likeliest number comes first and the other is named', () => {
  expect(summary({ breed: 'White Plymouth Rock' }, genes({ c: ['C+', 'c'] }), 'white')).toMatch(
    /^(?:It depends|Half white, most likely)/u,
  )
})

test('colours of parents that were not told are not counted; forms are', () => {
  const frizzle = { breed: 'Frizzle' }
  expect(summary(frizzle, frizzle, 'black', 'frizzle')).toBe('Three quarters frizzled.')
})
