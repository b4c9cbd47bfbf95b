// core/looks/rules/maskers.ts: the whites that hide every colour; where one holds, no rule of colour is asked.
import { literature as by } from '../../data/literature.ts'
import { has, pure } from '../carries.ts'
import type { Patch, Rule } from '../rule.ts'

const hidden: Patch = {
  pattern: 'white',
  black: 'none',
  red: 'none',
  white: true,
  down: 'white',
  downPattern: 'plain',
  belly: 'same',
  headSpot: 'hidden',
  headSpotClear: 'no',
  tone: 'hidden',
  toneClear: 'no',
}

export const maskers: readonly Rule[] = [
  {
    id: 'recessive white',
    loci: ['c'],
    says: 'Two copies of recessive white make the bird white at every age and hide all its colours; comb, skin and feathers still show.',
    when: (bird) => !has(bird, 'C+'),
    look: hidden,
    certainty: 'sure',
    hedge: 'what the white hides cannot be seen',
    source: by.davenport1909,
  },
  {
    id: 'white of the mottling locus',
    loci: ['mo'],
    says: 'Two copies of the white allele at the mottling locus make a white bird with dark eyes and a few coloured feathers.',
    when: (bird) => pure(bird, 'mo^w'),
    look: hidden,
    certainty: 'sure',
    hedge: 'a few coloured feathers may show',
    source: by.kinoshita2014,
  },
  {
    id: 'imperfect albino',
    loci: ['S'],
    says: 'The imperfect albino allele of the silver locus, with no silver or gold beside it, leaves a near-white bird with a ghost of its pattern and pink eyes as a chick.',
    when: (bird) => pure(bird, 's^al'),
    look: hidden,
    certainty: 'sure',
    hedge: 'a ghost of the pattern may show',
    source: by.gunnarsson2007,
  },
]
