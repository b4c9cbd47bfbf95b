// bot/transports/matrix/intake.ts: one answer of the server to /sync, sorted: what to take in, what is missing, where the bot came and went. Pure.
import type { Arrived } from '../../store/inbox.ts'
import type { SentMessage } from '../../store/sent.ts'
import { rawEvents, relationOf, type RawEvent } from './raw.ts'

export type RoomIntake = {
  readonly room: string
  /** Messages of others, oldest first, from the time the bot is there. */
  readonly messages: readonly Arrived[]
  /** Own messages, come back from the server. */
  readonly echoes: readonly Pick<SentMessage, 'key' | 'event' | 'room'>[]
  /** The bot came into the room with this event. */
  readonly joined: Arrived | undefined
  /** History is missing between the last sync and `messages`: read backwards from here. */
  readonly gap: string | undefined
}

/** The parts of a /sync answer that count here. */
export type Timeline = {
  readonly events?: readonly unknown[]
  readonly limited?: boolean
  readonly prev_batch?: string | null
}
export type SyncRooms = {
  readonly join?: Readonly<Record<string, { readonly timeline?: Timeline }>>
  readonly leave?: Readonly<Record<string, unknown>>
}

const kinds = new Set(['m.room.message', 'm.room.encrypted', 'm.room.redaction'])

/** A change of name or picture is a membership event too, but no coming. */
const isComing = (event: RawEvent, me: string): boolean =>
  event.type === 'm.room.member' &&
  event.state_key === me &&
  event.content['membership'] === 'join' &&
  event.unsigned?.prev_content?.['membership'] !== 'join'

/** Where the bot came in; -1 where it did not in these events. */
export const comingIn = (events: readonly RawEvent[], me: string): number =>
  events.findLastIndex((event) => isComing(event, me))

const asArrived = (room: string, event: RawEvent): Arrived => ({
  event: event.event_id,
  room,
  raw: JSON.stringify(event),
})

/** Messages of others that may ask something. */
export const messagesIn = (room: string, events: readonly RawEvent[], me: string): readonly Arrived[] =>
  events
    .filter((event) => event.sender !== me && event.state_key === undefined && kinds.has(event.type))
    .map((event) => asArrived(room, event))

/** The key under which the answer to `question` is sent. */
export const answerKey = (question: string): string => `${question}.text`

/** Own messages: by their transaction id, or, where another device sent them, by what they answer. */
export const echoesIn = (room: string, events: readonly RawEvent[], me: string): RoomIntake['echoes'] =>
  events
    .filter((event) => event.sender === me && event.state_key === undefined)
    .flatMap((event) => {
      const { edits, repliesTo } = relationOf(event.content)
      const answered = edits === undefined && repliesTo !== undefined ? answerKey(repliesTo) : undefined
      const key = event.unsigned?.transaction_id ?? answered
      return key === undefined ? [] : [{ key, event: event.event_id, room }]
    })

const sortRoom = (room: string, timeline: Timeline, me: string, isKnown: boolean): RoomIntake => {
  const all = rawEvents(timeline.events ?? [])
  const at = comingIn(all, me)
  const coming = all[at]
  const since = all.slice(at + 1)
  const missing = at === -1 && timeline.limited === true ? (timeline.prev_batch ?? undefined) : undefined
  const heard = at !== -1 || isKnown || missing !== undefined
  return {
    room,
    messages: heard ? messagesIn(room, since, me) : [],
    echoes: echoesIn(room, since, me),
    joined: coming && asArrived(room, coming),
    gap: missing,
  }
}

/** @param isKnown whether the bot was in a room already before this sync */
export function intake(rooms: SyncRooms, me: string, isKnown: (room: string) => boolean): readonly RoomIntake[] {
  return Object.entries(rooms.join ?? {}).map(([room, { timeline = {} }]) =>
    sortRoom(room, timeline, me, isKnown(room)),
  )
}
