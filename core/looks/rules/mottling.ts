// core/looks/rules/mottling.ts: white tips on grown feathers, and the extra white of mottled chicks.
import { literature as by } from '../../data/literature.ts'
import { has } from '../carries.ts'
import type { Rule } from '../rule.ts'

export const mottling: readonly Rule[] = [
  {
    id: 'mottled',
    loci: ['mo'],
    says: 'Two copies of mottling tip the feathers with white, more at each moult; on red, with a black bar before the white.',
    when: (bird, { white }) => !white && !has(bird, 'Mo+'),
    look: { mottled: true },
    certainty: 'sure',
    hedge: 'the amount of white varies and grows with each moult',
    source: by.kinoshita2014,
  },
  {
    id: 'mottled chick',
    loci: ['mo', 'E'],
    says: 'Mottled chicks of dark down have much white on face, throat, belly and wings, which can be taken for a head spot.',
    when: (_bird, { mottled, base }) => mottled && base.startsWith('E'),
    look: (_bird, { headSpotClear }) => ({
      extraWhite: true,
      belly: 'pale',
      headSpotClear: headSpotClear === 'no' ? 'no' : 'faint',
    }),
    certainty: 'usual',
    hedge: 'white on the face can be taken for a head spot',
    source: by.kinoshita2014,
  },
]
