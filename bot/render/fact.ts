// bot/render/fact.ts: one bird, gene, sign, rule or myth.
import { bullets, line, strong } from './document.ts'
import { wants, type Asked } from './asked.ts'
import { capital } from './tame.ts'
import type { Document } from './document.ts'
import type { FactAnswer } from '../../core/answer.ts'

const usualSentences = 5
/** A list of the keeper's own birds is of no use cut short. */
const mostBirds = 40
const hedges = { sure: '', usual: '', doubtful: 'Books and keepers disagree on this, so take it with care.' } as const

export function factBlocks(answer: FactAnswer, asked: Asked): Document {
  const says = answer.says.filter((words) => words !== answer.summary)
  const usual = answer.about === 'the birds told so far' ? mostBirds : usualSentences
  const shown = says.slice(0, wants(asked, 'more', 'why') ? says.length : usual)
  const body = shown.length > 3 ? [bullets(shown.map((words) => [words]))] : shown.map((words) => line(words))
  const hedge = hedges[answer.certainty]
  return [line(strong(capital(answer.summary))), ...body, ...(hedge ? [line(hedge)] : [])]
}
