// core/answers/askBack.ts: a question back, only where the readings differ in what was asked; else the likeliest is answered and said.
import type { Answer, AskBackAnswer, CrossAnswer } from '../answer.ts'
import type { AskBackQuestion, Question } from '../question.ts'
import { assumptionWords, birdsOf, fitting, nothingElse } from './parts.ts'
import { readingOf } from './readings.ts'

type Resolve = (question: Question) => Answer

/** Most readings that are played through; the rest stand as choices only. */
const played = 5

const cross = 'Rhode Island Red cock x Light Sussex hen'
/** A message that would have had all it needs. */
const examples: Readonly<Record<AskBackQuestion['missing'], string>> = {
  variety: cross,
  'which-is-male': cross,
  'other-bird': cross,
  birds: cross,
  context: cross,
  spelling: cross,
  goal: 'which hens for my Welsummer cock, sexable at hatch and brown eggs',
  look: 'black chick with a pale spot on the head, cock is Rhode Island Red, hens are Barred Rock and Light Sussex',
  count: '12 black chicks and none lavender from my black cock and a lavender hen',
  trait: 'does my black cock carry lavender',
}

const once = <T>(items: readonly T[]): readonly T[] => [
  ...new Map(items.map((item) => [JSON.stringify(item), item])).values(),
]

/** Several readings answered as one: each reading's matings after one another. */
function provisional(answers: readonly Answer[]): Answer | undefined {
  const crosses = answers.filter((answer): answer is CrossAnswer => answer.kind === 'cross')
  const [first] = crosses
  if (!first) return answers.find((answer) => answer.kind !== 'error' && answer.kind !== 'silent')
  if (crosses.length === 1) return first
  return {
    ...first,
    summary: fitting(crosses.map(({ summary }) => summary).join(' '), 'It depends on which of these birds is meant.'),
    sire: once(crosses.flatMap(({ sire }) => sire)),
    dam: once(crosses.flatMap(({ dam }) => dam)),
    birds: once(crosses.flatMap(({ birds }) => birds)),
    cautions: once(crosses.flatMap(({ cautions }) => cautions)),
    sources: once(crosses.flatMap(({ sources }) => sources)),
    assumptions: once(crosses.flatMap(({ assumptions }) => assumptions)),
    crosses: crosses.flatMap((one) => one.crosses),
  }
}

const missingWords: Readonly<Record<AskBackQuestion['missing'], string>> = {
  variety: 'Which colour or variety',
  'which-is-male': 'Which of the two is the cock',
  'other-bird': 'Which bird is the other parent',
  goal: 'What are they to be good for',
  birds: 'Which birds do you mean',
  context: 'Which birds are you speaking of',
  look: 'What do they look like',
  count: 'How many chicks, and how many of each kind',
  spelling: 'Which bird do you mean',
  trait: 'Which trait is it about',
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

export function answerAskBack(question: AskBackQuestion, resolve: Resolve): Answer {
  const answers = question.options.slice(0, played).map((option) => resolve(option.question))
  const readings = new Set(answers.map(readingOf))
  const [likeliest] = answers
  if (likeliest && question.options.length <= played && readings.size === 1 && question.missing !== 'which-is-male')
    return assuming(likeliest, question)
  const shown = provisional(answers)
  const shared =
    shown && 'birds' in shown ? { sire: shown.sire, dam: shown.dam, birds: shown.birds } : birdsOf(question)
  const what =
    question.missing === 'other-bird' && question.about
      ? `${capital(question.about)} with which other bird`
      : missingWords[question.missing] + (question.about ? `: ${question.about}` : '')
  const back: AskBackAnswer = {
    kind: 'ask-back',
    summary: fitting(`${what}?`, `${missingWords[question.missing]}?`),
    assumptions: assumptionWords(question.assumed),
    assumed: question.assumed,
    ...nothingElse,
    ...shared,
    missing: question.missing,
    ...(question.about === undefined ? {} : { about: question.about }),
    options: question.options.map(({ label }) => ({ label, resolves: `${question.missing}: ${label}` })),
    ...(question.options.length === 0 ? { example: examples[question.missing] } : {}),
    ...(shown ? { provisional: shown } : {}),
  }
  return back
}

/** All readings come to the same: the likeliest stands, and says what was taken. */
function assuming(answer: Answer, question: AskBackQuestion): Answer {
  if (!('assumptions' in answer)) return answer
  const taken = question.options[0]!.label
  const said = question.about
    ? `${question.about} means ${taken}; the others come to the same`
    : `${taken} is meant; the others come to the same`
  const assumed = question.about ? [{ kind: 'variety' as const, said: question.about, taken }] : []
  return { ...answer, assumptions: [...answer.assumptions, said], assumed: [...answer.assumed, ...assumed] }
}
