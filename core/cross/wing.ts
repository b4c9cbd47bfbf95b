// core/cross/wing.ts: whether feathering speed of the parents is known, and if not, how likely it parts the sexes.
import type { Founder } from './founder.ts'
import { foundersOf, type Pedigree } from './pedigree.ts'

/** Chance that a founder passes this test at locus K; undefined where its K is not in doubt. */
function chance({ doubts }: Founder, test: (pair: readonly string[]) => boolean): number | undefined {
  const doubt = doubts.find(({ choices }) => choices[0]?.genotype['K'] !== undefined)
  return doubt?.choices.filter(({ genotype }) => test(genotype['K']!)).reduce((sum, { p }) => sum + p, 0)
}

const fast = (pair: readonly string[]): boolean => pair.every((allele) => allele === 'k+')
const slow = (pair: readonly string[]): boolean => pair.some((allele) => allele !== 'k+')

/** Belief from which a breed is taken as fast. */
const nearlySure = 0.85

/**
 * 'known' where nobody's K is in doubt; else, under a cock of a fast breed, the belief that the hens are slow; 0 for all others,
 * since two guesses make no sign.
 */
export function wingChance(sire: Pedigree, dam: Pedigree): 'known' | number {
  const doubtful = [...foundersOf(sire), ...foundersOf(dam)].some((bird) => chance(bird, () => true) !== undefined)
  if (!doubtful) return 'known'
  if (sire.kind !== 'founder' || dam.kind !== 'founder') return 0
  const cock = sire.founder
  const cockFast = chance(cock, fast) ?? (fast(cock.known['K'] ?? ['k+']) ? 1 : 0)
  const hensSlow = chance(dam.founder, slow) ?? (slow(dam.founder.known['K'] ?? ['k+']) ? 1 : 0)
  return cockFast >= nearlySure ? cockFast * hensSlow : 0
}
