// bot/transports/matrix/raw.ts: events as the server sends them: JSON by strangers, so read with care.
import * as z from 'zod'

const Text = z.string().optional().catch(undefined)
const Things = z.record(z.string(), z.unknown())

export const RawEvent = z.object({
  event_id: z.string(),
  type: z.string(),
  sender: z.string(),
  origin_server_ts: z.number(),
  content: Things.catch({}),
  state_key: Text,
  redacts: Text,
  unsigned: z
    .object({ transaction_id: Text, prev_content: Things.optional().catch(undefined) })
    .optional()
    .catch(undefined),
})
export type RawEvent = z.infer<typeof RawEvent>

export const rawEvents = (events: readonly unknown[]): readonly RawEvent[] =>
  events.flatMap((event) => {
    const read = RawEvent.safeParse(event)
    return read.success ? [read.data] : []
  })

const Relation = z
  .object({
    rel_type: Text,
    event_id: Text,
    is_falling_back: z.boolean().optional().catch(undefined),
    'm.in_reply_to': z.object({ event_id: Text }).optional().catch(undefined),
  })
  .catch({ rel_type: undefined, event_id: undefined, is_falling_back: undefined, 'm.in_reply_to': undefined })

/** Where a message hangs. Stands outside the encryption, so it can be read without the key. */
export type Relation = {
  readonly edits?: string | undefined
  readonly thread?: string | undefined
  /** The message replied to by hand; a client's filling-in inside a thread is no reply. */
  readonly repliesTo?: string | undefined
}

export function relationOf(content: Readonly<Record<string, unknown>>): Relation {
  const read = Relation.parse(content['m.relates_to'] ?? {})
  const thread = read.rel_type === 'm.thread' ? read.event_id : undefined
  return {
    edits: read.rel_type === 'm.replace' ? read.event_id : undefined,
    thread,
    repliesTo: thread !== undefined && read.is_falling_back === true ? undefined : read['m.in_reply_to']?.event_id,
  }
}

/** What a redaction takes back: in the content since room version 11, beside it before. */
export const redactedBy = (event: RawEvent): string | undefined => {
  const inside = event.content['redacts']
  return typeof inside === 'string' ? inside : event.redacts
}
