// core/answers/partners/condition.ts: the case that a choice is worded for, and what has to be true for it to hold.
import { breedNamed, genesOf } from '../../breeds.ts'
import { nameOfBird } from '../../cross/seen.ts'
import type { Case, Crossed } from '../../answer.ts'
import type { BirdRef, Goal } from '../../question.ts'
import { carriesOf } from './quick.ts'
import { goalWorth, sexingWorth } from './score.ts'

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
  const breed = breedNamed(bird.breed ?? '')
  if (breed && genesOf(breed, bird.line)['O']?.kind === 'genotype') return false // its copies are known
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
  const given = worded.given.replaceAll(ofEggs, '')
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
