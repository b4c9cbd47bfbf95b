// core/answers/partners/why.ts: the reason for one choice in a clause.
import type { Case, Sexing, Sign } from '../../answer.ts'
import type { BirdRef, Goal } from '../../question.ts'
import type { Sex } from '../../vocabulary.ts'
import { carriesOf } from './quick.ts'

/** What the mate brings to the sign, as hen and as cock: the hen has the mark, the cock lacks it. */
const marks: Readonly<Record<string, Readonly<Record<Sex, string>>>> = {
  'head spot': { F: 'barred', M: 'not barred' },
  stripes: { F: 'barred', M: 'not barred' },
  'down colour': { F: 'silver', M: 'gold' },
  'wing feathers': { F: 'slow-feathering', M: 'fast-feathering' },
  'skin colour': { F: 'of clear skin', M: 'dark-skinned' },
}
const chocolate: Readonly<Record<Sex, string>> = {
  F: 'chocolate shows in the daughters alone',
  M: 'his chocolate shows in the daughters alone',
}
const bothBarred = 'sons have two doses of bars, daughters one'

/** Why the sexes differ, by the sign that tells them. */
function mark({ sign, pullet }: Sign, sire: BirdRef, wanted: Sex): string {
  if (sign === 'down colour' && /chocolate|mauve/.test(pullet)) return chocolate[wanted]
  if ((sign === 'head spot' || sign === 'stripes') && carriesOf(sire)('B', 'B') > 0.5) return bothBarred
  return marks[sign]?.[wanted] ?? 'the sexes differ'
}

/** The sign rests on a colour few keepers have: offered only where nothing plainer serves. */
export const isUncommon = ({ sexing }: Case): boolean => {
  const [sign] = sexing.signs
  return sign !== undefined && (sign.sign === 'skin colour' || /chocolate|mauve/.test(sign.pullet))
}

function sexingReason(sexing: Sexing, sire: BirdRef, wanted: Sex): string {
  const [sign] = sexing.signs
  if (!sign || sexing.verdict === 'no') return 'the chicks cannot be told apart at hatch'
  const because = mark(sign, sire, wanted)
  const some = sexing.verdict === 'partly' ? '; less sure than most' : ''
  return `${because}, so cockerels have ${sign.cockerel}, pullets ${sign.pullet}${some}`
}

/** The colours that a goal asks for. */
const wantedShells: Partial<Record<Goal, RegExp>> = {
  'blue-eggs': /^blue$/,
  'green-eggs': /green|olive/,
  'olive-eggs': /olive/,
  'brown-eggs': /brown/,
  'dark-eggs': /dark/,
  'white-eggs': /^(?:white|cream)$/,
}
const isHalf = (share: number): boolean => Math.abs(share - 0.5) < 0.02

/** "half the daughters lay olive eggs", where that many lay what is wanted; else what most of them lay. */
function topShell({ hen }: Case, goal: Goal): string {
  const shells = hen?.shell.toSorted((a, b) => b.share - a.share) ?? []
  const [first] = shells
  const wanted = shells.filter(({ colour }) => wantedShells[goal]?.test(colour))
  const share = wanted.reduce((sum, { share }) => sum + share, 0)
  const top = wanted[0] ?? first
  if (!first || !top) return ''
  if (share > 0.9)
    return wanted[0]!.share > 0.6
      ? `daughters lay ${top.colour} eggs`
      : `daughters lay ${wanted
          .slice(0, 2)
          .map(({ colour }) => colour)
          .join(' or ')} eggs`
  if (isHalf(share)) return `half the daughters lay ${top.colour} eggs`
  return share > 0.5 ? `most daughters lay ${top.colour} eggs` : `most daughters lay ${first.colour} eggs`
}

const shellGoal = (goal: Goal): boolean => goal.endsWith('-eggs')

function goalReason(goal: Goal, one: Case): string {
  const { hen } = one
  if (shellGoal(goal)) return topShell(one, goal)
  switch (goal) {
    case 'calm':
    case 'family':
      return hen ? `${hen.temper} daughters` : ''
    case 'cold':
      return hen ? `cold: ${hen.hardiness.cold}` : ''
    case 'heat':
      return hen ? `heat: ${hen.hardiness.heat}` : ''
    case 'broody':
      return hen ? hen.broody.words : ''
    case 'size':
    case 'meat':
      return hen ? `heavier daughters and cockerels` : ''
    case 'barred':
      return 'barred daughters'
    case 'laced':
      return 'laced daughters'
    case 'show':
      return 'keeps to one variety'
    default:
      return ''
  }
}

/** One clause: what the chicks show, then what else was wanted. */
export function reason(goals: readonly Goal[], one: Case, sire: BirdRef, wanted: Sex): string {
  const sexing = goals.includes('sexable') ? sexingReason(one.sexing, sire, wanted) : ''
  const others = goals.filter((goal) => goal !== 'sexable').map((goal) => goalReason(goal, one))
  const eggs = goals.includes('eggs') && !sexing ? 'for the number of eggs' : ''
  return [...new Set([sexing, ...others, eggs])].filter(Boolean).join('; ') || 'fits what you want'
}
