// bot/render/reply.ts: Answer -> Reply: one file a kind says the matter; cautions, assumptions and sources come last.
import { askBackBlocks } from './askBack.ts'
import { askedOf, wants, type Asked } from './asked.ts'
import { assumedWords } from './assumed.ts'
import { carrierBlocks } from './carrier.ts'
import { crossBlocks } from './cross.ts'
import { declineBlocks } from './decline.ts'
import { faint, line } from './document.ts'
import { factBlocks } from './fact.ts'
import { faultBlocks } from './fault.ts'
import { hatchBlocks } from './hatch.ts'
import { asHtml } from './html.ts'
import { linesBlocks } from './lines.ts'
import { parentsBlocks } from './parents.ts'
import { partnersBlocks } from './partners.ts'
import { otherAssumptions } from './takenLines.ts'
import { sourceBlocks } from './sources.ts'
import { asText } from './text.ts'
import type { Document } from './document.ts'
import type { Reply } from '../transport.ts'
import type { Answer } from '../../core/answer.ts'
import type { Question } from '../../core/question.ts'

type Silent = Extract<Answer, { kind: 'silent' }>

function matter(answer: Exclude<Answer, Silent>, question: Question, asked: Asked): Document {
  switch (answer.kind) {
    case 'cross':
      return crossBlocks(answer, asked)
    case 'partners':
      return partnersBlocks(answer, asked)
    case 'carrier':
      return carrierBlocks(answer, asked)
    case 'parents':
      return parentsBlocks(answer, asked)
    case 'hatch':
      return hatchBlocks(answer, asked)
    case 'lines':
      return linesBlocks(answer, asked)
    case 'fact':
      return factBlocks(answer, asked)
    case 'ask-back':
      return askBackBlocks(answer, (inner) => (inner.kind === 'silent' ? [] : matter(inner, question, asked)))
    case 'decline':
      return declineBlocks(answer)
    case 'error':
      return faultBlocks(answer, question.kind === 'error' ? question.fault : undefined)
  }
}

/** At most one caution, unless welfare or everything was asked for. */
function cautions(answer: Answer, asked: Asked): Document {
  if (!('cautions' in answer)) return []
  if (wants(asked, 'welfare', 'more')) return answer.cautions.map(({ text }) => line(text))
  const [first] = answer.cautions
  return first ? [line(first.text)] : []
}

/** The lines taken stand in the heading of a single cross. */
function asides(answer: Answer): Document {
  if (!('assumed' in answer)) return []
  const single = answer.kind === 'cross' && answer.crosses.length === 1
  const assumptions = single ? otherAssumptions(answer.assumptions) : answer.assumptions
  return assumedWords(assumptions, answer.assumed).map((words) => line(faint(words)))
}

const sources = (answer: Answer, asked: Asked): Document =>
  'sources' in answer && wants(asked, 'why', 'more') ? sourceBlocks(answer.sources) : []

/** The answer as a document; nothing for silence. */
export function replyDocument(answer: Answer, question: Question): Document {
  if (answer.kind === 'silent') return []
  const asked = askedOf(question)
  return [...matter(answer, question, asked), ...cautions(answer, asked), ...asides(answer), ...sources(answer, asked)]
}

export const asReply = (document: Document): Reply => ({ text: asText(document), html: asHtml(document) })

/** What a person reads. Empty for silence. */
export const reply = (answer: Answer, question: Question): Reply => asReply(replyDocument(answer, question))
