// bot/transports/matrix/read.ts: a message out of the inbox as the bot's own kind of message, or why it is passed over.
import type { Arrived } from '../../store/inbox.ts'
import type { Sent, SentMessage } from '../../store/sent.ts'
import type { Cues, Edited, Incoming, MessageId, Place, RoomId, Said } from '../../transport.ts'
import { RawEvent, redactedBy, relationOf, type Relation } from './raw.ts'
import { isAttachment, isForReading, mentions, spokenIn, wordsOf, type Self, type Spoken } from './words.ts'

/** What must be looked up to understand a message. */
export type Surroundings = {
  readonly sent: Sent
  readonly isKnown: (event: MessageId) => boolean
  readonly inviterOf: (room: RoomId) => string
  readonly selfIn: (room: RoomId) => Self
  readonly isDirect: (room: RoomId) => boolean
  /** The content in clear; 'locked' where its key is missing; undefined where it is no room message. */
  readonly open: (event: RawEvent, room: RoomId) => Promise<Readonly<Record<string, unknown>> | 'locked' | undefined>
  /** One event from the server, still encrypted where it came so; undefined where there is none to be had. */
  readonly fetch: (room: RoomId, event: MessageId) => Promise<RawEvent | undefined>
}

export type Read =
  | { readonly kind: 'incoming'; readonly incoming: Incoming }
  | { readonly kind: 'locked' }
  /** Nothing for the bot. `freed`: a message that need not be answered any more. */
  | { readonly kind: 'nothing'; readonly freed?: MessageId }

const nothing: Read = { kind: 'nothing' }
const place = (room: RoomId, person: string, thread: MessageId | undefined): Place =>
  thread === undefined ? { room, person } : { room, person, thread }

/** Whom a message replies to. What the bot sent lately it knows; older things are looked up. */
async function repliesTo(
  target: MessageId | undefined,
  room: RoomId,
  around: Surroundings,
): Promise<Cues['repliesTo']> {
  if (target === undefined) return 'nobody'
  if (around.sent.byEvent(target)) return 'the bot'
  if (around.isKnown(target)) return 'another'
  const event = await around.fetch(room, target)
  return event?.sender === around.selfIn(room).id ? 'the bot' : 'another'
}

async function cuesOf(spoken: Spoken, relation: Relation, room: RoomId, around: Surroundings): Promise<Cues> {
  const to = await repliesTo(relation.repliesTo, room, around)
  return {
    direct: around.isDirect(room),
    mentioned: mentions(spoken, around.selfIn(room), to === 'another'),
    repliesTo: to,
    inOurThread: relation.thread !== undefined && around.sent.isOurThread(relation.thread),
  }
}

const said = async (
  event: RawEvent,
  spoken: Spoken,
  relation: Relation,
  room: RoomId,
  around: Surroundings,
): Promise<Said> => ({
  ...place(room, event.sender, relation.thread),
  kind: 'said',
  id: event.event_id,
  text: wordsOf(spoken, around.selfIn(room)),
  sentAt: event.origin_server_ts,
  cues: await cuesOf(spoken, relation, room, around),
  ...(isAttachment(spoken) ? { attachment: true } : {}),
})

/** The message first written, where an answer to it is known, or where the server still has it and the same person wrote it. */
async function original(
  event: RawEvent,
  id: MessageId,
  room: RoomId,
  around: Surroundings,
): Promise<(Pick<SentMessage, 'thread'> & Relation) | undefined> {
  const [answer] = around.sent.answersTo(id)
  if (answer) return answer.person === event.sender ? { thread: answer.thread, repliesTo: undefined } : undefined
  if (!around.isKnown(id)) return undefined // said before the bot was there
  const first = await around.fetch(room, id)
  return first?.sender === event.sender ? relationOf(first.content) : undefined
}

async function edited(
  event: RawEvent,
  spoken: Spoken,
  id: MessageId,
  room: RoomId,
  around: Surroundings,
): Promise<Edited | undefined> {
  const first = await original(event, id, room, around)
  if (!first) return undefined
  const again = await said({ ...event, event_id: id }, spoken, first, room, around)
  const wasAnswered = around.sent.answersTo(id).length > 0
  const cues = wasAnswered ? { ...again.cues, mentioned: true } : again.cues
  return { ...again, cues, kind: 'edited', editId: event.event_id }
}

async function message(event: RawEvent, room: RoomId, around: Surroundings): Promise<Read> {
  const content = await around.open(event, room)
  if (content === 'locked') return { kind: 'locked' }
  if (!content) return nothing
  const relation = relationOf({ ...content, ...event.content }) // outside the encryption where there is one
  const spoken = spokenIn(relation.edits === undefined ? content : (content['m.new_content'] ?? content))
  if (!isForReading(spoken)) return nothing
  const incoming =
    relation.edits === undefined
      ? await said(event, spoken, relation, room, around)
      : await edited(event, spoken, relation.edits, room, around)
  return incoming ? { kind: 'incoming', incoming } : nothing
}

function redaction(event: RawEvent, room: RoomId, { sent }: Surroundings): Read {
  const id = redactedBy(event)
  if (id === undefined) return nothing
  const [answer] = sent.answersTo(id)
  if (!answer) return { kind: 'nothing', freed: id }
  return { kind: 'incoming', incoming: { ...place(room, answer.person ?? '', answer.thread), kind: 'withdrawn', id } }
}

/** @param arrived a row of the inbox */
export async function read({ room, raw }: Arrived, around: Surroundings): Promise<Read> {
  const event = RawEvent.parse(JSON.parse(raw))
  if (event.type === 'm.room.member') {
    const coming = { ...place(room, around.inviterOf(room), undefined), kind: 'joined', id: event.event_id } as const
    return { kind: 'incoming', incoming: { ...coming, direct: around.isDirect(room) } }
  }
  return event.type === 'm.room.redaction' ? redaction(event, room, around) : message(event, room, around)
}
