// core/answers/partners/why.ts: the reason for one choice in a clause, and the condition it rests on.
import { breedNamed } from '../../breeds.ts'
import type { Case, Crossed, Sexing, Sign } from '../../answer.ts'
import type { BirdRef, Goal } from '../../question.ts'
import { carriesOf } from './quick.ts'
import { sexingWorth } from './score.ts'

const henMarks: Readonly<Record<string, string>> = {
  'head spot': 'her bars go to her sons alone',
  'down colour': 'her silver goes to her sons alone',
  stripes: 'her bars go to her sons alone',
  'wing feathers': 'her slow feathering goes to her sons alone',
  'skin colour': 'her clear skin goes to her sons alone',
}
const chocolate = 'chocolate shows in the daughters alone'

const bothBarred = 'sons have two doses of bars, daughters one'

/** Why the sexes differ, by the sign that tells them. */
function mark({ sign, pullet }: Sign, sire: BirdRef): string {
  if (sign === 'down colour' && /chocolate|mauve/.test(pullet)) return chocolate
  if ((sign === 'head spot' || sign === 'stripes') && carriesOf(sire)('B', 'B') > 0.5) return bothBarred
  return henMarks[sign] ?? 'the sexes differ'
}

/** The sign rests on a colour few keepers have: offered only where nothing plainer serves. */
export const isUncommon = ({ sexing }: Case): boolean => {
  const [sign] = sexing.signs
  return sign !== undefined && (sign.sign === 'skin colour' || /chocolate|mauve/.test(sign.pullet))
}

export function sexingReason(sexing: Sexing, sire: BirdRef): string {
  const [sign] = sexing.signs
  if (!sign || sexing.verdict === 'no') return 'the chicks cannot be told apart at hatch'
  const because = mark(sign, sire)
  const some = sexing.verdict === 'partly' ? '; less sure than most' : ''
  return `${because}: cockerels have ${sign.cockerel}, pullets ${sign.pullet}${some}`
}

const topShell = ({ hen }: Case): string => {
  const [first] = hen?.shell.toSorted((a, b) => b.share - a.share) ?? []
  if (!first) return ''
  return first.share > 0.9 ? `daughters lay ${first.colour} eggs` : `most daughters lay ${first.colour} eggs`
}

const shellGoal = (goal: Goal): boolean => goal.endsWith('-eggs')

function goalReason(goal: Goal, one: Case): string {
  const { hen } = one
  if (shellGoal(goal)) return topShell(one)
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
export function reason(goals: readonly Goal[], one: Case, sire: BirdRef): string {
  const sexing = goals.includes('sexable') ? sexingReason(one.sexing, sire) : ''
  const others = goals.filter((goal) => goal !== 'sexable').map((goal) => goalReason(goal, one))
  const eggs = goals.includes('eggs') && !sexing ? 'for the number of eggs' : ''
  return [...new Set([sexing, ...others, eggs])].filter(Boolean).join('; ') || 'fits what you want'
}

const whiteBird = (bird: BirdRef): boolean =>
  breedNamed(bird.breed ?? '')?.shows?.some((any) => any.includes('c') || any.includes('I')) ?? false

/** A case in which the chicks can be told well enough to speak of. */
const worksAbove = 0.4

const fastOverSlow = 'the cock’s strain is proven fast-feathering and the hens’ slow: look at day-old wings of both'
const provenSilver = 'the strain is proven silver under its white: hatch two or three sons of a gold cock first'
/** How many copies of blue egg a parent has does not bear on the sexing. */
const ofEggs = /,? ?carrying (?:one copy|two copies) of blue egg/g

/** What has to be true of the parents for the sexing to work, where the bot cannot know it. */
export function conditionOf({ cases }: Crossed, candidate: BirdRef, goals: readonly Goal[]): string | undefined {
  if (!goals.includes('sexable')) return undefined
  const works = cases.filter((one) => sexingWorth(one) > worksAbove)
  const given = works[0]?.given.replaceAll(ofEggs, '').replace(/^bred from (cock|hens): /, 'the $1 came from ')
  if (works.length < cases.length && given) return given
  if (works[0]?.sexing.signs[0]?.sign === 'wing feathers') return fastOverSlow
  return whiteBird(candidate) && works.length > 0 ? provenSilver : undefined
}

/** The case that the reason is worded for: the likeliest of those that work. */
export const workingCase = ({ cases }: Crossed): Case =>
  cases.find((one) => sexingWorth(one) > worksAbove) ?? cases.find((one) => sexingWorth(one) > 0) ?? cases[0]!
