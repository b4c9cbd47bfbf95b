// core/looks/rules/dominantWhite.ts: dominant white, which takes out black and leaves red: white birds, and pyles.
import { literature as by } from '../../data/literature.ts'
import { has, pure } from '../carries.ts'
import type { Draft, Patch, Rule } from '../rule.ts'

const solid = ({ pattern, base }: Draft): boolean =>
  pattern === 'solid' || pattern === 'solid with leakage' || base === 'E' || base === 'E/E^R'
const pale = ({ red }: Draft): boolean => red === 'silver' || red === 'brassy silver' || red === 'salmon'
const darkDown = ({ base }: Draft): boolean => base.startsWith('E')

const unread: Patch = { headSpot: 'hidden', headSpotClear: 'no' }
const allWhite: Patch = { white: true, pattern: 'white', barring: 'none', redShoulder: false, leak: 'none' }

export const dominantWhite: readonly Rule[] = [
  {
    id: 'dominant white on black',
    loci: ['E', 'I'],
    says: 'Dominant white makes a black bird white; with one copy some dark flecks show, oftener in hens, and chicks may have a dark spot.',
    when: (bird, draft) => has(bird, 'I') && solid(draft),
    look: (bird) => ({
      ...allWhite,
      ...unread,
      black: pure(bird, 'I') ? 'white' : 'white with dark flecks',
      red: 'none',
      down: 'pale yellow',
      downPattern: pure(bird, 'I') ? 'plain' : 'smudged',
      belly: 'same',
      tone: 'hidden',
      toneClear: 'no',
    }),
    certainty: 'sure',
    hedge: 'a little red may show on shoulder or breast',
    source: by.davenport1909,
  },
  {
    id: 'dominant white on silver',
    loci: ['I', 'S'],
    says: 'Dominant white takes out the black and silver the red, so that together they make a white bird.',
    when: (bird, draft) => has(bird, 'I') && !solid(draft) && pale(draft),
    look: (bird, draft) => ({
      ...allWhite,
      black: pure(bird, 'I') ? 'white' : 'white with dark flecks',
      red: draft.red === 'brassy silver' ? 'brassy silver' : 'white',
    }),
    certainty: 'sure',
    source: by.henderson,
  },
  {
    id: 'dominant white on red',
    loci: ['I'],
    says: 'Dominant white turns the black parts of a red bird white and leaves the red: pyle, or white-tailed buff and red.',
    when: (bird, draft) => has(bird, 'I') && !solid(draft) && !pale(draft) && draft.black !== 'none',
    look: (bird) => ({ black: pure(bird, 'I') ? 'white' : 'white with dark flecks' }),
    certainty: 'sure',
    source: by.chabo,
  },
  {
    id: 'dominant white fades red',
    loci: ['I'],
    says: 'Two copies of dominant white also fade red a little.',
    when: (bird, draft) => pure(bird, 'I') && draft.red === 'mahogany',
    look: { red: 'red' },
    certainty: 'usual',
    source: by.kerje2004,
  },
  {
    id: 'dominant white in down',
    loci: ['E', 'I'],
    says: 'Dominant white pales dark and striped down, so that neither spot nor gold and silver can be trusted there; on pale and columbian down they stay readable.',
    when: (bird, draft) =>
      has(bird, 'I') && draft.tone !== 'hidden' && (darkDown(draft) || draft.downPattern !== 'plain'),
    look: (_bird, draft) => ({
      ...unread,
      down: draft.tone === 'silver' ? 'pale yellow' : 'cream',
      downPattern: 'faint stripes',
      toneClear: draft.restrained === 'fully' && !darkDown(draft) ? 'good' : 'no',
    }),
    certainty: 'doubtful',
    source: by.smyth1990,
  },
]
