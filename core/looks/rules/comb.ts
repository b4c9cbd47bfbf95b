// core/looks/rules/comb.ts: the comb of a grown bird. Form is never hidden by colour.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure, type Bird } from '../carries.ts'
import type { Rule } from '../rule.ts'

const duplex = (bird: Bird): number => copies(bird, 'D^V') + copies(bird, 'D^C')

export const comb: readonly Rule[] = [
  {
    id: 'walnut comb',
    loci: ['R', 'P'],
    says: 'Rose and pea together make a walnut comb.',
    when: (bird) => has(bird, 'R') && has(bird, 'P'),
    look: { comb: 'walnut' },
    certainty: 'sure',
    source: by.punnett1911,
  },
  {
    id: 'rose comb',
    loci: ['R', 'P'],
    says: 'One copy of rose makes a rose comb.',
    when: (bird) => has(bird, 'R') && !has(bird, 'P'),
    look: { comb: 'rose' },
    certainty: 'sure',
    source: by.punnett1911,
  },
  {
    id: 'two copies of rose',
    loci: ['R'],
    says: 'Cocks with two copies of rose comb are often less fertile than those with one.',
    when: (bird) => bird.sex === 'M' && pure(bird, 'R'),
    look: {},
    certainty: 'sure',
    source: by.imsland2012,
  },
  {
    id: 'pea comb',
    loci: ['R', 'P'],
    says: 'One copy of pea makes a pea comb.',
    when: (bird) => has(bird, 'P') && !has(bird, 'R'),
    look: { comb: 'pea' },
    certainty: 'sure',
    source: by.punnett1911,
  },
  {
    id: 'half a pea comb',
    loci: ['R', 'P'],
    says: 'A bird with one copy of pea may have an uneven comb, high or nearly single.',
    when: (bird) => copies(bird, 'P') === 1 && !has(bird, 'R'),
    look: {},
    certainty: 'usual',
    hedge: 'the pea comb may be uneven or nearly single',
    source: by.wright2009,
  },
  {
    id: 'V comb',
    loci: ['D'],
    says: 'Two copies of duplex make a comb of two horns.',
    when: (bird) => pure(bird, 'D^V'),
    look: (_bird, { comb }) => ({ comb: comb === 'single' ? 'V' : `split ${comb}` }),
    certainty: 'sure',
    source: by.omiaD,
  },
  {
    id: 'Y comb',
    loci: ['D'],
    says: 'One copy of duplex forks the comb like a Y; in some birds it stays single.',
    when: (bird) => duplex(bird) === 1 && has(bird, 'D^V'),
    look: (_bird, { comb }) => ({ comb: comb === 'single' ? 'Y' : `split ${comb}` }),
    certainty: 'sure',
    hedge: 'some forked combs pass for single',
    source: by.davenport1909,
  },
  {
    id: 'cup comb',
    loci: ['D'],
    says: 'The buttercup allele of duplex makes a cup-shaped comb.',
    when: (bird) => has(bird, 'D^C'),
    look: (_bird, { comb }) => ({ comb: comb === 'single' ? 'buttercup' : `split ${comb}` }),
    certainty: 'usual',
    source: by.omiaD,
  },
  {
    id: 'no comb',
    loci: ['bd'],
    says: 'Two copies of combless leave no comb but small knobs.',
    when: (bird) => pure(bird, 'bd'),
    look: { comb: 'none' },
    certainty: 'doubtful',
    source: by.general,
  },
]
