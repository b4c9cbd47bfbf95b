// bot/transports/matrix/late.ts: messages whose key has not come: kept, tried again when it comes, and owned up to once a room and day.
import { hashed, type Log } from '../../log.ts'
import type { Metrics } from '../../metrics.ts'
import { asReply } from '../../render/reply.ts'
import { cannotRead } from '../../render/room.ts'
import type { Arrived, Inbox } from '../../store/inbox.ts'
import type { Rooms } from '../../store/rooms.ts'
import type { Sent } from '../../store/sent.ts'
import { RawEvent, relationOf } from './raw.ts'
import type { Wire } from './wire.ts'
import { answerContent } from './write.ts'

export type Late = {
  /** A message could not be opened: it is worked off as soon as its key has come. */
  readonly watch: (message: Arrived) => void
  /** Those that an earlier run left closed. To be run at the start. */
  readonly watchAll: () => Promise<void>
  /** Says where a message stays closed, where that is due. To be run every minute. */
  readonly ownUp: () => Promise<void>
}

export type Around = {
  readonly store: {
    readonly inbox: Pick<Inbox, 'locked' | 'unlock'>
    readonly rooms: Pick<Rooms, 'of' | 'set'>
    readonly sent: Pick<Sent, 'note'>
  }
  readonly wire: Pick<Wire, 'send' | 'open' | 'whenOpen'>
  readonly log: Log
  readonly metrics: Metrics
  readonly now: () => number
  readonly wake: (room: string) => void
}

const patience = 60_000 // ms that a key may be late before it is said
const dayMilliseconds = 24 * 60 * 60 * 1000

/** Once a room and day, on the first message that stays closed. */
async function ownUp({ store, wire, log, now }: Around, { event, room, raw }: Arrived): Promise<void> {
  if (now() - (store.rooms.of(room)?.unread ?? -Infinity) < dayMilliseconds) return
  store.rooms.set(room, { unread: now() })
  const { content } = RawEvent.parse(JSON.parse(raw))
  const { thread } = relationOf(content)
  const at = { room, person: '', ...(thread === undefined ? {} : { thread }) }
  const key = `${event}.locked`
  try {
    const sent = await wire.send(room, answerContent(asReply(cannotRead), event, at, undefined), key)
    store.sent.note({ key, event: sent, room }, now())
  } catch (error) {
    log.warn({ room: hashed(room), error }, 'could not say that a message stays closed')
  }
}

export function lateOf(around: Around): Late {
  const { store, wire, metrics, wake, now } = around
  const open = ({ event, room }: Arrived): void => {
    store.inbox.unlock(event)
    wake(room)
  }
  const watch = (message: Arrived): void => wire.whenOpen(message.event, () => open(message))
  return {
    watch,
    watchAll: async () => {
      for (const message of store.inbox.locked()) {
        const content = await wire.open(RawEvent.parse(JSON.parse(message.raw)), message.room)
        if (content === 'locked') watch(message)
        else open(message)
      }
    },
    ownUp: async () => {
      const closed = store.inbox.locked()
      metrics.locked.set(closed.length)
      for (const message of closed) {
        const age = now() - message.taken
        if (age > patience && age < dayMilliseconds) await ownUp(around, message)
      }
    },
  }
}
