// core/engine/everybody.ts: one thing asked of every bird of a pedigree at once, for about twice the work of asking one.
import { chanceOf } from './ask.ts'
import { collect, distribute, evidence } from './eliminate.ts'
import type { Tables } from './factor.ts'
import { fitsSex } from './narrow.ts'
import type { Classes, Item } from './item.ts'
import { leafBelief } from './leaf.ts'
import { budgetCells, type Outcome, tooLarge } from './outcome.ts'
import type { Pedigree } from './pedigree.ts'
import { plan } from './plan.ts'
import { type Prepared, prepare } from './prepare.ts'
import type { Seen } from './seen.ts'

/** For each bird, by place in the pedigree, the chance that the item answers `wanted`. */
export type Roll<T> = { readonly chances: readonly T[]; readonly evidence: T }

export function askEverybody<T, W, S>(
  pedigree: Pedigree,
  item: Item,
  wanted: string,
  tables: Tables<T, W, S>,
  budget = budgetCells,
): Outcome<Roll<T>> {
  const prepared = prepare(
    pedigree,
    { uses: item.uses, birds: pedigree.birds.map((_, bird) => bird), together: [] },
    tables,
  )
  if (prepared === undefined) return { kind: 'impossible' }
  const { model, frame } = prepared
  const order = plan(model.sizes, model.scopes)
  const large = tooLarge(order, budget, model.birdOf)
  if (large !== undefined) return large
  const collected = collect(order, model.given, tables)
  const chance = chanceOf(prepared, tables, evidence(collected))
  if (tables.ring.isZero(chance.mass)) return { kind: 'impossible' }
  const shares = sharesOf(prepared, distribute(collected), tables, item.through(frame.lumped).groups[0])
  const chances = pedigree.birds.map((_, bird) =>
    chanceOfName(prepared, item.through(frame.lumped), wanted, tables, bird, shares(bird)),
  )
  return { kind: 'answer', answer: { chances, evidence: tables.value(chance.mass, chance.scale) } }
}

/** How the whole falls on the diplotypes of one group of a bird. */
function sharesOf<T, W, S>(
  { model, narrowed }: Prepared<T, W, S>,
  believe: (scope: readonly number[]) => W,
  tables: Tables<T, W, S>,
  group: number | undefined,
): (bird: number) => readonly T[] {
  const known = new Map<string, readonly T[]>()
  const once = (key: string, make: () => W): readonly T[] => {
    const found = known.get(key) ?? tables.shares(make())
    known.set(key, found)
    return found
  }
  return (bird) => {
    if (group === undefined || narrowed[bird]![group]!.codes.length === 1) return [tables.ring.one]
    const variable = model.variable(bird, group)
    if (variable !== undefined) return once(`${variable}`, () => believe([variable]))
    const { part, litter, scope } = model.leaves.get(bird)!.find(({ part }) => part.groups.includes(group))!
    return once(`${scope.join()}\n${part.name}`, () => leafBelief(tables, part, litter, believe(scope), group))
  }
}

function chanceOfName<T, W, S>(
  { frame, narrowed }: Prepared<T, W, S>,
  { groups: [group], at }: Seen<Classes>,
  wanted: string,
  { ring }: Tables<T, W, S>,
  bird: number,
  shares: readonly T[],
): T {
  const codes = group === undefined ? [0] : narrowed[bird]![group]!.codes
  return codes.reduce((sum, code, i) => {
    const sex = group === undefined || fitsSex(frame.lumped[group]!, code, 'M') ? 'M' : 'F'
    const named = at(sex, [code]).find(({ name }) => name === wanted)
    return named === undefined ? sum : ring.plus(sum, ring.times(shares[i]!, ring.of(named.p)))
  }, ring.zero)
}
