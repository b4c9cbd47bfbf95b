// core/data/hen/hatching.ts: fertility, hatch, losses in rearing, and the calendar of a hatch. Data only.
import type { Citation } from '../../vocabulary.ts'

const judged: Citation = { ref: 'judgement of the project', status: 'from memory' }

/** Shares of eggs set, of fertile eggs and of chicks hatched, for eggs of the keeper’s own hens and for posted ones. */
export const hatching = {
  own: { fertility: 0.85, hatchOfFertile: 0.85, between: 0.12 },
  posted: { fertility: 0.82, hatchOfFertile: 0.55, between: 0.18 },
  /** More of the fertile eggs where the chicks are cross-bred. */
  crossbredEmbryo: 0.02,
  femaleShare: 0.5,
  survival: 0.95, // from hatch to point of lay
  sources: [
    { ref: 'fertility 93.7 and 88.3 in 100: Reaseheath, J. Agric. Sci. (Leghorn; Leghorn x Rhode Island Red)', status: 'read' },
    { ref: '88.6 fertile, 93.5 of those hatched in 100: Kashmiri station Rhode Island Reds', status: 'read' },
    { ref: '80.0 and 78.4 in 100: Kadaknath on litter, IJLR 2018', status: 'read' },
    { ref: 'home incubators: 50 poor, 75 good, 85-90 very good; posted eggs about half or less', status: 'common practice' },
    { ref: 'Hays 1945, Poult. Sci.: 49.7 in 100 males at hatch', status: 'read' },
    judged,
  ] as readonly Citation[],
} as const

/** Days from setting, day 0. */
export const hatchDays = {
  candle: 7,
  secondCandle: 14,
  lockdown: 18,
  hatch: 21,
  feathered: 21 + 42,
  /** Where no line is told: 20 to 24 weeks from hatch. */
  pointOfLay: { low: 21 + 140, likely: 21 + 154, high: 21 + 168 },
  sources: [{ ref: 'incubation of hens’ eggs as everybody sets them', status: 'common practice' }] as readonly Citation[],
} as const

/** Weeks to leave after taking a cock away before eggs are kept for hatching, and how long his sperm lives in the hen. */
export const newCock = {
  waitWeeks: { low: 3, high: 4 },
  spermWeeks: { low: 2, high: 3 },
  sources: [{ ref: 'keepers and extension pages', status: 'common practice' }] as readonly Citation[],
} as const

/** Hens to one cock. */
export const hensPerCock = {
  light: { low: 10, high: 12 },
  heavy: { low: 8, high: 10 },
  giant: { low: 6, high: 8 },
  giantFromKg: 4.4, // a cock of this weight
  bantam: { low: 6, high: 10 },
  sources: [{ ref: 'keepers; older books go to 15 for light breeds', status: 'common practice' }] as readonly Citation[],
} as const
