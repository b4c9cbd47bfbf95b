// bot/render/cases.ts: an answer that hangs on something about a parent: each case by itself, never one blurred share.
import { wants, type Asked } from './asked.ts'
import { grown } from './grown.ts'
import { line, strong } from './document.ts'
import { linkedWords } from './linked.ts'
import { belief } from './numbers.ts'
import { sure } from './signs.ts'
import type { Block } from './document.ts'
import type { Case } from '../../core/answer.ts'

/** Outcomes that are named one by one; what is left over is unlikely. */
const mostOutcomes = 3
const tooUnlikely = 0.02
/** Two conditions of one outcome are both named where that stays short. */
const longestGiven = 110

const verdicts = {
  yes: 'they can be sexed at hatch',
  partly: 'some can be sexed at hatch',
  no: 'no sexing at hatch',
} as const
/** With a sign: what to look for. Without, or where grown birds are asked about: what they grow into. */
function said(one: Case, grownAsked: boolean): string {
  const { verdict, signs } = one.sexing
  const [sign] = signs
  const linked = linkedWords(one)
  if (verdict === 'no' || !sign) return [`${verdicts.no}.`, linked, grown(one)].filter(Boolean).join(' ')
  const read = `${verdicts[verdict]} by the ${sign.sign}. Cockerels ${sign.cockerel}; pullets ${sign.pullet}. ${sure(one.sexing)}`
  return grownAsked ? `${verdicts[verdict]}. ${grown(one)}` : read.trimEnd()
}

type Outcome = { readonly says: string; readonly weight: number; readonly cases: readonly [Case, ...Case[]] }

/** Cases that come to the same for the keeper are one outcome, likeliest first. */
export function outcomes(cases: readonly Case[], asked?: Asked): readonly Outcome[] {
  const grownAsked = asked !== undefined && wants(asked, 'adults') && !wants(asked, 'sexing')
  const found = new Map<string, Outcome>()
  for (const one of cases) {
    const says = said(one, grownAsked)
    const before = found.get(says)
    if (before) found.set(says, { says, weight: before.weight + one.weight, cases: [...before.cases, one] })
    else found.set(says, { says, weight: one.weight, cases: [one] })
  }
  return [...found.values()].toSorted((a, b) => b.weight - a.weight)
}

function given({ cases: [first, second, ...others] }: Outcome): string {
  const both = second && others.length === 0 ? `${first.given}, or if ${second.given}` : ''
  if (both !== '' && both.length <= longestGiven) return both
  return second ? `${first.given}, or much the same` : first.given
}

const condition = (outcome: Outcome): string => {
  const words = given(outcome)
  return words === '' || words === 'otherwise' ? 'Otherwise' : `If ${words}`
}
const isRest = (outcome: Outcome): boolean => condition(outcome) === 'Otherwise'

/** 'If the hens are silver (likely): …' for each outcome, “otherwise” after what it is other than; then how to find out. */
export function caseBlocks(cases: readonly Case[], asked: Asked): readonly Block[] {
  const shown = outcomes(cases, asked)
    .filter((o, i) => i === 0 || o.weight > tooUnlikely)
    .slice(0, mostOutcomes)
    .toSorted((a, b) => Number(isRest(a)) - Number(isRest(b)))
  const tests = shown.flatMap((o) => o.cases.map((c) => c.howToTell)).filter(Boolean)
  return [
    ...shown.map((o) => line(strong(`${condition(o)} (${belief(o.weight)}): `), o.says)),
    ...tests.slice(0, 1).map((words) => line(`To find out: ${words}`)),
  ]
}
