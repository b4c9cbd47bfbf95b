// test/core/sexing/signs.test.ts: the figures of sexing that were read in their sources, entered a second time from there.
import { describe, expect, test } from 'vitest'
import { markedBreeds } from '../../../core/data/signs.ts'
import { mate } from '../../../core/cross/mate.ts'
import type { BirdRef } from '../../../core/question.ts'

const plain = { hen: false, reverse: false }
const pure = (breed: string): BirdRef => ({ breed })
const sexing = (sire: BirdRef, dam: BirdRef) => mate(sire, dam, plain).cases[0]!.sexing

describe('pure breeds whose chicks are marked', () => {
  test('Rhode Island Red: 47.5 % marked; of these 84.9 % female, of the unmarked 77.8 % male (Byerly & Quinn 1937, Poultry Science 16:422-425)', () => {
    const { female, male } = markedBreeds.find(({ breed }) => breed === 'Rhode Island Red')!
    const pullets = 0.475 * 0.849 + 0.525 * (1 - 0.778) // share of pullets in that hatch, a little over half
    const marked = female * pullets + male * (1 - pullets)
    expect(marked).toBeCloseTo(0.475, 6)
    expect((female * pullets) / marked).toBeCloseTo(0.849, 6)
    expect(((1 - male) * (1 - pullets)) / (1 - marked)).toBeCloseTo(0.778, 6)
  })

  test('Rhode Island Red, even sexes: about 81 in 100 right, never more than partly', () => {
    const { verdict, accuracy } = sexing(pure('Rhode Island Red'), pure('Rhode Island Red'))
    expect(verdict).toBe('partly')
    expect(accuracy!).toBeCloseTo(0.81, 2)
  })

  test('Dandarawi: 89.02 % of males and 92.42 % of females known by their marks (British Poultry Science 42(3), 2001)', () => {
    const { accuracy, verdict } = sexing(pure('Dandarawi'), pure('Dandarawi'))
    expect(accuracy! * 100).toBeCloseTo((89.02 + 92.42) / 2, 6)
    expect(verdict).toBe('partly')
  })

  test('Barred Plymouth Rock by the size of the spot: about 80 % (University of Kentucky, Sexing day-old chicks)', () => {
    const { accuracy, verdict, signs } = sexing(pure('Barred Plymouth Rock'), pure('Barred Plymouth Rock'))
    expect(accuracy! * 100).toBeCloseTo(80, 0)
    expect(verdict).toBe('partly')
    expect(signs[0]).toMatchObject({ sign: 'head spot', status: 'read' })
  })
})

describe('a figure from memory never poses as read', () => {
  test('gold on silver and head spots of a first cross are judgement', () => {
    const statuses = [
      sexing(pure('Rhode Island Red'), pure('Light Sussex')),
      sexing(pure('Rhode Island Red'), pure('Barred Plymouth Rock')),
    ].flatMap(({ signs }) => signs.map(({ status }) => status))
    expect(statuses.length).toBeGreaterThan(1)
    expect(statuses).not.toContain('read')
  })
})

describe('what breaks it', () => {
  test('a silver cock that hides gold, on silver hens: half his daughters come gold, and only they are known', () => {
    const ground = { E: ['e^Wh', 'e^Wh'], Co: ['Co', 'Co'] }
    const { accuracy, pulletsTrue, cockerelsTrue } = sexing(
      { genotype: { ...ground, S: ['S', 's+'] } },
      { genotype: { ...ground, S: ['S'] } },
    )
    // Counted by hand: 1 in 4 of all chicks wrong, those read as cockerels 2/3 male; with 3 in 100 misread a little less.
    expect(accuracy!).toBeCloseTo(0.75, 1)
    expect(cockerelsTrue!).toBeCloseTo(2 / 3, 1)
    expect(pulletsTrue!).toBeGreaterThan(0.9)
  })

  test('wing feathers count only where both parents’ speed is known: fast cock, slow hens', () => {
    const black = { E: ['E', 'E'] }
    const told = sexing({ genotype: { ...black, K: ['k+', 'k+'] } }, { genotype: { ...black, K: ['K'] } })
    expect(told).toMatchObject({ verdict: 'yes', signs: [{ sign: 'wing feathers' }] })
    const wrongWay = sexing({ genotype: { ...black, K: ['K', 'K'] } }, { genotype: { ...black, K: ['k+'] } })
    expect(wrongWay.verdict).toBe('no')
    const notTold = sexing(pure('Black Australorp'), pure('Black Minorca'))
    expect(notTold.signs.map(({ sign }) => sign)).not.toContain('wing feathers')
  })
})
