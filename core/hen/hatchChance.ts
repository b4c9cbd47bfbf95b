// core/hen/hatchChance.ts: how many of so many eggs become pullets: exact distributions, no normal approximation.
import betaln from '@stdlib/math-base-special-betaln'
import binomialCdf from '@stdlib/stats-base-dists-binomial-cdf'
import binomialQuantile from '@stdlib/stats-base-dists-binomial-quantile'

/** Chance of at least `wanted` of `n`, each alone with chance p. */
export function chanceOfAtLeast(wanted: number, n: number, p: number): number {
  if (wanted <= 0) return 1
  return wanted > n ? 0 : Math.min(1, Math.max(0, 1 - binomialCdf(wanted - 1, n, p)))
}

/** Chance of at most `most` of `n`. */
export const chanceOfAtMost = (most: number, n: number, p: number): number => binomialCdf(most, n, p)

/** The number that a share `q` of hatches does not exceed. */
export const numberNotExceeded = (q: number, n: number, p: number): number => binomialQuantile(q, n, p)

/** Beyond this many eggs nothing is reckoned. */
const mostEggs = 1_000_000

/** The smallest n for which `enough(n)` holds, from <= n <= most; null where none does. `enough` must stay true once it is. */
function smallest(from: number, most: number, enough: (n: number) => boolean): number | null {
  let [low, high, step] = [from - 1, from, 1]
  while (high <= most && !enough(high)) [low, high, step] = [high, high + step, step * 2]
  if (high > most && (low >= most || !enough(most))) return null
  high = Math.min(high, most)
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (enough(middle)) high = middle
    else low = middle
  }
  return high
}

/**
 * Fewest eggs that give at least `wanted` with this certainty: wanted plus a quantile of the negative binomial.
 *
 * @param p chance of one egg, 0 < p <= 1
 * @param certainty 0 < certainty < 1
 * @returns null where a million would not be enough
 */
export const eggsFor = (wanted: number, p: number, certainty: number): number | null =>
  smallest(wanted, mostEggs, (n) => chanceOfAtLeast(wanted, n, p) >= certainty)

/** Hatch rate of one setting: a beta distribution about its mean, `between` its standard deviation from hatch to hatch. */
export type VaryingRate = { readonly mean: number; readonly between: number }

function betaShape({ mean, between }: VaryingRate): { readonly a: number; readonly b: number } {
  const strength = (mean * (1 - mean)) / between ** 2 - 1
  return { a: mean * strength, b: (1 - mean) * strength }
}

const lnChoose = (n: number, k: number): number => -Math.log(n + 1) - betaln(n - k + 1, k + 1)

/** Chance of exactly k of n where the rate varies from hatch to hatch: beta-binomial. */
export function chanceOfExactly(k: number, n: number, rate: VaryingRate): number {
  const { a, b } = betaShape(rate)
  return Math.exp(lnChoose(n, k) + betaln(k + a, n - k + b) - betaln(a, b))
}

/**
 * Chance of at least `wanted` pullets of n eggs where the whole setting hatches well or badly together.
 *
 * @param pullet chance that a hatched chick becomes one
 */
export function chanceOverHatches(wanted: number, n: number, rate: VaryingRate, pullet: number): number {
  let chance = 0
  for (let hatched = wanted; hatched <= n; hatched += 1)
    chance += chanceOfExactly(hatched, n, rate) * chanceOfAtLeast(wanted, hatched, pullet)
  return Math.min(1, chance)
}

/** As `eggsFor`, over good and bad hatches; null where no number of eggs that is worth reckoning makes so sure. */
export const eggsOverHatches = (wanted: number, rate: VaryingRate, pullet: number, certainty: number): number | null =>
  smallest(
    eggsFor(wanted, rate.mean * pullet, certainty / 2) ?? mostEggs,
    20 * wanted + 200,
    (n) => chanceOverHatches(wanted, n, rate, pullet) >= certainty,
  )
