// bot/render/brief.ts: one mating among several, in a line: verdict, on what it hangs, and the chicks.
import { outcomes } from './cases.ts'
import { downs } from './chicks.ts'
import { grown, telling } from './grown.ts'
import { sure } from './signs.ts'
import type { Crossed } from '../../core/answer.ts'

const verdicts = {
  yes: 'can be sexed at hatch',
  partly: 'some can be sexed at hatch',
  no: 'cannot be sexed at hatch',
} as const
/** The condition, where another case gives another verdict: ' if …', or ' unless …' where the likeliest is all the rest. */
function condition({ cases }: Crossed): string {
  const [first] = cases
  const other = cases.find((one) => one.sexing.verdict !== first?.sexing.verdict)
  if (!first || !other || outcomes(cases).length === 1) return ''
  return first.given === '' || first.given === 'otherwise' ? ` unless ${other.given}` : ` if ${first.given}`
}

/** @param short the verdict alone, where there are many matings */
export function inBrief(crossed: Crossed, short: boolean): string {
  const [first] = crossed.cases
  if (!first) return 'nothing hatches.'
  const verdict = `${verdicts[first.sexing.verdict]}${condition(crossed)}.`
  if (short) return verdict
  const [sign] = first.sexing.signs
  if (first.sexing.verdict === 'no' || !sign) return `${verdict} ${grown(first)}`
  const down = `Cockerels ${downs(first.cockerels, telling)}; pullets ${downs(first.pullets, telling)}.`
  const read =
    sign.sign === 'down colour' || sign.sign === 'head spot'
      ? down
      : `Cockerels ${sign.cockerel}; pullets ${sign.pullet}.`
  return `${verdict} ${read} ${sure(first.sexing)}`.trimEnd()
}
