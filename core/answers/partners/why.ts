// core/answers/partners/why.ts: the reason for one choice in a clause, and the condition it rests on.
import { breedNamed } from '../../breeds.ts'
import { nameOfBird } from '../../cross/seen.ts'
import type { Case, Crossed, Sexing, Sign } from '../../answer.ts'
import type { BirdRef, Goal } from '../../question.ts'
import type { Sex } from '../../vocabulary.ts'
import { carriesOf } from './quick.ts'
import { goalWorth, sexingWorth } from './score.ts'

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
export function reason(goals: readonly Goal[], one: Case, sire: BirdRef, wanted: Sex): string {
  const sexing = goals.includes('sexable') ? sexingReason(one.sexing, sire, wanted) : ''
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

const ofBlue = (goal: Goal): boolean => /^(blue|green|olive)/.test(goal)
const mayCarryBlue = (bird: BirdRef): boolean => {
  const share = carriesOf(bird)('O', 'O')
  return share > 0.05 && share < 0.9
}

/** Two copies of blue egg in whichever of the pair is not known to have them. */
function provenBlue(pair: readonly BirdRef[], goals: readonly Goal[]): string | undefined {
  const unsure = goals.some(ofBlue) ? pair.find(mayCarryBlue) : undefined
  return unsure && `the ${nameOfBird(unsure)} has two copies of blue egg: ask what mother and daughters lay`
}

/** What has to be true of the parents for the sexing to work, where the bot cannot know it. */
function provenSexing({ cases }: Crossed, candidate: BirdRef, worded: Case): string | undefined {
  const works = cases.filter((one) => sexingWorth(one) > worksAbove)
  const given = worded.given.replaceAll(ofEggs, '').replace(/^bred from (cock|hens): /, 'the $1 came from ')
  if (works.length > 0 && works.length < cases.length && given) return given
  if (works[0]?.sexing.signs[0]?.sign === 'wing feathers') return fastOverSlow
  return whiteBird(candidate) && works.length > 0 ? provenSilver : undefined
}

export function conditionOf(
  crossed: Crossed,
  [candidate, own]: readonly [BirdRef, BirdRef],
  goals: readonly Goal[],
): string | undefined {
  const sexing = goals.includes('sexable') ? provenSexing(crossed, candidate, workingCase(crossed, goals)) : undefined
  return [sexing, provenBlue([candidate, own], goals)].filter(Boolean).join(', and ') || undefined
}

/** The case that the reason is worded for: of those that work, the one that serves the goals best. */
export function workingCase({ cases }: Crossed, goals: readonly Goal[]): Case {
  const works = cases.filter((one) => sexingWorth(one) > worksAbove)
  const some = works.length > 0 ? works : cases.filter((one) => sexingWorth(one) > 0)
  const among = goals.includes('sexable') && some.length > 0 ? some : cases
  const worth = (one: Case): number => goals.filter(ofBlue).reduce((sum, goal) => sum + goalWorth(goal, one), 0)
  return among.toSorted((a, b) => worth(b) - worth(a))[0]!
}
