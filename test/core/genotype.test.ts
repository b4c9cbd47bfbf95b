// test/core/genotype.test.ts: genotypes in the notations of keepers, their normal form, and the faults that are told.
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { loci, locusIds } from '../../core/data/loci.ts'
import {
  dominates,
  fitsSex,
  formatGenotype,
  hasWChromosome,
  lociOfAllele,
  readGenotype,
  readPair,
  sexTold,
} from '../../core/genotype.ts'
import { birds, partBirds } from '../genotypes.ts'

const normal = (text: string): string => {
  const told = readGenotype(text)
  return told.ok ? formatGenotype(told.value) : `fault: ${told.fault.kind}`
}

const written: readonly (readonly [string, string])[] = [
  ['s+/s+', 's+/s+'],
  ['S/-', 'S/-'],
  ['Ss', 'S/s+'],
  ['s/S', 'S/s+'],
  ['s+/-', 's+/-'],
  ['b/b', 'b+/b+'],
  ['bb', 'b+/b+'],
  ['B / b', 'B/b+'],
  ['e^b/e^b', 'e^b/e^b'],
  ['eb/eb', 'e^b/e^b'],
  ['ebeb', 'e^b/e^b'],
  ['E/eWh', 'E/e^Wh'],
  ['E/e^Wh', 'E/e^Wh'],
  ['E/ewh', 'E/e^Wh'],
  ['ER/ER', 'E^R/E^R'],
  ['E/e', 'E/e+'],
  ['Bl/bl+', 'Bl/bl+'],
  ['Blbl', 'Bl/bl+'],
  ['BL/bl', 'Bl/bl+'],
  ['lav/lav', 'lav/lav'],
  ['Lav+/lav', 'Lav+/lav'],
  ['lav+/lav', 'Lav+/lav'],
  ['K/k', 'K/k+'],
  ['LAV/lav', 'Lav+/lav'],
  ['choc/CHOC', 'Choc+/choc'],
  ['ID/id', 'Id/id+'],
  ['S+/s+', 'S/s+'],
  ['choc/-', 'choc/-'],
  ['choc+/-', 'Choc+/-'],
  ['id+/id+', 'id+/id+'],
  ['Fm/Fm', 'Fm/Fm'],
  ['Co/Co', 'Co/Co'],
  ['O/o', 'O/o+'],
  ['I/i', 'I/i+'],
  ['mo/mo', 'mo/mo'],
  ['w/w', 'w/w'],
  ['W/w', 'W+/w'],
  ['B/W', 'B/-'],
  ['S/?', 'S/-'],
  ['E/-', 'E/-'],
  ['Z^B/Z^b', 'B/b+'],
  ['D/d', 'D^V/d+'],
  ['eᵇ/e⁺', 'e+/e^b'],
  ['“S/s+”', 'S/s+'],
  ['{E/E b+/b+}', 'b+/b+ E/E'],
  ['e^Wh/e^Wh S/- Co/Co', 'S/- e^Wh/e^Wh Co/Co'],
  ['s+/s+, b+/b+; E/E', 's+/s+ b+/b+ E/E'],
]
describe('what keepers write', () => {
  test.each(written)('%s is %s', (text, expected) => expect(normal(text)).toBe(expected))
})

describe('faults name what cannot be', () => {
  test('an allele that no locus has, with those of the other half', () => {
    expect(readGenotype('S/q')).toEqual({
      ok: false,
      fault: { kind: 'unknown-allele', written: 'q', locus: 'S', known: ['S', 's+', 's^al'] },
    })
  })
  test('an allele of another locus', () => {
    expect(readGenotype('S/b+')).toEqual({
      ok: false,
      fault: { kind: 'allele-of-another-locus', written: 'S/b+', belongsTo: 'B', with: 'S' },
    })
  })
  test('two copies for a hen on the Z, and how to write it', () => {
    expect(readGenotype('B/b', 'F')).toEqual({
      ok: false,
      fault: { kind: 'hen-has-one', written: 'B/b', locus: 'B', write: 'B/- or b+/-' },
    })
  })
  test('three alleles', () => {
    expect(readGenotype('S/s/s')).toEqual({
      ok: false,
      fault: { kind: 'too-many-alleles', written: 'S/s/s', locus: 'S' },
    })
  })
  test('one locus told twice in two ways', () => {
    expect(readGenotype('B/B b/b')).toEqual({
      ok: false,
      fault: { kind: 'too-many-alleles', written: 'B/B b+/b+', locus: 'B' },
    })
  })
  test('a W chromosome in a cock', () => {
    const told = readGenotype('B/W', 'M')
    expect(told.ok ? undefined : told.fault.kind).toBe('malformed')
  })
  test.each(['', '   ', 'hello', '🐔', 'xx'])('%j is no genotype', (text) => {
    const told = readGenotype(text)
    expect(told.ok ? undefined : told.fault.kind).toBe('malformed')
  })
  test.each(['LAV/LAV', 'LAV/-', 'ID/ID', 'S+/S+'])('%s could mean two alleles and is not guessed', (text) => {
    const told = readGenotype(text)
    expect(told.ok ? undefined : told.fault.kind).toBe('unknown-allele')
  })
})

test('an autosomal pair is the same in a hen', () => {
  expect(readGenotype('E/e', 'F')).toEqual(readGenotype('E/e', 'M'))
})

test('a pair read before its sex was known is held against the sex later', () => {
  const told = readGenotype('S/s+ E/E')
  expect(told.ok && sexTold(told.value)).toBe('M')
  expect(told.ok && fitsSex(told.value, 'F').ok).toBe(false)
  expect(told.ok && fitsSex(told.value, 'M')).toEqual(told)
  const lone = readGenotype('S/-')
  expect(lone.ok && sexTold(lone.value)).toBe(undefined)
  expect([hasWChromosome('B/W'), hasWChromosome('BW'), hasWChromosome('W/w'), hasWChromosome('E/E')]).toEqual([
    true,
    true,
    false,
    false,
  ])
})

test('alleles are unique across loci, and each is read back as itself', () => {
  const all = locusIds.flatMap((id) => loci[id].alleles.map((allele) => ({ locus: id, allele })))
  expect(new Set(all.map(({ allele }) => allele)).size).toBe(all.length)
  for (const one of all) expect(lociOfAllele(one.allele)).toEqual(one)
})

test('dominance follows the order of the catalogue', () => {
  expect([dominates('S', 'S', 's+'), dominates('S', 's+', 'S'), dominates('E', 'E^R', 'e+')]).toEqual([
    true,
    false,
    true,
  ])
})

test('print and read: every genotype comes back', () => {
  fc.assert(
    fc.property(partBirds, ({ sex, genotype }) => {
      expect(readGenotype(formatGenotype(genotype), sex)).toEqual({ ok: true, value: genotype })
    }),
  )
})

test('the order of loci and of alleles in the message does not matter', () => {
  fc.assert(
    fc.property(birds, ({ sex, genotype }) => {
      const text = formatGenotype(genotype)
      const turned = text
        .split(' ')
        .toReversed()
        .map((pair) => pair.split('/').toReversed().join('/'))
        .join(' ')
      expect(readGenotype(turned, sex)).toEqual(readGenotype(text, sex))
    }),
  )
})

test('any text is read or refused, never thrown at', () => {
  fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (text) => void readGenotype(text)))
  fc.assert(
    fc.property(
      fc.string({ unit: fc.constantFrom('S', 's', 'B', 'b', 'e', 'E', '^', 'Wh', 'R', '+', '/', '-', ' ', 'K') }),
      (text) => void readPair(text),
    ),
  )
})
