// core/engine/num.ts: the numbers the engine runs on: doubles to answer with, exact fractions to show and to prove.

/** A fraction in lowest terms, d > 0. */
export type Ratio = { readonly n: bigint; readonly d: bigint }

/** What the engine asks of a number. Probabilities only: `minus` is used for 1 - r and nothing else. */
export type Ring<T> = {
  readonly zero: T
  readonly one: T
  readonly of: (ratio: Ratio) => T
  readonly plus: (a: T, b: T) => T
  readonly minus: (a: T, b: T) => T
  readonly times: (a: T, b: T) => T
  readonly over: (a: T, b: T) => T
  readonly isZero: (a: T) => boolean
}

export const gcd = (a: bigint, b: bigint): bigint => {
  while (b !== 0n) [a, b] = [b, a % b]
  return a
}

/** n / d in lowest terms; d must not be 0. */
export const ratio = (n: bigint, d = 1n): Ratio => {
  const shared = gcd(n < 0n ? -n : n, d < 0n ? -d : d) * (d < 0n ? -1n : 1n)
  return shared === 1n ? { n, d } : { n: n / shared, d: d / shared }
}

export const f64: Ring<number> = {
  zero: 0,
  one: 1,
  of: (x) => toNumber(x),
  plus: (a, b) => a + b,
  minus: (a, b) => a - b,
  times: (a, b) => a * b,
  over: (a, b) => a / b,
  isZero: (a) => a === 0,
}

export const rational: Ring<Ratio> = {
  zero: { n: 0n, d: 1n },
  one: { n: 1n, d: 1n },
  of: (x) => x,
  plus: (a, b) => ratio(a.n * b.d + b.n * a.d, a.d * b.d),
  minus: (a, b) => ratio(a.n * b.d - b.n * a.d, a.d * b.d),
  times: (a, b) => ratio(a.n * b.n, a.d * b.d),
  over: (a, b) => ratio(a.n * b.d, a.d * b.n),
  isZero: (a) => a.n === 0n,
}

/** The nearest double, or within one unit in the last place of it, however long the fraction. */
export function toNumber({ n, d }: Ratio): number {
  const long = Math.max(bits(n), bits(d)) > 1000
  if (!long) return Number(n) / Number(d)
  const shift = bits(n) - bits(d) - 64 // keeps 64 or 65 significant bits of the quotient
  const quotient = shift >= 0 ? n / (d << BigInt(shift)) : (n << BigInt(-shift)) / d
  return Number(quotient) * 2 ** Math.max(shift, -1000) * 2 ** Math.min(shift + 1000, 0)
}

const bits = (x: bigint): number => (x < 0n ? -x : x).toString(16).length * 4

/** Reads '3/7', '0.025', '1e-3' or a number as the exact fraction its digits say. Undefined where it is none. */
export function readRatio(text: string | number): Ratio | undefined {
  const [top = '', bottom = '1', ...more] = String(text).split('/')
  const n = readDecimal(top)
  const d = readDecimal(bottom)
  return more.length > 0 || n === undefined || d === undefined || d.n === 0n ? undefined : rational.over(n, d)
}

function readDecimal(text: string): Ratio | undefined {
  const parts = /^\s*([+-]?)(\d*)\.?(\d*)(?:e([+-]?\d{1,4}))?\s*$/i.exec(text)
  if (parts === null || `${parts[2]}${parts[3]}` === '') return undefined
  const [, sign, whole = '', places = '', exponent = '0'] = parts
  const digits = BigInt(`${whole}${places}`) * (sign === '-' ? -1n : 1n)
  const tens = Number(exponent) - places.length
  return tens >= 0 ? ratio(digits * 10n ** BigInt(tens)) : ratio(digits, 10n ** BigInt(-tens))
}

export const formatRatio = ({ n, d }: Ratio): string => (d === 1n ? `${n}` : `${n}/${d}`)
