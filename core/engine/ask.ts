// core/engine/ask.ts: what one bird of a pedigree may be, given everything that was read.
import { collect, distribute, evidence } from './eliminate.ts'
import type { Scope, Tables } from './factor.ts'
import { type Classes, type Item } from './item.ts'
import { united } from './leaf.ts'
import { combinations } from './narrow.ts'
import { budgetCells, type Outcome, tooLarge } from './outcome.ts'
import type { Pedigree } from './pedigree.ts'
import { plan } from './plan.ts'
import { type Prepared, prepare } from './prepare.ts'
import type { Seen } from './seen.ts'
import type { Sex } from '../vocabulary.ts'

/** How the classes of the items share the whole, keys in the order of the items, and the chance of all that was read. */
export type Answer<T> = { readonly classes: ReadonlyMap<string, T>; readonly evidence: T }

/**
 * The joint distribution of some items of one bird. A bird of unknown sex is asked once as a cock and once
 * as a hen, and the keys then start with the sex.
 */
export function askBird<T, W, S>(
  pedigree: Pedigree,
  bird: number,
  items: readonly Item[],
  tables: Tables<T, W, S>,
  budget = budgetCells,
): Outcome<Answer<T>> {
  const { sex } = pedigree.birds[bird]!
  return sex === 'U'
    ? askBothSexes(pedigree, bird, items, tables, budget)
    : askOne(pedigree, bird, sex, items, tables, budget)
}

function askBothSexes<T, W, S>(
  pedigree: Pedigree,
  bird: number,
  items: readonly Item[],
  tables: Tables<T, W, S>,
  budget: number,
): Outcome<Answer<T>> {
  const { ring } = tables
  const half = ring.over(ring.one, ring.plus(ring.one, ring.one))
  const parts: { sex: Sex; answer: Answer<T> }[] = []
  for (const sex of ['M', 'F'] as const) {
    const birds = pedigree.birds.with(bird, { ...pedigree.birds[bird]!, sex })
    const outcome = askOne({ ...pedigree, birds }, bird, sex, items, tables, budget)
    if (outcome.kind === 'too-large') return outcome
    if (outcome.kind === 'answer') parts.push({ sex, answer: outcome.answer })
  }
  if (parts.length === 0) return { kind: 'impossible' }
  const whole = parts.reduce((sum, { answer }) => ring.plus(sum, ring.times(half, answer.evidence)), ring.zero)
  const classes = parts.flatMap(({ sex, answer }) => {
    const share = ring.over(ring.times(half, answer.evidence), whole)
    return [...answer.classes].map(
      ([name, p]) => [[sex, name].filter(Boolean).join('|'), ring.times(share, p)] as const,
    )
  })
  return { kind: 'answer', answer: { classes: new Map(classes), evidence: whole } }
}

function askOne<T, W, S>(
  pedigree: Pedigree,
  bird: number,
  sex: Sex,
  items: readonly Item[],
  tables: Tables<T, W, S>,
  budget: number,
): Outcome<Answer<T>> {
  const uses = items.flatMap((item) => item.uses)
  const prepared = prepare(pedigree, { uses, birds: [bird], together: [bird] }, tables)
  if (prepared === undefined) return { kind: 'impossible' }
  const { model, frame } = prepared
  const seen = items.map((item) => item.through(frame.lumped))
  const blocks = blocksOf(prepared, bird, seen)
  const order = plan(model.sizes, [...model.scopes, ...blocks.map(({ scope }) => scope)])
  const large = tooLarge(order, budget, model.birdOf)
  if (large !== undefined) return large
  const collected = collect(order, model.given, tables)
  const chance = chanceOf(prepared, tables, evidence(collected))
  if (tables.ring.isZero(chance.mass)) return { kind: 'impossible' }
  const believe = distribute(collected)
  const shared = blocks.map((block) =>
    classesOf(prepared, bird, sex, block, seen, tables.shares(believe.of(block.scope)), tables),
  )
  const classes = productOf(shared, items.length, tables)
  return { kind: 'answer', answer: { classes, evidence: tables.value(chance.mass, chance.scale) } }
}

/** The chance of everything read, as a number and the factor taken out of it. */
export function chanceOf<T, W, S>(
  { model }: Prepared<T, W, S>,
  tables: Tables<T, W, S>,
  { mass, scale }: { readonly mass: T; readonly scale: S },
): { readonly mass: T; readonly scale: S } {
  const { weights, scale: taken } = model.constant
  return { mass: tables.ring.times(mass, tables.total(weights)), scale: tables.join(scale, taken) }
}

/** Groups of the bird that depend on each other, with the items that ask about them. */
type Block = { readonly groups: readonly number[]; readonly items: readonly number[]; readonly scope: Scope }

function blocksOf<T, W, S>(
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
type Partial<T> = { readonly names: readonly (string | undefined)[]; readonly p: T }

function classesOf<T, W, S>(
  { narrowed }: Prepared<T, W, S>,
  bird: number,
  sex: Sex,
  { groups, items }: Block,
  seen: readonly Seen<Classes>[],
  shares: readonly T[],
  { ring }: Tables<T, W, S>,
): readonly Partial<T>[] {
  const found = new Map<string, Partial<T>>()
  combinations(groups.map((group) => narrowed[bird]![group]!.codes)).forEach((codes, cell) => {
    let made: Partial<T>[] = [{ names: seen.map(() => undefined), p: shares[cell]! }]
    for (const i of items) {
      const classes = seen[i]!.at(
        sex,
        seen[i]!.groups.map((group) => codes[groups.indexOf(group)]!),
      )
      made = made.flatMap(({ names, p }) =>
        classes.map((c) => ({ names: names.with(i, c.name), p: ring.times(p, ring.of(c.p)) })),
      )
    }
    for (const { names, p } of made) {
      const key = names.join('|')
      found.set(key, { names, p: ring.plus(found.get(key)?.p ?? ring.zero, p) })
    }
  })
  return [...found.values()].filter(({ p }) => !ring.isZero(p))
}

function productOf<T, W, S>(
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
