// bot/render/askBack.ts: a question back: what is missing, numbered choices, and what can be said meanwhile.
import { line, numbered, strong } from './document.ts'
import { capital, quoted } from './tame.ts'
import type { Block, Document } from './document.ts'
import type { Answer, AskBackAnswer } from '../../core/answer.ts'

const mostChoices = 8

/** What can be said already, without its own remarks. */
const meanwhile = (answer: AskBackAnswer, blocksOf: (answer: Answer) => Document): Document =>
  answer.provisional ? [line(strong('Meanwhile, for each:')), ...blocksOf(answer.provisional).slice(1)] : []

function choices(answer: AskBackAnswer): readonly Block[] {
  const labels = answer.options.slice(0, mostChoices).map((option) => [option.label])
  if (labels.length === 0) return []
  return [numbered(labels), line('Answer with a number, or in your own words.')]
}

export const askBackBlocks = (answer: AskBackAnswer, blocksOf: (answer: Answer) => Document): Document => [
  line(strong(capital(answer.summary))),
  ...choices(answer),
  ...(answer.example ? [line(`For example: ${quoted(answer.example, 120)}`)] : []),
  ...meanwhile(answer, blocksOf),
]
