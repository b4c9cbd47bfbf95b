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
import { isOfTheHen } from './hen.ts'
import { hatchBlocks } from './hatch.ts'
import { asHtml } from './html.ts'
import { linesBlocks } from './lines.ts'
import { parentsBlocks } from './parents.ts'
import { partnersBlocks } from './partners.ts'
import { sourceBlocks } from './sources.ts'
import { asText } from './text.ts'
import type { Document } from './document.ts'
import type { Reply } from '../transport.ts'
import type { Answer, Caution } from '../../core/answer.ts'
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

/** Of the cockerels of a hatch nobody is told who asks about the daughters alone, or was told an answer ago. */
function beside(answer: Answer, asked: Asked): readonly Caution[] {
  if (!('cautions' in answer)) return []
  const hensOnly = asked.aspects.length > 0 && asked.aspects.every(isOfTheHen)
  const told = answer.assumed.some(({ kind }) => kind === 'context')
  return answer.cautions.filter(({ topic }) => topic !== 'surplus-males' || !(hensOnly || told))
}

/** At most one caution, unless welfare or everything was asked for. */
function cautions(answer: Answer, asked: Asked): Document {
  const due = beside(answer, asked)
  const said = 'summary' in answer ? answer.summary : ''
  return due
    .filter(({ text }) => text !== said)
    .slice(0, wants(asked, 'welfare', 'more') ? due.length : 1)
    .map(({ text }) => line(text))
}

const asides = (answer: Answer): Document =>
  'assumed' in answer ? assumedWords(answer).map((words) => line(faint(words))) : []

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
