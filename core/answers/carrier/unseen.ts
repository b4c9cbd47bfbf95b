// core/answers/carrier/unseen.ts: can a bird carry this allele without showing it at all? If not, why.
import { founder } from '../../cross/founder.ts'
import { breedNamed } from '../../breeds.ts'
import { toNumber } from '../../engine/num.ts'
import type { Debated } from '../../flock/debated.ts'
import { copiesLeft, type Member } from '../../flock/member.ts'
import { carriedName } from '../../flock/carriedName.ts'
import { isOwnName } from '../../flock/names.ts'
import { express } from '../../looks/express.ts'
import { masks, type MaskId } from '../../looks/masks.ts'
import { maskOn, traitOf } from '../../looks/traits.ts'

/** `shows` and `free` are settled by the look; `hidden` may carry a dominant below a look that covers it. */
export type Unseen =
  | { readonly kind: 'can' }
  | { readonly kind: 'cannot'; readonly why: string; readonly summary: string; readonly now: 0 | 1 | null }
  | { readonly kind: 'hidden'; readonly by: string }

export function unseen(debated: Debated, bird: Member): Unseen {
  const what = carriedName(debated.allele)
  const name = isOwnName(bird.name)
    ? bird.name
    : `this ${bird.sex === 'F' ? 'hen' : bird.sex === 'M' ? 'cock' : 'bird'}`
  const now = lookDecides(debated, bird)
  const covers = debated.hiddenBy.filter((mask) => mask !== 'cock').map((mask) => masks[mask].words)
  const except =
    covers.length > 0
      ? ` Unseen it could only be there hidden ${covers.join(', or ').replaceAll('where the bird', 'where a bird')}.`
      : ''
  if (debated.on === 'Z' && bird.sex === 'F')
    return {
      kind: 'cannot',
      now,
      summary: `No: a hen cannot be split for ${what}. It is on the Z, and she has only one.`,
      why: `A hen has one Z, from her father: she is ${debated.shows} or she is not. Only a cock has two and can hide one.${except}`,
    }
  if (debated.acts === 'recessive') return { kind: 'can' }
  if (toNumber(debated.penetrance) < 1) return { kind: 'can' }
  const hidden = maskOf(debated, bird)
  if (hidden !== undefined && now === null) return { kind: 'hidden', by: hidden }
  return {
    kind: 'cannot',
    now,
    summary:
      now === 1
        ? `${name} shows it: a bird that is ${debated.shows} has ${what} and passes it on.`
        : `No: ${what} is dominant, so a bird that does not show it has none to pass on.`,
    why: `One copy of ${what} is enough to show.${except}`,
  }
}

/** 1 where its readings make sure that it has the allele, 0 that it has not. */
function lookDecides(debated: Debated, bird: Member): 0 | 1 | null {
  const left = copiesLeft(debated, bird)
  if (left.length === 0) return null
  if (!left.includes(0)) return 1
  return left.length === 1 ? 0 : null
}

/** What in the look of its breed covers the allele. */
function maskOf(debated: Debated, { bird, sex }: Member): string | undefined {
  const breed = bird?.breed === undefined ? undefined : breedNamed(bird.breed)
  const trait = traitOf(debated.allele)
  if (breed === undefined || trait === undefined) return undefined
  const of = sex === 'F' ? 'F' : 'M'
  const { known, doubts } = founder('', of, breed, bird?.line, bird?.genotype ?? {})
  const genotype = { ...known, ...Object.assign({}, ...doubts.map(({ choices }) => choices[0]!.genotype)) }
  const mask: MaskId | undefined = maskOn(trait, express(of, genotype), of)
  return mask === undefined ? undefined : masks[mask].words
}
