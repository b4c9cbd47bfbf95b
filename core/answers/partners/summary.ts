// core/answers/partners/summary.ts: the first line of a `partners` answer: names, or that there are none and why.
import { breedNamed } from '../../breeds.ts'
import type { PartnersAnswer } from '../../answer.ts'
import { nameOfBird } from '../../cross/seen.ts'
import type { BirdRef, Goal, PartnersQuestion } from '../../question.ts'
import { fitting } from '../parts.ts'
import type { How } from './choose.ts'

const words = { F: { part: 'hens', one: 'hen', own: 'cock' }, M: { part: 'cocks', one: 'cock', own: 'hens' } } as const

/** 'Rhode Island Red', but 'red' for a bird known by its colour alone. */
const called = (bird: BirdRef): string =>
  breedNamed(bird.breed ?? '')?.type === 'described'
    ? nameOfBird(bird)
        .replace(/ bird$/, '')
        .toLowerCase()
    : nameOfBird(bird)

function owned({ for: birds, wanted }: PartnersQuestion): string {
  const names = [...new Set(birds.map(called))]
  return `your ${names.length > 3 ? 'flock of' : names.join(', ')} ${names.length > 3 ? `${names.length} kinds` : words[wanted].own}`
}

type Found = {
  readonly safe: PartnersAnswer['best']
  readonly best: PartnersAnswer['best']
  readonly how: How
  readonly reached: boolean
}
const nameOf = ({ bird }: PartnersAnswer['best'][number]): string => nameOfBird({ breed: bird.breed, line: bird.line })

/** Told by the wings alone, and that only if a strain is what nobody told. */
const isByWingOnly = ({ sexing, condition }: PartnersAnswer['best'][number]): boolean =>
  sexing?.signs[0]?.sign === 'wing feathers' && condition !== undefined

export function partnersSummary(question: PartnersQuestion, goals: readonly Goal[], found: Found): string {
  const { safe, best, how, reached } = found
  const { part, one } = words[question.wanted]
  const own = owned(question)
  const names = best.map(nameOf)
  const few = names.slice(0, 2).join(', ')
  if (safe[0])
    return fitting(
      `For ${own} the safe ${one} is a ${nameOf(safe[0])}: ${safe[0].why}.`,
      `For ${own} the safe ${one} is a ${nameOf(safe[0])}.`,
    )
  if (how === 'none')
    return goals.includes('sexable')
      ? fitting(`No ${one} gives chicks of ${own} that can be sexed at hatch; choose by eggs and temper instead.`)
      : fitting(`I know no ${part} that give that with ${own}.`)
  if (how === 'uncommon')
    return fitting(
      `No: no usual ${one} gives chicks of ${own} that sex by gold, silver or bars. Only a rare colour would: ${few}.`,
      `No usual ${one} gives sexable chicks here; only a rare colour would: ${few}.`,
    )
  if (how === 'nearest')
    return fitting(`No ${one} gives just that with ${own}; nearest: ${names.join(', ')}.`, `Nearest: ${few}.`)
  if (goals.includes('sexable') && best.length > 0 && best.every(isByWingOnly))
    return fitting(
      `No ${one} sexes chicks of ${own} by colour; only wing feathers may, where both strains are proven for it: ${few}.`,
      `No ${one} sexes them by colour; only wing feathers may, in proven strains: ${few}.`,
    )
  const start = reached ? `For ${own}: ` : `None is likely to reach ${question.minimumEggs} eggs a year; nearest: `
  const colour = question.chicks === undefined ? '' : `; ${best[0]?.why.split(';')[0]}`
  const sexed = colour || (goals.includes('sexable') ? '; chicks sexable at hatch' : '')
  return fitting(
    ...[names.length, 4, 3, 2].map((n) => `${start}${names.slice(0, n).join(', ')}${sexed}.`),
    `${names.slice(0, 3).join(', ')}${sexed}.`,
  )
}
