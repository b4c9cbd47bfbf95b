// test/core/flock/weigh.test.ts: the chance that a bird of a told flock carries an allele, held against textbook cases.
import { describe, expect, test } from 'vitest'
import { formatRatio } from '../../../core/engine/num.ts'
import { debated } from '../../../core/flock/debated.ts'
import { members } from '../../../core/flock/member.ts'
import { type Weighed, weigh } from '../../../core/flock/weigh.ts'
import type { Brood, Flock, FlockBird } from '../../../core/question.ts'
import { published } from '../../published.ts'

const lav = debated('lav', 'lav')
const choc = debated('choc', 'choc')
const brood = (sire: string, dam: string, ...chicks: Brood['chicks']): Brood => ({ sire, dam, chicks })
const weighed = (of: string, birds: readonly FlockBird[], broods: Flock['broods'] = [], about = lav): Weighed =>
  weigh(about, members({ birds, broods }, about), of)
const says = (found: Weighed): string =>
  found.kind === 'chance' ? `${formatRatio(found.p)} ${found.footing}` : JSON.stringify(found.readings)

const dark = { lav: false }
const lavender = { lav: true }
const bourdon = { ref: 'Bourdon, Understanding Animal Breeding, on test matings', status: 'from memory' } as const

published('the clear brother of a lavender chick out of two black birds carries it in 2 of 3', bourdon, () => {
  const family = [
    { name: 'Bert', sire: 'Sid', dam: 'Daisy', shows: dark },
    { name: 'Sid', shows: dark },
    { name: 'Daisy', shows: dark },
    { name: 'Ghost', sire: 'Sid', dam: 'Daisy', shows: lavender },
  ]
  expect(says(weighed('Bert', family))).toBe('2/3 told')
})

published('a chick of a known carrier and a clear bird carries it in 1 of 2', bourdon, () => {
  expect(
    says(
      weighed('Bert', [
        { name: 'Bert', sire: 'Sid', dam: 'Daisy' },
        { name: 'Daisy', carries: { lav: true }, shows: dark },
      ]),
    ),
  ).toBe('1/2 told')
})

describe('what the family tells', () => {
  test('a lavender parent makes a carrier for certain', () => {
    expect(
      says(
        weighed('Bert', [
          { name: 'Bert', sire: 'Sid', dam: 'Daisy', shows: dark },
          { name: 'Daisy', shows: lavender },
        ]),
      ),
    ).toBe('1 told')
  })
  test('a lavender grandsire makes it one half', () => {
    const family = [
      { name: 'Bert', sire: 'Sid', dam: 'Daisy', shows: dark },
      { name: 'Sid', sire: 'Gramps', dam: 'Nan', shows: dark },
      { name: 'Gramps', bird: { breed: 'Lavender Orpington' } },
    ]
    expect(says(weighed('Bert', family))).toBe('1/2 told')
  })
  test('a bird told as a cross has its parents with it', () => {
    const bird = { cross: { sire: { breed: 'Lavender Orpington' }, dam: { breed: 'Black Orpington' } } }
    expect(says(weighed('Bert', [{ name: 'Bert', sex: 'M', bird }]))).toBe('1 told')
  })
  test('a told genotype is taken at its word: both alleles, or one of two', () => {
    expect(says(weighed('Bert', [{ name: 'Bert', bird: { genotype: { lav: ['Lav+', 'lav'] } } }]))).toBe('1 told')
    expect(says(weighed('Bert', [{ name: 'Bert', bird: { genotype: { lav: ['Lav+', 'Lav+'] } } }]))).toBe('0 told')
    expect(says(weighed('Bert', [{ name: 'Bert', bird: { genotype: { lav: ['lav'] } }, shows: dark }]))).toBe('1 told')
    expect(says(weighed('Bert', [{ name: 'Bert', bird: { genotype: { lav: ['Lav+'] } } }]))).toBe('1/2 open')
  })
  test('parents of whom nothing is told say nothing', () => {
    expect(says(weighed('Bert', [{ name: 'Bert', sire: 'Sid', dam: 'Daisy', shows: dark }]))).toBe('1/2 open')
  })
  test('of a bird with one named parent the other is a bird like any other', () => {
    const family = [
      { name: 'Bert', shows: dark },
      { name: 'Ghost', sire: 'Bert', shows: lavender },
    ]
    expect(says(weighed('Bert', family))).toBe('1 told')
    expect(says(weighed('the unnamed dam of Ghost', family))).toBe('1 told')
  })
  test('birds of another family change nothing', () => {
    const others = [
      { name: 'Max', shows: dark },
      { name: 'Ivy', shows: dark },
      { name: 'Kid', sire: 'Max', dam: 'Ivy', shows: lavender },
    ]
    const pair = [{ name: 'Bert', sex: 'M' as const }, { name: 'Ada', shows: lavender }, ...others]
    expect(says(weighed('Bert', pair, [brood('Bert', 'Ada', { count: 7, shows: false })]))).toBe('1/129 even')
  })
  test('with very many unknown birds there is an answer all the same', () => {
    const hens = Array.from({ length: 40 }, (_, i) => `hen ${i}`)
    const broods = hens.map((hen) => brood('Bert', hen, { count: 2, shows: false }))
    expect(
      says(
        weighed('Bert', [{ name: 'Bert', sex: 'M' }], [...broods, brood('Bert', 'hen 0', { count: 1, shows: true })]),
      ),
    ).toBe('1 told')
  })
  test('parents told to be free of it settle it', () => {
    const free = { carries: { lav: false } }
    expect(
      says(
        weighed('Bert', [
          { name: 'Bert', sire: 'Sid', dam: 'Daisy' },
          { name: 'Sid', ...free },
          { name: 'Daisy', ...free },
        ]),
      ),
    ).toBe('0 told')
  })
})

describe('what the chicks tell', () => {
  const pair = [
    { name: 'Bert', sex: 'M' as const },
    { name: 'Ada', shows: lavender },
  ]
  test('seven clear ones from a lavender hen, from even: 1/129', () => {
    expect(says(weighed('Bert', pair, [brood('Bert', 'Ada', { count: 7, shows: false })]))).toBe('1/129 even')
  })
  test('the words of looks are read: dark ones are clear, grey ones are lavender, white ones tell nothing', () => {
    expect(says(weighed('Bert', pair, [brood('Bert', 'Ada', { count: 7, look: 'black' })]))).toBe('1/129 even')
    expect(
      says(weighed('Bert', pair, [brood('Bert', 'Ada', { count: 1, look: 'grey' }, { count: 3, look: 'black' })])),
    ).toBe('1 told')
    expect(says(weighed('Bert', pair, [brood('Bert', 'Ada', { count: 9, look: 'white' })]))).toBe('1/2 open')
  })
  test('one lavender chick out of two black birds: both carry it', () => {
    const blacks = [
      { name: 'Bert', shows: dark },
      { name: 'Ada', shows: dark },
    ]
    const broods = [brood('Bert', 'Ada', { count: 1, shows: true }, { count: 8, shows: false })]
    expect([says(weighed('Bert', blacks, broods)), says(weighed('Ada', blacks, broods))]).toEqual(['1 told', '1 told'])
  })
  test('clear ones from a known carrier, prior 2/3: 2 (3/4)^5 to 1', () => {
    const family = [
      { name: 'Bert', sire: 'Sid', dam: 'Daisy', shows: dark },
      { name: 'Ghost', sire: 'Sid', dam: 'Daisy', shows: lavender },
      { name: 'Sid', shows: dark },
      { name: 'Daisy', shows: dark },
      { name: 'Ada', carries: { lav: true }, shows: dark },
    ]
    expect(says(weighed('Bert', family, [brood('Bert', 'Ada', { count: 5, shows: false })]))).toBe('243/755 told')
  })
  test('clear ones from a hen of whom nothing is told leave it where it was', () => {
    expect(says(weighed('Bert', [{ name: 'Bert' }], [brood('Bert', 'Daisy', { count: 9, shows: false })]))).toBe(
      '1/2 even',
    )
  })
  test('a thousand clear chicks are no trouble', () => {
    const found = weighed('Bert', pair, [brood('Bert', 'Ada', { count: 1000, shows: false })])
    expect(found.kind === 'chance' && found.p.d > 2n ** 999n).toBe(true)
  })
  test('an affected chick from two unknown grandparents: either of them may have brought it', () => {
    const family = [
      { name: 'Sid', sire: 'A', dam: 'B', shows: dark },
      { name: 'Daisy', carries: { lav: true }, shows: dark },
    ]
    const broods = [brood('Sid', 'Daisy', { count: 1, shows: true })]
    expect(says(weighed('Sid', family, broods))).toBe('1 told')
    expect(says(weighed('A', family, broods))).toBe('1/2 told')
  })
})

describe('on the Z', () => {
  const pair = [
    { name: 'Bert', sex: 'M' as const },
    { name: 'Ada', sex: 'F' as const },
  ]
  test('five clear daughters of a cock, whoever the hen: 1/33', () => {
    expect(
      says(
        weighed(
          'Bert',
          pair,
          [brood('Bert', 'Ada', { count: 5, sex: 'F', shows: false }, { count: 6, sex: 'M', shows: false })],
          choc,
        ),
      ),
    ).toBe('1/33 even')
  })
  test('chicks of unknown sex count half: ten clear ones leave (3/4)^10 to 1', () => {
    expect(says(weighed('Bert', pair, [brood('Bert', 'Ada', { count: 10, shows: false })], choc))).toBe(
      '59049/1107625 even',
    )
  })
  test('a hen shows what she has: she carries it or she does not', () => {
    expect(says(weighed('Ada', [{ name: 'Ada', sex: 'F', shows: { choc: true } }], [], choc))).toBe('1 told')
    expect(says(weighed('Ada', [{ name: 'Ada', sex: 'F', shows: { choc: false } }], [], choc))).toBe('0 told')
  })
})

describe('what cannot all be true', () => {
  test('names the birds and what was told of them', () => {
    const birds = [
      { name: 'Bert', carries: { lav: false } },
      { name: 'Ada', shows: lavender },
    ]
    const found = weighed('Bert', birds, [brood('Bert', 'Ada', { count: 7, shows: false }, { count: 1, shows: true })])
    expect(found).toEqual({
      kind: 'conflict',
      readings: [
        { bird: 'Bert', reading: 'is free of lav' },
        { bird: 'chicks 2 of Bert and Ada', reading: 'lavender' },
      ],
    })
  })
  test('a bird that contradicts itself', () => {
    expect(weighed('Bert', [{ name: 'Bert', shows: lavender, carries: { lav: false } }]).kind).toBe('conflict')
  })
})

describe('traits that may fail to show', () => {
  const toes = debated('Po', 'Po')
  test('four-toed chicks of a five-toed cock are no proof that he is pure or not, and make it less likely', () => {
    expect(formatRatio(toes.penetrance)).toBe('169/200')
    const found = weighed(
      'Bert',
      [
        { name: 'Bert', shows: { Po: false } },
        { name: 'Ada', shows: { Po: false } },
      ],
      [brood('Bert', 'Ada', { count: 1, shows: true })],
      toes,
    )
    expect(found.kind).toBe('chance')
  })
})
