// core/looks/masks.ts: looks that hide a gene: a bird that has such a look does not tell whether it would show it.
import type { Sex } from '../vocabulary.ts'
import type { Look } from './look.ts'

export type MaskId =
  | 'white'
  | 'black'
  | 'no black'
  | 'no red'
  | 'cock'
  | 'dark shanks'
  | 'clear shanks'
  | 'rose or walnut comb'

type Mask = {
  /** After "hidden": 'by white plumage'. */
  readonly words: string
  readonly holds: (look: Look, sex: Sex) => boolean
}

export const masks: Readonly<Record<MaskId, Mask>> = {
  white: { words: 'by white plumage', holds: ({ plumage }) => plumage.white },
  black: {
    words: 'by black plumage',
    holds: ({ plumage }) =>
      plumage.pattern === 'solid' || (plumage.pattern === 'single laced' && plumage.red === 'none'),
  },
  'no black': {
    words: 'where the bird has no black feathers',
    holds: ({ plumage }) => plumage.black === 'none' || plumage.black.startsWith('white'),
  },
  'no red': { words: 'where the bird has no red or gold feathers', holds: ({ plumage }) => plumage.red === 'none' },
  cock: { words: 'in a cock, who lays no eggs', holds: (_look, sex) => sex === 'M' },
  'dark shanks': { words: 'by dark shanks', holds: ({ skin, shank }) => skin === 'dark' || shank === 'dark' },
  'clear shanks': {
    words: 'where the bird also has the inhibitor of dermal black (clear shanks)',
    holds: ({ shank }) => shank.includes('white') || shank.includes('yellow'),
  },
  'rose or walnut comb': {
    words: 'by a rose or walnut comb',
    holds: ({ form }) => form.comb.includes('rose') || form.comb.includes('walnut'),
  },
}
