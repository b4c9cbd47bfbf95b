// core/looks/rules/limbs.ts: feathered shanks, toes, tail, and the genes that shorten legs or dwarf the bird.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure, type Bird } from '../carries.ts'
import type { Rule } from '../rule.ts'

const booted = (bird: Bird): boolean => has(bird, 'Pti-1^B') || has(bird, 'Pti-1^L') || has(bird, 'Pti-2')
const heavy = (bird: Bird): boolean => has(bird, 'Pti-1^B') && !has(bird, 'pti-1+')
const dwarf = (bird: Bird): boolean => !has(bird, 'Dw+') || pure(bird, 'adw')

export const limbs: readonly Rule[] = [
  {
    id: 'lightly feathered shanks',
    loci: ['Pti', 'Pti2'],
    says: 'One copy of feathered shanks, or the light form of it, feathers the outer shank lightly; some birds with one copy stay clean.',
    when: booted,
    look: { feet: 'light feathering' },
    certainty: 'usual',
    hedge: 'how far the shank is feathered varies, down to none',
    source: by.omiaPti,
  },
  {
    id: 'feathered shanks',
    loci: ['Pti'],
    says: 'Two copies of feathered shanks, the heavy form among them, feather shanks and toes.',
    when: heavy,
    look: { feet: 'feathered' },
    certainty: 'sure',
    source: by.omiaPti,
  },
  {
    id: 'fifth toe',
    loci: ['Po'],
    says: 'Two copies of polydactyly make a fifth toe on each foot, as a rule.',
    when: (bird) => !has(bird, 'po+'),
    look: { toes: 'five' },
    certainty: 'usual',
    source: by.omiaPo,
  },
  {
    id: 'half a fifth toe',
    loci: ['Po'],
    says: 'One copy of polydactyly mostly shows: 73 in 100 half-Houdans and 96 in 100 half-Silkies had a fifth toe.',
    when: (bird) => copies(bird, 'po+') === 1,
    look: { toes: 'four or five' },
    certainty: 'sure',
    source: by.davenport1909,
  },
  {
    id: 'rumpless',
    loci: ['Rp'],
    says: 'Rumpless takes the tail away; some birds with one copy keep theirs, and they hatch less well.',
    when: (bird) => has(bird, 'Rp'),
    look: (bird) => ({ tail: pure(bird, 'Rp') ? 'rumpless' : 'rumpless or tailed' }),
    certainty: 'usual',
    source: by.davenport1909,
  },
  {
    id: 'creeper',
    loci: ['Cp'],
    says: 'One copy of creeper makes short legs.',
    when: (bird) => copies(bird, 'Cp') === 1,
    look: { legs: 'short' },
    certainty: 'sure',
    source: by.omiaCp,
  },
  {
    id: 'double creeper',
    loci: ['Cp'],
    says: 'Two copies of creeper kill the chick early in the egg.',
    when: (bird) => pure(bird, 'Cp'),
    look: { legs: 'short', dies: 'in the egg' },
    certainty: 'sure',
    source: by.omiaCp,
  },
  {
    id: 'dwarf',
    loci: ['dw', 'adw'],
    says: 'The dwarf genes, pure, shorten the shanks and take a quarter to two fifths off the weight; it shows from 8 to 10 weeks.',
    when: dwarf,
    look: (_bird, { legs }) => ({ legs: legs === 'short' ? 'short' : 'dwarf' }),
    certainty: 'sure',
    source: by.omiaDw,
  },
  {
    id: 'vulture hocks',
    loci: ['v'],
    says: 'Two copies of vulture hocks grow stiff feathers from the hock.',
    when: (bird) => pure(bird, 'v'),
    look: {},
    certainty: 'doubtful',
    hedge: 'vulture hocks may show',
    source: by.general,
  },
]
