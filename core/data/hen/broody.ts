// core/data/hen/broody.ts: how broodiness passes on: a hidden inclination and a threshold. Data only.
import type { Citation } from '../../vocabulary.ts'

/**
 * The inclination of a line is the normal quantile of its broody rate. A first cross stands nearer the broodier parent:
 * `dominance` of half the difference above the mean. Both numbers come out of one trial:
 * Leghorn 0, bantam 78.6, first crosses 56.8 and 61.6, back-cross to Leghorn 5.8 in 100.
 */
export const broodiness = {
  dominance: 0.73,
  never: -3.4, // inclination of a line in which it was bred out
  neverUpToRate: 0.01,
  doubt: 0.45, // on the scale of inclination, either way
  daysEach: { low: 21, likely: 35, high: 56 }, // days out of lay for one broody spell, no chicks reared
  whenEggsAreCollected: 0.6, // keepers who lift the eggs daily see this share of it
  sources: [
    { ref: 'Romanov et al. 2002 (White Leghorn x broody bantam, both ways, and back-cross)', status: 'read' },
    { ref: 'threshold fitted to that trial by the project', status: 'from memory' },
  ] as readonly Citation[],
} as const
