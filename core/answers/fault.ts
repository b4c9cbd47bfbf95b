// core/answers/fault.ts: what is wrong with a message that cannot be, and what to write instead.
import type { ErrorAnswer } from '../answer.ts'
import type { FaultQuestion } from '../question.ts'

function message({ fault }: FaultQuestion): string {
  switch (fault.kind) {
    case 'too-long':
      return `That message is ${fault.bytes} bytes long; I read up to ${fault.limit}. Please send the two birds alone, like “Rhode Island Red x Light Sussex”.`
    case 'unknown-allele':
      return `I don’t know “${fault.written}”${fault.locus ? ` at ${fault.locus}` : ''}.${fault.known.length > 0 ? ` Known there: ${fault.known.join(', ')}.` : ' Write it like s+/s+, B/-, e^b/e^b or “split to lavender”.'}`
    case 'allele-of-another-locus':
      return `“${fault.written}” mixes two genes: ${fault.with} does not belong with ${fault.belongsTo}. Write each gene by itself, like S/- B/-.`
    case 'hen-has-one':
      return `“${fault.written}” cannot be for a hen: ${fault.locus} lies on the Z and she has one Z. Write ${fault.write}.`
    case 'too-many-alleles':
      return `“${fault.written}” has too many copies at ${fault.locus}: a cock has two, a hen two, or one on the Z. Write two, like e^b/e^Wh.`
    case 'malformed':
      return fault.detail
  }
}

export const answerFault = (question: FaultQuestion): ErrorAnswer => ({
  kind: 'error',
  message: message(question),
  fault: question.fault.kind,
})
