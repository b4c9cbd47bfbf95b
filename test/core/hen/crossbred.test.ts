// test/core/hen/crossbred.test.ts: the crossing formula: its laws, and the crosses worked by hand beside it.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { crossing } from '../../../core/data/hen/crossing.ts'
import { lineShares, type Crossbred } from '../../../core/hen/crossbred.ts'
import { crossbredTrait } from '../../../core/hen/trait.ts'
import type { Stock } from '../../../core/hen/stock.ts'
import type { Span } from '../../../core/vocabulary.ts'
import { cock, daughter, hen, laying, son, stock, type Bird } from './stocks.ts'

const eggs = (bird: Crossbred): number => crossbredTrait(bird, crossing.eggsFirstYear, (s) => s.eggsFirstYear).likely
const kg = (bird: Crossbred): number => crossbredTrait(bird, crossing.bodyWeight, (s) => s.henKg, 'ratio').likely
/** Heterosis of a cross of lines that lay alike: whatever exceeds them. */
const gain = (bird: Crossbred): number => eggs(bird) / 200 - 1

const rock = { family: 'Plymouth Rock' } as const
const A = laying('A', 200)
const B = laying('B', 200, rock)
const C = laying('C', 200, { family: 'Sussex' })

describe('shares of lines', () => {
  const lines = ['A', 'B', 'C', 'D'].map((id) => stock(id))
  const bird = (sex: 'M' | 'F'): fc.Arbitrary<Bird> =>
    fc.letrec<{ tree: Bird }>((tie) => ({
      tree: fc.oneof(
        { maxDepth: 4 },
        fc.constantFrom(...lines).map((line) => (sex === 'M' ? cock(line) : hen(line))),
        fc
          .tuple(tie('tree'), tie('tree'))
          .map(([s, d]) => (sex === 'M' ? son(cockOf(s), henOf(d)) : daughter(cockOf(s), henOf(d)))),
      ),
    })).tree
  const cockOf = (b: Bird): Bird => ({ ...b, genome: { ...b.genome, zs: [b.genome.fromSire, b.genome.fromDam] } })
  const henOf = (b: Bird): Bird => ({ ...b, genome: { ...b.genome, zs: [b.genome.fromSire] } })

  test('add to 1 in any pedigree, with and without a part on the Z', () => {
    fc.assert(
      fc.property(bird('M'), bird('F'), fc.double({ min: 0, max: 1, noNaN: true }), (sire, dam, onZ) => {
        const young = daughter(sire, dam)
        const sum = lineShares(young, onZ).reduce((a, b) => a + b, 0)
        expect(sum).toBeCloseTo(1, 12)
      }),
    )
  })

  test('no more than every locus is crossed', () => {
    fc.assert(
      fc.property(bird('M'), bird('F'), (sire, dam) => {
        const crossed = daughter(sire, dam).meetings.reduce((s, pair) => s + pair.crossed, 0)
        expect(crossed).toBeLessThanOrEqual(1 + 1e-12)
      }),
    )
  })
})

describe('heterosis follows the share of crossed loci (Dickerson 1969, 1973, from memory)', () => {
  const f1 = { cock: son(cock(A), hen(B)), hen: daughter(cock(A), hen(B)) }

  test('the F2 of two lines keeps half of what the first cross gained', () => {
    expect(gain(f1.hen)).toBeCloseTo(0.05, 12)
    expect(gain(daughter(f1.cock, f1.hen))).toBeCloseTo(0.025, 12)
  })
  test('so does the back-cross, and the F3 loses no more', () => {
    expect(gain(daughter(cock(A), f1.hen))).toBeCloseTo(0.025, 12)
    const f2 = { cock: son(f1.cock, f1.hen), hen: daughter(f1.cock, f1.hen) }
    expect(gain(daughter(f2.cock, f2.hen))).toBeCloseTo(0.025, 12)
  })
  test('a three-way cross keeps all of it: every locus still has two lines', () => {
    expect(gain(daughter(cock(C), f1.hen))).toBeCloseTo(0.05, 12)
  })
  test('what a pair gains is a share of that pair’s own mean, however little of one line is left: 100 on (100 x 300) gives 150 + 5', () => {
    const [low, high] = [laying('low', 100), laying('high', 300, rock)]
    const back = daughter(cock(low), daughter(cock(high), hen(low)))
    const { likely } = crossbredTrait(back, { ...crossing.eggsFirstYear, onZ: 0 }, (s) => s.eggsFirstYear)
    expect(likely).toBeCloseTo(155, 12)
  })
  test('two rounds of back-crossing leave a quarter', () => {
    expect(gain(daughter(cock(A), daughter(cock(A), f1.hen)))).toBeCloseTo(0.0125, 12)
  })
  test('a line bred pure gains nothing', () => expect(gain(daughter(cock(A), hen(A)))).toBe(0))
})

describe('the Z', () => {
  const good = laying('good', 280)
  const poor = laying('poor', 180, rock)

  test('a daughter leans to her sire’s line, whichever it is, and no more than by the Z’s share', () => {
    const [fromGood, fromPoor] = [eggs(daughter(cock(good), hen(poor))), eggs(daughter(cock(poor), hen(good)))]
    expect(fromGood).toBeGreaterThan(fromPoor)
    expect((fromGood - fromPoor) / 230).toBeLessThan(0.03)
  })
  test('a son does not', () => {
    const w = (s: Crossbred) => crossbredTrait(s, crossing.bodyWeight, (x) => x.cockKg, 'ratio').likely
    const heavy = stock('heavy', { cockKg: { low: 5, likely: 5, high: 5 } })
    expect(w(son(cock(A), hen(heavy)))).toBeCloseTo(w(son(cock(heavy), hen(A))), 12)
  })
  test('what lies on a dam’s Z never reaches her daughters, through any number of dams’ dams', () => {
    const marked = daughter(cock(A), hen(poor))
    expect(daughter(cock(A), marked).genome.zs).toEqual([new Map([['A', 1]])])
  })
})

describe('crosses worked by hand, first-year eggs: 5 in 100 over the mean at distance 1, 8 with a show line', () => {
  const red = (n: number) => laying('red', n, { family: 'Rhode Island Red' })
  const rows = [
    ['production red 270 x production Rock 250', cock(red(270)), hen(laying('rock', 250, rock)), 273],
    [
      'red kept for use 190 x fine-barred show Rock 155',
      cock(red(190)),
      hen(laying('rock', 155, { ...rock, purpose: 'exhibition' })),
      186,
    ],
    [
      'production red 270 x fine-barred show Rock 150',
      cock(red(270)),
      hen(laying('rock', 150, { ...rock, purpose: 'exhibition' })),
      227,
    ],
    [
      'red kept for use 190 x utility Sussex 240',
      cock(red(190)),
      hen(laying('sussex', 240, { family: 'Sussex' })),
      226,
    ],
  ] as const
  test.each(rows)('%s: about %s', (_name, sire, dam, want) => {
    expect(Math.abs(eggs(daughter(sire, dam)) / want - 1)).toBeLessThan(0.015)
  })
})

describe('weights of very unequal lines', () => {
  const heavy = stock('heavy', { henKg: { low: 4, likely: 4, high: 4 } })
  const light = stock('light', { henKg: { low: 1, likely: 1, high: 1 }, type: 'bantam' })
  test('fall below the plain mean, as heavy x light crosses do', () => {
    expect(kg(daughter(cock(heavy), hen(light)))).toBeLessThan(2.5 * 0.9)
    expect(kg(daughter(cock(heavy), hen(light)))).toBeGreaterThan(2)
  })
})

describe('the cap', () => {
  test('no cross is put above its better line by more than a tenth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 330 }), fc.integer({ min: 60, max: 330 }), (a, b) => {
        const young = daughter(cock(laying('a', a)), hen(laying('b', b, { type: 'light', purpose: 'exhibition' })))
        expect(eggs(young)).toBeLessThanOrEqual(1.1 * Math.max(a, b) + 1e-9)
      }),
    )
  })
})

describe('the range', () => {
  const range = (bird: Crossbred): Span => crossbredTrait(bird, crossing.eggsFirstYear, (s) => s.eggsFirstYear)
  const p = crossing.eggsFirstYear

  test('of a line bred pure is its own, and never narrower than a flock is known', () => {
    const line = stock('line', { eggsFirstYear: { low: 150, likely: 200, high: 210 } })
    const { low, likely, high } = range(daughter(cock(line), hen(line)))
    expect([low, likely]).toEqual([150, 200])
    expect(high).toBeCloseTo(200 * (1 + p.strainDoubt), 9)
  })
  test('of a first cross of lines that lay alike: two strains, heterosis and the mother’s part, added as squares', () => {
    const { low, likely, high } = range(daughter(cock(A), hen(B)))
    const [a, b] = [0.5 + 0.5 * p.onZ, 0.5 - 0.5 * p.onZ]
    const strains = [24 * a, 24 * b, 2]
    expect(likely).toBeCloseTo(210, 9)
    expect(likely - low).toBeCloseTo(Math.hypot(...strains, 200 * 0.05), 9)
    expect(high - likely).toBeCloseTo(Math.hypot(...strains, 200 * 0.07), 9)
  })
  test('a poorer line may hold back more than its half: the low end falls with the difference', () => {
    const down = (eggs: number): number => {
      const { low, likely } = range(daughter(cock(laying('good', 250)), hen(laying('poor', eggs, rock))))
      return (likely - low) / likely
    }
    expect(down(150)).toBeGreaterThan(down(240) + 0.01)
  })
  test('a bantam or landrace doubles the doubt about heterosis', () => {
    const down = (type: Stock['type']): number => {
      const { low, likely } = range(daughter(cock(A), hen(laying('X', 200, { family: 'X', type }))))
      return likely - low
    }
    const strains = [24 * (0.5 + 0.5 * p.onZ), 24 * (0.5 - 0.5 * p.onZ), 2]
    expect(down('landrace')).toBeCloseTo(Math.hypot(...strains, 2 * 1.3 * 0.05 * 200), 9)
    expect(down('light')).toBeCloseTo(Math.hypot(...strains, 1.3 * 0.05 * 200), 9)
  })
  test('weights within half as much again of each other are averaged plainly, beyond that by ratio', () => {
    const heavy = (kg: number) => stock('heavy', { henKg: { low: kg, likely: kg, high: kg } })
    const light = stock('light', { henKg: { low: 2, likely: 2, high: 2 }, family: 'heavy' })
    const mean = (kg: number): number =>
      crossbredTrait(daughter(cock(heavy(kg)), hen(light)), { ...crossing.bodyWeight, onZ: 0 }, (s) => s.henKg, 'ratio')
        .likely /
      (1 + 0.3 * 0.02)
    expect(mean(3)).toBeCloseTo(2.5, 9)
    expect(mean(3.2)).toBeCloseTo(Math.sqrt(3.2 * 2), 9)
  })
})
