// core/looks/rules/extenders.ts: melanotic and charcoal, which spread black over hackle and back.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure } from '../carries.ts'
import type { Draft, Rule } from '../rule.ts'

const coloured = ({ pattern }: Draft): boolean => pattern !== 'solid' && pattern !== 'solid with leakage'
const birchen = ({ base }: Draft): boolean => base === 'E^R' || base === 'E^R/e'

export const extenders: readonly Rule[] = [
  {
    id: 'melanotic stops the leak',
    loci: ['E', 'Ml'],
    says: 'Two copies of melanotic keep a black bird black to the tips, even over a coloured ground.',
    when: (bird, { base }) => base === 'E/e' && pure(bird, 'Ml'),
    look: { leak: 'none', pattern: 'solid', red: 'none' },
    certainty: 'usual',
    source: by.omiaMl,
  },
  {
    id: 'one melanotic checks the leak',
    loci: ['E', 'Ml'],
    says: 'One copy of melanotic, as black breeds kept for black give it, leaves little colour in the hackle.',
    when: (bird, { base }) => base === 'E/e' && copies(bird, 'Ml') === 1,
    look: { leak: 'trace' },
    certainty: 'usual',
    source: by.breeders,
  },
  {
    id: 'melanotic birchen',
    loci: ['E', 'Ml'],
    says: 'Two copies of melanotic on birchen make a bird black all over.',
    when: (bird, draft) => birchen(draft) && pure(bird, 'Ml'),
    look: (_bird, { base }) =>
      base === 'E^R'
        ? { pattern: 'solid', red: 'none', tone: 'hidden', toneClear: 'no' }
        : { pattern: 'solid with leakage', leak: 'trace', tone: 'hidden', toneClear: 'no' },
    certainty: 'sure',
    source: by.campo1993,
  },
  {
    id: 'melanotic hackle',
    loci: ['E', 'Ml'],
    says: 'Two copies of melanotic darken hackle and saddle of the cock, and the whole hen.',
    when: (bird, draft) => coloured(draft) && !birchen(draft) && pure(bird, 'Ml'),
    look: { darkened: true },
    certainty: 'sure',
    source: by.omiaMl,
  },
  {
    id: 'one melanotic',
    loci: ['E', 'Ml'],
    says: 'One copy of melanotic may darken hackle and back a little.',
    when: (bird, draft) => coloured(draft) && copies(bird, 'Ml') === 1,
    look: {},
    certainty: 'doubtful',
    hedge: 'hackle and back may be darker than told',
    source: by.omiaMl,
  },
  {
    id: 'charcoal hackle',
    loci: ['E', 'Cha'],
    says: 'Charcoal, as in the Indian Game, makes the hackle black; it is described both as a dominant and as a recessive.',
    when: (bird, draft) => coloured(draft) && has(bird, 'Cha'),
    look: { darkened: true },
    certainty: 'usual',
    source: by.carefoot2001,
  },
]
