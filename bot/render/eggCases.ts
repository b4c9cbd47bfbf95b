// bot/render/eggCases.ts: the shell colour of the daughters where it hangs on what a parent carries: each case by itself.
import { line, strong } from './document.ts'
import { shellWords } from './hen.ts'
import { belief } from './numbers.ts'
import type { Block } from './document.ts'
import type { Case } from '../../core/answer.ts'

type ShellCase = { readonly given: string; readonly weight: number; readonly one: Case }

/** Cases that differ in the eggs, likeliest first; none where all lay alike. */
function shellCases(cases: readonly Case[]): readonly ShellCase[] {
  const found = new Map<string, ShellCase>()
  for (const one of cases) {
    const given = one.eggsGiven ?? ''
    const before = found.get(given)
    found.set(given, before ? { ...before, weight: before.weight + one.weight } : { given, weight: one.weight, one })
  }
  return found.size < 2 ? [] : [...found.values()].toSorted((a, b) => b.weight - a.weight)
}

export const shellHangs = (cases: readonly Case[]): boolean => shellCases(cases).length > 0

/** 'Eggs: if the cock is carrying two copies of blue egg (less likely): mostly olive, some green.' */
export const eggCaseBlocks = (cases: readonly Case[]): readonly Block[] =>
  shellCases(cases).map(({ given, weight, one }) =>
    line(
      strong(`Shells ${given ? `if ${given}` : 'otherwise'} (${belief(weight)}): `),
      `${one.hen ? shellWords(one.hen) : 'unknown'}.`,
    ),
  )
