// core/data/hen/feed.ts: energy need of a laying hen, what her feed holds and what is spilt. Data only.
import type { Citation, Span } from '../../vocabulary.ts'

/** Kilocalories of metabolisable energy a hen a day: W^0.75 (173 - 1.95 T) + 5.5 dW + 2.07 EE. */
export const energyNeed = {
  maintenance: 173, // per kg^0.75 at 0 degrees C
  perDegree: 1.95, // less for each degree C
  perGramGain: 5.5,
  perGramEgg: 2.07,
  sources: [{ ref: 'National Research Council 1994, Nutrient Requirements of Poultry, 9th ed.', status: 'from memory' }],
} as const satisfies Record<string, number | readonly Citation[]>

/** The straight line is not trusted outside these temperatures: the hen is treated as if it were no colder or hotter. */
export const trustedCelsius = { low: 0, high: 30 } as const

export const yard = {
  celsius: { low: 5, likely: 13, high: 22 } satisfies Span, // mean of a temperate year, house and run
  /** More upkeep than the equation says, as a share: ranging against the trials in which hens ate less than it asks. */
  activity: { low: -0.08, likely: 0, high: 0.12 } satisfies Span,
  kcalPerKg: { low: 2650, likely: 2750, high: 2850 } satisfies Span, // layer feed of a small keeper
  waste: { low: 0.02, likely: 0.04, high: 0.08 } satisfies Span, // spilt, or eaten by others
  sources: [
    { ref: 'Baldinger and Bussemas 2021: organic dual-purpose crosses ate 133-143 g a day', status: 'read' },
    { ref: 'free-range hens: 121.8 kcal a kg^0.75 for upkeep, J. Anim. Sci. 2016, against 134 by the equation at 20 degrees C', status: 'read' },
    { ref: 'judgement of the project', status: 'from memory' },
  ] as readonly Citation[],
} as const
