// core/cross/seen.ts: a bird of the question as the answer shows it: canonical names, genotype in normal form.
import type { BirdSeen } from '../answer.ts'
import { formatGenotype } from '../genotype.ts'
import type { BirdRef } from '../question.ts'

export function seenBird(bird: BirdRef): BirdSeen {
  return {
    ...(bird.breed === undefined ? {} : { breed: bird.breed }),
    ...(bird.line === undefined ? {} : { line: bird.line }),
    ...(bird.genotype === undefined ? {} : { genotype: formatGenotype(bird.genotype) }),
    ...(bird.cross === undefined ? {} : { cross: { sire: seenBird(bird.cross.sire), dam: seenBird(bird.cross.dam) } }),
    ...(bird.name === undefined ? {} : { name: bird.name }),
  }
}

/** A bird in a few words, for lists and sentences the core owns. */
export function nameOfBird(bird: BirdRef): string {
  if (bird.name !== undefined) return bird.name
  const own = [bird.breed, bird.line === undefined ? '' : `(${bird.line})`].filter(Boolean).join(' ')
  if (own) return own
  if (bird.cross) return `${nameOfBird(bird.cross.sire)} x ${nameOfBird(bird.cross.dam)} cross`
  return bird.genotype ? formatGenotype(bird.genotype) : 'a bird not named'
}
