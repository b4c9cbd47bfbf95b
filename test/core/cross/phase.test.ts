// test/core/cross/phase.test.ts: linked genes: a cock that has them together and one that has them apart give different chicks, and the reply says so.
import { describe, expect, test } from 'vitest'
import { linkageNotes } from '../../../core/cross/linked.ts'
import { mate } from '../../../core/cross/mate.ts'
import { phaseDoubts } from '../../../core/cross/phase.ts'
import type { Case } from '../../../core/answer.ts'
import type { BirdRef } from '../../../core/question.ts'
import { published } from '../../published.ts'

const gold: BirdRef = { genotype: { S: ['s+'], K: ['k+'] } }
const split: BirdRef = { genotype: { S: ['S', 's+'], K: ['K', 'k+'] } }
const bitgood = { ref: 'Bitgood 1999, Poultry Sci 78:1100: S-K 2.4 in 100', status: 'read' } as const

/** Share of the daughters that are slow and silver, and of those that are slow and gold. */
const slow = ({ pullets }: Case): readonly [silver: number, gold: number] => {
  const share = (ground: string): number =>
    pullets
      .filter(({ look }) => look.chick.wing === 'slow' && look.chick.ground === ground)
      .reduce((sum, kind) => sum + kind.share, 0)
  return [share('silver'), share('gold')]
}

describe('a cock split for slow feathering and silver, of whom nobody tells which parent gave what', () => {
  const { cases } = mate(split, gold)
  test('is two cases, equally likely, with what sets them apart and how to find out', () => {
    expect(cases.map(({ weight }) => weight)).toEqual([1 / 2, 1 / 2])
    expect(cases.map(({ given }) => given)).toEqual([
      'the cock is carrying slow feathering and silver from one parent',
      'the cock is carrying slow feathering from one parent and silver from the other',
    ])
    expect(cases[0]!.howToTell).toMatch(/^Think back which of the parents had which/u)
  })
  published('together they stay together in nearly all daughters; apart they stay apart', bitgood, () => {
    const [together, apart] = cases.map(slow)
    expect(together![0]).toBeCloseTo((1 - 0.025) / 2, 6)
    expect(together![1]).toBeCloseTo(0.025 / 2, 6)
    expect(apart).toEqual([together![1], together![0]].map((p) => expect.closeTo(p, 6)))
  })
})

test('bred from told parents there is nothing to ask: his parents decide it', () => {
  const bred: BirdRef = { cross: { sire: { genotype: { S: ['S', 'S'], K: ['K', 'K'] } }, dam: gold } }
  const [only, ...others] = mate(bred, gold).cases
  expect(others).toEqual([])
  expect(slow(only!)[0]).toBeCloseTo((1 - 0.025) / 2, 6)
})

describe('a cock split for blue shell and pea comb: no look of a chick tells the shell, but its comb does', () => {
  const cock: BirdRef = { genotype: { O: ['O', 'o+'], P: ['P', 'p+'] } }
  const plain: BirdRef = { genotype: {} }
  test.each([
    [
      'nobody tells how he has them',
      cock,
      [
        ['blue shell and pea comb from one parent', true],
        ['blue shell from one parent and pea comb from the other', false],
      ],
    ],
    [
      'both from his father',
      { cross: { sire: { genotype: { O: ['O', 'O'], P: ['P', 'P'] } }, dam: plain } },
      [['', true]],
    ],
    [
      'one from each',
      { cross: { sire: { genotype: { O: ['O', 'O'] } }, dam: { genotype: { P: ['P', 'P'] } } } },
      [['', false]],
    ],
  ] as const)('%s', (_, sire, wanted) => {
    const { cases } = mate(sire, plain)
    expect(
      cases.map(({ given, together }) => [given.replace('the cock is carrying ', ''), together?.[0]?.both]),
    ).toEqual(wanted)
  })
})

describe('no doubt of phase', () => {
  test.each([
    ['unlike at one locus only', { S: ['S', 's+'], K: ['K', 'K'] }],
    ['a hen has one strand', { S: ['S'], K: ['K'] }],
    ['loci that part freely', { Na: ['Na', 'na+'], h: ['H+', 'h'] }],
    ['loci of different groups', { S: ['S', 's+'], B: ['B', 'b+'] }],
  ])('%s', (_, genotype) => expect(phaseDoubts('x', genotype)).toEqual([]))
})

test('a recessive is named by what it is: silver from one parent and chocolate from the other is the dominant ones together', () => {
  const [doubt] = phaseDoubts('x', { dw: ['Dw+', 'dw'], S: ['S', 's+'] })
  expect(doubt!.choices.map(({ words, phase }) => [Object.values(phase)[0], words])).toEqual([
    ['coupling', 'carrying silver from one parent and dwarfing from the other'],
    ['repulsion', 'carrying silver and dwarfing from one parent'],
  ])
})

describe('what hangs on how often linked genes part is said', () => {
  test('with a figure where one was read', () => {
    expect(linkageNotes(split, gold)).toEqual([
      'slow feathering and silver are linked: they part in 2 or 3 of 100 chicks',
    ])
  })
  test('without one where the works do not agree', () => {
    const notes = linkageNotes(
      { genotype: { B: ['B', 'b+'], Id: ['Id', 'id+'] } },
      { genotype: { B: ['b+'], Id: ['id+'] } },
    )
    expect(notes).toEqual([
      'barring and clear shanks are linked: they usually go together; how often they part is disputed',
    ])
    expect(notes.join()).not.toMatch(/\d/u)
  })
  test('and not where it makes no difference', () => {
    expect(linkageNotes({ breed: 'Rhode Island Red' }, { breed: 'Barred Plymouth Rock' })).toEqual([])
    expect(linkageNotes({ genotype: { S: ['S', 's+'], K: ['K', 'K'] } }, gold)).toEqual([])
  })
})
