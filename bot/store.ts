// bot/store.ts: all that the bot remembers, keys apart: one SQLite file in the state folder, one commit a step.
import { join } from 'node:path'
import type { Result } from '../core/vocabulary.ts'
import { atOnce, openFile, type FileFault } from './store/file.ts'
import { inboxOf, type Inbox } from './store/inbox.ts'
import { keptOf, type Kept } from './store/kept.ts'
import { memoriesOf, type Memories } from './store/memories.ts'
import { roomsOf, type Rooms } from './store/rooms.ts'
import { sentOf, type Sent } from './store/sent.ts'
import { steps } from './store/steps.ts'
import { syncedOf, type Synced } from './store/synced.ts'

export type Store = {
  readonly kept: Kept
  readonly inbox: Inbox
  readonly sent: Sent
  readonly memories: Memories
  readonly rooms: Rooms
  readonly synced: Synced
  /** Runs `work` as one commit: on the disk when this returns, or undone when it throws. */
  readonly atOnce: <T>(work: () => T) => T
  /** Drops every trace of a room that the bot has left. */
  readonly forgetRoom: (room: string) => void
  /** Drops every row that names this person. */
  readonly forgetPerson: (person: string) => void
  readonly close: () => void
}

/** @param folder the state folder; made, with rights for its owner only, where there is none */
export function openStore(folder: string): Result<Store, FileFault> {
  const opened = openFile(join(folder, 'henwife.sqlite'), steps)
  if (!opened.ok) return opened
  const sql = opened.value
  const [inbox, sent, memories, rooms, synced] = [
    inboxOf(sql),
    sentOf(sql),
    memoriesOf(sql),
    roomsOf(sql),
    syncedOf(sql),
  ]
  const store: Store = {
    kept: keptOf(sql),
    inbox,
    sent,
    memories,
    rooms,
    synced,
    atOnce: (work) => atOnce(sql, work),
    forgetRoom: (room) => {
      for (const part of [inbox, sent, memories, rooms, synced]) part.forgetRoom(room)
    },
    forgetPerson: (person) => {
      for (const part of [sent, memories, rooms]) part.forgetPerson(person)
    },
    close: () => sql.close(),
  }
  return { ok: true, value: store }
}

const dayMilliseconds = 24 * 60 * 60 * 1000

/** Drops what has been kept for its time. To be run at the start and every hour. */
export function sweep(
  store: Store,
  keep: { readonly answersDays: number; readonly seenDays: number; readonly memoryMilliseconds: number },
  now: number,
): void {
  store.atOnce(() => {
    store.memories.dropBefore(now - keep.memoryMilliseconds)
    store.sent.dropBefore(now - keep.answersDays * dayMilliseconds)
    store.inbox.dropBefore(now - keep.seenDays * dayMilliseconds)
  })
}
