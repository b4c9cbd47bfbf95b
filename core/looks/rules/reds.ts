// core/looks/rules/reds.ts: how deep the red is: mahogany, dilute, champagne blond, cream; and the patterns that hang on it.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure } from '../carries.ts'
import type { Draft, Rule } from '../rule.ts'

type Red = Draft['red']
const hasRed = ({ red }: Draft): boolean => red !== 'none'

const deeper: Partial<Record<Red, Red>> = { gold: 'red', red: 'mahogany' }
const paler: Partial<Record<Red, Red>> = { mahogany: 'red', red: 'gold', gold: 'buff', buff: 'straw' }
const creamed: Partial<Record<Red, Red>> = { mahogany: 'gold', red: 'straw', gold: 'cream', buff: 'cream' }
const step = (way: Partial<Record<Red, Red>>, red: Red): Red => way[red] ?? red

export const reds: readonly Rule[] = [
  {
    id: 'mahogany',
    loci: ['Mh'],
    says: 'Mahogany deepens gold to red, two copies to deep red, in down and feather.',
    when: (bird, draft) => hasRed(draft) && has(bird, 'Mh'),
    look: (bird, { red, down }) => ({
      red: pure(bird, 'Mh') ? step(deeper, step(deeper, red)) : step(deeper, red),
      down: down === 'buff' ? 'red-buff' : down,
    }),
    certainty: 'usual',
    source: by.smyth1990,
  },
  {
    id: 'dilute',
    loci: ['Di'],
    says: 'Dilute pales red to gold and gold to buff.',
    when: (bird, draft) => hasRed(draft) && has(bird, 'Di'),
    look: (_bird, { red, down }) => ({ red: step(paler, red), down: down === 'red-buff' ? 'buff' : down }),
    certainty: 'usual',
    source: by.smyth1990,
  },
  {
    id: 'champagne blond',
    loci: ['cb'],
    says: 'Two copies of champagne blond pale gold towards straw.',
    when: (bird, draft) => hasRed(draft) && pure(bird, 'cb'),
    look: (_bird, { red }) => ({ red: step(paler, step(paler, red)), toneClear: 'poor' }),
    certainty: 'doubtful',
    hedge: 'pale gold may pass for silver',
    source: by.smyth1990,
  },
  {
    id: 'cream',
    loci: ['ig'],
    says: 'Two copies of cream pale gold to cream, grey the down, and leave silver alone.',
    when: (bird, draft) => hasRed(draft) && pure(bird, 'ig'),
    look: (_bird, { red, down }) => ({
      red: step(creamed, red),
      down: down === 'brown' ? 'grey-brown' : down,
      toneClear: 'poor',
    }),
    certainty: 'usual',
    hedge: 'cream may pass for silver',
    source: by.smyth1990,
  },
  {
    id: 'self buff',
    loci: ['Co', 'Di', 'S'],
    says: 'Columbian with dilute, two copies of each, leaves hardly any black, at most a little in tail or flights: self buff.',
    when: (bird, { pattern }) => pattern === 'columbian' && copies(bird, 'Di') === 2 && !has(bird, 'S'),
    look: { pattern: 'self', black: 'none', down: 'buff' },
    certainty: 'usual',
    source: by.smyth1990,
  },
]
