// core/engine/leaveOut.ts: which birds to leave out of a flock that is too much work: as few as will do, the least telling first.
import { doubles } from './doubles.ts'
import type { Item } from './item.ts'
import type { Pedigree } from './pedigree.ts'
import { plan } from './plan.ts'
import { prepare } from './prepare.ts'

/**
 * @param bird the bird asked about, or undefined where all are: then the oldest generations go first, else the
 *        birds that are the most steps from it
 * @returns birds by place; undefined where even the last ones left are too much
 */
export function leaveOut(
  pedigree: Pedigree,
  bird: number | undefined,
  items: readonly Item[],
  budget: number,
): readonly number[] | undefined {
  const order = bird === undefined ? oldestFirst(pedigree) : farthestFirst(pedigree, bird)
  const fits = (left: number): boolean => fitsIn(budget, without(pedigree, new Set(order.slice(0, left))), bird, items)
  let [low, high] = [0, order.length - 1] // `low` do not suffice
  if (high < 1 || !fits(high)) return undefined
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (fits(middle)) high = middle
    else low = middle
  }
  return order.slice(0, high).toSorted((a, b) => a - b)
}

function farthestFirst({ birds }: Pedigree, from: number): readonly number[] {
  const near: number[][] = birds.map(({ parents }) => Object.values(parents ?? {}))
  birds.forEach(({ parents }, chick) => Object.values(parents ?? {}).forEach((parent) => near[parent]!.push(chick)))
  const reached = new Set([from])
  for (const bird of reached) for (const other of near[bird]!) reached.add(other)
  const strangers = birds.flatMap((_, bird) => (reached.has(bird) ? [] : [bird]))
  return [...strangers, ...[...reached].toReversed()]
}

function oldestFirst({ birds }: Pedigree): readonly number[] {
  const parents = birds.map(({ parents }) => Object.values(parents ?? {}))
  const generations = birds.map(() => 0)
  const chicks: number[][] = birds.map(() => [])
  parents.forEach((pair, chick) => pair.forEach((parent) => chicks[parent]!.push(chick)))
  const waiting = new Set(birds.keys())
  for (const bird of waiting) {
    waiting.delete(bird)
    const generation = 1 + Math.max(-1, ...parents[bird]!.map((parent) => generations[parent]!))
    if (generation === generations[bird]) continue
    generations[bird] = generation
    for (const chick of chicks[bird]!) waiting.add(chick)
  }
  return [...birds.keys()].toSorted((a, b) => generations[a]! - generations[b]!)
}

/** The flock without some birds: they are no longer asked or read, and their chicks have no told parents. */
function without({ genome, birds }: Pedigree, gone: ReadonlySet<number>): Pedigree {
  const orphaned = birds.map((bird, i) => {
    const readings = gone.has(i) ? [] : bird.readings
    const { parents } = bird
    return parents && (gone.has(parents.sire) || gone.has(parents.dam))
      ? { ...bird, readings, parents: undefined }
      : { ...bird, readings }
  })
  return { genome, birds: orphaned }
}

function fitsIn(budget: number, pedigree: Pedigree, bird: number | undefined, items: readonly Item[]): boolean {
  const uses = items.flatMap((item) => item.uses)
  const read = pedigree.birds.flatMap(({ readings }, i) => (readings.length > 0 ? [i] : []))
  const asked = bird === undefined ? { uses, birds: read, together: [] } : { uses, birds: [bird], together: [bird] }
  const outcome = prepare(pedigree, asked, doubles, budget)
  if (outcome.kind === 'answer') return plan(outcome.answer.model.sizes, outcome.answer.model.scopes).cells <= budget
  return outcome.kind === 'impossible'
}
