// core/looks/rules/patterns.ts: what the pattern gene draws on a feather, by the ground and the partners beside it.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure, type Bird } from '../carries.ts'
import type { Draft, Patch, Rule } from '../rule.ts'

const brownish = ({ base }: Draft): boolean => base === 'e^b' || base === 'e^Wh' || base === 'e^Wh/e'
const birchen = ({ base }: Draft): boolean => base === 'E^R'
const both = (bird: Bird): boolean => pure(bird, 'Pg') && pure(bird, 'Ml')
const some = (bird: Bird): boolean => has(bird, 'Pg') && has(bird, 'Ml') && !both(bird)
const bothRestrainers = (bird: Bird): boolean => has(bird, 'Co') || has(bird, 'Db')

/** Patterns that a cock shows on breast and thighs only, unless he is hen-feathered. */
const onHens =
  (pattern: Draft['pattern']) =>
  (bird: Bird): Patch => ({ pattern: bird.sex === 'F' || has(bird, 'Hf') ? pattern : 'black-breasted' })

const darkLacedDown: Patch = { down: 'brown', downPattern: 'smudged', toneClear: 'fair' }
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
    when: (bird, { base }) => base === 'e^b' && pure(bird, 'Pg') && !has(bird, 'Ml') && !bothRestrainers(bird),
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
    id: 'double laced',
    loci: ['E', 'Pg', 'Ml', 'Co', 'Db', 'Hf'],
    says: 'Pattern gene and melanotic together, two copies of each, draw two rings of black on the hen’s feathers; the cock has a black breast and a dark hackle.',
    when: (bird, draft) => brownish(draft) && both(bird) && !bothRestrainers(bird),
    look: (bird) => ({ ...onHens('double laced')(bird), ...darkLacedDown }),
    certainty: 'sure',
    source: by.carefoot2001,
  },
  {
    id: 'single laced',
    loci: ['E', 'Pg', 'Ml', 'Co', 'Db'],
    says: 'Pattern gene, melanotic and columbian together, two copies of each, edge every feather with black, on brown as in the Wyandotte and on birchen as in the Sebright.',
    when: (bird, draft) => (brownish(draft) || draft.base.startsWith('E^R')) && both(bird) && pure(bird, 'Co'),
    look: (_bird, draft) => ({
      pattern: 'single laced',
      leak: 'none',
      red: 'gold',
      tone: 'gold',
      ...darkLacedDown,
      ...(draft.base.startsWith('E^R') ? { down: 'dark brown' } : {}),
    }),
    certainty: 'usual',
    source: by.campo1991,
  },
  {
    id: 'partly laced',
    loci: ['E', 'Pg', 'Ml', 'Co', 'Hf'],
    says: 'Pattern gene and melanotic in one dose draw broken or uneven lacing.',
    when: (bird, draft) => brownish(draft) && some(bird) && draft.restrained !== 'fully',
    look: (bird, draft) =>
      bird.sex === 'F' || has(bird, 'Hf') ? { pattern: 'partly laced' } : { pattern: draft.pattern },
    certainty: 'doubtful',
    hedge: 'the lacing is broken and uneven',
    source: by.smyth1990,
  },
  {
    id: 'traces of lacing on columbian',
    loci: ['E', 'Pg', 'Ml', 'Co', 'Db'],
    says: 'On columbian one dose of pattern gene and melanotic leaves some dark-edged feathers.',
    when: (bird, draft) => brownish(draft) && some(bird) && draft.restrained === 'fully',
    look: { pattern: 'smudged columbian' },
    certainty: 'doubtful',
    hedge: 'some feathers may be edged with black',
    source: by.smyth1990,
  },
  {
    id: 'belted',
    loci: ['E', 'Ml', 'Co', 'Pg'],
    says: 'Columbian with two copies of melanotic and no pattern gene keeps the body clear and makes head, hackle and tail solid black.',
    when: (bird, draft) => brownish(draft) && pure(bird, 'Co') && pure(bird, 'Ml') && !has(bird, 'Pg'),
    look: { pattern: 'belted' },
    certainty: 'doubtful',
    hedge: 'the belted pattern is not settled in the books',
    source: by.breeders,
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
    id: 'spangled',
    loci: ['E', 'Pg', 'Db', 'Ml', 'Co'],
    says: 'Pattern gene, dark brown and melanotic on birchen set a black spangle on the tip of each feather; the chicks are marbled.',
    when: (bird, draft) => birchen(draft) && both(bird) && pure(bird, 'Db') && !pure(bird, 'Co'),
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
  {
    id: 'blue laced',
    loci: ['E', 'Pg', 'Ml', 'Bl', 'Co', 'Db'],
    says: 'On a black bird that is blue, pattern gene and melanotic, two copies of each, edge the feathers darker.',
    when: (bird, { pattern }) => pattern === 'solid' && both(bird) && copies(bird, 'Bl') === 1,
    look: { pattern: 'single laced' },
    certainty: 'sure',
    source: by.campo1991,
  },
]
