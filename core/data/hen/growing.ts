// core/data/hen/growing.ts: weight and feed of growing birds by week. Data only.
import type { Citation } from '../../vocabulary.ts'

/** A cockerel of a heavy breed that will weigh `grownKg`: share of that weight reached, and feed eaten since hatch. */
export const growing = {
  grownKg: 3.8,
  byWeek: [
    { week: 0, share: 0.01, feedKg: 0 },
    { week: 4, share: 0.09, feedKg: 0.75 },
    { week: 8, share: 0.26, feedKg: 2.1 },
    { week: 12, share: 0.46, feedKg: 4.4 },
    { week: 16, share: 0.63, feedKg: 7.4 },
    { week: 20, share: 0.76, feedKg: 10.8 },
    { week: 24, share: 0.85, feedKg: 14 },
  ],
  feedKgPerWeekLater: 0.85,
  /** Doubt about the feed, as a share either way. */
  doubt: 0.15,
  sources: [
    { ref: 'keepers: 4 to 5 lb of feed to eight weeks, 15 to 18 lb to sixteen', status: 'common practice' },
    { ref: 'judgement of the project between these and the tables of layer breeders as remembered', status: 'from memory' },
  ] as readonly Citation[],
} as const

/** A meat hybrid, both sexes together, as it is grown at home: killed young, for later it is too heavy for its legs and heart. */
export const broiler = {
  breed: 'Cornish Cross',
  weeks: { low: 7, high: 8 },
  liveKg: 3.2,
  feedPerLive: 2, // kg of feed for each kg alive
  dressedShare: 0.72,
  sources: [
    { ref: 'keepers: 7 to 8 lb alive at seven to eight weeks on about 2 lb of feed for each', status: 'common practice' },
  ] as readonly Citation[],
} as const

/** Weeks to which a cockerel is fed where nothing is told: until he can be told apart, and until he is eaten. */
export const cockerelWeeks = { toldApart: 8, table: 16 } as const
