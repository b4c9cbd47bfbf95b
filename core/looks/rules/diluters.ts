// core/looks/rules/diluters.ts: blue, chocolate, lavender, dun and smoky, which recolour black, alone and together.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure } from '../carries.ts'
import type { Draft, Patch, Rule } from '../rule.ts'
import { blue, chocolate, dun, khaki, lavender, recoloured, splash } from './recolour.ts'

const coloured = ({ black, white }: Draft): boolean => black !== 'none' && !white
/** A pale spot is still seen on blue down, and barely on paler ones. */
const onBlue = ({ headSpotClear }: Draft): Patch => (headSpotClear === 'clear' ? { headSpotClear: 'fair' } : {})
const faint = ({ headSpotClear }: Draft): Patch => (headSpotClear === 'no' ? {} : { headSpotClear: 'faint' })
const touched = ({ black }: Draft): boolean => black !== 'black' && !black.startsWith('white')

export const diluters: readonly Rule[] = [
  {
    id: 'blue',
    loci: ['Bl'],
    says: 'One copy of blue turns black to blue, in the down to slate; red stays.',
    when: (bird, draft) => coloured(draft) && copies(bird, 'Bl') === 1,
    look: (_bird, draft) => ({ ...recoloured(draft, blue), ...onBlue(draft) }),
    certainty: 'sure',
    source: by.omiaBl,
  },
  {
    id: 'splash',
    loci: ['Bl'],
    says: 'Two copies of blue turn black to splash, in the down to smoky white, which is easily taken for white or pale blue.',
    when: (bird, draft) => coloured(draft) && pure(bird, 'Bl'),
    look: (_bird, draft) => ({
      ...recoloured(draft, splash),
      ...(draft.base.startsWith('E') ? { headSpot: 'hidden', headSpotClear: 'no', belly: 'same' } : {}),
    }),
    certainty: 'sure',
    hedge: 'smoky white chicks are easily misread',
    source: by.punnett1911,
  },
  {
    id: 'chocolate',
    loci: ['choc'],
    says: 'Chocolate, two copies in a cock or one in a hen, turns black to chocolate brown in down and feather.',
    when: (bird, draft) => coloured(draft) && pure(bird, 'choc'),
    look: (_bird, draft) => recoloured(draft, chocolate),
    certainty: 'sure',
    source: by.omiaChoc,
  },
  {
    id: 'dun',
    loci: ['I'],
    says: 'One copy of dun turns black to dun brown; red stays.',
    when: (bird, draft) => coloured(draft) && copies(bird, 'I^D') === 1 && !has(bird, 'I'),
    look: (_bird, draft) => ({ ...recoloured(draft, dun), ...faint(draft) }),
    certainty: 'sure',
    source: by.kerje2004,
  },
  {
    id: 'khaki',
    loci: ['I'],
    says: 'Two copies of dun turn black to pale khaki.',
    when: (bird, draft) => coloured(draft) && pure(bird, 'I^D'),
    look: (_bird, draft) => ({ ...recoloured(draft, khaki), ...faint(draft) }),
    certainty: 'sure',
    source: by.kerje2004,
  },
  {
    id: 'smoky',
    loci: ['I'],
    says: 'Smoky turns black to a grey much like blue.',
    when: (bird, draft) => coloured(draft) && has(bird, 'I^S') && !has(bird, 'I') && !has(bird, 'I^D'),
    look: (_bird, draft) => ({ ...recoloured(draft, blue), ...faint(draft) }),
    certainty: 'usual',
    hedge: 'smoky is little known and easily taken for blue',
    source: by.kerje2004,
  },
  {
    id: 'lavender',
    loci: ['lav', 'Bl', 'choc', 'I'],
    says: 'Two copies of lavender turn black to pale even grey and red to straw, in the down too.',
    when: (bird, draft) => !draft.white && pure(bird, 'lav'),
    look: (_bird, draft) => ({
      belly: 'same',
      ...recoloured(draft, lavender),
      ...faint(draft),
      red: ['none', 'silver', 'white', 'cream'].includes(draft.red)
        ? draft.red
        : draft.red === 'brassy silver'
          ? 'silver'
          : 'straw',
      ...(draft.toneClear === 'good' ? { toneClear: 'fair' } : {}),
      ...(draft.headSpotClear !== 'no' && touched(draft) ? { headSpot: 'hidden', headSpotClear: 'no' } : {}),
    }),
    certainty: 'sure',
    source: by.vaez2008,
  },
  {
    id: 'diluters together',
    loci: ['Bl', 'choc', 'lav', 'I'],
    says: 'What two diluters of black make together is expected from each alone, not published.',
    when: (_bird, { black }) => black === 'mauve' || black === 'pale lavender',
    look: {},
    certainty: 'doubtful',
    hedge: 'expected from the single genes, not published',
    source: by.practice,
  },
]
