// core/answers/partners/chicks.ts: mates with which all chicks, or most, come in the one colour that is wanted.
import { breedNamed, breeds, type Breed } from '../../breeds.ts'
import { mate } from '../../cross/mate.ts'
import { findable } from '../../data/partners.ts'
import type { BirdRef } from '../../question.ts'
import { shareOf } from '../parents/evidence.ts'
import { grownIn } from '../parents/match.ts'
import { harmTogether, type Candidate, type Hunt } from './search.ts'

/** A share under which a mate is not worth naming for its colour. */
const fewest = 0.3
/** Above this every chick comes so. */
const all = 0.99

const familyOf = (bird: BirdRef): string | undefined => breedNamed(bird.breed ?? '')?.family
/** The keeper's own breed in other colours, and birds that nearly every seller has. */
const isNear = (own: BirdRef, breed: Breed): boolean =>
  breed.type !== 'described' &&
  breed.type !== 'hybrid' &&
  (breed.family === familyOf(own) || (findable[breed.name] ?? 0) >= 2)

/** The share of the chicks of this pair, of both sexes, that grow up in that colour; undefined for a word that is no colour. */
export function shareInColour(sire: BirdRef, dam: BirdRef, colour: string): number | undefined {
  const wanted = grownIn(colour)
  return wanted && shareOf(mate(sire, dam, { hen: false, reverse: false }).cases, [wanted], undefined)
}

/** Most chicks of that colour first; of equals, the keeper's own breed and what is easily found. */
export function matesForColour({ own, wanted }: Hunt, colour: string): readonly Candidate[] {
  return breeds
    .filter((breed) => isNear(own, breed))
    .map((breed): BirdRef => ({ breed: breed.name }))
    .filter((bird) => !harmTogether(own, bird))
    .map((bird): Candidate => {
      const [sire, dam] = wanted === 'F' ? [own, bird] : [bird, own]
      const share = shareInColour(sire, dam, colour) ?? 0
      const kin = familyOf(bird) === familyOf(own) ? 0.2 : 0
      return {
        bird,
        own,
        crossed: mate(sire, dam, { hen: true, reverse: false }),
        worth: share + kin + 0.01 * (findable[bird.breed ?? ''] ?? 0),
        serves: share >= fewest,
      }
    })
    .filter(({ serves }) => serves)
    .toSorted((a, b) => b.worth - a.worth)
}

/** 'all chicks blue', 'about half of the chicks blue'. */
export function chicksWords(share: number, colour: string): string {
  if (share >= all) return `all chicks ${colour}`
  if (Math.abs(share - 0.5) < 0.05) return `half of the chicks ${colour}`
  return `about ${Math.round(share * 20) * 5} in 100 of the chicks ${colour}`
}
