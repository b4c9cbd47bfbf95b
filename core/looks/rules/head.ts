// core/looks/rules/head.ts: crest, muffs and beard, ear tufts.
import { literature as by } from '../../data/literature.ts'
import { copies, pure } from '../carries.ts'
import type { Rule } from '../rule.ts'

export const head: readonly Rule[] = [
  {
    id: 'crest',
    loci: ['Cr'],
    says: 'Two copies of crest make a full crest, its size differing from breed to breed.',
    when: (bird) => pure(bird, 'Cr'),
    look: { crest: 'large' },
    certainty: 'sure',
    source: by.warrenHutt1936,
  },
  {
    id: 'half a crest',
    loci: ['Cr'],
    says: 'One copy of crest makes a small crest.',
    when: (bird) => copies(bird, 'Cr') === 1,
    look: { crest: 'small' },
    certainty: 'sure',
    source: by.warrenHutt1936,
  },
  {
    id: 'muffs',
    loci: ['Mb'],
    says: 'Two copies of muffs and beard make full muffs, seen at hatch as puffed cheeks.',
    when: (bird) => pure(bird, 'Mb'),
    look: { muffs: 'full' },
    certainty: 'usual',
    source: by.general,
  },
  {
    id: 'half muffs',
    loci: ['Mb'],
    says: 'One copy of muffs and beard makes small muffs.',
    when: (bird) => copies(bird, 'Mb') === 1,
    look: { muffs: 'small' },
    certainty: 'usual',
    source: by.general,
  },
  {
    id: 'ear tufts',
    loci: ['Et'],
    says: 'One copy of ear tufts makes a tufted bird, though 4 to 14 in 100 show none; many die late in the egg.',
    when: (bird) => copies(bird, 'Et') === 1,
    look: { tufts: 'tufted or clean', dies: 'some in the egg' },
    certainty: 'sure',
    hedge: 'a few birds with the gene show no tufts',
    source: by.somes1981,
  },
  {
    id: 'double ear tufts',
    loci: ['Et'],
    says: 'Two copies of ear tufts kill the chick late in the egg.',
    when: (bird) => pure(bird, 'Et'),
    look: { tufts: 'tufted', dies: 'in the egg' },
    certainty: 'sure',
    source: by.somes1981,
  },
]
