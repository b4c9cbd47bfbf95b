// bot/transports/matrix/keepSync.ts: one answer to /sync goes to disk in one commit: messages, state of the rooms, and the token that covers both.
import type { Store } from '../../store.ts'
import { intake, type RoomIntake, type Timeline } from './intake.ts'
import { emptyRoom, merged, type JoinedPart, type RoomState } from './roomState.ts'

type AccountEvent = { readonly type: string; readonly content: object }
/** The parts of the server's answer that are kept. */
export type SyncAnswer = {
  readonly next_batch: string
  readonly rooms?: {
    readonly join?: Readonly<Record<string, JoinedPart & { readonly timeline?: Timeline }>>
    readonly invite?: Readonly<Record<string, object>>
    readonly leave?: Readonly<Record<string, object>>
  }
  readonly account_data?: { readonly events?: readonly AccountEvent[] }
}
export type KeepingHouse = { readonly me: string; readonly greets: boolean; readonly now: () => number }

const account = 'account'

/** On the very first sync nothing is answered: it was all said before the bot was there. */
function takeRoom(
  store: Store,
  house: KeepingHouse,
  { room, messages, echoes, joined, gap }: RoomIntake,
  isFirst: boolean,
): void {
  const { inbox, rooms, sent, kept } = store
  const at = { batch: inbox.nextBatch(), now: house.now(), seen: isFirst }
  const row = rooms.of(room)
  if (!row) rooms.set(room, { greeted: isFirst })
  if (joined && !isFirst && house.greets && row?.greeted !== true) inbox.take([joined], { ...at, firstPlace: -1 })
  inbox.take(messages, { ...at, firstPlace: 0 })
  for (const echo of echoes) sent.echo(echo, at.now)
  if (gap !== undefined && !isFirst) inbox.openGap({ room, batch: at.batch, newest: gap, oldest: kept.get('token') })
}

function keepRoom({ synced }: Store, room: string, part: JoinedPart): void {
  const kept = synced.of(room)
  const before: RoomState = kept?.how === 'join' ? JSON.parse(kept.data) : emptyRoom
  const after = merged(before, part)
  if (after) synced.set({ room, how: 'join', data: JSON.stringify(after) })
}

function keepAccount({ synced }: Store, told: readonly AccountEvent[]): void {
  const before: readonly AccountEvent[] = JSON.parse(synced.of(account)?.data ?? '[]')
  const byType = new Map([...before, ...told].map((event) => [event.type, event]))
  synced.set({ room: account, how: account, data: JSON.stringify([...byType.values()]) })
}

function keepState(store: Store, { rooms, account_data: told }: SyncAnswer): void {
  for (const [room, part] of Object.entries(rooms?.join ?? {})) keepRoom(store, room, part)
  for (const [room, part] of Object.entries(rooms?.invite ?? {}))
    store.synced.set({ room, how: 'invite', data: JSON.stringify(part) })
  for (const room of Object.keys(rooms?.leave ?? {})) store.forgetRoom(room)
  if (told?.events && told.events.length > 0) keepAccount(store, told.events)
}

/** After a crash either all of a sync is there, or the server is asked for it again. */
export function keepSync(store: Store, answer: SyncAnswer, house: KeepingHouse): readonly RoomIntake[] {
  const isFirst = store.kept.get('token') === undefined
  const rooms = intake(answer.rooms ?? {}, house.me, (room) => store.rooms.of(room) !== undefined)
  store.atOnce(() => {
    for (const room of rooms) takeRoom(store, house, room, isFirst)
    keepState(store, answer)
    store.kept.set('token', answer.next_batch)
  })
  return rooms
}

/** All rooms as they are now, in the form of one answer to /sync without messages. */
export function keptSync(store: Store) {
  const nextBatch = store.kept.get('token')
  if (nextBatch === undefined) return null
  const all = store.synced.all().map(({ room, how, data }) => [room, how, JSON.parse(data)] as const)
  const part = (wanted: string) => all.filter(([, how]) => how === wanted)
  const joined = part('join').map(([room, , state]) => [room, asJoined(state)] as const)
  return {
    nextBatch,
    accountData: part(account).flatMap(([, , events]) => events),
    roomsData: {
      join: Object.fromEntries(joined),
      invite: Object.fromEntries(part('invite').map(([room, , data]) => [room, data])),
      leave: {},
      knock: {},
    },
  }
}

const asJoined = ({ state, summary }: RoomState) => ({
  state: { events: state },
  timeline: { events: [], prev_batch: null },
  ephemeral: { events: [] },
  account_data: { events: [] },
  summary,
  unread_notifications: {},
})
