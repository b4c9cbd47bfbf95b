// bot/ask/batch.ts: lines of messages in, one line of answer out for each, in the same order.
import { emptyContext } from '../../grammar/context.ts'
import { recall, think } from '../think.ts'
import { readRow, type Row } from './row.ts'
import type { Answer } from '../../core/answer.ts'

function answerOf({ text, context, addressed, at }: Row): Answer {
  const start = { ...emptyContext(), ...(at === undefined ? {} : { today: at }) }
  const before = context === undefined ? start : recall(context, start)
  return think(text, { ...before, addressed }).answer
}

const thousandths = (ms: number): number => Math.round(ms * 1000) / 1000

/** The answer to one line as one line of JSON. A line that is no message is answered with what is wrong with it. */
export function answerLine(line: string, now: () => number): string {
  const row = readRow(line)
  if (!row.ok) return JSON.stringify({ id: null, answer: { kind: 'error', fault: 'malformed', message: row.fault } })
  const began = now()
  const answer = answerOf(row.value)
  return JSON.stringify({ id: row.value.id, ms: thousandths(now() - began), answer })
}
