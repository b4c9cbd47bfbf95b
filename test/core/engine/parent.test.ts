// test/core/engine/parent.test.ts: how the alleles of one parent lie on its strands, and what it hands on of them.
import { describe, expect, test } from 'vitest'
import { listedLoci, type Parent } from '../../../core/engine/mating.ts'
import { diplotypesOfKnown, fits, germsOf, type Known } from '../../../core/engine/parent.ts'
import type { Sex } from '../../../core/vocabulary.ts'
import { linkageGroups } from '../../../core/data/linkage.ts'

const zOf = (parent: Parent) =>
  listedLoci(
    { sire: parent, dam: { genotype: {} } },
    linkageGroups.find(({ loci }) => loci.includes('S') && loci.includes('K'))!,
  )
const split = { K: ['K', 'k+'], S: ['S', 's+'], dw: ['Dw+', 'dw'] }
const ways = (bird: Known, sex: Sex = 'M'): readonly string[] =>
  diplotypesOfKnown(bird, sex, zOf(bird))
    .map(({ one, other, p }) => `${one.join(' ')} | ${other?.join(' ') ?? '-'} ${p}`)
    .toSorted()
const handedOn = (parent: Parent, sex: Sex = 'M'): Readonly<Record<string, number>> =>
  Object.fromEntries(germsOf(parent, sex, zOf(parent), undefined).map(({ alleles, p }) => [alleles.join(' '), p]))

describe('the strands of a bird of known genotype', () => {
  test('in coupling the dominant alleles lie together', () =>
    expect(ways({ genotype: split, phase: 'coupling' })).toEqual(['K S Dw+ | k+ s+ dw 1']))
  test('in repulsion they lie turn about', () =>
    expect(ways({ genotype: split, phase: 'repulsion' })).toEqual(['K s+ Dw+ | k+ S dw 1']))
  test('where nobody tells, each way is as likely, and either strand may be called the first', () =>
    expect(ways({ genotype: split })).toEqual([
      'K S Dw+ | k+ s+ dw 0.25',
      'K S dw | k+ s+ Dw+ 0.25',
      'K s+ Dw+ | k+ S dw 0.25',
      'K s+ dw | k+ S Dw+ 0.25',
    ]))
  test('a locus it is pure for makes no further way', () =>
    expect(ways({ genotype: { ...split, S: ['S', 'S'] } })).toEqual(['K S Dw+ | k+ S dw 0.5', 'K S dw | k+ S Dw+ 0.5']))
  test('and does not count in turning about', () =>
    expect(ways({ genotype: { ...split, S: ['S', 'S'] }, phase: 'repulsion' })).toEqual(['K S dw | k+ S Dw+ 1']))
  test('pure throughout, there is one way', () =>
    expect(ways({ genotype: { K: ['K', 'K'], S: ['S', 'S'] } })).toEqual(['K S | K S 1']))
  test('a hen has her one Z', () => expect(ways({ genotype: { K: ['k+'], S: ['S'] } }, 'F')).toEqual(['k+ S | - 1']))
})

describe('what it hands on', () => {
  const r = 0.025
  const told = { K: ['K', 'k+'], S: ['S', 's+'] }
  const kept = (1 - r) / 2
  const crossed = r / 2
  test.each([
    ['coupling', { 'K S': kept, 'k+ s+': kept, 'K s+': crossed, 'k+ S': crossed }],
    [{ K: 'coupling' }, { 'K S': kept, 'k+ s+': kept, 'K s+': crossed, 'k+ S': crossed }],
    ['repulsion', { 'K S': crossed, 'k+ s+': crossed, 'K s+': kept, 'k+ S': kept }],
    [{ S: 'repulsion' }, { 'K S': crossed, 'k+ s+': crossed, 'K s+': kept, 'k+ S': kept }],
    [{ O: 'repulsion' }, { 'K S': 0.25, 'k+ s+': 0.25, 'K s+': 0.25, 'k+ S': 0.25 }],
    [undefined, { 'K S': 0.25, 'k+ s+': 0.25, 'K s+': 0.25, 'k+ S': 0.25 }],
  ] as const)('phase %j', (phase, wanted: Readonly<Record<string, number>>) => {
    const found = handedOn({ genotype: told, phase })
    expect(Object.keys(found).toSorted()).toEqual(Object.keys(wanted).toSorted())
    for (const [germ, p] of Object.entries(wanted)) expect(found[germ]).toBeCloseTo(p, 14)
  })
  test('alike on both strands: the one kind', () =>
    expect(handedOn({ genotype: { K: ['K', 'K'], S: ['s+', 's+'] } })).toEqual({ 'K s+': 1 }))
  test('unlike at one locus: half and half, whatever the phase', () =>
    expect(handedOn({ genotype: { K: ['K', 'k+'], S: ['S', 'S'] }, phase: 'repulsion' })).toEqual({
      'K S': 0.5,
      'k+ S': 0.5,
    }))
  test('a hen: her Z whole', () => expect(handedOn({ genotype: { K: ['K'], S: ['s+'] } }, 'F')).toEqual({ 'K s+': 1 }))
  test('a bred cock: what both his parents may have given, each kind once', () => {
    const found = handedOn({
      cross: { sire: { genotype: { S: ['S', 's+'], K: ['K', 'K'] } }, dam: { genotype: { S: ['s+'], K: ['K'] } } },
    })
    expect(found).toEqual({ 'K S': 0.25, 'K s+': 0.75 })
  })
  test('a bred hen: what her father gave, and nothing of her mother', () => {
    const bred: Parent = { cross: { sire: { genotype: { S: ['s+', 's+'] } }, dam: { genotype: { S: ['S'] } } } }
    expect(handedOn(bred, 'F')).toEqual({ 's+': 1 })
  })
})

test.each([
  [['a'], 'a', 'b', true],
  [['a'], 'b', 'a', true],
  [['a'], 'b', 'b', false],
  [['a'], 'a', undefined, true],
  [['a', 'b'], 'a', 'b', true],
  [['a', 'b'], 'b', 'a', true],
  [['a', 'b'], 'a', 'a', false],
  [['a', 'b'], 'b', 'b', false],
  [['a', 'b'], 'a', 'c', false],
  [['a', 'b'], 'c', 'a', false],
  [['a', 'b'], 'b', 'c', false],
  [['a', 'b'], 'c', 'b', false],
  [['a', 'a'], 'a', 'a', true],
] as const)('told %j, may it be %s %s: %s', (told, one, other, wanted) => expect(fits(told, one, other)).toBe(wanted))
