// core/catalogue/card.ts: one bird of the catalogue laid open: genes, looks, lines, figures, sources, and what the bot says of it.
import { ofBird } from '../answers/fact/bird.ts'
import { lineOf, type Breed, type GeneRecord } from '../breeds.ts'
import { founder } from '../cross/founder.ts'
import { loci } from '../data/loci.ts'
import { formatGenotype } from '../genotype.ts'
import { express } from '../looks/express.ts'
import { colourNamed } from '../breeds/colours.ts'
import { colourFaults } from './colour.ts'
import { asBird, trialsOf, type Trial } from './trials.ts'
import type { Citation, Genotype, Locus, Sex } from '../vocabulary.ts'

type GeneRow = {
  readonly locus: string
  readonly name: string
  readonly carries: string // 's+', 'Bl/bl+', 'E 0.97, E^R 0.03', 'cock S/s+, hen s+'
  readonly confidence: GeneRecord['confidence']
  readonly status: GeneRecord['status']
}
export type Card = {
  readonly breed: Breed
  readonly line?: string
  readonly genes: readonly GeneRow[]
  readonly genotype: Readonly<Record<Sex, string>> // the likeliest, normal form
  readonly looks: { readonly cock: string; readonly hen: string; readonly cockChick: string; readonly henChick: string }
  readonly hedges: readonly string[]
  readonly colour?: string // what the colour is known by
  readonly colourFaults: readonly string[] // where the looks depart from it
  readonly figures: readonly { readonly what: string; readonly value: string; readonly status: Citation['status'] }[]
  readonly says: readonly string[] // what the bot answers when asked about the bird
  readonly crosses: readonly Trial[] // and about these matings
  readonly sources: readonly { readonly about: string; readonly by: readonly Citation[] }[]
}

const known: Readonly<Record<string, Locus>> = loci

function carriedWords(gene: GeneRecord): string {
  if (gene.kind === 'fixed') return gene.allele
  if (gene.kind === 'genotype')
    return gene.hen ? `cock ${gene.alleles.join('/')}, hen ${gene.hen.join('')}` : gene.alleles.join('/')
  return Object.entries(gene.freq)
    .map(([allele, share]) => `${allele} ${share}`)
    .join(', ')
}

/** The likeliest bird of the breed, as a mating would take it. */
function likeliest(breed: Breed, line: string | undefined, sex: Sex): Genotype {
  const { known: certain, doubts } = founder(breed.name, sex, breed, line, {})
  return doubts.reduce<Genotype>((all, { choices: [first] }) => ({ ...all, ...first?.genotype }), certain)
}

const span = ({ low, likely, high }: { low: number; likely: number; high: number }): string =>
  `${low}-${likely}-${high}`

function figuresOf(breed: Breed): Card['figures'] {
  const { weights, eggGrams, eggsFirstYear, broody, shell, hardiness } = breed
  const lines = breed.lines.flatMap(({ id, eggsFirstYear: eggs }) =>
    eggs ? [{ what: `eggs in the first year, ${id} line`, value: span(eggs), status: eggs.status }] : [],
  )
  return [
    { what: 'eggs in the first year, line not told', value: span(eggsFirstYear), status: eggsFirstYear.status },
    ...lines,
    { what: 'egg weight, g', value: String(eggGrams.likely), status: eggGrams.status },
    { what: 'shell', value: `${shell.colour}, brown score ${shell.brownScore}`, status: shell.status },
    { what: 'cock and hen, kg', value: `${weights.cockKg} and ${weights.henKg}`, status: weights.status },
    { what: 'share of hens that go broody', value: String(broody.rate), status: broody.status },
    { what: 'cold, heat', value: `${hardiness.cold}, ${hardiness.heat}`, status: hardiness.status },
  ]
}

/** @param listed whether the bird stands in the catalogue, so that matings may find it by name */
export function cardOf(breed: Breed, told: string | undefined, listed: boolean): Card {
  const line = lineOf(breed, told)?.id
  const genotypes = { M: likeliest(breed, line, 'M'), F: likeliest(breed, line, 'F') }
  const [cock, hen] = [express('M', genotypes.M), express('F', genotypes.F)]
  const birds = { M: asBird(breed, line, genotypes.M, listed), F: asBird(breed, line, genotypes.F, listed) }
  const genes = { ...breed.genes, ...lineOf(breed, told)?.genes }
  return {
    breed,
    ...(line === undefined ? {} : { line }),
    genes: Object.entries(genes).map(([locus, gene]) => ({
      locus,
      name: known[locus]?.name ?? '',
      carries: carriedWords(gene),
      confidence: gene.confidence,
      status: gene.status,
    })),
    genotype: { M: formatGenotype(genotypes.M), F: formatGenotype(genotypes.F) },
    looks: {
      cock: cock.plumage.words,
      hen: hen.plumage.words,
      cockChick: cock.chick.words,
      henChick: hen.chick.words,
    },
    ...(breed.colour === undefined ? {} : { colour: colourNamed(breed.colour)?.title ?? breed.colour }),
    colourFaults: colourFaults(breed, cock, hen),
    hedges: [...new Set([...cock.hedges, ...hen.hedges])],
    figures: figuresOf(breed),
    says: ofBird(breed, { breed: breed.name, line }, undefined).says,
    crosses: trialsOf(birds),
    sources: Object.entries(breed.sources).map(([about, by]) => ({ about, by })),
  }
}
