// bot/render/lookCases.ts: looks of the chicks where every case can be sexed alike and only the colours hang on a parent.
import { adults, downs } from './chicks.ts'
import { line, strong, type Block } from './document.ts'
import type { Telling } from './mixture.ts'
import { belief } from './numbers.ts'
import { bySex } from './sexes.ts'
import type { Case } from '../../core/answer.ts'

type Parts = { readonly down: boolean; readonly grown: boolean }

/** Looks told one by one; what is left over is unlikely. */
const mostLooks = 3
const tooUnlikely = 0.02

const alike = (cocks: string, hens: string, cock: string, hen: string): string =>
  cocks === hens ? cocks : `${cock} ${cocks}; ${hen} ${hens}`

/** 'chicks black, pale-bellied. Grown cocks …; hens ….' */
function said({ cockerels, pullets }: Case, { down, grown }: Parts, telling: Telling): string {
  const young = alike(downs(cockerels, telling), downs(pullets, telling), 'cockerels', 'pullets')
  const old = alike(adults(cockerels, telling), adults(pullets, telling), 'cocks', 'hens')
  return [...(down ? [`chicks ${young}.`] : []), ...(grown ? [`${down ? 'Grown' : 'grown'} ${old}.`] : [])].join(' ')
}

const weightOf = (cases: readonly Case[]): number => cases.reduce((sum, { weight }) => sum + weight, 0)

/** Down and grown look of each sex; where they hang on what a parent hides, a line for each thing it may be. */
export function looksOf(cases: readonly [Case, ...Case[]], wanted: Parts, telling: Telling): readonly Block[] {
  const groups = [...Map.groupBy(cases, (one) => said(one, wanted, telling))]
    .map(([says, same]) => ({ says, weight: weightOf(same), given: same[0]!.given }))
    .toSorted((a, b) => b.weight - a.weight)
  if (groups.length === 1) return bySex(cases[0], wanted, telling)
  return groups
    .filter(({ weight }, i) => i === 0 || (i < mostLooks && weight > tooUnlikely))
    .map(({ says, weight, given }) => {
      const condition = given === '' || given === 'otherwise' ? 'Otherwise' : `If ${given}`
      return line(strong(`${condition} (${belief(weight)}): `), says)
    })
}
