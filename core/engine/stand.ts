// core/engine/stand.ts: how things stand with one question asked of every bird, ready for a further reading.
import { chanceOf } from './ask.ts'
import { type Beliefs, distribute } from './distribute.ts'
import { collect, type Collected } from './eliminate.ts'
import type { Scope, Tables } from './factor.ts'
import type { Classes, Item } from './item.ts'
import { leafBelief } from './leaf.ts'
import { fitsSex } from './narrow.ts'
import { budgetCells, type Outcome, tooLarge } from './outcome.ts'
import type { Pedigree } from './pedigree.ts'
import { plan } from './plan.ts'
import { type Prepared, prepare } from './prepare.ts'
import type { Seen } from './seen.ts'

/** One item asked of all birds: the upward pass is done, the downward pass is worked as far as it is asked for. */
export type Standing<T, W, S> = {
  readonly pedigree: Pedigree
  readonly item: Item
  readonly tables: Tables<T, W, S>
  readonly prepared: Prepared<T, W, S>
  readonly seen: Seen<Classes>
  readonly collected: Collected<T, W, S>
  readonly beliefs: Beliefs<W>
  /** The chance of everything read. */
  readonly evidence: T
}

/** @param item of one group at most: a trait or genotype of one locus, or whether an allele is carried */
export function stand<T, W, S>(
  pedigree: Pedigree,
  item: Item,
  tables: Tables<T, W, S>,
  budget = budgetCells,
): Outcome<Standing<T, W, S>> {
  const birds = pedigree.birds.map((_, bird) => bird)
  const outcome = prepare(pedigree, { uses: item.uses, birds, together: [] }, tables, budget)
  if (outcome.kind !== 'answer') return outcome
  const { model } = outcome.answer
  const order = plan(model.sizes, model.scopes)
  const large = tooLarge(order, budget, model.birdOf)
  return large ?? settled(pedigree, item, tables, outcome.answer, collect(order, model.given, tables))
}

/** What follows from the upward pass. */
export function settled<T, W, S>(
  pedigree: Pedigree,
  item: Item,
  tables: Tables<T, W, S>,
  prepared: Prepared<T, W, S>,
  collected: Collected<T, W, S>,
): Outcome<Standing<T, W, S>> {
  const { mass, scale } = chanceOf(prepared, tables, collected.whole)
  if (tables.ring.isZero(mass)) return { kind: 'impossible' }
  const seen = item.through(prepared.frame.lumped)
  const beliefs = distribute(collected)
  return {
    kind: 'answer',
    answer: { pedigree, item, tables, prepared, seen, collected, beliefs, evidence: tables.value(mass, scale) },
  }
}

/**
 * How the whole falls on the diplotypes that a bird has left in the group asked about.
 *
 * @param believe what to ask for the belief in a scope
 */
export function sharesOf<T, W, S>(
  { prepared, seen, tables }: Standing<T, W, S>,
  bird: number,
  believe: (scope: Scope) => W,
): readonly T[] {
  const { model, narrowed } = prepared
  const [group] = seen.groups
  if (group === undefined || narrowed[bird]![group]!.codes.length === 1) return [tables.ring.one]
  const variable = model.variable(bird, group)
  if (variable !== undefined) return tables.shares(believe([variable]))
  const { part, litter, scope } = model.leaves.get(bird)!.find(({ part }) => part.groups.includes(group))!
  return tables.shares(leafBelief(tables, part, litter, believe(scope), group))
}

/** The chance that a diplotype of the group asked about answers `wanted`; without such a group, that any bird does. */
export function answering<T, W, S>(
  { prepared, seen, tables }: Standing<T, W, S>,
  wanted: string,
): (diplotype: number) => T {
  const [group] = seen.groups
  const { lumped } = prepared.frame
  const known: T[] = []
  return (diplotype) => {
    const sex = group === undefined || fitsSex(lumped[group]!, diplotype, 'M') ? 'M' : 'F'
    return (known[diplotype] ??= tables.ring.of(
      seen.at(sex, [diplotype]).find(({ name }) => name === wanted)?.p ?? { n: 0n, d: 1n },
    ))
  }
}

/** The chance that a bird does whose diplotypes share the whole so. */
export function chanceIn<T, W, S>(
  { prepared, seen, tables }: Standing<T, W, S>,
  bird: number,
  shares: readonly T[],
  answers: (diplotype: number) => T,
): T {
  const { ring } = tables
  const [group] = seen.groups
  const codes = group === undefined ? [0] : prepared.narrowed[bird]![group]!.codes
  return codes.reduce((sum, code, i) => ring.plus(sum, ring.times(shares[i]!, answers(code))), ring.zero)
}

/** The same for one bird, downward pass and all. */
export const chanceFor = <T, W, S>(standing: Standing<T, W, S>, bird: number, wanted: string): T =>
  chanceIn(standing, bird, sharesOf(standing, bird, standing.beliefs.of), answering(standing, wanted))
