// core/data/hen/practice.ts: lines for which keepers and print do not agree on the eggs: both figures, and whose they are. Data only.
import type { Citation } from '../../vocabulary.ts'

type Figure = { readonly low: number; readonly high: number }
export type Disagreement = {
  readonly breed: string
  readonly line: string
  readonly practice: Figure
  readonly published: Figure
  readonly publishedOf: string // which birds the published figure is about
  readonly sources: readonly Citation[]
}

export const disagreements: readonly Disagreement[] = [
  {
    breed: 'Rhode Island Red',
    line: 'heritage',
    practice: { low: 200, high: 250 },
    published: { low: 150, high: 220 },
    publishedOf: 'contest and show stock',
    sources: [
      { ref: 'keepers of old lines kept for use', status: 'common practice' },
      { ref: 'US laying competitions 1911-19, 1132 Rhode Island Reds: mean 153.6', status: 'read' },
    ],
  },
  {
    breed: 'Rhode Island Red',
    line: 'production',
    practice: { low: 280, high: 290 },
    published: { low: 250, high: 280 },
    publishedOf: 'hens kept at home',
    sources: [
      { ref: 'keepers, in the best conditions', status: 'common practice' },
      { ref: 'brown hybrids in cages at Ankara: 303.9 to 72 weeks', status: 'read' },
      { ref: 'judgement of the project for home keeping', status: 'from memory' },
    ],
  },
  {
    breed: 'Light Sussex',
    line: 'utility',
    practice: { low: 240, high: 260 },
    published: { low: 150, high: 200 },
    publishedOf: 'unselected and state-registered flocks',
    sources: [
      { ref: 'sellers’ pages', status: 'common practice' },
      { ref: 'a university’s unselected flock: 150; a breed page: 180-200; a state register: 180, then 150', status: 'read' },
    ],
  },
]
