// grammar/build/change.ts: turns of a conversation: another bird in the place of one, the same but, what about, a correction.
import { endsOf, spanOf, tokensIn, type Words } from './words.ts'
import type { Group, Saying } from '../saying.ts'
import type { Token } from '../token.ts'

type How = Extract<Saying, { kind: 'change' }>['how']

const turn = (first: Words, how: How, birds: Group, part: Words = []): Saying => {
  const sex = tokensIn(part).find(({ type }) => type === 'cock' || type === 'hen')
  return {
    kind: 'change',
    how,
    ...(sex ? { part: sex.type === 'cock' ? 'M' : 'F' } : {}),
    birds,
    cost: 0.3,
    at: how === 'instead' ? endsOf(birds).at : spanOf(tokensIn(first)).at,
    end: endsOf(birds).end,
  }
}

/** "swap the cock for a Buff Orpington". */
export const swapped = ([swap, part, , birds]: [Token, Words, Words, Group]): Saying => turn(swap, 'swap', birds, part)
/** "make him a Sussex". */
export const made = ([swap, part, birds]: [Token, Words, Group]): Saying => turn(swap, 'swap', birds, part)
/** "same but blue hens". */
export const sameBut = ([same, birds]: [Token, Group]): Saying => turn(same, 'same', birds)
/** "what about a Sussex". */
export const whatAbout = ([about, birds]: [Token, Group]): Saying => turn(about, 'about', birds)
export const whatAboutWith = ([about, , birds]: [Token, Words, Group]): Saying => turn(about, 'about', birds)
export const instead = ([birds]: [Group, Token]): Saying => turn([], 'instead', birds)
/** "no, the roo is the Sussex". */
export const correction = ([, told]: [Token, Extract<Saying, { kind: 'told' }>]): Saying => ({
  ...told,
  corrects: true,
})
