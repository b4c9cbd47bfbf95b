// core/looks/rules/restrictors.ts: columbian and dark brown, which push black out of the body into hackle, flights and tail.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure, type Bird } from '../carries.ts'
import type { Draft, Patch, Rule } from '../rule.ts'

const onBlack = ({ base }: Draft): boolean => base === 'E' || base === 'E/E^R' || base === 'E/e'
const onBirchen = ({ base }: Draft): boolean => base === 'E^R' || base === 'E^R/e'
const free = (draft: Draft): boolean => !onBlack(draft) && !onBirchen(draft)
const pale = ({ base }: Draft): boolean => base === 'e^Wh' || base === 'e^Wh/e'

/** Columbian takes the stripes off the down; on wheaten there were none. */
function cleared(_bird: Bird, { base }: Draft): Patch {
  if (base === 'e^Wh') return {}
  if (base === 'e^Wh/e') return { down: 'buff', downPattern: 'plain' }
  if (base === 'e^b') return { down: 'golden brown', downPattern: 'smudged', toneClear: 'good' }
  return { down: 'golden brown', downPattern: 'faint stripes', toneClear: 'good' }
}

/** One dose fades the stripes and leaves the reading where the ground had it. */
function faded(_bird: Bird, { base }: Draft): Patch {
  return base === 'e^Wh' || base === 'e^Wh/e' ? {} : { down: 'golden brown', downPattern: 'faint stripes' }
}

export const restrictors: readonly Rule[] = [
  {
    id: 'columbian',
    loci: ['E', 'Co'],
    says: 'Two copies of columbian on wheaten or brown leave black only in hackle, flights and tail, and take the stripes off the down.',
    when: (bird, draft) => (pale(draft) || draft.base === 'e^b' || draft.base === 'e+/e^b') && pure(bird, 'Co'),
    look: (bird, draft) => ({ pattern: 'columbian', restrained: 'fully', ...cleared(bird, draft) }),
    certainty: 'sure',
    source: by.campo1993,
  },
  {
    id: 'columbian on wild type',
    loci: ['E', 'Co'],
    says: 'On wild type two copies of columbian act more weakly and leave black marks on back and breast.',
    when: (bird, draft) => (draft.base === 'e+' || draft.base === 'spotted') && pure(bird, 'Co'),
    look: (bird, draft) => ({ pattern: 'smudged columbian', restrained: 'partly', ...cleared(bird, draft) }),
    certainty: 'usual',
    hedge: 'how much black stays on the body varies',
    source: by.smyth1990,
  },
  {
    id: 'one columbian',
    loci: ['E', 'Co'],
    says: 'One copy of columbian clears most of the body and leaves some black on back and breast.',
    when: (bird, draft) => free(draft) && copies(bird, 'Co') === 1,
    look: (bird, draft) => ({ pattern: 'smudged columbian', restrained: 'partly', ...faded(bird, draft) }),
    certainty: 'usual',
    hedge: 'the amount of black on back and breast varies',
    source: by.smyth1990,
  },
  {
    id: 'dark brown',
    loci: ['E', 'Db'],
    says: 'Two copies of dark brown clear the body of black, as columbian does, and act on birchen too.',
    when: (bird, draft) => !onBlack(draft) && draft.pattern !== 'solid' && pure(bird, 'Db'),
    look: (bird, draft) => ({
      pattern: draft.restrained === 'fully' ? 'columbian' : 'black-tailed',
      restrained: 'fully',
      ...(onBirchen(draft)
        ? { down: 'brown', downPattern: 'broken stripes', toneClear: 'fair' }
        : cleared(bird, draft)),
    }),
    certainty: 'sure',
    source: by.gunnarsson2011,
  },
  {
    id: 'one dark brown in a cock',
    loci: ['E', 'Db', 'Co'],
    says: 'One copy of dark brown shows in cocks, which have less black on the body; hens mostly need two.',
    when: (bird, draft) =>
      bird.sex === 'M' && !onBlack(draft) && draft.pattern !== 'solid' && copies(bird, 'Db') === 1 && !has(bird, 'Co'),
    look: { pattern: 'smudged columbian', restrained: 'partly' },
    certainty: 'doubtful',
    hedge: 'the amount of black on the body varies',
    source: by.smyth1990,
  },
]
