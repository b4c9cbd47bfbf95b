// bot/transports/matrix/shop.ts: the worker's surroundings, put together from client, store and settings.
import type { MatrixClient } from 'matrix-js-sdk'
import { limitsOf } from '../../limits.ts'
import { hashed } from '../../log.ts'
import { asReply } from '../../render/reply.ts'
import { mayNotSpeakIn } from '../../render/room.ts'
import type { RoomSettings } from '../../spokenTo.ts'
import { lineage } from '../../store/rooms.ts'
import type { Late } from './late.ts'
import { isDirect, roomWith, selfIn } from './rooms.ts'
import type { House } from './house.ts'
import type { Wire } from './wire.ts'
import type { Workshop } from './worker.ts'
import { noticeContent } from './write.ts'

const complainEvery = 7 * 24 * 60 * 60 * 1000 // ms
const seenAfter = 1000 // ms; one mark for all that was read meanwhile

/** Marks the last message read of a room, a moment later: it is worth one request, not one a message. */
function markerOf(wire: Wire): Workshop['markSeen'] {
  const last = new Map<string, string>()
  return (room, event) => {
    if (!last.has(room))
      setTimeout(() => {
        const newest = last.get(room)
        last.delete(room)
        if (newest !== undefined) void wire.seen(room, newest).catch(() => undefined)
      }, seenAfter).unref()
    last.set(room, event)
  }
}

/** Once a week the one who brought the bot in is told, where there is a room to tell them in. */
async function complain(
  { store, log }: House,
  client: MatrixClient,
  wire: Wire,
  room: string,
  now: number,
): Promise<void> {
  const { mute, inviter } = store.rooms.of(room) ?? {}
  if (now - (mute ?? -Infinity) < complainEvery) return
  store.rooms.set(room, { mute: now })
  log.warn({ room: hashed(room) }, 'may not write in a room')
  const where = inviter === undefined ? undefined : roomWith(client, inviter)
  if (where === undefined || where === room) return
  const name = client.getRoom(room)?.name ?? 'a room'
  await wire.send(where, noticeContent(asReply(mayNotSpeakIn(name))), `${room}.mute.${now}`).catch(() => undefined)
}

const settingsIn = ({ matrix, store }: House, room: string): RoomSettings => ({
  prefix: matrix.prefix,
  listens: lineage(store.rooms, room).some((one) => matrix.listensIn.includes(one)),
})

export function shopOf(house: House, client: MatrixClient, wire: Wire, late: () => Late, now: () => number): Workshop {
  const { config, store, serve, draw, log, metrics } = house
  return {
    store,
    wire,
    serve,
    draw,
    log,
    metrics,
    now,
    isDirect: (id) => isDirect(client, id),
    markSeen: markerOf(wire),
    limits: limitsOf({
      person: config.limits.answersPerPersonPerMinute,
      room: config.limits.answersPerRoomPerMinute,
    }),
    settingsOf: (id) => settingsIn(house, id),
    muted: (id) => void complain(house, client, wire, id, now()),
    locked: (message) => late().watch(message),
    around: {
      sent: store.sent,
      isKnown: store.inbox.knows,
      inviterOf: (id) => store.rooms.of(id)?.inviter ?? '',
      selfIn: (id) => selfIn(client, id),
      isDirect: (id) => isDirect(client, id),
      open: wire.open,
      fetch: wire.fetch,
    },
  }
}
