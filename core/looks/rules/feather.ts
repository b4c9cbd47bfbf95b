// core/looks/rules/feather.ts: feathering at hatch, frizzle, silkie, naked neck, hen feathering.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure, type Bird } from '../carries.ts'
import type { Rule } from '../rule.ts'

const slow = (bird: Bird): boolean => has(bird, 'K') || has(bird, 'K^s') || has(bird, 'K^n')
const silkie = (bird: Bird): boolean => pure(bird, 'h')

export const feather: readonly Rule[] = [
  {
    id: 'slow feathering',
    loci: ['K'],
    says: 'One copy of slow feathering is enough: in the first day or two the wing primaries are no longer than their coverts.',
    when: slow,
    look: { wing: 'slow' },
    certainty: 'sure',
    source: by.omiaK,
  },
  {
    id: 'frizzled',
    loci: ['F'],
    says: 'One copy of frizzle curls the feathers.',
    when: (bird) => copies(bird, 'F') === 1,
    look: { feather: 'frizzled' },
    certainty: 'sure',
    source: by.hutt1930,
  },
  {
    id: 'frizzle held back',
    loci: ['F', 'mf'],
    says: 'Two copies of the modifier can hide one copy of frizzle.',
    when: (bird) => copies(bird, 'F') === 1 && pure(bird, 'mf'),
    look: { feather: 'normal' },
    certainty: 'doubtful',
    hedge: 'a frizzled bird may pass for smooth',
    source: by.hutt1949,
  },
  {
    id: 'over-frizzled',
    loci: ['F'],
    says: 'Two copies of frizzle make brittle, woolly feathers that break off: mate frizzles to smooth birds.',
    when: (bird) => pure(bird, 'F'),
    look: { feather: 'over-frizzled' },
    certainty: 'sure',
    source: by.hutt1930,
  },
  {
    id: 'silkie feather',
    loci: ['h', 'F'],
    says: 'Two copies of silkie leave feathers without hooks, like fur.',
    when: (bird) => silkie(bird) && !has(bird, 'F'),
    look: { feather: 'silkie' },
    certainty: 'sure',
    source: by.omiaNa,
  },
  {
    id: 'bow tie',
    loci: ['Na'],
    says: 'One copy of naked neck leaves a tuft at the front of a bare neck.',
    when: (bird) => copies(bird, 'Na') === 1,
    look: { neck: 'bow-tie' },
    certainty: 'sure',
    source: by.omiaNa,
  },
  {
    id: 'naked neck',
    loci: ['Na'],
    says: 'Two copies of naked neck leave the neck bare.',
    when: (bird) => pure(bird, 'Na'),
    look: { neck: 'naked' },
    certainty: 'sure',
    source: by.omiaNa,
  },
  {
    id: 'hen-feathered',
    loci: ['Hf'],
    says: 'Hen feathering gives a cock the rounded feathers and the pattern of a hen.',
    when: (bird) => bird.sex === 'M' && has(bird, 'Hf'),
    look: { henFeathered: true },
    certainty: 'usual',
    source: by.general,
  },
]
