// test/core/looks/breedTrue.test.ts: each variety bred pure gives itself back, as its standard tells it.
import { describe, expect, test } from 'vitest'
import { breeds, genesOf, type Breed, type GeneRecord } from '../../../core/breeds.ts'
import { isLocus, loci, type LocusId } from '../../../core/data/loci.ts'
import { inOrder } from '../../../core/genotype.ts'
import { express } from '../../../core/looks/express.ts'
import type { Look } from '../../../core/looks/look.ts'
import type { Genotype, Sex } from '../../../core/vocabulary.ts'
import { brood, chicks } from '../../brood.ts'
import { colours, noStandard, standards, type Colour, type ColourName, type Extra } from './standards.ts'

type Row = { readonly pair: readonly string[]; readonly p: number }

/** What a bird of this sex may be at one locus, by the record of the variety, likeliest first. */
function rowsAt(id: LocusId, gene: GeneRecord, sex: Sex): readonly Row[] {
  const lone = sex === 'F' && loci[id].on === 'Z'
  if (gene.kind === 'genotype') return [{ pair: lone ? (gene.hen ?? gene.alleles.slice(0, 1)) : gene.alleles, p: 1 }]
  const shares = Object.entries(gene.kind === 'fixed' ? { [gene.allele]: 1 } : gene.freq)
  const rows = lone
    ? shares.map(([allele, p]) => ({ pair: [allele], p }))
    : shares.flatMap(([a, p], i) =>
        shares.slice(i).map(([b, q]) => ({ pair: inOrder(id, [a, b]), p: a === b ? p * q : 2 * p * q })),
      )
  return rows.toSorted((a, b) => b.p - a.p)
}

/** The commonest bird of the variety: at every locus the commonest allele, twice. */
const usual = (breed: Breed, sex: Sex, line?: string): Genotype =>
  Object.fromEntries(
    Object.entries(genesOf(breed, line)).flatMap(([id, gene]) => {
      if (!isLocus(id)) return []
      const top =
        gene.kind === 'segregates' ? Object.entries(gene.freq).toSorted((a, b) => b[1] - a[1])[0]![0] : undefined
      return [[id, rowsAt(id, top === undefined ? gene : { ...gene, kind: 'fixed', allele: top }, sex)[0]!.pair]]
    }),
  )

/** Every bird that the record allows at these loci, with its chance; other loci as usual. */
function drawn(breed: Breed, sex: Sex, among: readonly string[]): readonly { genotype: Genotype; p: number }[] {
  const varying = Object.entries(genesOf(breed)).filter(([id]) => among.includes(id))
  return varying.reduce<readonly { genotype: Genotype; p: number }[]>(
    (birds, [id, gene]) =>
      isLocus(id)
        ? birds.flatMap((bird) =>
            rowsAt(id, gene, sex).map(({ pair, p }) => ({ genotype: { ...bird.genotype, [id]: pair }, p: bird.p * p })),
          )
        : birds,
    [{ genotype: usual(breed, sex), p: 1 }],
  )
}

const colourLoci = ['E', 'Co', 'Db', 'Ml', 'Pg', 'Mh', 'Di', 'cb', 'ig', 'S', 'B', 'Bl', 'lav', 'choc', 'I', 'c', 'mo']

/** What a look has that its colour's standard does not allow. */
function departures(look: Look, sex: Sex, colour: Colour): readonly string[] {
  const { plumage, chick } = look
  const claims: readonly (readonly [string, boolean])[] = [
    [`pattern ${plumage.pattern}`, (sex === 'M' ? colour.cock : colour.hen).includes(plumage.pattern)],
    [`black ${plumage.black}`, colour.black.includes(plumage.black)],
    [`red ${plumage.red}`, colour.red.includes(plumage.red)],
    [`bars ${plumage.barring}`, (plumage.barring !== 'none') === (colour.barred ?? false)],
    [`mottled ${plumage.mottled}`, plumage.mottled === (colour.mottled ?? false)],
    [`white ${plumage.white}`, plumage.white === (colour.white ?? false)],
    [`down ${chick.colour}`, colour.down.includes(chick.colour)],
  ]
  return claims.filter(([, holds]) => !holds).map(([what]) => what)
}

const extras = {
  crest: ({ form }) => form.crest !== 'none',
  muffs: ({ form }) => form.muffs !== 'none',
  feathered: ({ form }) => form.feet !== 'clean',
  'five toes': ({ form }) => form.toes === 'five',
  rumpless: ({ form }) => form.tail === 'rumpless',
  tufts: ({ form }) => form.tufts !== 'none',
  'short legs': ({ form }) => form.legs === 'short',
  silkie: ({ form }) => form.feather === 'silkie',
  'naked neck': ({ form }) => form.neck === 'naked',
} as const satisfies Record<Exclude<Extra, 'hen-feathered'>, (look: Look) => boolean>

const described = breeds
  .filter(({ name }) => standards[name] !== undefined)
  .map((breed) => [breed.name, breed, standards[breed.name]!] as const)

test('every variety of the catalogue has a standard here, or a reason why not', () => {
  const named = breeds.filter(({ name }) => !(name in standards) && !(name in noStandard))
  const groups = new Set(['Described', 'Hybrid'])
  expect(named.filter((breed) => !groups.has(breed.class)).map(({ name }) => name)).toEqual([])
  const known = new Set(breeds.map(({ name }) => name))
  expect([...Object.keys(standards), ...Object.keys(noStandard)].filter((name) => !known.has(name))).toEqual([])
})

describe('the commonest bird of the variety is as its standard tells (standards from memory)', () => {
  test.each(described)('%s', (_name, breed, { colour, comb, shank, extras: wanted, either }) => {
    for (const sex of ['M', 'F'] as const) {
      const look = express(sex, usual(breed, sex))
      expect(departures(look, sex, colours[colour])).toEqual([])
      expect(look.form.comb).toBe(comb)
      expect(look.shank).toMatch(shank === 'any' ? /./u : new RegExp(`\\b${shank}\\b`, 'u'))
      const shown = Object.entries(extras).filter(([extra, shows]) => extra !== either && shows(look))
      expect(shown.map(([extra]) => extra).toSorted()).toEqual(
        wanted.filter((extra) => extra !== 'hen-feathered').toSorted(),
      )
      expect(look.form.henFeathered).toBe(sex === 'M' && wanted.includes('hen-feathered'))
    }
  })
})

/** Lines that are a colour of their own. */
const ownColour: Readonly<Record<string, ColourName>> = {
  'Silver Grey Dorking, red': 'black-red',
  'Bielefelder, silver': 'silver crele',
}

describe('the lines of a variety are of its colour', () => {
  const lines = described.flatMap(([name, breed, { colour }]) =>
    breed.lines.map(({ id }) => [`${name}, ${id}`, id, breed, ownColour[`${name}, ${id}`] ?? colour] as const),
  )
  test.each(lines)('%s', (_name, line, breed, colour) => {
    for (const sex of ['M', 'F'] as const)
      expect(departures(express(sex, usual(breed, sex, line)), sex, colours[colour])).toEqual([])
  })
})

/** A white bird is taken from those that are white, whatever lies below. */
const counts = (look: Look, colour: Colour): boolean => !colour.white || look.plumage.white

/** Share of the birds of a variety, as its record draws them, that are not of its standard colour. */
function offColour(breed: Breed, sex: Sex, colour: Colour): number {
  const looks = drawn(breed, sex, colourLoci)
    .map(({ genotype, p }) => ({ look: express(sex, genotype), p }))
    .filter(({ look }) => counts(look, colour))
  const sum = (rows: readonly { readonly p: number }[]): number => rows.reduce((all, { p }) => all + p, 0)
  return sum(looks.filter(({ look }) => departures(look, sex, colour).length > 0)) / sum(looks)
}

/** Records that allow more birds off colour than one in five, and why. */
const loose: Readonly<Record<string, number>> = {
  'Cream Legbar': 0.36, // some strains are not pure for cream; those birds look gold
}

describe('four birds in five that the record allows are of the standard colour', () => {
  test.each(described)('%s', (name, breed, { colour }) => {
    for (const sex of ['M', 'F'] as const)
      expect(offColour(breed, sex, colours[colour])).toBeLessThan(loose[name] ?? 0.2)
  })
})

describe('pure x pure: varieties without a blend of one dose give all their chicks their own look', () => {
  const blends = (breed: Breed): boolean => Object.values(genesOf(breed)).some(({ kind }) => kind === 'genotype')
  test.each(described.filter(([, breed]) => !blends(breed)))('%s', (_name, breed, { colour }) => {
    const mating = { sire: { genotype: usual(breed, 'M') }, dam: { genotype: usual(breed, 'F') } }
    for (const sex of ['M', 'F'] as const)
      for (const { genotype } of chicks(mating, sex))
        expect(departures(express(sex, genotype), sex, colours[colour])).toEqual([])
  })
})

describe('pure x pure: one dose of blue, mauve or white gives the textbook shares', () => {
  const cases = [
    ['Blue Orpington', { black: 1 / 4, blue: 1 / 2, splash: 1 / 4 }],
    ['Blue Andalusian', { black: 1 / 4, blue: 1 / 2, splash: 1 / 4 }],
    ['Blue Laced Red Wyandotte', { black: 1 / 4, blue: 1 / 2, splash: 1 / 4 }],
    ['Blue Copper Marans', { black: 1 / 4, blue: 1 / 2, splash: 1 / 4 }],
    ['Mauve Orpington', { chocolate: 1 / 4, mauve: 1 / 2, splash: 1 / 4 }],
    ['Paint Silkie', { black: 1 / 4, 'white with dark flecks': 1 / 2, white: 1 / 4 }],
  ] as const
  test.each(cases)('%s', (name, shares) => {
    const breed = breeds.find((one) => one.name === name)!
    const mating = { sire: { genotype: usual(breed, 'M') }, dam: { genotype: usual(breed, 'F') } }
    expect(brood(mating, ({ plumage }) => plumage.black)).toEqual(shares)
  })
})
