// core/engine/blocks.ts: independent blocks multiplied out, whole or from the likeliest downwards.

/** One small distribution: what may be, and the chance of it. */
export type Block<T> = readonly { readonly value: T; readonly p: number }[]
/** One outcome of all blocks together, values in the order of the blocks. */
export type Joint<T> = { readonly values: readonly T[]; readonly p: number }

/** Every outcome: as many as the product of the block sizes, so ask `topClasses` where that is large. */
export function fullBlocks<T>(blocks: readonly Block<T>[]): readonly Joint<T>[] {
  let joint: Joint<T>[] = [{ values: [], p: 1 }]
  for (const block of blocks)
    joint = joint.flatMap(({ values, p }) => block.map((b) => ({ values: [...values, b.value], p: p * b.p })))
  return joint
}

type Node = { readonly at: readonly number[]; readonly last: number; readonly p: number }

/**
 * The outcomes one by one, likeliest first. Lazy best-first search: an outcome is followed by those with
 * one step down in its last moved block or in a later one, so each is met once.
 */
export function* topClasses<T>(blocks: readonly Block<T>[]): Generator<Joint<T>> {
  const sorted = blocks.map((block) => [...block].sort((a, b) => b.p - a.p))
  if (sorted.some((block) => block.length === 0)) return
  const chance = (at: readonly number[]): number => at.reduce((p, i, b) => p * sorted[b]![i]!.p, 1)
  const first = sorted.map(() => 0)
  const open: Node[] = [{ at: first, last: 0, p: chance(first) }] // rising p
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    yield { values: node.at.map((i, b) => sorted[b]![i]!.value), p: node.p }
    for (let b = node.last; b < sorted.length; b += 1) {
      if (node.at[b]! + 1 >= sorted[b]!.length) continue
      const at = node.at.with(b, node.at[b]! + 1)
      insert(open, { at, last: b, p: chance(at) })
    }
  }
}

function insert(open: Node[], node: Node): void {
  let low = 0
  let high = open.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (open[middle]!.p < node.p) low = middle + 1
    else high = middle
  }
  open.splice(low, 0, node)
}
