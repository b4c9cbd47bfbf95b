// bot/ask/row.ts: one line of a batch: an object with an id and a text, and what may stand beside them.
import * as z from 'zod'
import { longestLine } from './lines.ts'
import type { Result } from '../../core/vocabulary.ts'

const Row = z.object({
  id: z.unknown().refine((id) => id !== undefined),
  text: z.string(),
  context: z.string().optional(), // an earlier message, read first
  addressed: z.boolean().default(true),
  at: z.iso.date().optional(), // the day it was said
})
export type Row = z.infer<typeof Row>

const wanted = 'write one object a line, such as {"id": 1, "text": "RIR over Light Sussex"}'

/** Numbers that JavaScript would round keep their digits: an id goes out as it came in. */
type Source = { readonly source?: string }
declare global {
  interface JSON {
    rawJSON: (source: string) => unknown // in Node 24, not yet in TypeScript's own list
  }
}
const exact = (_key: string, value: unknown, { source }: Source = {}): unknown =>
  typeof value === 'number' && source !== undefined && !Number.isSafeInteger(value) ? JSON.rawJSON(source) : value

function parsed(line: string): Result<unknown, string> {
  if (line.length > longestLine)
    return { ok: false, fault: `The line is longer than ${longestLine} characters; ${wanted}.` }
  try {
    return { ok: true, value: JSON.parse(line, exact) }
  } catch {
    return { ok: false, fault: `The line is not JSON; ${wanted}.` }
  }
}

/** @fault one sentence: what is wrong with the line, then what to write */
export function readRow(line: string): Result<Row, string> {
  const value = parsed(line)
  if (!value.ok) return value
  const row = Row.safeParse(value.value)
  if (row.success) return { ok: true, value: row.data }
  const at = row.error.issues[0]?.path.join('.')
  return {
    ok: false,
    fault: `${at ? `In the line, "${at}" is missing or of the wrong kind` : 'The line is no object'}; ${wanted}.`,
  }
}
