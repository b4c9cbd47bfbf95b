// test/core/engine/kin.test.ts: when a pedigree has to be asked as a whole, and that it then says what its parts would.
import { describe, expect, test } from 'vitest'
import { linkageGroups } from '../../../core/data/linkage.ts'
import { chicksOfKin, isRelated } from '../../../core/engine/kin.ts'
import { listedLoci, type Mating, type Parent } from '../../../core/engine/mating.ts'
import { chickGroups } from '../../../core/engine/cross.ts'
import type { Genotype } from '../../../core/vocabulary.ts'

const group = linkageGroups.find(({ loci }) => loci.includes('S') && loci.includes('K'))!
const known = (genotype: Genotype, phase?: 'coupling' | 'repulsion'): Parent => ({ genotype, phase })
const cross = (sire: Parent, dam: Parent): Parent => ({ cross: { sire, dam } })
const related = (sire: Parent, dam: Parent): boolean => isRelated({ sire, dam }, listedLoci({ sire, dam }, group))

const hen = known({ S: ['s+'], K: ['k+'] })
const sure = known({ S: ['S', 's+'], K: ['K', 'k+'] }, 'coupling')
const unsure = known({ S: ['S', 's+'], K: ['K', 'k+'] })
const bred = cross(known({ S: ['S', 's+'] }), hen)

describe('is there an uncertain bird on two sides', () => {
  test.each<[string, Parent, Parent, boolean]>([
    ['two birds of known genotype', sure, hen, false],
    ['one bird of unknown phase, told as both parents, without a mating above', unsure, unsure, false],
    ['a cock of told strands on his daughter', sure, cross(sure, hen), false],
    ['a cock of unknown phase on his daughter', unsure, cross(unsure, hen), true],
    ['the same, the other way round', cross(unsure, hen), unsure, true],
    ['a hen of one Z, mother and mate', cross(sure, hen), hen, false],
    ['a bred cock on his daughter', bred, cross(bred, hen), true],
    ['the same hen behind both, and nobody uncertain', cross(sure, hen), cross(known({ S: ['S', 'S'] }), hen), false],
    ['brother and sister out of a bred cock', cross(bred, hen), cross(bred, hen), true],
    ['a bred bird on one side only', bred, hen, false],
    ['a bred dam on one side only', known({ S: ['S', 'S'] }), bred, false],
    ['deep in the one side', cross(cross(unsure, hen), hen), cross(hen, cross(unsure, hen)), true],
  ])('%s', (_, sire, dam, wanted) => expect(related(sire, dam)).toBe(wanted))

  test('a mating of pure birds has nobody uncertain in it', () => {
    const pure = known({ S: ['S', 'S'], K: ['K', 'K'] })
    expect(related(cross(pure, hen), cross(pure, hen))).toBe(false)
  })
})

describe('asked as a whole, the chicks of unrelated birds are those of their parts', () => {
  const creeper = linkageGroups.find(({ loci }) => loci.includes('Cp'))!
  const dies = ({ Cp }: Genotype): number => (Cp?.every((allele) => allele === 'Cp') ? 0 : 1)
  test.each<[string, Mating, 'M' | 'F', typeof group]>([
    ['in coupling', { sire: cross(sure, hen), dam: hen }, 'M', group],
    [
      'in repulsion',
      { sire: known({ S: ['S', 's+'], K: ['K', 'k+'] }, 'repulsion'), dam: cross(sure, hen) },
      'F',
      group,
    ],
    [
      'a hen told by her one allele, of a pair that hatched',
      {
        sire: { cross: { sire: sure, dam: hen }, genotype: { S: ['S'] } },
        dam: { cross: { sire: known({ S: ['S', 's+'] }), dam: hen }, genotype: { S: ['s+'] } },
      },
      'M',
      group,
    ],
    [
      'short legs',
      {
        sire: cross(known({ Cp: ['Cp', 'cp+'] }), known({ Cp: ['Cp', 'cp+'] })),
        dam: cross(known({ Cp: ['Cp', 'cp+'] }), known({})),
      },
      'F',
      creeper,
    ],
  ])('%s', (_, mating, sex, of) => {
    const listed = listedLoci(mating, of)
    expect(isRelated(mating, listed)).toBe(false)
    const whole = chicksOfKin(mating, sex, listed, dies)
    const named = (classes: readonly { readonly genotype: Genotype; readonly p: number }[]): Record<string, number> =>
      Object.fromEntries(classes.filter(({ p }) => p > 0).map(({ genotype, p }) => [JSON.stringify(genotype), p]))
    const parts = chickGroups(mating, [of], dies)[0]![sex]
    expect(whole.reduce((sum, { p }) => sum + p, 0)).toBeCloseTo(1, 13)
    expect(Object.keys(named(whole)).toSorted()).toEqual(Object.keys(named(parts)).toSorted())
    for (const [name, p] of Object.entries(named(parts))) expect(named(whole)[name]).toBeCloseTo(p, 13)
  })
})
