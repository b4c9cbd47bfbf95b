// core/looks/rules/ground.ts: the ground that the E series lays, for down, cock and hen. One of these holds for every bird.
import { literature as by } from '../../data/literature.ts'
import { has, type Bird } from '../carries.ts'
import type { Draft, Patch, Rule } from '../rule.ts'

const blackDown: Patch = { down: 'black', downPattern: 'plain', belly: 'pale', headSpotClear: 'clear' }
const dark: Patch = { downPattern: 'plain', belly: 'same', headSpotClear: 'clear', toneClear: 'poor' }
const shown: Patch = { tone: 'gold', red: 'gold' }
/** A pale spot is hard to see on any down that is not dark. */
const onPale: Patch = { headSpotClear: 'faint' }

/** The cocks of e+, e^b and e^Wh look alike; only hens and chicks tell these grounds apart. */
const hensTell =
  (hen: Draft['pattern'], rest: Patch) =>
  ({ sex }: Bird): Patch => ({ ...shown, ...onPale, pattern: sex === 'M' ? 'black-breasted' : hen, ...rest })

const low = (bird: Bird): boolean => !has(bird, 'E') && !has(bird, 'E^R')
const wheaten = (bird: Bird): boolean => has(bird, 'e^Wh')
const brownOrWild = (bird: Bird): boolean =>
  has(bird, 'e+') || has(bird, 'e^b') || has(bird, 'e^s') || has(bird, 'e^bc')
const spots = (bird: Bird): boolean => has(bird, 'e^s') || has(bird, 'e^bc')

const twin = (bird: Bird, one: 'E' | 'E^R'): boolean => bird.genotype['E']?.every((allele) => allele === one) ?? false

export const ground: readonly Rule[] = [
  {
    id: 'black ground',
    loci: ['E'],
    says: 'Two copies of extended black make a black bird out of black down with a pale belly; gold and silver do not show.',
    when: (bird) => twin(bird, 'E'),
    look: { ...blackDown, base: 'E', pattern: 'solid' },
    certainty: 'sure',
    source: by.davenport1909,
  },
  {
    id: 'black over birchen',
    loci: ['E'],
    says: 'Extended black over birchen makes a black bird; a little copper may show in the hackle.',
    when: (bird) => has(bird, 'E') && has(bird, 'E^R'),
    look: { ...blackDown, base: 'E/E^R', pattern: 'solid' },
    certainty: 'usual',
    hedge: 'a little copper may show in the hackle',
    source: by.breeders,
  },
  {
    id: 'black over a coloured ground',
    loci: ['E'],
    says: 'One copy of extended black still makes a black bird, with some gold or silver in hackle, shoulder and saddle of the cock and in the hackle of the hen.',
    when: (bird) => has(bird, 'E') && !has(bird, 'E^R') && !twin(bird, 'E'),
    look: { ...blackDown, base: 'E/e', pattern: 'solid with leakage', leak: 'some', red: 'gold' },
    certainty: 'sure',
    hedge: 'the amount of colour in the hackle varies',
    source: by.davenport1909,
  },
  {
    id: 'birchen ground',
    loci: ['E'],
    says: 'Two copies of birchen make a black bird with coloured hackle and edged upper breast, the cock with coloured shoulder and saddle too; the down is black to dark brown, often on the belly too.',
    when: (bird) => twin(bird, 'E^R'),
    look: { ...dark, ...shown, down: 'black', base: 'E^R', pattern: 'birchen' },
    certainty: 'sure',
    source: by.campo1993,
  },
  {
    id: 'birchen over a coloured ground',
    loci: ['E'],
    says: 'One copy of birchen makes a dark bird between birchen and black-breasted red, out of dark brown down with faint stripes.',
    when: (bird) => has(bird, 'E^R') && !has(bird, 'E') && !twin(bird, 'E^R'),
    look: { ...dark, ...shown, down: 'dark brown', downPattern: 'faint stripes', base: 'E^R/e', pattern: 'birchen' },
    certainty: 'doubtful',
    hedge: 'how dark it turns out varies',
    source: by.smyth1990,
  },
  {
    id: 'wheaten ground',
    loci: ['E'],
    says: 'Wheaten makes pale down; the cock grows up black-breasted, the hen wheat-coloured with a cream breast.',
    when: (bird) => low(bird) && !brownOrWild(bird),
    look: hensTell('wheaten', { base: 'e^Wh', down: 'buff', downPattern: 'plain', toneClear: 'good' }),
    certainty: 'usual',
    source: by.smyth1990,
  },
  {
    id: 'wheaten over wild type or brown',
    loci: ['E'],
    says: 'One copy of wheaten makes down that runs from pale to thinly striped; hens come near to wheaten.',
    when: (bird) => low(bird) && wheaten(bird) && brownOrWild(bird),
    look: hensTell('wheaten', {
      base: 'e^Wh/e',
      down: 'golden brown',
      downPattern: 'faint stripes',
      toneClear: 'good',
    }),
    certainty: 'doubtful',
    hedge: 'the down may be anything from pale to striped',
    source: by.breeders,
  },
  {
    id: 'spotted grounds',
    loci: ['E'],
    says: 'The speckled and buttercup grounds give down with broken stripes or spots.',
    when: (bird) => low(bird) && !wheaten(bird) && !has(bird, 'e+') && spots(bird),
    look: hensTell('stippled', { base: 'spotted', downPattern: 'broken stripes', toneClear: 'fair' }),
    certainty: 'doubtful',
    source: by.smyth1990,
  },
  {
    id: 'wild-type ground',
    loci: ['E'],
    says: 'Wild type makes striped down with a clear eye stripe; the cock grows up black-breasted, the hen finely stippled with a salmon breast.',
    when: (bird) => low(bird) && !wheaten(bird) && has(bird, 'e+') && !has(bird, 'e^b'),
    look: hensTell('stippled', { base: 'e+', downPattern: 'striped', toneClear: 'fair' }),
    certainty: 'sure',
    source: by.smyth1990,
  },
  {
    id: 'wild type over brown',
    loci: ['E'],
    says: 'Wild type over brown makes striped down, and hens with less salmon in the breast.',
    when: (bird) => has(bird, 'e+') && has(bird, 'e^b'),
    look: hensTell('stippled', { base: 'e+/e^b', downPattern: 'striped', toneClear: 'fair' }),
    certainty: 'usual',
    source: by.smyth1990,
  },
  {
    id: 'brown ground',
    loci: ['E'],
    says: 'Brown makes brown down with broken or blurred stripes; the cock grows up black-breasted, the hen stippled on back and breast alike.',
    when: (bird) => low(bird) && !wheaten(bird) && !has(bird, 'e+') && !spots(bird) && has(bird, 'e^b'),
    look: hensTell('partridge', { base: 'e^b', downPattern: 'broken stripes', toneClear: 'fair' }),
    certainty: 'usual',
    source: by.smyth1990,
  },
]
