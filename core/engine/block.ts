// core/engine/block.ts: the groups of one bird that hang together, each set with its own small distribution, and their product.
import type { Sex } from '../vocabulary.ts'
import type { Scope, Tables } from './factor.ts'
import type { Classes } from './item.ts'
import { combinations } from './narrow.ts'
import type { Prepared } from './prepare.ts'
import type { Seen } from './seen.ts'
import { united } from './united.ts'

/** Groups of the bird that depend on each other, with the items that ask about them. */
export type Block = { readonly groups: readonly number[]; readonly items: readonly number[]; readonly scope: Scope }

export function blocksOf<T, W, S>(
  { model }: Prepared<T, W, S>,
  bird: number,
  seen: readonly Seen<Classes>[],
): readonly Block[] {
  const groups = [...new Set(seen.flatMap((item) => item.groups))].toSorted((a, b) => a - b)
  const variable = (group: number): number | undefined => model.variable(bird, group)
  const component = componentsOf(model.sizes.length, model.scopes)
  const related = groups.flatMap((a) =>
    groups.flatMap((b) => {
      const [one, other] = [variable(a), variable(b)]
      return a < b && one !== undefined && other !== undefined && component[one] === component[other] ? [[a, b]] : []
    }),
  )
  const ties = [...seen.map((item) => item.groups).filter(({ length }) => length > 0), ...related]
  const sets = seen.every((item) => item.groups.length > 0) ? united(groups, ties) : [...united(groups, ties), []]
  return sets.map((set) => ({
    groups: set,
    items: seen.flatMap(({ groups: [first] }, i) =>
      (first === undefined ? set.length === 0 : set.includes(first)) ? [i] : [],
    ),
    scope: set.flatMap((group) => variable(group) ?? []),
  }))
}

/** A number for each variable, equal for those that hang together. */
function componentsOf(variables: number, scopes: readonly Scope[]): readonly number[] {
  const root = Array.from({ length: variables }, (_, v) => v)
  const find = (v: number): number => {
    while (root[v] !== v) v = root[v] = root[root[v]!]!
    return v
  }
  for (const [first, ...rest] of scopes) for (const other of rest) root[find(other)] = find(first!)
  return root.map((_, v) => find(v))
}

/** Names by item (undefined where another block answers), and the chance of them. */
export type Partial<T> = { readonly names: readonly (string | undefined)[]; readonly p: T }

/** @returns undefined where there are more classes than `most` */
export function classesOf<T, W, S>(
  { narrowed }: Prepared<T, W, S>,
  bird: number,
  sex: Sex,
  { groups, items }: Block,
  seen: readonly Seen<Classes>[],
  shares: readonly T[],
  { ring }: Tables<T, W, S>,
  most: number,
): readonly Partial<T>[] | undefined {
  const found = new Map<string, Partial<T>>()
  for (const [cell, codes] of combinations(groups.map((group) => narrowed[bird]![group]!.codes)).entries()) {
    if (ring.isZero(shares[cell]!)) continue
    let made: Partial<T>[] = [{ names: seen.map(() => undefined), p: shares[cell]! }]
    for (const i of items) {
      const classes = seen[i]!.at(
        sex,
        seen[i]!.groups.map((group) => codes[groups.indexOf(group)]!),
      )
      if (made.length * classes.length > most) return undefined
      made = made.flatMap(({ names, p }) =>
        classes.map((c) => ({ names: names.with(i, c.name), p: ring.times(p, ring.of(c.p)) })),
      )
    }
    for (const { names, p } of made) {
      const key = names.join('|')
      found.set(key, { names, p: ring.plus(found.get(key)?.p ?? ring.zero, p) })
    }
    if (found.size > most) return undefined
  }
  return [...found.values()].filter(({ p }) => !ring.isZero(p))
}

export function productOf<T, W, S>(
  blocks: readonly (readonly Partial<T>[])[],
  items: number,
  { ring }: Tables<T, W, S>,
): ReadonlyMap<string, T> {
  let made: Partial<T>[] = [{ names: Array.from({ length: items }, () => undefined), p: ring.one }]
  for (const block of blocks)
    made = made.flatMap((one) =>
      block.map((other) => ({
        names: one.names.map((name, i) => name ?? other.names[i]),
        p: ring.times(one.p, other.p),
      })),
    )
  return new Map(made.map(({ names, p }) => [names.join('|'), p]))
}
