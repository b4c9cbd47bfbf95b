// core/statement.ts: the door for flock statements: JSON in, the exact answer, a conflict or a fault out.
import { askBird } from './engine/ask.ts'
import { conflict } from './engine/conflict.ts'
import { askEverybody } from './engine/everybody.ts'
import { doubles, fractions, type Tables } from './engine/factor.ts'
import { leaveOut } from './engine/leaveOut.ts'
import { formatRatio, type Ratio, toNumber } from './engine/num.ts'
import type { Outcome } from './engine/outcome.ts'
import type { Pedigree } from './engine/pedigree.ts'
import { readBirds } from './statement/birds.ts'
import { type Fault, pathOf } from './statement/fault.ts'
import { readGenome } from './statement/genome.ts'
import { type Query, readQuery } from './statement/query.ts'
import { readStatement, type Statement } from './statement/schema.ts'
import { readTraits } from './statement/traits.ts'

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

/** Answers a flock statement. Never throws on account of what the JSON holds. */
export function answerStatement(json: unknown): StatementAnswer {
  const read = readStatement(json)
  if ('fault' in read) return errorOf(read.fault)
  const faults: Fault[] = []
  const complain = (path: readonly PropertyKey[], says: string): void => void faults.push({ path: pathOf(path), says })
  const { pedigree, query } = understand(read.statement, complain)
  return faults.length > 0 ? errorOf(faults[0]!) : answer(pedigree, query)
}

const errorOf = ({ path, says }: Fault): StatementAnswer => ({ error: path === '' ? says : `${path}: ${says}` })

function understand(
  statement: Statement,
  complain: (path: readonly PropertyKey[], says: string) => void,
): { pedigree: Pedigree; query: Query } {
  const genome = readGenome(statement, complain)
  const traits = readTraits(statement, genome, complain)
  const birds = readBirds(statement, genome, traits, complain)
  return { pedigree: { genome, birds }, query: readQuery(statement, genome, traits, birds, complain) }
}

function answer(pedigree: Pedigree, query: Query): StatementAnswer {
  const quick = ask(pedigree, query, doubles)
  if (quick.kind === 'too-large') return tooLarge(pedigree, query, quick)
  const exact = ask(pedigree, query, fractions, quick.kind === 'impossible' ? undefined : exactCells)
  if (exact.kind === 'impossible') return { conflict: conflictOf(pedigree) }
  const fraction = exact.kind === 'answer' ? inFractions(exact.answer) : {}
  if (quick.kind === 'answer') return { ...inDoubles(quick.answer), ...fraction }
  return exact.kind === 'answer'
    ? { ...inDoubles(asDoubles(exact.answer)), ...fraction }
    : tooLarge(pedigree, query, exact)
}

type Classes<T> = { readonly classes: ReadonlyMap<string, T>; readonly evidence: T }

function ask<T, W, S>(
  pedigree: Pedigree,
  { bird, items }: Query,
  tables: Tables<T, W, S>,
  budget?: number,
): Outcome<Classes<T>> {
  if (bird !== undefined) return askBird(pedigree, bird, items, tables, budget)
  const outcome = askEverybody(pedigree, items[0]!, 'yes', tables, budget)
  if (outcome.kind !== 'answer') return outcome
  const { chances, evidence } = outcome.answer
  const named = chances.map((p, i) => [pedigree.birds[i]!.id, p] as const)
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

function tooLarge(
  pedigree: Pedigree,
  { bird, items }: Query,
  { cells, budget, widest }: Extract<Outcome<never>, { kind: 'too-large' }>,
): StatementAnswer {
  const names = (birds: readonly number[]): string => birds.map((number) => pedigree.birds[number]!.id).join(', ')
  const about = (n: number): string => n.toExponential(1)
  const gone = leaveOut(pedigree, bird, items, budget)
  const hint =
    gone === undefined
      ? `take readings that may be wrong as certain, or leave out some of ${names(widest)}`
      : `it would do to leave out ${gone.length} birds: ${names(gone)}`
  return { error: `individuals: this would take ${about(cells)} table cells, more than ${about(budget)}; ${hint}` }
}
