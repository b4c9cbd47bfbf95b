// core/engine/fractions.ts: tables in exact fractions, numerators over one factor: for what is shown as a fraction, and to prove the doubles.
import type { Offsets, Tables } from './factor.ts'
import { gcd, ratio, type Ratio, rational } from './num.ts'

export const fractions: Tables<Ratio, bigint[], Ratio> = {
  ring: rational,
  table: (cells) => {
    const shared = cells.reduce((sum, { d }) => lcm(sum, d), 1n)
    const weights = cells.map(({ n, d }) => (n * shared) / d)
    return { weights, scale: rational.over(fractions.settle(weights), ratio(shared)) }
  },
  ones: (cells) => Array.from({ length: cells }, () => 1n),
  sum: (of, cells) => {
    const factors = of
      .filter((placed) => placed !== undefined)
      .map(({ weights, at }) => ({
        weights,
        to: placesOf(at.to),
        over: placesOf(at.over),
      }))
    const product = (k: number, r: number): bigint =>
      factors.reduce((all, { weights, to, over }) => all * weights[to[k]! + over[r]!]!, 1n)
    const each = [...factors[0]!.over.keys()]
    return Array.from({ length: cells }, (_, k) => each.reduce((sum, r) => sum + product(k, r), 0n))
  },
  over: (a, b) => {
    const shared = b.reduce((sum, x) => (x === 0n ? sum : lcm(sum, x)), 1n)
    return { weights: a.map((x, i) => (x === 0n ? 0n : x * (shared / b[i]!))), scale: ratio(1n, shared) }
  },
  power: (a, n) => a.map((x) => x ** BigInt(n)),
  settle: (weights) => {
    const shared = weights.reduce(gcd, 0n)
    if (shared > 1n) weights.forEach((x, i) => (weights[i] = x / shared))
    return ratio(shared === 0n ? 1n : shared)
  },
  total: (weights) => ratio(weights.reduce((sum, x) => sum + x, 0n)),
  shares: (weights) => {
    const total = weights.reduce((sum, x) => sum + x, 0n)
    return weights.map((x) => ratio(x, total))
  },
  unit: rational.one,
  join: rational.times,
  raise: ({ n, d }, times) => (times < 0 ? raised(d, n, -times) : raised(n, d, times)),
  value: rational.times,
}

const raised = (n: bigint, d: bigint, times: number): Ratio => ({ n: n ** BigInt(times), d: d ** BigInt(times) })
const placesOf = ({ outer, inner }: Offsets): number[] =>
  [...outer].flatMap((base) => Array.from(inner, (j) => base + j))
const lcm = (a: bigint, b: bigint): bigint => (a / gcd(a, b)) * b
