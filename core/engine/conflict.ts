// core/engine/conflict.ts: which readings cannot all be true.
// A smallest such set in the sense that every one of it is needed: QuickXplain, Junker 2004 (AAAI).
import { chanceOf } from './ask.ts'
import { collect } from './eliminate.ts'
import { doubles } from './doubles.ts'
import type { Tables } from './factor.ts'
import { fractions } from './fractions.ts'
import type { Pedigree } from './pedigree.ts'
import { plan } from './plan.ts'
import { rational } from './num.ts'
import { budgetCells, tooLarge } from './outcome.ts'
import { fit, prepare } from './prepare.ts'

/** A reading by the bird it was taken on and its place among that bird's readings. */
export type Taken = { readonly bird: number; readonly reading: number }

/**
 * The readings of a conflict; empty if the founders' own priors already cannot be, or if there is no conflict.
 * Narrowing shows most conflicts at little cost, however wide the flock, so it has the first word; among the
 * few readings it leaves, the whole sum has the last. Where that would be too much work, readings pass as possible.
 */
export function conflict(pedigree: Pedigree): readonly Taken[] {
  const all = pedigree.birds.flatMap(({ readings }, bird) => readings.map((_, reading) => ({ bird, reading })))
  const fits = (taken: readonly Taken[]): boolean => canFit(only(pedigree, taken))
  const holds = (taken: readonly Taken[]): boolean => possible(only(pedigree, taken))
  return smallest(smallest(all, fits) ?? all, holds) ?? []
}

/** Undefined where all of it holds together, or where nothing does. */
const smallest = (all: readonly Taken[], holds: (taken: readonly Taken[]) => boolean): readonly Taken[] | undefined =>
  holds(all) || !holds([]) ? undefined : quickXplain(all, [], [], holds)

function quickXplain(
  open: readonly Taken[],
  held: readonly Taken[],
  added: readonly Taken[],
  holds: (taken: readonly Taken[]) => boolean,
): readonly Taken[] {
  if (added.length > 0 && !holds(held)) return []
  if (open.length === 1) return open
  const half = open.length >> 1
  const [first, second] = [open.slice(0, half), open.slice(half)]
  const late = quickXplain(second, [...held, ...first], first, holds)
  return [...quickXplain(first, [...held, ...late], late, holds), ...late]
}

const only = (pedigree: Pedigree, taken: readonly Taken[]): Pedigree => ({
  ...pedigree,
  birds: pedigree.birds.map((bird, b) => ({
    ...bird,
    readings: bird.readings.filter((_, r) => taken.some(({ bird, reading }) => bird === b && reading === r)),
  })),
})

const nothingAsked = { uses: [], birds: [], together: [] }

/** Doubles first; where they say never, fractions decide. */
const possible = (pedigree: Pedigree): boolean => canBe(pedigree, doubles) || canBe(pedigree, fractions)

function canBe<T, W, S>(pedigree: Pedigree, tables: Tables<T, W, S>): boolean {
  const outcome = prepare(pedigree, nothingAsked, tables, budgetCells)
  if (outcome.kind !== 'answer') return outcome.kind !== 'impossible'
  const { model } = outcome.answer
  const order = plan(model.sizes, model.scopes)
  if (tooLarge(order, budgetCells, model.birdOf) !== undefined) return true
  return !tables.ring.isZero(chanceOf(outcome.answer, tables, collect(order, model.given, tables).whole).mass)
}

/** Does narrowing leave every bird something? */
const canFit = (pedigree: Pedigree): boolean => fit(pedigree, nothingAsked, rational).kind !== 'impossible'
