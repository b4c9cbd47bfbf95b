// core/engine/loops.ts: the inner loops of the engine: products of two or three tables of doubles, summed.
// A cell costs little more than its loads, so what is loaded once serves two cells where it can.
import type { Placed, Product } from './factor.ts'

type Doubles = Placed<Float64Array>

/** Adds the product to cells that are zero so far. The longer of the two ways through the cells is the inner loop. */
export function sumInto(sums: Float64Array, of: Product<Float64Array>): void {
  const { outer, inner } = of[0].at.over
  if (outer.length * inner.length > sums.length) along(sums, of)
  else across(sums, of)
}

/** For each cell of the result, all that goes into it. */
function along(sums: Float64Array, [one, two, three]: Product<Float64Array>): void {
  const { outer, inner } = one.at.to
  for (let i = 0, k = 0; i < outer.length; i += 1)
    for (let j = 0; j < inner.length; j += 1, k += 1) {
      const from = ({ at: { to } }: Doubles): number => to.outer[i]! + to.inner[j]!
      sums[k] =
        three === undefined
          ? alongTwo(one, two, from(one), from(two))
          : alongThree(one, two, three, from(one), from(two), from(three))
    }
}

function alongTwo(one: Doubles, two: Doubles, fromA: number, fromB: number): number {
  const [a, { outer, inner: innerA }] = [one.weights, one.at.over]
  const [b, { outer: outerB, inner: innerB }] = [two.weights, two.at.over]
  let sum = 0
  for (let i = 0; i < outer.length; i += 1) {
    const [baseA, baseB] = [fromA + outer[i]!, fromB + outerB[i]!]
    for (let j = 0; j < innerA.length; j += 1) sum += a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]!
  }
  return sum
}

function alongThree(one: Doubles, two: Doubles, three: Doubles, fromA: number, fromB: number, fromC: number): number {
  const [a, { outer, inner: innerA }] = [one.weights, one.at.over]
  const [b, { outer: outerB, inner: innerB }] = [two.weights, two.at.over]
  const [c, { outer: outerC, inner: innerC }] = [three.weights, three.at.over]
  let sum = 0
  for (let i = 0; i < outer.length; i += 1) {
    const [baseA, baseB, baseC] = [fromA + outer[i]!, fromB + outerB[i]!, fromC + outerC[i]!]
    for (let j = 0; j < innerA.length; j += 1)
      sum += a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]! * c[baseC + innerC[j]!]!
  }
  return sum
}

/** For each thing to be summed over, or for two of them at once, all cells of the result. */
function across(sums: Float64Array, [one, two, three]: Product<Float64Array>): void {
  const { outer, inner } = one.at.over
  for (let i = 0; i < outer.length; i += 1)
    for (let j = 0; j < inner.length; j += 2) {
      const last = j + 1 === inner.length
      const from = ({ at: { over } }: Doubles): number => over.outer[i]! + over.inner[j]!
      const step = ({ at: { over } }: Doubles): number => (last ? 0 : over.inner[j + 1]! - over.inner[j]!)
      if (three !== undefined) {
        const add = last ? addThree : addThreeTwice
        add(sums, one, two, three, from(one), from(two), from(three), step(one), step(two), step(three))
      } else {
        const add = last ? addTwo : addTwoTwice
        add(sums, one, two, from(one), from(two), step(one), step(two))
      }
    }
}

function addTwo(sums: Float64Array, one: Doubles, two: Doubles, fromA: number, fromB: number): void {
  const [a, { outer, inner: innerA }] = [one.weights, one.at.to]
  const [b, { outer: outerB, inner: innerB }] = [two.weights, two.at.to]
  for (let i = 0, k = 0; i < outer.length; i += 1) {
    const [baseA, baseB] = [fromA + outer[i]!, fromB + outerB[i]!]
    for (let j = 0; j < innerA.length; j += 1, k += 1) sums[k]! += a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]!
  }
}

function addTwoTwice(
  sums: Float64Array,
  one: Doubles,
  two: Doubles,
  fromA: number,
  fromB: number,
  stepA: number,
  stepB: number,
): void {
  const [a, { outer, inner: innerA }] = [one.weights, one.at.to]
  const [b, { outer: outerB, inner: innerB }] = [two.weights, two.at.to]
  for (let i = 0, k = 0; i < outer.length; i += 1) {
    const [baseA, baseB] = [fromA + outer[i]!, fromB + outerB[i]!]
    for (let j = 0; j < innerA.length; j += 1, k += 1) {
      const p = baseA + innerA[j]!
      const q = baseB + innerB[j]!
      sums[k]! += a[p]! * b[q]! + a[p + stepA]! * b[q + stepB]!
    }
  }
}

function addThree(
  sums: Float64Array,
  one: Doubles,
  two: Doubles,
  three: Doubles,
  fromA: number,
  fromB: number,
  fromC: number,
): void {
  const [a, { outer, inner: innerA }] = [one.weights, one.at.to]
  const [b, { outer: outerB, inner: innerB }] = [two.weights, two.at.to]
  const [c, { outer: outerC, inner: innerC }] = [three.weights, three.at.to]
  for (let i = 0, k = 0; i < outer.length; i += 1) {
    const [baseA, baseB, baseC] = [fromA + outer[i]!, fromB + outerB[i]!, fromC + outerC[i]!]
    for (let j = 0; j < innerA.length; j += 1, k += 1)
      sums[k]! += a[baseA + innerA[j]!]! * b[baseB + innerB[j]!]! * c[baseC + innerC[j]!]!
  }
}

function addThreeTwice(
  sums: Float64Array,
  one: Doubles,
  two: Doubles,
  three: Doubles,
  fromA: number,
  fromB: number,
  fromC: number,
  stepA: number,
  stepB: number,
  stepC: number,
): void {
  const [a, { outer, inner: innerA }] = [one.weights, one.at.to]
  const [b, { outer: outerB, inner: innerB }] = [two.weights, two.at.to]
  const [c, { outer: outerC, inner: innerC }] = [three.weights, three.at.to]
  for (let i = 0, k = 0; i < outer.length; i += 1) {
    const [baseA, baseB, baseC] = [fromA + outer[i]!, fromB + outerB[i]!, fromC + outerC[i]!]
    for (let j = 0; j < innerA.length; j += 1, k += 1) {
      const p = baseA + innerA[j]!
      const q = baseB + innerB[j]!
      const r = baseC + innerC[j]!
      sums[k]! += a[p]! * b[q]! * c[r]! + a[p + stepA]! * b[q + stepB]! * c[r + stepC]!
    }
  }
}
