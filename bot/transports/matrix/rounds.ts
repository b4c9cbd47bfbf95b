// bot/transports/matrix/rounds.ts: what follows a sync: gaps filled, rooms woken, invitations answered, moved and empty rooms seen to.
import { setTimeout as sleep } from 'node:timers/promises'
import PQueue from 'p-queue'
import type { MatrixClient } from 'matrix-js-sdk'
import { invitedToEncrypted } from '../../render/room.ts'
import { hashed, type Log } from '../../log.ts'
import type { Config, MatrixConfig } from '../../settings.ts'
import type { Gap } from '../../store/inbox.ts'
import type { Store } from '../../store.ts'
import { doorsOf, invitationIn, type Doors } from './doors.ts'
import { fillGap } from './gaps.ts'
import type { RoomIntake } from './intake.ts'
import { keptSync, type SyncAnswer } from './keepSync.ts'
import { doorWireOf, isEmpty, moved } from './rooms.ts'
import { refusalOf, type Wire } from './wire.ts'
import type { Worker } from './worker.ts'

export type Rounds = {
  /** Once, after the first sync: what an earlier run left undone. A room whose gap is not filled yet waits for that. */
  readonly begin: () => void
  readonly after: (answer: SyncAnswer, rooms: readonly RoomIntake[]) => void
}

export type Grounds = {
  readonly config: Config
  readonly matrix: MatrixConfig
  readonly client: MatrixClient
  readonly store: Store
  readonly wire: Wire
  readonly worker: Worker
  readonly log: Log
  readonly now: () => number
  readonly stop: AbortSignal
}

const dayMilliseconds = 24 * 60 * 60 * 1000
const pauseBetweenTries = 5000 // ms
const mostStumbles = 5 // in about two minutes; a history that the server cannot read would shut its room for ever
const gapsAtOnce = 8

/** Tries until it is filled, or until the server will not or cannot have it. */
async function fill({ config, client, store, wire, log, now, stop }: Grounds, gap: Gap): Promise<void> {
  const { messagesPerRoom, days } = config.catchUp
  for (let stumbles = 0; !stop.aborted; await sleep(pauseBetweenTries)) {
    try {
      const bounds = { messages: messagesPerRoom, after: now() - days * dayMilliseconds }
      const found = await fillGap(store, gap, wire, client.getUserId() ?? '', bounds, now())
      log.info({ room: hashed(gap.room), found }, 'read what was said meanwhile')
      return
    } catch (error) {
      const refusal = refusalOf(error)
      if (refusal === 'stumbled') stumbles += 1
      if (refusal === 'unreachable' || (refusal === 'stumbled' && stumbles < mostStumbles)) continue
      log.warn({ room: hashed(gap.room), error }, 'could not read what was said meanwhile')
      return store.inbox.closeGap(gap)
    }
  }
}

async function answerInvitations(doors: Doors, me: string, invited: Readonly<Record<string, unknown>>): Promise<void> {
  for (const [room, data] of Object.entries(invited)) {
    const invitation = invitationIn(room, data, me)
    if (invitation) await doors.answer(invitation)
  }
}

/** Kinds of events that this sync brought news of. */
function kindsIn(answer: SyncAnswer): ReadonlySet<unknown> {
  const parts = Object.values(answer.rooms?.join ?? {}).flatMap(({ timeline, state, ...rest }) => [
    timeline,
    state,
    rest['org.matrix.msc4222.state_after'],
  ])
  return new Set(parts.flatMap((part) => (part?.events ?? []).map((event) => Object(event)['type'])))
}

export function roundsOf(grounds: Grounds): Rounds {
  const { matrix, client, store, worker, log } = grounds
  const me = client.getUserId() ?? ''
  const doorWire = doorWireOf(client)
  const doors = doorsOf(matrix, store, doorWire, log)
  const queue = new PQueue({ concurrency: gapsAtOnce })
  const filling = new Set<string>() // rooms
  const firstGap = (room: string): Gap | undefined => store.inbox.gaps().find((gap) => gap.room === room)
  /** One gap of a room after the other, rooms side by side. */
  const fillRoom = async (room: string): Promise<void> => {
    try {
      for (let gap = firstGap(room); gap && !grounds.stop.aborted; gap = firstGap(room)) await fill(grounds, gap)
    } finally {
      filling.delete(room)
    }
    worker.wake(room)
  }
  const fillAll = (): void => {
    for (const { room } of store.inbox.gaps()) {
      if (filling.has(room)) continue
      filling.add(room)
      survived(queue.add(() => fillRoom(room)))
    }
  }
  const followMoves = async (): Promise<void> => {
    for (const { from, to, saidBy } of moved(client)) await doors.follow(from, to, saidBy)
  }
  const leaveUnfit = async (rooms: readonly string[]): Promise<void> => {
    for (const room of rooms) {
      if (isEmpty(client, room)) await doors.leaveEmpty(room)
      else if (!matrix.encryption && client.isRoomEncrypted(room)) await doorWire.leave(room, invitedToEncrypted)
    }
  }
  const survived = (work: Promise<void>): void =>
    void work.catch((error: unknown) => log.warn({ error }, 'left undone after a sync'))

  return {
    begin: () => {
      fillAll()
      survived(answerInvitations(doors, me, keptSync(store)?.roomsData.invite ?? {}))
      survived(followMoves().then(() => leaveUnfit(store.rooms.all())))
    },
    after: (answer, rooms) => {
      if (rooms.some(({ gap }) => gap !== undefined)) fillAll()
      for (const { room, messages, joined } of rooms) if (messages.length > 0 || joined) worker.wake(room)
      survived(answerInvitations(doors, me, answer.rooms?.invite ?? {}))
      const kinds = kindsIn(answer)
      if (kinds.has('m.room.tombstone')) survived(followMoves())
      if (kinds.has('m.room.member') || kinds.has('m.room.encryption'))
        survived(leaveUnfit(rooms.map(({ room }) => room)))
    },
  }
}
