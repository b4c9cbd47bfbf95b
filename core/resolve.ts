// core/resolve.ts: the door of the core: a Question goes in, its Answer comes out. The same question always gets the same answer.
import type { Answer } from './answer.ts'
import { answerAskBack } from './answers/askBack.ts'
import { answerCarrier } from './answers/carrier.ts'
import { answerCross } from './answers/cross.ts'
import { answerDecline } from './answers/decline.ts'
import { answerFact } from './answers/fact.ts'
import { answerFault } from './answers/fault.ts'
import { answerHatch } from './answers/hatch.ts'
import { sexingAccuracy } from './answers/hatch/sexed.ts'
import { answerLines } from './answers/lines.ts'
import { answerParents } from './answers/parents.ts'
import { answerPartners } from './answers/partners.ts'
import type { Question } from './question.ts'

export function resolve(question: Question): Answer {
  switch (question.kind) {
    case 'cross':
      return answerCross(question)
    case 'partners':
      return answerPartners(question)
    case 'carrier':
      return answerCarrier(question)
    case 'parents':
      return answerParents(question)
    case 'hatch':
      return answerHatch(question, sexingAccuracy(question))
    case 'lines':
      return answerLines(question)
    case 'fact':
      return answerFact(question)
    case 'ask-back':
      return answerAskBack(question, resolve)
    case 'decline':
      return answerDecline(question)
    case 'error':
      return answerFault(question)
    case 'silent':
      return { kind: 'silent' }
  }
}
