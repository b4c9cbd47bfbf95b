// core/engine/doubles.ts: tables in doubles, for answers.
import type { Tables } from './factor.ts'
import { sumInto } from './loops.ts'
import { f64 } from './num.ts'

export const doubles: Tables<number, Float64Array, number> = {
  ring: f64,
  table: (cells) => ({ weights: Float64Array.from(cells), scale: 0 }),
  ones: (cells) => new Float64Array(cells).fill(1),
  sum: (of, cells) => {
    const sums = new Float64Array(cells)
    sumInto(sums, of)
    return sums
  },
  over: (a, b) => {
    const weights = new Float64Array(a.length)
    for (let i = 0; i < a.length; i += 1) weights[i] = a[i] === 0 ? 0 : a[i]! / b[i]!
    return { weights, scale: 0 }
  },
  power: (a, n) => a.map((x) => x ** n),
  settle: (weights) => {
    let largest = 0
    for (let i = 0; i < weights.length; i += 1) if (weights[i]! > largest) largest = weights[i]!
    const exponent = largest === 0 ? 0 : Math.floor(Math.log2(largest))
    const factor = 2 ** -exponent
    if (exponent !== 0) for (let i = 0; i < weights.length; i += 1) weights[i]! *= factor
    return exponent
  },
  total: (weights) => weights.reduce((sum, x) => sum + x, 0),
  shares: (weights) => {
    const total = doubles.total(weights)
    return Array.from(weights, (x) => x / total)
  },
  unit: 0,
  join: (a, b) => a + b,
  raise: (a, n) => a * n,
  value: (mass, scale) => mass * 2 ** scale,
}
