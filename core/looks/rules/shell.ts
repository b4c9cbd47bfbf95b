// core/looks/rules/shell.ts: blue shell. A hen lays it; a cock passes it on unseen.
import { literature as by } from '../../data/literature.ts'
import { copies } from '../carries.ts'
import type { Rule } from '../rule.ts'

export const shell: readonly Rule[] = [
  {
    id: 'blue shell',
    loci: ['O'],
    says: 'One copy of blue shell colours the shell through; brown laid over it makes green to olive.',
    when: (bird) => copies(bird, 'O') === 1,
    look: { shellBlue: 'one copy' },
    certainty: 'sure',
    source: by.punnett1933,
  },
  {
    id: 'blue shell, two copies',
    loci: ['O'],
    says: 'Two copies of blue shell make a deeper blue, and every chick gets one.',
    when: (bird) => copies(bird, 'O') === 2,
    look: { shellBlue: 'two copies' },
    certainty: 'sure',
    source: by.wang2013,
  },
]
