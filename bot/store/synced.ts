// bot/store/synced.ts: the network's last word on each room, as JSON that only the transport understands. No messages.
import type { DatabaseSync } from 'node:sqlite'

/** `how`: in what part of a sync it stands: 'join', 'invite', or 'account' for what belongs to no room. */
export type SyncedRoom = { readonly room: string; readonly how: string; readonly data: string }

export type Synced = {
  readonly all: () => readonly SyncedRoom[]
  readonly of: (room: string) => SyncedRoom | undefined
  readonly set: (room: SyncedRoom) => void
  readonly forgetRoom: (room: string) => void
}

export function syncedOf(sql: DatabaseSync): Synced {
  const all = sql.prepare('SELECT room, how, data FROM synced')
  const read = sql.prepare('SELECT room, how, data FROM synced WHERE room=?')
  const write = sql.prepare('INSERT OR REPLACE INTO synced VALUES(?,?,?)')
  const remove = sql.prepare('DELETE FROM synced WHERE room=?')
  const asRoom = (row: Record<string, unknown>): SyncedRoom => ({
    room: String(row['room']),
    how: String(row['how']),
    data: String(row['data']),
  })
  return {
    all: () => all.all().map(asRoom),
    of: (room) => {
      const row = read.get(room)
      return row && asRoom(row)
    },
    set: ({ room, how, data }) => void write.run(room, how, data),
    forgetRoom: (room) => void remove.run(room),
  }
}
