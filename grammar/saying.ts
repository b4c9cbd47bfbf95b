// grammar/saying.ts: what one breath of a message says, as the grammar reads it: words still, not yet catalogue birds.
import type { Aspect, Goal } from '../core/question.ts'
import type { Sex } from '../core/vocabulary.ts'
import type { Token } from './token.ts'

/** One bird, by the words said of it. */
export type BirdSaid = {
  readonly kind: 'bird'
  readonly parts: readonly Token[] // names, lines, sex words, genes, in order
  readonly lacks: readonly Token[] // "no bars"
  readonly carried: readonly Carried[]
  readonly split: boolean // "split", of something said elsewhere
  readonly cross?: MatingSaid | undefined // "(Delaware x NH) hen"
  readonly at: number
  readonly end: number
  /** An unknown word stood right before it. */
  readonly gap: boolean
}
export type Carried = { readonly copies: 1 | 2; readonly what: readonly Token[] }
export type Group = readonly BirdSaid[]

export type MatingSaid = {
  readonly first: Group
  readonly second: Group
  readonly order: 'male first' | 'female first' | 'either'
  /** A word that joins birds and nothing else stood between them. */
  readonly plain: boolean
}

export type Saying = (
  | { readonly kind: 'matings'; readonly matings: readonly MatingSaid[] }
  | { readonly kind: 'birds'; readonly birds: Group }
  | {
      readonly kind: 'offspring'
      readonly who?: BirdSaid
      readonly chicks: boolean
      readonly of: MatingSaid | BirdSaid
    }
  | {
      readonly kind: 'wanted'
      readonly sex?: Sex
      readonly bare?: BirdSaid
      readonly for: Group
      readonly firm: boolean
    }
  | {
      readonly kind: 'told'
      readonly who: BirdSaid
      readonly is: Group
      readonly not: boolean
      readonly corrects: boolean
    }
  | {
      readonly kind: 'tally'
      readonly count: number
      readonly of?: number
      readonly look: readonly Token[]
      readonly not: boolean
    }
  | {
      readonly kind: 'change'
      readonly how: 'swap' | 'same' | 'about' | 'instead'
      readonly part?: Sex
      readonly birds: Group
    }
  | { readonly kind: 'asked'; readonly aspect?: Aspect; readonly goal?: Goal }
) & { readonly cost: number; readonly at: number; readonly end: number }

/** The sex that the words of a bird tell. */
export function sexSaid(bird: BirdSaid): Sex | undefined {
  for (const part of bird.parts) {
    if (part.type === 'cock') return 'M'
    if (part.type === 'hen') return 'F'
    if (part.type === 'kin' && part.kin === 'daughter') return 'F'
    if (part.type === 'kin' && part.kin === 'son') return 'M'
    if (part.type === 'kin' && part.kin === 'grandfather') return 'M'
    if (part.type === 'kin' && part.kin === 'grandmother') return 'F'
  }
  return undefined
}

/** The sex of a group: that of any of its birds, since lists are of one sex. */
export const sexOfGroup = (group: Group): Sex | undefined => group.map(sexSaid).find((sex) => sex !== undefined)

/** True where a breed, a colour or genes are told, so that the words are of a bird and not just of a sex. */
export const isNamed = (bird: BirdSaid): boolean =>
  bird.cross !== undefined ||
  bird.carried.length > 0 ||
  bird.split ||
  bird.parts.some(
    ({ type }) =>
      type === 'breed' ||
      type === 'family' ||
      type === 'colour' ||
      type === 'gene' ||
      type === 'trait' ||
      type === 'goal',
  )
