// test/core/engine/cross.test.ts: chicks of a mating, group by group: known parents, nested matings, related birds.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { linkageGroups } from '../../../core/data/linkage.ts'
import { type ChickClass, chickGroups } from '../../../core/engine/cross.ts'
import type { Hatches, Mating, Parent } from '../../../core/engine/mating.ts'
import { answerStatement } from '../../../core/statement.ts'
import type { Genotype, LinkageGroup } from '../../../core/vocabulary.ts'
import { published } from '../../published.ts'

const group = (...loci: readonly string[]): LinkageGroup =>
  linkageGroups.find((one) => loci.every((locus) => one.loci.includes(locus)))!
const known = (genotype: Genotype, phase?: 'coupling' | 'repulsion'): Parent => ({ genotype, phase })
const shares = (classes: readonly ChickClass[]): Record<string, number> =>
  Object.fromEntries(
    classes.map(({ genotype, p }) => [
      Object.values(genotype)
        .map((pair) => pair.join('/'))
        .join(' '),
      p,
    ]),
  )
const sons = (mating: Mating, of: LinkageGroup, hatches?: Hatches): Record<string, number> =>
  shares(chickGroups(mating, [of], hatches)[0]!.M)
const daughters = (mating: Mating, of: LinkageGroup): Record<string, number> => shares(chickGroups(mating, [of])[0]!.F)
/** Compared to the last digit but three. */
const expectShares = (found: Record<string, number>, wanted: Record<string, number>): void => {
  expect(Object.keys(found).toSorted()).toEqual(Object.keys(wanted).toSorted())
  for (const [name, p] of Object.entries(wanted)) expect(found[name]).toBeCloseTo(p, 13)
}

const crew = { ref: 'Crew 1933, Proc R Soc Edinb', status: 'from memory' } as const
const mendel = { ref: 'Mendel 1866, Versuche über Pflanzen-Hybriden', status: 'from memory' } as const

published('gold cock on silver hen: silver sons, gold daughters', crew, () => {
  const mating = { sire: known({ S: ['s+', 's+'] }), dam: known({ S: ['S'] }) }
  expectShares(sons(mating, group('S')), { 'S/s+': 1 })
  expectShares(daughters(mating, group('S')), { 's+': 1 })
})

published('two splits: 1 to 2 to 1', mendel, () => {
  const split = known({ c: ['C+', 'c'] })
  expectShares(sons({ sire: split, dam: split }, group('c')), { 'C+/C+': 0.25, 'C+/c': 0.5, 'c/c': 0.25 })
})

describe('what is not listed is wild', () => {
  test('in a parent: the other one brings its alleles to wild ones', () => {
    expectShares(sons({ sire: known({ lav: ['lav', 'lav'] }), dam: known({}) }, group('lav')), { 'Lav+/lav': 1 })
  })
  test('in both: the group has one class without loci', () => {
    const [found] = chickGroups({ sire: known({ lav: ['lav', 'lav'] }), dam: known({}) }, [group('c')])
    expect(found).toEqual({ loci: [], M: [{ genotype: {}, p: 1 }], F: [{ genotype: {}, p: 1 }] })
  })
  test('groups come in the order asked for', () => {
    const found = chickGroups({ sire: known({ lav: ['lav', 'lav'] }), dam: known({ c: ['c', 'c'] }) }, [
      group('c'),
      group('lav'),
      group('mo'),
    ])
    expect(found.map(({ loci }) => loci)).toEqual([['c'], ['lav'], []])
  })
  test('pairs are written dominant first, whoever brought which', () => {
    expectShares(sons({ sire: known({ E: ['e^b', 'e^b'] }), dam: known({ E: ['E', 'e^b'] }) }, group('E')), {
      'E/e^b': 0.5,
      'e^b/e^b': 0.5,
    })
  })
})

describe('linked loci of a cock', () => {
  const hen = known({ S: ['s+'], K: ['k+'] })
  const cock = (phase?: 'coupling' | 'repulsion') => known({ S: ['S', 's+'], K: ['K', 'k+'] }, phase)
  const r = 0.025
  test('in coupling most daughters are like one of his strands', () => {
    expectShares(daughters({ sire: cock('coupling'), dam: hen }, group('S')), {
      'K S': (1 - r) / 2,
      'k+ s+': (1 - r) / 2,
      'K s+': r / 2,
      'k+ S': r / 2,
    })
  })
  test('in repulsion it is the other way round', () => {
    expectShares(daughters({ sire: cock('repulsion'), dam: hen }, group('S')), {
      'K S': r / 2,
      'k+ s+': r / 2,
      'K s+': (1 - r) / 2,
      'k+ S': (1 - r) / 2,
    })
  })
  test('where nobody tells, either is as likely, and one chick shows none of it', () => {
    expectShares(daughters({ sire: cock(), dam: hen }, group('S')), {
      'K S': 0.25,
      'k+ s+': 0.25,
      'K s+': 0.25,
      'k+ S': 0.25,
    })
  })
  test('bred from told parents, the phase is theirs', () => {
    const bred = { cross: { sire: known({ S: ['S', 'S'], K: ['k+', 'k+'] }), dam: known({ S: ['s+'], K: ['K'] }) } }
    expectShares(daughters({ sire: bred, dam: hen }, group('S')), {
      'K S': r / 2,
      'k+ s+': r / 2,
      'K s+': (1 - r) / 2,
      'k+ S': (1 - r) / 2,
    })
  })
  test('with three unlike loci, repulsion is turn about', () => {
    const three = known({ K: ['K', 'k+'], S: ['S', 's+'], dw: ['Dw+', 'dw'] }, 'repulsion')
    const found = daughters({ sire: three, dam: known({ K: ['k+'], S: ['s+'], dw: ['dw'] }) }, group('S'))
    expect(found['K s+ Dw+']).toBeCloseTo(((1 - r) * (1 - 0.055)) / 2, 13)
    expect(found['k+ S dw']).toBeCloseTo(((1 - r) * (1 - 0.055)) / 2, 13)
  })
  test('loci between that nobody lists leave the joined interval', () => {
    const outer = known({ K: ['K', 'k+'], dw: ['Dw+', 'dw'] }, 'coupling')
    const apart = 0.025 + 0.055 - 2 * 0.025 * 0.055
    const found = daughters({ sire: outer, dam: known({ K: ['k+'], dw: ['dw'] }) }, group('S'))
    expect(found['K dw']).toBeCloseTo(apart / 2, 13)
  })
  test('a hen hands her one Z on whole', () => {
    expectShares(sons({ sire: known({}), dam: known({ S: ['S'], K: ['K'] }) }, group('S')), { 'K/k+ S/s+': 1 })
  })
})

describe('cross-bred parents', () => {
  const split = known({ c: ['C+', 'c'] })
  test('a grandchild of two splits by a white bird', () => {
    expectShares(sons({ sire: { cross: { sire: split, dam: split } }, dam: known({ c: ['c', 'c'] }) }, group('c')), {
      'C+/c': 0.5,
      'c/c': 0.5,
    })
  })
  test('told to be coloured, two in three of them carry it', () => {
    const coloured = { cross: { sire: split, dam: split }, genotype: { c: ['C+'] } }
    expectShares(sons({ sire: coloured, dam: known({ c: ['c', 'c'] }) }, group('c')), { 'C+/c': 2 / 3, 'c/c': 1 / 3 })
  })
  test('told in full, the parents above no longer matter', () => {
    const told = { cross: { sire: split, dam: split }, genotype: { c: ['c', 'C+'] } }
    expectShares(sons({ sire: told, dam: known({ c: ['c', 'c'] }) }, group('c')), { 'C+/c': 0.5, 'c/c': 0.5 })
  })
  test('told what it cannot be, it has no chicks', () => {
    const never = { cross: { sire: known({}), dam: known({}) }, genotype: { c: ['c', 'c'] } }
    expect(chickGroups({ sire: never, dam: known({ c: ['c', 'c'] }) }, [group('c')])[0]!.M).toEqual([])
  })
  test('a daughter told by her one allele', () => {
    const hen = { cross: { sire: known({ S: ['S', 's+'] }), dam: known({ S: ['s+'] }) }, genotype: { S: ['S'] } }
    expectShares(sons({ sire: known({ S: ['s+', 's+'] }), dam: hen }, group('S')), { 'S/s+': 1 })
  })
  test('parents that hatched are of no genotype that dies in the egg', () => {
    const creeper = known({ Cp: ['Cp', 'cp+'] })
    const dies: Hatches = ({ Cp }) => (Cp?.every((allele) => allele === 'Cp') ? 0 : 1)
    const mating = { sire: { cross: { sire: creeper, dam: creeper } }, dam: known({}) }
    expectShares(sons(mating, group('Cp'), dies), { 'Cp/cp+': 1 / 3, 'cp+/cp+': 2 / 3 })
    expectShares(sons(mating, group('Cp')), { 'Cp/cp+': 1 / 2, 'cp+/cp+': 1 / 2 })
  })
})

describe('loci twelve in a hundred apart, by hand', () => {
  const r = 0.12
  const both = { Ml: ['Ml', 'ml+'], Pg: ['Pg', 'pg+'] }
  const of = group('Ml', 'Pg')
  const split = (phase: 'coupling' | 'repulsion'): Parent => ({ genotype: both, phase, name: 'the old bird' })
  const neither = 'ml+/ml+ pg+/pg+'

  test('a bred cock hands on what his dam had on one strand, less what crossed over twice', () => {
    const bred: Parent = { cross: { sire: known({}), dam: split('coupling') } }
    const one = (r * (1 - r) + r) / 4
    expectShares(sons({ sire: bred, dam: known({}) }, of), {
      'Ml/ml+ Pg/pg+': (1 - r) ** 2 / 4,
      'Ml/ml+ pg+/pg+': one,
      'ml+/ml+ Pg/pg+': one,
      [neither]: 1 - (1 - r) ** 2 / 4 - 2 * one,
    })
  })
  test.each([
    ['coupling', ((1 - r) / 2) * ((1 - r) ** 2 / 4 + 1 / 2)],
    ['repulsion', (r / 2) * ((r * (1 - r)) / 4 + 1 / 2)],
  ] as const)('a cock in %s on his own daughter: chicks with neither', (phase, p) => {
    const daughter: Parent = { cross: { sire: split(phase), dam: known({}) } }
    expect(sons({ sire: split(phase), dam: daughter }, of)[neither]).toBeCloseTo(p, 13)
  })
  test('a bird told with one of each has it from whichever parent it can', () => {
    const pure = known({ Ml: ['Ml', 'Ml'] })
    for (const cross of [
      { sire: pure, dam: known({}) },
      { sire: known({}), dam: pure },
    ])
      expectShares(sons({ sire: { cross, genotype: { Ml: ['Ml', 'ml+'] } }, dam: known({}) }, of), {
        'Ml/ml+': 0.5,
        'ml+/ml+': 0.5,
      })
  })
})

describe('related parents', () => {
  const split = known({ c: ['C+', 'c'] })
  const doubtful: Parent = { cross: { sire: split, dam: split } }
  const pure = known({ c: ['C+', 'C+'] })
  const child = (sire: Parent): Parent => ({ cross: { sire, dam: known({ c: ['c', 'c'] }) } })

  test('brother and sister out of an uncertain cock give more pure chicks than two birds like them', () => {
    const related = sons({ sire: child(doubtful), dam: child(doubtful) }, group('c'))
    expectShares(related, { 'C+/C+': 0.09375, 'C+/c': 0.3125, 'c/c': 0.59375 })
    const like = sons({ sire: child(doubtful), dam: child({ cross: { sire: split, dam: split } }) }, group('c'))
    expectShares(like, { 'C+/C+': 0.0625, 'C+/c': 0.375, 'c/c': 0.5625 })
  })
  test('the same name is the same bird, whatever object stands for it', () => {
    const named = (): Parent => ({ cross: { sire: split, dam: split }, name: 'Bert' })
    expectShares(sons({ sire: child(named()), dam: child(named()) }, group('c')), {
      'C+/C+': 0.09375,
      'C+/c': 0.3125,
      'c/c': 0.59375,
    })
  })
  test('a cock on his own daughter', () => {
    const found = sons({ sire: doubtful, dam: { cross: { sire: doubtful, dam: pure } } }, group('c'))
    // cock C/C, C/c, c/c in 1 : 2 : 1; then his daughter has c in 0, 1/2, 1 of her cases
    expectShares(found, {
      'C+/C+': 1 / 4 + (1 / 2) * (3 / 8),
      'C+/c': (1 / 2) * (1 / 2) + 1 / 8,
      'c/c': (1 / 2) * (1 / 8) + 1 / 8,
    })
  })
  test('a bird told to be coloured is so on both sides', () => {
    const coloured: Parent = { cross: { sire: split, dam: split }, genotype: { c: ['C+'] } }
    const found = sons({ sire: child(coloured), dam: child(coloured) }, group('c'))
    expectShares(found, {
      'C+/C+': (1 / 3) * (1 / 4) + (2 / 3) * (1 / 16),
      'C+/c': (1 / 3) * (1 / 2) + (2 / 3) * (3 / 8),
      'c/c': (1 / 3) * (1 / 4) + (2 / 3) * (9 / 16),
    })
  })
  test('what hatched counts for every bred bird of the pedigree', () => {
    const creeper = known({ Cp: ['Cp', 'cp+'] })
    const cock: Parent = { cross: { sire: creeper, dam: creeper } }
    const dies: Hatches = ({ Cp }) => (Cp?.every((allele) => allele === 'Cp') ? 0 : 1)
    const found = sons({ sire: cock, dam: { cross: { sire: cock, dam: known({}) } } }, group('Cp'), dies)
    // cock Cp/cp in 2 of 3, and then half his daughters are too
    expectShares(found, {
      'Cp/Cp': (2 / 3) * (1 / 8),
      'Cp/cp+': (2 / 3) * (1 / 2),
      'cp+/cp+': 1 / 3 + (2 / 3) * (3 / 8),
    })
  })
  test('and told what it cannot be, there are no chicks', () => {
    const never: Parent = { cross: { sire: pure, dam: pure }, genotype: { c: ['c', 'c'] } }
    expect(chickGroups({ sire: child(never), dam: child(never) }, [group('c')])[0]!.M).toEqual([])
  })
  test('on the Z sons and daughters of kin differ', () => {
    const cock: Parent = { cross: { sire: known({ S: ['S', 's+'] }), dam: known({ S: ['s+'] }) } }
    const mating = { sire: cock, dam: { cross: { sire: cock, dam: known({ S: ['s+'] }) } } }
    // cock S/s+ in half of the cases; his daughter then S in half
    expectShares(daughters(mating, group('S')), { S: 1 / 4, 's+': 3 / 4 })
    expectShares(sons(mating, group('S')), { 'S/S': 1 / 8, 'S/s+': 1 / 4, 's+/s+': 5 / 8 })
  })
  test('a bird of known genotype but unknown phase is uncertain too', () => {
    const cock = known({ S: ['S', 's+'], K: ['K', 'k+'] })
    const gold = known({ S: ['s+'], K: ['k+'] })
    const found = daughters(
      { sire: { cross: { sire: cock, dam: gold } }, dam: { cross: { sire: cock, dam: gold } } },
      group('S'),
    )
    expect(Object.values(found).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 13)
    // his daughters have his alleles together or apart alike, and so does his son
    expect(found['K S']! + found['K s+']!).toBeCloseTo(1 / 4, 13)
  })
})

describe('laws', () => {
  const genotypes = fc.record({
    c: fc.constantFrom(['C+', 'C+'], ['C+', 'c'], ['c', 'c']),
    E: fc.constantFrom(['E', 'E'], ['E', 'e^b'], ['E^R', 'e+'], ['e^Wh', 'e^b']),
    O: fc.constantFrom(['O', 'o+'], ['o+', 'o+']),
    P: fc.constantFrom(['P', 'p+'], ['p+', 'p+'], ['P', 'P']),
  })
  const autosomal = linkageGroups.filter(({ on }) => on === 'A')

  test('the shares of each sex add to one', () => {
    fc.assert(
      fc.property(genotypes, genotypes, (sire, dam) => {
        for (const { M, F } of chickGroups({ sire: known(sire), dam: known(dam) }, linkageGroups))
          for (const classes of [M, F]) expect(classes.reduce((sum, { p }) => sum + p, 0)).toBeCloseTo(1, 12)
      }),
    )
  })
  test('at autosomal loci it does not matter which parent is which', () => {
    fc.assert(
      fc.property(genotypes, genotypes, (one, other) => {
        const there = chickGroups({ sire: known(one, 'coupling'), dam: known(other, 'repulsion') }, autosomal)
        const back = chickGroups({ sire: known(other, 'repulsion'), dam: known(one, 'coupling') }, autosomal)
        there.forEach(({ M }, i) => expectShares(shares(M), shares(back[i]!.M)))
      }),
    )
  })
  test('sons and daughters are alike at autosomal loci', () => {
    for (const { M, F } of chickGroups({ sire: known({ c: ['C+', 'c'] }), dam: known({}) }, autosomal))
      expect(F).toEqual(M)
  })
  test('a flock statement of the same cross says the same', () => {
    const loci = [
      { symbol: 'K', on: 'Z', alleles: ['K', 'k+'] },
      { symbol: 'S', on: 'Z', alleles: ['S', 's+'] },
    ]
    const statement = {
      loci,
      groups: [{ on: 'Z', loci: ['K', 'S'], r: [0.025] }],
      individuals: [
        {
          id: 'cock',
          sex: 'M',
          prior: [
            {
              group: 0,
              dist: [
                {
                  dip: [
                    ['K', 's+'],
                    ['k+', 'S'],
                  ],
                  p: 1,
                },
              ],
            },
          ],
        },
        { id: 'hen', sex: 'F', prior: [{ group: 0, dist: [{ dip: [['K', 's+']], p: 1 }] }] },
        { id: 'X', sex: 'M', sire: 'cock', dam: 'hen' },
      ],
      query: { kind: 'genotypes', of: 'X', loci: ['K', 'S'] },
    }
    const found = answerStatement(statement)
    const mating = { sire: known({ K: ['K', 'k+'], S: ['S', 's+'] }, 'repulsion'), dam: known({ K: ['K'], S: ['s+'] }) }
    const wanted = Object.fromEntries(
      Object.entries(sons(mating, group('S'))).map(([name, p]) => [name.replace(' ', '|'), p]),
    )
    expectShares('answer' in found ? found.answer : {}, wanted)
  })
})
