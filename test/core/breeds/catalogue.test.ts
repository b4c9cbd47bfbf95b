// test/core/breeds/catalogue.test.ts: the catalogue as a keeper meets it: names, aliases, lines and figures.
import { describe, expect, test } from 'vitest'
import {
  bareNames,
  breedNamed,
  breeds,
  genesOf,
  lineKindOf,
  lineOf,
  varietiesOf,
  type Breed,
} from '../../../core/breeds.ts'
import { loci } from '../../../core/data/loci.ts'
import crosses from '../../data/publishedCrosses.json' with { type: 'json' }

const named = (name: string): Breed => {
  const breed = breedNamed(name)
  if (!breed) throw new Error(`no ${name}`)
  return breed
}

/** What sources write for a kind of bird and not for a breed; and forms of a breed that the catalogue names otherwise. */
const kinds =
  /^any |^Any |unspecified|^gold |^Gold |^dominant white|^white female|sex-link F1|^heterozygous|^fast|^slow|^self|^Barred male|^unbarred|^commercial|^female|^same breed|or other|, Dorbar|\(rapid\)|^barred female/
const bareOrNamed = (name: string): boolean => {
  const plainName = name.replace(/ \(.*\)$/, '')
  return breedNamed(plainName) !== undefined || varietiesOf(plainName) !== undefined
}

test('every bird that published crosses name is in the catalogue, or is a bare name it knows', () => {
  const birds = [...new Set(crosses.flatMap(({ sire, dam }) => [sire, dam]))].filter((bird) => !kinds.test(bird))
  expect(birds.filter((bird) => !bareOrNamed(bird))).toEqual([])
  expect(birds.length).toBeGreaterThan(30)
})

const words = (breed: Breed): readonly string[] => [breed.name, ...breed.alsoCalled, ...breed.misspelt]

test('every alias and known misspelling leads to its own bird and to no other', () => {
  for (const breed of breeds)
    for (const word of words(breed)) expect([word, breedNamed(word)?.name]).toEqual([word, breed.name])
})

test('a word that may mean several birds is no bird’s own name, and each of its meanings exists', () => {
  for (const { words: bare, means, family, usual } of bareNames) {
    for (const word of bare)
      if (breedNamed(word)) expect([word, breedNamed(word)?.name]).toEqual([word, breedNamed(word)?.family])
    for (const name of [...(means ?? []), ...(usual ? [usual] : [])])
      expect([name, breedNamed(name)?.name]).toEqual([name, name])
    if (family) expect(breeds.some((breed) => breed.family === family)).toBe(true)
    const found = varietiesOf(bare[0]!)!
    if (found.usual) expect(found.varieties).toContain(found.usual)
  }
})

test.each([
  ['RIR', 'Rhode Island Red'],
  ['bpr', 'Barred Plymouth Rock'],
  ['barred rock', 'Barred Plymouth Rock'],
  ['BO', 'Buff Orpington'],
  ['SLW', 'Silver Laced Wyandotte'],
  ['Silver Wyandotte', 'Silver Laced Wyandotte'],
  ['BCM', 'Black Copper Marans'],
  ['CCL', 'Cream Legbar'],
  ['EE', 'Easter Egger'],
  ['BSL', 'Black sex-link'],
  ['Australorp', 'Black Australorp'],
  ['turken', 'Naked Neck'],
  ['Modern Game, black-red', 'Modern Game, black-red'],
  ['Marans noir cuivré', 'Black Copper Marans'],
])('%s is %s', (word, name) => {
  expect(breedNamed(word)?.name).toBe(name)
})

test.each([
  ['Marans', 'Black Copper Marans'],
  ['Rock', 'Barred Plymouth Rock'],
  ['Sussex', 'Light Sussex'],
  ['Leghorn', 'White Leghorn'],
  ['Wyandotte', 'Silver Laced Wyandotte'],
  ['Brahma', 'Light Brahma'],
  ['Silkie', 'White Silkie'],
])('%s may be several birds and is usually the %s', (word, usual) => {
  const found = varietiesOf(word)
  expect(found?.usual?.name).toBe(usual)
  expect(found?.varieties.length).toBeGreaterThan(2)
})

describe('lines', () => {
  test('a keeper’s word finds the line of any breed, or the nearest it has', () => {
    const idOf = (bird: string, word: string): string | undefined => lineOf(named(bird), word)?.id
    expect(idOf('Rhode Island Red', 'heritage')).toBe('heritage')
    expect(idOf('Rhode Island Red', 'feed store')).toBe('hatchery')
    expect(idOf('Rhode Island Red', 'rose comb')).toBe('rose-comb')
    expect(idOf('Barred Plymouth Rock', 'fine-barred')).toBe('exhibition')
    expect(idOf('Barred Plymouth Rock', 'open barred')).toBe('production')
    expect(idOf('Light Sussex', 'commercial')).toBe('utility')
    expect(idOf('Blue Orpington', 'show')).toBe('exhibition')
    expect(idOf('Blue Orpington', 'production')).toBe('hatchery')
  })
  test('no word, or one that names no line, leaves the breed as a whole', () => {
    expect(lineOf(named('Light Sussex'))).toBeUndefined()
    expect(lineOf(named('Light Sussex'), 'purple')).toBeUndefined()
    expect(lineOf(named('Icelandic'), 'show')).toBeUndefined()
    expect(lineKindOf('show quality')).toBe('exhibition')
    expect(lineKindOf('purple')).toBeUndefined()
  })
  test('a line changes the genes it names and leaves the rest', () => {
    const rock = named('Barred Plymouth Rock')
    expect(genesOf(rock, 'fine-barred')['K']).toMatchObject({ kind: 'fixed', allele: 'K' })
    expect(genesOf(rock, 'fine-barred')['B']).toEqual(genesOf(rock)['B'])
    expect(genesOf(rock)['K']).toMatchObject({ kind: 'segregates' })
  })
  test('a breed that says nothing of feathering speed may be fast or slow', () => {
    expect(genesOf(named('Red bird'))['K']).toMatchObject({ kind: 'segregates', freq: { K: 0.5, 'k+': 0.5 } })
  })
})

/** Entered a second time, as keepers and breeders give them (common practice and judgement; no published source). */
const layPerYear = [
  ['Rhode Island Red', 'production', [250, 270, 290]],
  ['Rhode Island Red', 'heritage', [200, 220, 250]],
  ['Rhode Island Red', 'exhibition', [150, 185, 220]],
  ['Barred Plymouth Rock', 'fine-barred', [120, 150, 180]],
  ['Barred Plymouth Rock', 'production', [220, 250, 280]],
] as const

test.each(layPerYear)('%s of the %s line lays %j', (bird, line, [low, likely, high]) => {
  expect(lineOf(named(bird), line)?.eggsFirstYear).toMatchObject({ low, likely, high })
})

test('genes a breeder corrected stand as corrected', () => {
  const share = (bird: string, locus: string, allele: string): number => {
    const gene = genesOf(named(bird))[locus]
    if (gene?.kind === 'fixed') return gene.allele === allele ? 1 : 0
    return gene?.kind === 'segregates' ? (gene.freq[allele] ?? 0) : 0
  }
  for (const silkie of ['White Silkie', 'Black Silkie']) {
    expect(share(silkie, 'R', 'R')).toBe(0.95)
    expect(share(silkie, 'P', 'P')).toBe(0.9)
  }
  expect(share('Buff Orpington', 'I', 'I')).toBeLessThanOrEqual(0.02)
  expect(share('Salmon Faverolles', 'Co', 'co+')).toBe(1)
  for (const black of ['Black Australorp', 'Black Orpington', 'Black Minorca', 'Black Jersey Giant'])
    expect(share(black, 'Ml', 'Ml')).toBeGreaterThanOrEqual(0.7)
})

test('a hybrid names its usual parents, which are in the catalogue', () => {
  for (const name of ['Black sex-link', 'Red sex-link', 'Olive Egger', 'Blue sex-link']) {
    const parents = named(name).madeFrom ?? []
    expect(parents.length).toBeGreaterThan(0)
    for (const { sire, dam } of parents) expect([breedNamed(sire)?.name, breedNamed(dam)?.name]).toEqual([sire, dam])
  }
})

test('a white bird must show what makes it white, and what it hides is listed as varying', () => {
  const whites = breeds.filter(({ colour, type }) => colour === 'white' && type !== 'hybrid')
  expect(whites.length).toBeGreaterThan(15)
  for (const breed of whites) {
    expect([breed.name, breed.shows?.some((any) => any.includes('c') || any.includes('I'))]).toEqual([breed.name, true])
    const below = ['E', 'S'].map((locus) => breed.genes[locus])
    expect([breed.name, below.some((gene) => gene?.confidence === 'low' || gene?.kind === 'segregates')]).toEqual([
      breed.name,
      true,
    ])
  }
})

test('every figure and gene of a bird has a status, and every section a source', () => {
  for (const { name, sources } of breeds)
    for (const [about, by] of Object.entries(sources)) expect([name, about, by.length > 0]).toEqual([name, about, true])
})

test('what is cited for a bird as read is not also tagged as remembered', () => {
  for (const { name, genes, sources } of breeds)
    if (Object.values(genes).some(({ status }) => status === 'read'))
      expect([name, sources.genes.some(({ status }) => status === 'read')]).toEqual([name, true])
})

test('no record names a locus that nobody can see a bird by, or an allele of another locus', () => {
  for (const breed of breeds)
    for (const locus of Object.keys(breed.genes)) expect([breed.name, locus in loci]).toEqual([breed.name, true])
})
