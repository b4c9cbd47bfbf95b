// grammar/build/kinship.ts: one thing told of birds by name: parents, or what a bird is.
import { tokensIn, type Words } from './words.ts'
import type { BirdSaid } from '../saying.ts'
import type { Token } from '../token.ts'

export type Kinship =
  | {
      readonly kind: 'parents'
      readonly of: Token
      readonly sire?: Token
      readonly dam?: Token
      /** Parents of which no word tells the part. */
      readonly either?: readonly Token[]
    }
  | { readonly kind: 'is'; readonly of: Token; readonly bird: BirdSaid; readonly not: boolean }

/** "Bert is out of Daisy by Sid". */
export const outOfNamed = ([of, , dam, , sire]: [Token, Words, Token, Token, Token]): Kinship => ({
  kind: 'parents',
  of,
  sire,
  dam,
})
/** "Bert is out of Sid x Daisy". */
export const outOfPair = ([of, , one, , other]: [Token, Words, Token, Words, Token]): Kinship => ({
  kind: 'parents',
  of,
  either: [one, other],
})
/** "Bert is a son of Sid". */
export const outOfNamedOne = ([of, , one]: [Token, Words, Token]): Kinship => ({ kind: 'parents', of, either: [one] })
export const byNamed = ([of, , sire]: [Token, Words, Token]): Kinship => ({ kind: 'parents', of, sire })

const byPart = (of: Token, part: Words, named: Token): Kinship =>
  tokensIn(part)[0]?.type === 'cock' ? { kind: 'parents', of, sire: named } : { kind: 'parents', of, dam: named }
/** "Bert's dad is Sid". */
export const parentIs = ([of, part, , named]: [Token, Words, Token, Token]): Kinship => byPart(of, part, named)
/** "Sid is Bert's dad". */
export const isParentOf = ([named, , of, part]: [Token, Token, Token, Words]): Kinship => byPart(of, part, named)

const ofNamed = (of: Token, bird: BirdSaid, not: boolean): Kinship => ({ kind: 'is', of, bird, not })
/** "Daisy is a lavender Orpington hen". */
export const namedIs = ([of, , bird]: [Token, Token, BirdSaid]): Kinship => ofNamed(of, bird, false)
/** "Sid isn't lavender". */
export const namedIsNot = ([of, , , bird]: [Token, Token, Token, BirdSaid]): Kinship => ofNamed(of, bird, true)
/** "Sid doesn't carry lavender". */
export const namedNot = ([of, , bird]: [Token, Token, BirdSaid]): Kinship => ofNamed(of, bird, true)
/** "Sid carries lavender". */
export const namedIsBeside = ([of, bird]: [Token, BirdSaid]): Kinship => ofNamed(of, bird, false)
/** "my RIR roo Sid". */
export const namedAfter = ([bird, of]: [BirdSaid, Token]): Kinship => ofNamed(of, bird, false)
/** "my RIR roo is called Rex". */
export const isNamedSo = ([bird, , of]: [BirdSaid, Token, Token]): Kinship => ofNamed(of, bird, false)
/** "Sid, Bert is out of Daisy". */
export const calledFirst = ([, , told]: [Token, Token, Kinship]): Kinship => told
