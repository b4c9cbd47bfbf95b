// core/answers/lines/needs.ts: how many hens for so many eggs, and how many eggs from so many hens, reckoned on a year's mean.
import type { LinesQuestion } from '../../question.ts'
import type { Candidate } from './candidate.ts'
import { capital } from './words.ts'

const weeksInYear = 52
/** Taken where people are told and eggs are not. */
const eggsAHead = 5

const weekly = ({ figures }: Candidate): number => figures.eggsFirstYear.likely / weeksInYear
const round = (n: number): number => (n < 40 ? Math.round(n) : Math.round(n / 5) * 5)

const beside = ({ name }: Candidate, { length }: readonly Candidate[]): string => (length > 1 ? ` (${name})` : '')

/** Eggs a week that are wanted: told, or so many a head. */
function wanted({ eggsPerWeek, people }: LinesQuestion): number | undefined {
  return eggsPerWeek ?? (people === undefined ? undefined : people * eggsAHead)
}

export function needsSummary(question: LinesQuestion, shown: readonly Candidate[]): readonly string[] {
  const { hens = 0, people, eggsPerWeek } = question
  const few = shown.slice(0, 2)
  const eggs = wanted(question)
  if (hens > 0) {
    const laid = few.map((one) => `${round(weekly(one) * hens)}${beside(one, few)}`).join(' or ')
    const whose = few.length === 1 ? ` (${few[0]!.name})` : ''
    const many = hens === 1 ? `1 hen${whose} lays` : `${hens} hens${whose} lay`
    const [best] = few
    const verdict =
      eggs === undefined || !best
        ? ''
        : weekly(best) * hens >= eggs
          ? 'Yes: '
          : weekly(best) * hens >= eggs * 0.8
            ? 'Just about: '
            : 'No: '
    const need =
      eggsPerWeek !== undefined ? `; you want ${eggsPerWeek}` : people !== undefined ? `, for ${people} people` : ''
    return [
      `${verdict}${many} about ${laid} eggs a week in their first year${need}.`,
      `${verdict}${many} about ${laid} eggs a week.`,
    ]
  }
  if (eggs === undefined) return ['A good layer gives about five or six eggs a week in her first year.']
  const need = few.map((one) => `${Math.ceil(eggs / weekly(one))}${beside(one, few)}`).join(' or ')
  const what = eggsPerWeek === undefined ? `${people} people, about ${eggs} eggs a week` : `${eggs} eggs a week`
  return [`For ${what}: about ${need} hens in their first year.`, `For ${eggs} eggs a week: about ${need} hens.`]
}

export const needsSaid = (question: LinesQuestion, shown: readonly Candidate[]): readonly string[] => [
  ...shown
    .slice(0, 2)
    .map((one) => `${capital(one.name)}: about ${weekly(one).toFixed(1)} eggs a hen and week over the first year.`),
  'That is a year’s mean: without lamps reckon on a third of it in mid-winter, and on a fifth less each later year.',
  ...(question.people !== undefined && question.eggsPerWeek === undefined
    ? [`I took about ${eggsAHead} eggs a head and week; tell me if you eat more.`]
    : []),
  'Keep a hen or two over the number: some moult, sit or rest at any time.',
]
