// core/data/hen/management.ts: under what keeping the egg figures hold, and what other keeping costs. Data only.
import type { Citation } from '../../vocabulary.ts'

/** First-year eggs of all lines are for full layer feed, 14 to 16 hours of light the year round, mild weather. */
export const lightHours = { low: 14, high: 16 } as const

/** Share of the eggs that is left under natural light alone at 40 to 55 degrees of latitude. */
export const naturalLight = { low: 0.8, high: 0.88 } as const

export const managementSources: readonly Citation[] = [
  { ref: 'Connecticut contests 1911-19, 1132 Rhode Island Reds: 22 in 100 of the eggs from November to February', status: 'read' },
  { ref: 'extension pages: lay falls under about 12 hours of light, best at 14 to 16', status: 'read' },
  { ref: 'judgement of the project from these', status: 'from memory' },
]
