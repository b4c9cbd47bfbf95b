// core/looks/rules/lacing.ts: pattern gene and melanotic together: lacing, double and single, whole and broken; and the belted body.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure, type Bird } from '../carries.ts'
import type { Patch, Rule } from '../rule.ts'
import { anyRestrainer, brownish, onHens, patternAndMelanotic } from './partners.ts'

const some = (bird: Bird): boolean => has(bird, 'Pg') && has(bird, 'Ml') && !patternAndMelanotic(bird)

const darkLacedDown: Patch = { down: 'brown', downPattern: 'smudged', toneClear: 'fair' }

export const lacing: readonly Rule[] = [
  {
    id: 'double laced',
    loci: ['E', 'Pg', 'Ml', 'Co', 'Db', 'Hf'],
    says: 'Pattern gene and melanotic together, two copies of each, draw two rings of black on the hen’s feathers; the cock has a black breast and a dark hackle.',
    when: (bird, draft) => brownish(draft) && patternAndMelanotic(bird) && !anyRestrainer(bird),
    look: (bird) => ({ ...onHens('double laced')(bird), ...darkLacedDown }),
    certainty: 'sure',
    source: by.carefoot2001,
  },
  {
    id: 'single laced',
    loci: ['E', 'Pg', 'Ml', 'Co', 'Db'],
    says: 'Pattern gene, melanotic and columbian together, two copies of each, edge every feather with black, on brown as in the Wyandotte and on birchen as in the Sebright.',
    when: (bird, draft) =>
      (brownish(draft) || draft.base.startsWith('E^R')) && patternAndMelanotic(bird) && pure(bird, 'Co'),
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
    id: 'laced on birchen',
    loci: ['E', 'Pg', 'Ml', 'Co'],
    says: 'On birchen, as in the Sebright, laced chicks hatch dark, and the books differ on how well their gold or silver down is told.',
    when: (bird, draft) => draft.base.startsWith('E^R') && patternAndMelanotic(bird) && pure(bird, 'Co'),
    look: {},
    certainty: 'doubtful',
    hedge: 'on this dark down gold and silver are told less surely: confirm by the first feathers',
    source: by.breeders,
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
    source: by.breeders,
  },
  {
    id: 'blue laced',
    loci: ['E', 'Pg', 'Ml', 'Bl', 'Co', 'Db'],
    says: 'On a black bird that is blue, pattern gene and melanotic, two copies of each, edge the feathers darker.',
    when: (bird, { pattern }) => pattern === 'solid' && patternAndMelanotic(bird) && copies(bird, 'Bl') === 1,
    look: { pattern: 'single laced' },
    certainty: 'sure',
    source: by.campo1991,
  },
]
