// core/engine/doubles.ts: tables in doubles, for answers. The inner loops of the engine.
import type { Index, Placed, Tables } from './factor.ts'
import { f64 } from './num.ts'

type Doubles = Placed<Float64Array>

function sumOne(sums: Float64Array, { outer, inner }: Index, one: Doubles): void {
  const [a, innerA] = [one.weights, one.at.inner]
  for (let i = 0; i < outer.length; i += 1) {
    const [base, baseA] = [outer[i]!, one.at.outer[i]!]
    for (let j = 0; j < inner.length; j += 1) sums[base + inner[j]!]! += a[baseA + innerA[j]!]!
  }
}

function sumTwo(sums: Float64Array, { outer, inner }: Index, one: Doubles, two: Doubles): void {
  const [a, innerA, b, innerB] = [one.weights, one.at.inner, two.weights, two.at.inner]
  for (let i = 0; i < outer.length; i += 1) {
    const [base, baseA, baseB] = [outer[i]!, one.at.outer[i]!, two.at.outer[i]!]
    for (let j = 0; j < inner.length; j += 1) sums[base + inner[j]!]! += a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]!
  }
}

function sumThree(sums: Float64Array, { outer, inner }: Index, one: Doubles, two: Doubles, three: Doubles): void {
  const [a, innerA, b, innerB] = [one.weights, one.at.inner, two.weights, two.at.inner]
  const [c, innerC] = [three.weights, three.at.inner]
  for (let i = 0; i < outer.length; i += 1) {
    const [base, baseA, baseB, baseC] = [outer[i]!, one.at.outer[i]!, two.at.outer[i]!, three.at.outer[i]!]
    for (let j = 0; j < inner.length; j += 1)
      sums[base + inner[j]!]! += a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]! * c[baseC + innerC[j]!]!
  }
}

export const doubles: Tables<number, Float64Array, number> = {
  ring: f64,
  table: (cells) => ({ weights: Float64Array.from(cells), scale: 0 }),
  ones: (cells) => new Float64Array(cells).fill(1),
  product: ({ weights: a, at: atA }, { weights: b, at: atB }) => {
    const [innerA, innerB] = [atA.inner, atB.inner]
    const into = new Float64Array(atA.outer.length * innerA.length)
    for (let i = 0, k = 0; i < atA.outer.length; i += 1) {
      const [baseA, baseB] = [atA.outer[i]!, atB.outer[i]!]
      for (let j = 0; j < innerA.length; j += 1, k += 1) into[k] = a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]!
    }
    return into
  },
  sum: ([one, two, three], at, cells) => {
    const sums = new Float64Array(cells)
    if (two === undefined) sumOne(sums, at, one)
    else if (three === undefined) sumTwo(sums, at, one, two)
    else sumThree(sums, at, one, two, three)
    return sums
  },
  over: (a, b) => ({ weights: a.map((x, i) => (x === 0 ? 0 : x / b[i]!)), scale: 0 }),
  power: (a, n) => a.map((x) => x ** n),
  settle: (weights) => {
    let largest = 0
    for (const x of weights) if (x > largest) largest = x
    const exponent = largest === 0 ? 0 : Math.floor(Math.log2(largest))
    if (exponent !== 0) for (let i = 0; i < weights.length; i += 1) weights[i]! *= 2 ** -exponent
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
