// core/engine/everybody.ts: one thing asked of every bird of a pedigree at once, for about twice the work of asking one.
import type { Tables } from './factor.ts'
import type { Item } from './item.ts'
import { budgetCells, type Outcome } from './outcome.ts'
import type { Pedigree } from './pedigree.ts'
import { answering, chanceIn, sharesOf, stand, type Standing } from './stand.ts'

/** For each bird, by place in the pedigree, the chance that the item answers `wanted`. */
export type Roll<T> = { readonly chances: readonly T[]; readonly evidence: T }

export function askEverybody<T, W, S>(
  pedigree: Pedigree,
  item: Item,
  wanted: string,
  tables: Tables<T, W, S>,
  budget = budgetCells,
): Outcome<Roll<T>> {
  const outcome = stand(pedigree, item, tables, budget)
  return outcome.kind === 'answer' ? { kind: 'answer', answer: rollOf(outcome.answer, wanted) } : outcome
}

/** Birds alike share their work: every belief is taken where it is cheapest, and equal leaves are worked once. */
export function rollOf<T, W, S>(standing: Standing<T, W, S>, wanted: string): Roll<T> {
  const { prepared, seen, beliefs, pedigree } = standing
  const answers = answering(standing, wanted)
  const known = new Map<object, T>()
  const [group] = seen.groups
  const chances = pedigree.birds.map((_, bird) => {
    const leaf = prepared.model.leaves.get(bird)?.find(({ part }) => group !== undefined && part.groups.includes(group))
    const alike = leaf?.alike ?? {}
    if (!known.has(alike))
      known.set(alike, chanceIn(standing, bird, sharesOf(standing, bird, beliefs.amongAll), answers))
    return known.get(alike)!
  })
  return { chances, evidence: standing.evidence }
}
