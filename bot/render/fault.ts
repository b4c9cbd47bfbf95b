// bot/render/fault.ts: where reading stopped, then what to write instead. Never a code, never "invalid".
import { line } from './document.ts'
import { count, or } from './numbers.ts'
import { quoted } from './tame.ts'
import type { Document } from './document.ts'
import type { ErrorAnswer } from '../../core/answer.ts'
import type { FaultQuestion } from '../../core/question.ts'

type Fault = FaultQuestion['fault']

/** One sentence for the fault, one for the way out. */
export function faultWords(fault: Fault): string {
  switch (fault.kind) {
    case 'too-long':
      return `That is more than I read at once (${count(fault.bytes / 1024)} KB; I take ${count(fault.limit / 1024)} KB). Send it in parts, one cross in each.`
    case 'unknown-allele': {
      const known =
        fault.known.length > 0
          ? ` I know ${or(fault.known)} there.`
          : ' Write it as in s+/s+ or B/-, or say it in words.'
      return `I do not know the gene symbol ${quoted(fault.written)}.${known}`
    }
    case 'allele-of-another-locus':
      return `${quoted(fault.written)} mixes two genes: ${quoted(fault.with)} does not pair with ${quoted(fault.belongsTo)}. Write each gene by itself, as in s+/s+ b+/b+.`
    case 'hen-has-one':
      return `A hen has only one copy of that gene, so ${quoted(fault.written)} cannot be. Write ${quoted(fault.write)} for her.`
    case 'too-many-alleles':
      return `${quoted(fault.written)} gives more than two copies, and no bird has more. Write two, as in S/s+.`
    case 'malformed':
      return fault.detail
  }
}

/** The fault of the reading where there is one, else what the core says. */
export const faultBlocks = (answer: ErrorAnswer, fault: Fault | undefined): Document => [
  line(fault ? faultWords(fault) : answer.message),
]
