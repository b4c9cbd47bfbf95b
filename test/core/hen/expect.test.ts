// test/core/hen/expect.test.ts: the whole profile of daughters, for any two birds of the catalogue and any pedigree of them.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Hen } from '../../../core/answer.ts'
import { breeds } from '../../../core/breeds.ts'
import { expectHen } from '../../../core/hen/expect.ts'
import { stockOf } from '../../../core/hen/stockOf.ts'
import { kindred } from '../../../core/data/hen/distance.ts'
import type { BirdRef } from '../../../core/question.ts'
import type { Span } from '../../../core/vocabulary.ts'

const named: fc.Arbitrary<BirdRef> = fc
  .constantFrom(...breeds)
  .chain((breed) =>
    fc.constantFrom(undefined, ...breed.lines.map((line) => line.id)).map((line) => ({ breed: breed.name, line })),
  )
const bird = fc.letrec<{ bird: BirdRef }>((tie) => ({
  bird: fc.oneof(
    { maxDepth: 2 },
    named,
    fc.record({ sire: tie('bird'), dam: tie('bird') }).map((cross) => ({ cross })),
    fc.constant({ genotype: { S: ['S'] } }),
  ),
})).bird

const spans = (hen: Hen): readonly Span[] => [
  hen.eggsFirstYear,
  ...hen.eggsByYear,
  hen.ageFirstEggDays,
  hen.eggWeightGrams,
  hen.bodyWeightKg,
  hen.cockWeightKg,
  hen.feedGramsPerDay,
  hen.feedKgPerDozen,
  hen.broody.rate,
  hen.liveability,
  hen.carcassKg,
]

test('any mating of any birds gives a whole, finite profile with ordered ranges', () => {
  fc.assert(
    fc.property(bird, bird, (sire, dam) => {
      const hen = expectHen({ sire, dam }, [{ blue: 'no', share: 1 }])
      expect(Hen.safeParse(hen).error).toBeUndefined()
      for (const { low, likely, high } of spans(hen)) {
        expect(low).toBeLessThanOrEqual(likely)
        expect(likely).toBeLessThanOrEqual(high)
        expect(low).toBeGreaterThanOrEqual(0)
      }
      expect(hen.shell.reduce((sum, s) => sum + s.share, 0)).toBeCloseTo(1, 6)
    }),
    { numRuns: 300 },
  )
})

test('eggs never rise from one year to the next', () => {
  fc.assert(
    fc.property(named, named, (sire, dam) => {
      const years = expectHen({ sire, dam }, []).eggsByYear.map((y) => y.likely)
      expect(years.toSorted((a, b) => b - a)).toEqual(years)
    }),
  )
})

describe('a red sex-link is a first cross, so what she gained is halved in her own daughters', () => {
  const red = { breed: 'Red sex-link', line: 'production' }
  const own = stockOf(red)
  const eggs = expectHen({ sire: red, dam: red }, []).eggsFirstYear.likely
  test('the hybrid herself is her catalogue figure', () => {
    if (own.kind !== 'hybrid') throw new Error('expected two lines')
    const first = (own.sire.eggsFirstYear.likely + own.dam.eggsFirstYear.likely) / 2
    expect(first * (1 + 0.05 * 0.5)).toBeCloseTo(290, 6)
    expect(eggs).toBe(Math.round(first * (1 + 0.05 * 0.25)))
  })
})

test('every family named among kindred breeds is a family of the catalogue', () => {
  const families = new Set(breeds.map((breed) => breed.family))
  expect(
    Object.values(kindred)
      .flat()
      .filter((family) => !families.has(family)),
  ).toEqual([])
})

test('a bird that nobody named is of mixed breed, with wide ranges', () => {
  const hen = expectHen({ sire: {}, dam: {} }, [])
  expect(hen.eggsFirstYear.high - hen.eggsFirstYear.low).toBeGreaterThan(60)
  expect(hen.status).toBe('from memory')
})
