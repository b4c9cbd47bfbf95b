// core/engine/ask.ts: what one bird of a pedigree may be, given everything that was read.
import { collect } from './eliminate.ts'
import { blocksOf, classesOf, type Partial, productOf } from './block.ts'
import { distribute } from './distribute.ts'
import type { Tables } from './factor.ts'
import type { Item } from './item.ts'
import { budgetCells, type Outcome, tooLarge } from './outcome.ts'
import type { Pedigree } from './pedigree.ts'
import { plan } from './plan.ts'
import { type Prepared, prepare } from './prepare.ts'
import type { Sex } from '../vocabulary.ts'

/** Classes beyond which an answer is not written out; nobody reads that many. */
const mostClasses = 1e5

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
    if (outcome.kind === 'answer') parts.push({ sex, answer: outcome.answer })
    else if (outcome.kind !== 'impossible') return outcome
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
  const outcome = prepare(pedigree, { uses, birds: [bird], together: [bird] }, tables, budget)
  if (outcome.kind !== 'answer') return outcome
  const prepared = outcome.answer
  const { model, frame } = prepared
  const seen = items.map((item) => item.through(frame.lumped))
  const blocks = blocksOf(prepared, bird, seen)
  const order = plan(model.sizes, [...model.scopes, ...blocks.map(({ scope }) => scope)])
  const large = tooLarge(order, budget, model.birdOf)
  if (large !== undefined) return large
  const collected = collect(order, model.given, tables)
  const chance = chanceOf(prepared, tables, collected.whole)
  if (tables.ring.isZero(chance.mass)) return { kind: 'impossible' }
  const believe = distribute(collected)
  const most = Math.min(mostClasses, budget)
  const shared: (readonly Partial<T>[])[] = []
  for (const block of blocks) {
    const classes = classesOf(prepared, bird, sex, block, seen, tables.shares(believe.of(block.scope)), tables, most)
    if (classes === undefined) return { kind: 'too-many', most }
    shared.push(classes)
  }
  if (shared.reduce((product, { length }) => product * length, 1) > most) return { kind: 'too-many', most }
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
