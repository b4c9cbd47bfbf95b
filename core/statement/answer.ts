// core/statement/answer.ts: a flock statement that was read, answered: in doubles, in fractions where that is quick, or as a conflict.
import { askBird } from '../engine/ask.ts'
import { conflict } from '../engine/conflict.ts'
import { askEverybody } from '../engine/everybody.ts'
import { doubles } from '../engine/doubles.ts'
import type { Tables } from '../engine/factor.ts'
import { fractions } from '../engine/fractions.ts'
import { leaveOut } from '../engine/leaveOut.ts'
import { formatRatio, type Ratio, toNumber } from '../engine/num.ts'
import { budgetCells, type Outcome, type TooMuch } from '../engine/outcome.ts'
import type { Pedigree } from '../engine/pedigree.ts'
import type { Query } from './query.ts'

export type Answered = {
  /** Probability of each class; classes that cannot be are left out. */
  readonly answer: Readonly<Record<string, number>>
  /** The same as fractions; absent where the flock is too large for them. */
  readonly exact?: Readonly<Record<string, string>>
  /** Probability of all readings together. */
  readonly evidence: number
  readonly evidenceExact?: string
}
export type StatementAnswer =
  | Answered
  /** Readings that cannot all be true; without any one of them they can. */
  | { readonly conflict: readonly { readonly bird: string; readonly reading: string }[] }
  | { readonly error: string }

/** Cells up to which fractions are worked out beside the doubles: about a second. */
const exactCells = 2e4

/** Where doubles say that the readings cannot be, fractions decide: a chance may be too small for a double. */
export function answer(pedigree: Pedigree, query: Query): StatementAnswer {
  const quick = ask(pedigree, query, doubles)
  if (quick.kind !== 'answer' && quick.kind !== 'impossible') return { error: tooMuch(pedigree, query, quick) }
  const exact = ask(pedigree, query, fractions, quick.kind === 'impossible' ? budgetCells : exactCells)
  if (exact.kind === 'impossible') return { conflict: conflictOf(pedigree) }
  if (exact.kind !== 'answer')
    return quick.kind === 'answer' ? inDoubles(quick.answer) : { error: tooMuch(pedigree, query, exact) }
  return {
    ...inDoubles(quick.kind === 'answer' ? quick.answer : asDoubles(exact.answer)),
    ...inFractions(exact.answer),
  }
}

type Classes<T> = { readonly classes: ReadonlyMap<string, T>; readonly evidence: T }

function ask<T, W, S>(
  pedigree: Pedigree,
  query: Query,
  tables: Tables<T, W, S>,
  budget = budgetCells,
): Outcome<Classes<T>> {
  if (query.kind === 'one') return askBird(pedigree, query.bird, query.items, tables, budget)
  const outcome = askEverybody(pedigree, query.item, 'yes', tables, budget)
  if (outcome.kind !== 'answer') return outcome
  const { chances, evidence } = outcome.answer
  const named = chances.slice(0, query.birds).map((p, i) => [pedigree.birds[i]!.id, p] as const)
  return { kind: 'answer', answer: { classes: new Map(named), evidence } }
}

const inDoubles = ({ classes, evidence }: Classes<number>): Answered => ({
  answer: Object.fromEntries(classes),
  evidence,
})
const inFractions = ({ classes, evidence }: Classes<Ratio>): Pick<Answered, 'exact' | 'evidenceExact'> => ({
  exact: Object.fromEntries([...classes].map(([name, p]) => [name, formatRatio(p)])),
  evidenceExact: formatRatio(evidence),
})
const asDoubles = ({ classes, evidence }: Classes<Ratio>): Classes<number> => ({
  classes: new Map([...classes].map(([name, p]) => [name, toNumber(p)])),
  evidence: toNumber(evidence),
})

const conflictOf = (pedigree: Pedigree): { bird: string; reading: string }[] =>
  conflict(pedigree).map(({ bird, reading }) => ({
    bird: pedigree.birds[bird]!.id,
    reading: pedigree.birds[bird]!.readings[reading]!.says,
  }))

const about = (n: number): string => n.toExponential(1)

function tooMuch(pedigree: Pedigree, query: Query, fault: TooMuch): string {
  switch (fault.kind) {
    case 'too-many':
      return `query: the answer would have more than ${about(fault.most)} classes; ask of fewer loci or traits at once`
    case 'too-wide': {
      const { genome } = pedigree
      const loci = genome.groups[fault.group]!.loci.map((locus) => genome.loci[locus]!.id).join(', ')
      return `loci: the alleles of ${loci} make ${fault.haplotypes} haplotypes in one group, more than ${fault.most}; leave out some of them`
    }
    case 'too-large':
      return tooLarge(pedigree, query, fault)
  }
}

function tooLarge(pedigree: Pedigree, query: Query, fault: Extract<TooMuch, { kind: 'too-large' }>): string {
  const { cells, budget, widest } = fault
  const names = (birds: readonly number[]): string => birds.map((bird) => pedigree.birds[bird]!.id).join(', ')
  const gone = leaveOut(
    pedigree,
    query.kind === 'one' ? query.bird : undefined,
    query.kind === 'one' ? query.items : [query.item],
    budget,
  )
  const hint =
    gone === undefined
      ? `take readings that may be wrong as certain, or leave out some of ${names(widest)}`
      : `it would do to leave out ${gone.length} bird${gone.length === 1 ? '' : 's'}: ${names(gone)}`
  return `individuals: this would take ${about(cells)} table cells, more than ${about(budget)}; ${hint}`
}
