// core/answers/fact/bird.ts: what the catalogue knows of one bird: ground, gold or silver, barring, whites, feather, comb, eggs, lines.
import { breedNamed, genesOf, type Breed } from '../../breeds.ts'
import type { FactAnswer, Source } from '../../answer.ts'
import type { Aspect, BirdRef } from '../../question.ts'
import { askedOf, laying } from './asked.ts'
import { colourGenes, form, oneLocus, unsure } from './form.ts'
import { barring, feathering, goldOrSilver, ground, white } from './genes.ts'
import { certainty } from './words.ts'

type Said = {
  readonly says: readonly string[]
  readonly certainty: FactAnswer['certainty']
  readonly sources: readonly Source[]
}

function linesOf(breed: Breed): string {
  const told = breed.lines.filter(({ differs }) => differs !== undefined)
  return told.length > 0 ? `Lines: ${told.map(({ id, differs }) => `${id} (${differs})`).join('; ')}.` : ''
}

function madeFrom(breed: Breed): string {
  const [first] = breed.madeFrom ?? []
  return first ? `${breed.name} is a first cross, mostly ${first.sire} on ${first.dam}; it does not breed true.` : ''
}

/** Sentences about one bird; what was asked for first, the whites before what they hide. */
export function ofBird(breed: Breed, bird: BirdRef, locus: string | undefined, aspects: readonly Aspect[] = []): Said {
  const { line } = bird
  const asked = locus === undefined ? '' : oneLocus(breed, locus, line)
  const own = [
    white(breed, line),
    goldOrSilver(breed, line),
    breed.madeFrom ? madeFrom(breed) : breed.note,
    ground(breed, line),
    barring(breed, line),
    colourGenes(breed, line),
    feathering(breed, line),
    form(breed, line),
    laying(breed, line),
    linesOf(breed),
    unsure(breed, line),
  ]
  const figures = askedOf(breed, line, aspects)
  const rest = figures.length > 0 && asked === '' ? [breed.note, linesOf(breed)] : own // who asks of eggs wants no genes
  const says = [...new Set([...figures, asked, ...rest])].filter(Boolean)
  const gene = genesOf(breed, line)[locus ?? 'S']
  return {
    says,
    certainty: gene && rest === own ? certainty[gene.confidence] : 'usual',
    sources: [...breed.sources.genes, ...(locus === undefined ? breed.sources.eggs : [])],
  }
}

/** The catalogue entries of the birds named, once each. */
export const entriesOf = (birds: readonly BirdRef[]): readonly { readonly breed: Breed; readonly bird: BirdRef }[] => [
  ...new Map(
    birds.flatMap((bird) => {
      const breed = bird.breed === undefined ? undefined : breedNamed(bird.breed)
      return breed ? [[`${breed.name}/${bird.line ?? ''}`, { breed, bird }] as const] : []
    }),
  ).values(),
]
