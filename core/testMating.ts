// core/testMating.ts: how many chicks unmask a carrier, and how many clear ones make it unlikely enough.
// Independent chicks of one mating: P(all n clear) = clear^n. Where the mate is not known the chicks are not
// independent of each other, so the powers are taken inside the sum over what the mate may be.
import type { Result } from './vocabulary.ts'

export type TestMatingFault = { readonly kind: 'not-a-chance'; readonly name: string; readonly got: number }

/** A number of chicks, or what is approached without ever being reached. */
export type Chicks =
  | { readonly kind: 'enough'; readonly n: number }
  | { readonly kind: 'never'; readonly limit: number }

/** One way things may be: its weight, whether the bird in question is then a carrier, and the chance of a clear chick. */
export type TestState = { readonly weight: number; readonly carrier: boolean; readonly clear: number }

/** Room for the rounding of a power of a double. */
const slack = 1 + 1e-12

/**
 * The smallest brood that unmasks a known mating.
 *
 * @param clear chance that one chick of a carrier does not show the allele: 3/4 on a known carrier, 1/2 on a bird that shows it
 * @param missed chance that a carrier may slip through: 0.05 for 95 in 100
 * @returns the least n >= 1 with clear^n <= missed: 17 for 3/4 and 0.01, since (3/4)^16 = 0.01002
 * @fault not-a-chance when either lies outside 0 to 1, ends excluded
 */
export function chicksToUnmask(clear: number, missed: number): Result<number, TestMatingFault> {
  for (const [name, got] of [
    ['clear', clear],
    ['missed', missed],
  ] as const)
    if (!(got > 0 && got < 1)) return { ok: false, fault: { kind: 'not-a-chance', name, got } }
  return {
    ok: true,
    value: Math.max(
      1,
      least((n) => clear ** n, missed),
    ),
  }
}

/** The chance that a carrier among these states has shown itself after n more chicks. */
export const unmasked = (states: readonly TestState[], n: number): number => 1 - slipThrough(states, n)

function slipThrough(states: readonly TestState[], n: number): number {
  const carriers = states.filter(({ carrier }) => carrier)
  const all = allClear(carriers, 0)
  return all === 0 ? 0 : allClear(carriers, n) / all // a bird that cannot carry it has nothing to let slip
}

const allClear = (states: readonly TestState[], n: number): number =>
  states.reduce((sum, { weight, clear }) => sum + weight * clear ** n, 0)

/** The chance that the bird is a carrier once n more chicks are all clear. */
export function stillCarrier(states: readonly TestState[], n: number): number {
  const carriers = allClear(
    states.filter(({ carrier }) => carrier),
    n,
  )
  return carriers === 0 ? 0 : carriers / allClear(states, n)
}

/**
 * Power: how many clear chicks until a carrier would have shown itself.
 *
 * @param soFar how much likelier the chicks already seen are from a carrier than from a clear bird; 1 for none
 * @param missed 0.05 for 95 in 100
 */
export function chicksForPower(states: readonly TestState[], missed: number, soFar = 1): Chicks {
  return reach((n) => soFar * slipThrough(states, n), missed)
}

/** Posterior: how many clear chicks until the chance of a carrier is no more than `doubt`. */
export const chicksForDoubt = (states: readonly TestState[], doubt: number): Chicks =>
  reach((n) => stillCarrier(states, n), doubt)

/**
 * The same with several mates of one kind, each with a brood of k: each mate is one of these genotypes by its share,
 * so a mate is clear with the mean of clear^k, and mates are independent.
 *
 * @returns number of mates
 */
export function matesForPower(
  mates: readonly { readonly share: number; readonly clear: number }[],
  k: number,
  missed: number,
): Chicks {
  const clear = mates.reduce((sum, mate) => sum + mate.share * mate.clear ** k, 0)
  return reach((n) => clear ** n, missed)
}

const beyond = 2 ** 30 // chicks: as good as for ever

function reach(chance: (n: number) => number, target: number): Chicks {
  const limit = chance(beyond)
  return limit > target * slack ? { kind: 'never', limit } : { kind: 'enough', n: least(chance, target) }
}

/** The least n >= 0 at which a falling chance is no more than the target: gallop, then bisect. */
function least(chance: (n: number) => number, target: number): number {
  const reached = (n: number): boolean => chance(n) <= target * slack
  if (reached(0)) return 0
  let high = 1
  while (!reached(high)) high *= 2
  let low = high / 2 // not reached
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (reached(middle)) high = middle
    else low = middle
  }
  return high
}
