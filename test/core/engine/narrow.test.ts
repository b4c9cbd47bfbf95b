// test/core/engine/narrow.test.ts: what is left to each bird once all readings have had their say, worked by hand.
import { expect, test } from 'vitest'
import type { Genome } from '../../../core/engine/genome.ts'
import { f64, ratio, rational } from '../../../core/engine/num.ts'
import type { Bird } from '../../../core/engine/pedigree.ts'
import { fit } from '../../../core/engine/prepare.ts'
import type { Reading } from '../../../core/engine/trait.ts'
import type { Sex } from '../../../core/vocabulary.ts'

const half = ratio(1n, 2n)
const even = [half, half]
const genome: Genome = {
  loci: [
    { id: 'c', on: 'A', alleles: ['C+', 'c'], freqs: even },
    { id: 'I', on: 'A', alleles: ['I', 'i+'], freqs: even },
    { id: 'S', on: 'Z', alleles: ['S', 's+'], freqs: even },
  ],
  groups: [
    { on: 'A', loci: [0], r: [] },
    { on: 'A', loci: [1], r: [] },
    { on: 'Z', loci: [2], r: [] },
  ],
}
const read = (id: string, loci: readonly number[], can: (sex: Sex, codes: readonly number[]) => boolean): Reading => ({
  id,
  says: id,
  loci,
  weight: (sex, codes) => (can(sex, codes) ? rational.one : rational.zero),
})
/** Pairs: both of the first allele 0, one of each 1, both of the second 2; a single one 3 or 4. */
const is = (locus: number, ...codes: readonly number[]): Reading =>
  read(`${locus} in ${codes.join()}`, [locus], (_, [code]) => codes.includes(code!))
const coloured = is(0, 0, 1)
const white = is(0, 2)
const pure = is(0, 0)
/** Coloured: no dominant white, and not two copies of the recessive one. */
const anyColour = read('any colour', [0, 1], (_, [c, i]) => c !== 2 && i === 2)

type Told = readonly [sex: Bird['sex'], readings: readonly Reading[], sire?: number, dam?: number]
/** The diplotypes left of the groups that matter, by bird; undefined where there is nothing left. */
function left(told: readonly Told[]): readonly (readonly (readonly number[])[])[] | undefined {
  const birds = told.map(([sex, readings, sire, dam], i): Bird => ({
    id: `${i}`,
    sex,
    readings,
    parents: sire === undefined || dam === undefined ? undefined : { sire, dam },
  }))
  const fitted = fit({ genome, birds }, { uses: [], together: [], birds: birds.map((_, i) => i) }, f64)
  return fitted.kind === 'answer'
    ? fitted.answer.narrowed.map((domains) => domains.map(({ codes }) => codes))
    : undefined
}
const ofGroup = (told: readonly Told[], group = 0) => left(told)?.map((domains) => domains[group])

test('a white grandchick reaches through its coloured parent to the grandparent that must have handed it on', () => {
  expect(
    ofGroup([
      ['M', [pure]],
      ['F', [coloured]],
      ['F', [coloured], 0, 1],
      ['M', [coloured]],
      ['F', [white], 3, 2],
    ]),
  ).toEqual([[0], [1], [1], [1], [2]])
})
test('the same told the other way about: the grandchick first', () => {
  expect(
    ofGroup([
      ['F', [white], 1, 2],
      ['M', [coloured]],
      ['F', [coloured], 3, 4],
      ['M', [pure]],
      ['F', [coloured]],
    ]),
  ).toEqual([[2], [1], [1], [0], [1]])
})
test('a chick that cannot be leaves nothing, however far the bird that forbids it', () => {
  const line = (oldest: Reading): readonly Told[] => [
    ['M', [oldest]],
    ['F', [pure]],
    ['M', [coloured], 0, 1],
    ['F', [pure]],
    ['M', [coloured], 2, 3],
    ['F', [white]],
    ['F', [white], 4, 5],
  ]
  expect(left(line(pure))).toBeUndefined()
  expect(ofGroup(line(coloured))).toEqual([[1], [0], [1], [0], [1], [2], [2]])
})
test('what is read across two groups cuts both', () => {
  expect(left([['M', [anyColour]]])).toEqual([[[0, 1], [2]]])
  expect(left([['M', [anyColour, is(1, 0, 1)]]])).toBeUndefined()
  expect(left([['M', [anyColour, is(0, 1, 2)]]])).toEqual([[[1], [2]]])
})
test('and what it cuts goes on to the parents', () => {
  const found = left([
    ['M', [is(1, 0, 1)]],
    ['F', []],
    ['F', [anyColour], 0, 1],
  ])
  expect(found?.map(([, inhibitor]) => inhibitor)).toEqual([[1], [1, 2], [2]])
})
test('a reading of two groups where either will do leaves both whole', () => {
  const anyWhite = read('any white', [0, 1], (_, [c, i]) => c === 2 || i !== 2)
  expect(left([['M', [anyWhite]]])).toEqual([
    [
      [0, 1, 2],
      [0, 1, 2],
    ],
  ])
  expect(left([['M', [anyWhite, coloured]]])).toEqual([
    [
      [0, 1],
      [0, 1],
    ],
  ])
})
test('by sex: a hen has one Z, a cock two, a bird of unknown sex either', () => {
  const silver = is(2, 0, 1, 3)
  expect(ofGroup([['M', [silver]]])).toEqual([[0, 1]])
  expect(ofGroup([['F', [silver]]])).toEqual([[3]])
  expect(ofGroup([['U', [silver]]])).toEqual([[0, 1, 3]])
})
test('across a Z group the pairs of a cock do not count for a hen', () => {
  const goldWhite = read('gold white', [0, 2], (sex, [c, s]) => (sex === 'F' ? c === 2 && s === 4 : c === 0 && s === 2))
  expect(left([['F', [goldWhite]]])).toEqual([[[2], [4]]])
  expect(left([['M', [goldWhite]]])).toEqual([[[0], [2]]])
  expect(left([['U', [goldWhite]]])).toEqual([
    [
      [0, 2],
      [2, 4],
    ],
  ])
})
test('a reading that is the same whatever the bird is may still forbid a sex', () => {
  const crows = read('crows', [], (sex) => sex === 'M')
  expect(left([['F', [crows, coloured]]])).toBeUndefined()
  expect(left([['M', [crows, coloured]]])).toEqual([[[0, 1]]])
  expect(left([['U', [crows, coloured]]])).toEqual([[[0, 1]]])
  const never = read('never', [0], () => false)
  expect(left([['M', [never]]])).toBeUndefined()
})
test('birds alike share one domain', () => {
  const birds: readonly Bird[] = [
    { id: 'a', sex: 'M', readings: [coloured] },
    { id: 'b', sex: 'M', readings: [coloured] },
    { id: 'c', sex: 'M', readings: [white] },
  ]
  const fitted = fit({ genome, birds }, { uses: [], together: [], birds: [0, 1, 2] }, f64)
  const [a, b, c] = fitted.kind === 'answer' ? fitted.answer.narrowed : []
  expect(a![0]).toBe(b![0])
  expect(c![0]).not.toBe(b![0])
})
test('birds that nobody asks about and nothing is read of have none', () => {
  const birds: readonly Bird[] = [
    { id: 'a', sex: 'M', readings: [] },
    { id: 'b', sex: 'F', readings: [] },
    { id: 'c', sex: 'M', readings: [coloured] },
  ]
  const fitted = fit({ genome, birds }, { uses: [], together: [], birds: [2] }, f64)
  expect(fitted.kind === 'answer' && fitted.answer.narrowed.map(({ length }) => length)).toEqual([0, 0, 1])
})
