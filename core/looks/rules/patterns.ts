// core/looks/rules/patterns.ts: what the pattern gene draws on a feather, by the ground and the partners beside it.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure } from '../carries.ts'
import type { Draft, Patch, Rule } from '../rule.ts'
import { anyRestrainer, brownish, onHens, patternAndMelanotic } from './partners.ts'

const birchen = ({ base }: Draft): boolean => base === 'E^R'

const marbled: Patch = {
  down: 'golden brown',
  downPattern: 'marbled',
  headSpotClear: 'faint',
  toneClear: 'fair',
  tone: 'gold',
  red: 'gold',
}

export const patterning: readonly Rule[] = [
  {
    id: 'pencilled',
    loci: ['E', 'Pg', 'Ml', 'Co', 'Db', 'Hf'],
    says: 'Two copies of the pattern gene on brown draw fine rings on the hen’s feathers; the cock stays black-breasted.',
    when: (bird, { base }) => base === 'e^b' && pure(bird, 'Pg') && !has(bird, 'Ml') && !anyRestrainer(bird),
    look: onHens('pencilled'),
    certainty: 'sure',
    source: by.carefootPencilling,
  },
  {
    id: 'one pattern gene',
    loci: ['E', 'Pg', 'Ml'],
    says: 'One copy of the pattern gene leaves at most a trace of pencilling.',
    when: (bird, draft) => brownish(draft) && copies(bird, 'Pg') === 1 && !has(bird, 'Ml'),
    look: {},
    certainty: 'usual',
    hedge: 'traces of pencilling may show',
    source: by.smyth1990,
  },
  {
    id: 'barred pencilling',
    loci: ['E', 'Pg', 'Db', 'Ml', 'Co'],
    says: 'On brown, dark brown turns pencilling into bars.',
    when: (bird, { base }) =>
      base === 'e^b' && pure(bird, 'Pg') && pure(bird, 'Db') && !has(bird, 'Ml') && !has(bird, 'Co'),
    look: { pattern: 'autosomal barred' },
    certainty: 'sure',
    source: by.carefootPencilling,
  },
  {
    id: 'half barred pencilling',
    loci: ['E', 'Pg', 'Db', 'Ml', 'Co', 'Hf'],
    says: 'On brown, one copy of dark brown beside two of the pattern gene leaves the hen between pencilled and barred.',
    when: (bird, { base }) =>
      base === 'e^b' && pure(bird, 'Pg') && copies(bird, 'Db') === 1 && !has(bird, 'Ml') && !has(bird, 'Co'),
    look: (bird, { pattern }) => ({ pattern: bird.sex === 'F' || has(bird, 'Hf') ? 'pencilled' : pattern }),
    certainty: 'sure',
    hedge: 'the pencilling runs partly into bars',
    source: by.carefootPencilling,
  },
  {
    id: 'autosomal barred',
    loci: ['E', 'Pg', 'Db', 'Ml'],
    says: 'Pattern gene and dark brown on birchen draw bars across the feather; the chicks are marbled.',
    when: (bird, draft) => birchen(draft) && pure(bird, 'Pg') && pure(bird, 'Db') && !pure(bird, 'Ml'),
    look: { pattern: 'autosomal barred', ...marbled },
    certainty: 'sure',
    source: by.carefootCampine,
  },
  {
    id: 'spangled',
    loci: ['E', 'Pg', 'Db', 'Ml', 'Co'],
    says: 'Pattern gene, dark brown and melanotic on birchen set a black spangle on the tip of each feather; the chicks are marbled.',
    when: (bird, draft) => birchen(draft) && patternAndMelanotic(bird) && pure(bird, 'Db') && !pure(bird, 'Co'),
    look: { pattern: 'spangled', leak: 'none', ...marbled },
    certainty: 'sure',
    source: by.carefoot1988,
  },
  {
    id: 'birchen with one dose of each',
    loci: ['E', 'Pg', 'Db'],
    says: 'Half a campine or spangled bird is dark, with irregular marks on breast and thighs.',
    when: (bird, draft) =>
      draft.base.startsWith('E^R') && has(bird, 'Pg') && has(bird, 'Db') && !(pure(bird, 'Pg') && pure(bird, 'Db')),
    look: {},
    certainty: 'doubtful',
    hedge: 'irregular bars or spots may show on breast and thighs',
    source: by.smyth1990,
  },
]
