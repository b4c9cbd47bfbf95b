// core/engine/outcome.ts: what may come of a question: an answer, readings that cannot be, or too much work.
import type { Plan } from './plan.ts'

export type Outcome<A> =
  | { readonly kind: 'answer'; readonly answer: A }
  /** What was read cannot all be true. In doubles this may be said of what is merely very unlikely; fractions know. */
  | { readonly kind: 'impossible' }
  | TooMuch
/** Nothing was worked out. */
export type TooMuch =
  /** It would take more than `budget` table cells. */
  | { readonly kind: 'too-large'; readonly cells: number; readonly budget: number; readonly widest: readonly number[] }
  /** The answer would have more than `most` classes. */
  | { readonly kind: 'too-many'; readonly most: number }
  /** The alleles told apart in one group make more than `most` haplotypes. */
  | { readonly kind: 'too-wide'; readonly group: number; readonly haplotypes: number; readonly most: number }

/** Cells of all joint tables of one pass; some seconds of work. */
export const budgetCells = 5e7

/** @param birdOf the bird of each variable, to name those that meet in the widest table */
export function tooLarge(plan: Plan, budget: number, birdOf: (variable: number) => number): TooMuch | undefined {
  if (plan.cells <= budget) return undefined
  const widest = plan.cliques.reduce((a, b) => (b.cells > a.cells ? b : a))
  return { kind: 'too-large', cells: plan.cells, budget, widest: [...new Set(widest.scope.map(birdOf))] }
}
