// core/catalogue/trials.ts: a bird tried with mates of known worth: what the bot would say of each mating.
import { summaryOf } from '../answers/crossSummary.ts'
import type { Breed } from '../breeds.ts'
import { mate } from '../cross/mate.ts'
import type { BirdRef } from '../question.ts'
import type { Genotype, Sex } from '../vocabulary.ts'

export type Trial = { readonly mating: string; readonly summary: string }

/** Mates of known worth on whom any bird can be tried. */
const trials = { cock: 'Rhode Island Red', hen: 'Barred Plymouth Rock', silver: 'Light Sussex' } as const

/** A bird that is not in the catalogue yet is tried by its likeliest genes. */
export function asBird(breed: Breed, line: string | undefined, genotype: Genotype, listed: boolean): BirdRef {
  if (listed) return { breed: breed.name, ...(line === undefined ? {} : { line }) }
  return {
    genotype: Object.fromEntries(Object.entries(genotype).map(([id, pair]) => [id, [...pair]])),
    name: breed.name,
  }
}

function tried(cock: BirdRef, hen: BirdRef): Trial {
  const name = (bird: BirdRef): string => bird.breed ?? bird.name ?? ''
  return {
    mating: `${name(cock)} cock on ${name(hen)} hens`,
    summary: summaryOf(mate(cock, hen, { hen: false, reverse: false }), []),
  }
}

export function trialsOf({ M, F }: Readonly<Record<Sex, BirdRef>>): readonly Trial[] {
  const all = [
    tried({ breed: trials.cock }, F),
    tried(M, { breed: trials.hen }),
    tried(M, { breed: trials.silver }),
    tried(M, F),
  ]
  return all.filter(({ mating }, at) => all.findIndex((other) => other.mating === mating) === at)
}
