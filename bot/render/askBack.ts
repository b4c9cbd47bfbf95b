// bot/render/askBack.ts: a question back: what is missing, numbered choices, and what can be said meanwhile.
import { inBrief } from './brief.ts'
import { line, numbered, strong } from './document.ts'
import { capital, quoted } from './tame.ts'
import type { Document, Line } from './document.ts'
import type { Answer, AskBackAnswer } from '../../core/answer.ts'

const mostChoices = 8
/** Beyond these each choice gets its verdict alone. */
const mostTold = 3

type BlocksOf = (answer: Answer) => Document

/** What can be said already: of the first choice, where there are choices. */
function meanwhile({ provisional, options: [first] }: AskBackAnswer, blocksOf: BlocksOf): Document {
  if (!provisional) return []
  return [line(strong(first ? `Meanwhile, if it is ${first.label}:` : 'Meanwhile:')), ...blocksOf(provisional)]
}

/** A cross for each choice, in the same order: each choice is told with what it gives. */
function withCrosses({ options, provisional }: AskBackAnswer): readonly Line[] | undefined {
  if (provisional?.kind !== 'cross' || provisional.crosses.length !== options.length) return undefined
  return options.map(({ label }, i) => {
    const crossed = provisional.crosses[i]
    return [strong(capital(label)), crossed ? `: ${inBrief(crossed, options.length > mostTold)}` : '']
  })
}

const how = line('Answer with a number, or in your own words.')

export function askBackBlocks(answer: AskBackAnswer, blocksOf: BlocksOf): Document {
  const question = line(strong(capital(answer.summary)))
  const example = answer.example ? [line(`For example: ${quoted(answer.example, 120)}`)] : []
  const told = withCrosses(answer)
  if (told) return [question, numbered(told.slice(0, mostChoices)), how]
  const labels = answer.options.slice(0, mostChoices).map(({ label }): Line => [capital(label)])
  return [question, ...(labels.length > 0 ? [numbered(labels), how] : []), ...example, ...meanwhile(answer, blocksOf)]
}
