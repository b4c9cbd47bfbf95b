// bot/render/eggCases.ts: the shell colour of the daughters where it hangs on what a parent carries: each case by itself.
import { line, strong } from './document.ts'
import { shellWords } from './hen.ts'
import { belief } from './numbers.ts'
import type { Block } from './document.ts'
import type { Case } from '../../core/answer.ts'

type ShellCase = { readonly given: string; readonly weight: number; readonly shells: string }

/** Cases that differ in the shells, likeliest first; none where all lay alike. */
function shellCases(cases: readonly Case[]): readonly ShellCase[] {
  const found = new Map<string, ShellCase>()
  for (const { hen, eggsGiven: given = '', weight } of cases) {
    const shells = hen ? shellWords(hen) : 'unknown'
    const before = found.get(shells)
    found.set(shells, before ? { ...before, weight: before.weight + weight } : { given, weight, shells })
  }
  return found.size < 2 ? [] : [...found.values()].toSorted((a, b) => b.weight - a.weight)
}

export const shellHangs = (cases: readonly Case[]): boolean => shellCases(cases).length > 0

const condition = (given: string): string => (given === '' || given === 'otherwise' ? 'otherwise' : `if ${given}`)

/** 'Shells if the cock is carrying two copies of blue egg (less likely): mostly olive, some green.' */
export const eggCaseBlocks = (cases: readonly Case[]): readonly Block[] =>
  shellCases(cases).map(({ given, weight, shells }) =>
    line(strong(`Shells ${condition(given)} (${belief(weight)}): `), `${shells}.`),
  )
