// core/answers/partners/eachGoal.ts: the birds a keeper named, goal by goal: which of them give this, and which that.
import { nameOfBird } from '../../cross/seen.ts'
import type { Goal, PartnersQuestion } from '../../question.ts'
import { conditionOf } from './condition.ts'
import { playThrough } from './search.ts'

const goalWords = (goal: Goal): string => (goal === 'sexable' ? 'sexable at hatch' : goal.replace('-', ' '))

/** 'Sexable at hatch: Barred Plymouth Rock. Green eggs: all three, if ...'; undefined unless asked so, of one bird and several goals. */
export function eachGoal({ each, for: own, among, goals, wanted }: PartnersQuestion): string | undefined {
  const [bird, ...others] = own
  if (each !== true || !bird || others.length > 0 || goals.length < 2 || among.length < 2) return undefined
  const clauses = goals.map((goal) => {
    const found = among.map((one) => playThrough({ own: bird, wanted, goals: [goal] }, one, true))
    const serving = found.filter(({ serves }) => serves)
    const names =
      serving.length === among.length ? 'all of them' : serving.map((one) => nameOfBird(one.bird)).join(', ')
    const [first] = serving
    const condition = first && conditionOf(first.crossed, [first.bird, bird], [goal])
    return `${goalWords(goal)}: ${names || 'none'}${condition === undefined ? '' : ' (not sure of every bird)'}`
  })
  const text = `With your ${nameOfBird(bird)}, ${clauses.join('; ')}.`
  return text.length <= 160 ? text : undefined
}
