// core/answers/lines/sexed.ts: of birds that a keeper compares for sexable chicks, which is to be the cock and which the hens.
import { mate } from '../../cross/mate.ts'
import type { BirdRef, LinesQuestion } from '../../question.ts'
import { nameOf } from './words.ts'

type Way = { readonly sire: BirdRef; readonly dam: BirdRef; readonly verdict: 'yes' | 'partly' | 'no' }

/** More birds than these are not tried all against all. */
const mostBirds = 4

const asksSexing = ({ goals, compare, topic }: LinesQuestion): boolean =>
  topic === 'compare' && goals.includes('sexable') && compare.length >= 2

/** Every one of the birds as cock over every other, the sexable ways first; none where that is not the question. */
export function waysToSex(question: LinesQuestion): readonly Way[] {
  if (!asksSexing(question)) return []
  const birds = question.compare.slice(0, mostBirds)
  const ways = birds.flatMap((sire) =>
    birds.filter((dam) => dam !== sire).map((dam) => ({ sire, dam, verdict: verdictOf(sire, dam) })),
  )
  const order = ['yes', 'partly', 'no']
  return ways.toSorted((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict))
}

const verdictOf = (sire: BirdRef, dam: BirdRef): Way['verdict'] =>
  mate(sire, dam, { hen: false, reverse: false }).cases[0]?.sexing.verdict ?? 'no'

const verdicts = {
  yes: 'chicks are sexed at hatch',
  partly: 'some of the chicks can be sexed at hatch',
  no: 'no sexing at hatch',
} as const

export const wayWords = ({ sire, dam, verdict }: Way): string =>
  `${nameOf(sire)} cock on ${nameOf(dam)} hens: ${verdicts[verdict]}`
