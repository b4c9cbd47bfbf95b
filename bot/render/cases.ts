// bot/render/cases.ts: an answer that hangs on something about a parent: each case by itself, never one blurred share.
import { adults, downs } from './chicks.ts'
import { line, strong } from './document.ts'
import { belief } from './numbers.ts'
import { sure } from './signs.ts'
import type { Block } from './document.ts'
import type { Case } from '../../core/answer.ts'

/** Cases that are named one by one; what is left over is unlikely. */
const mostCases = 3
const tooUnlikely = 0.02

const verdicts = {
  yes: 'they can be sexed at hatch',
  partly: 'some can be sexed at hatch',
  no: 'no sexing at hatch',
} as const

function chicks({ cockerels, pullets, sexing }: Case): string {
  if (sexing.verdict !== 'no') return `Cockerels ${downs(cockerels)}; pullets ${downs(pullets)}. ${sure(sexing)}`
  const [cocks, hens] = [adults(cockerels), adults(pullets)]
  return cocks === hens ? `All ${cocks}.` : `Grown cocks ${cocks}; hens ${hens}.`
}

/** 'If she is silver under the white (likely): …' for each, then how to find out. */
export function caseBlocks(cases: readonly Case[]): readonly Block[] {
  const shown = cases.filter((c, i) => i === 0 || c.weight > tooUnlikely).slice(0, mostCases)
  const tests = [...new Set(shown.map((c) => c.howToTell).filter(Boolean))]
  return [
    ...shown.map((c) =>
      line(strong(`If ${c.given} (${belief(c.weight)}): `), `${verdicts[c.sexing.verdict]}. ${chicks(c)}`),
    ),
    ...tests.slice(0, 1).map((words) => line(`To find out: ${words}`)),
  ]
}
