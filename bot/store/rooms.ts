// bot/store/rooms.ts: the rooms the bot is in: who asked it in, whether it has greeted, what it has complained of.
import type { DatabaseSync } from 'node:sqlite'

export type RoomRow = {
  readonly inviter?: string | undefined
  readonly greeted: boolean
  /** When it was last said that the bot may not speak there, that it cannot read there; ms since 1970. */
  readonly mute?: number | undefined
  readonly unread?: number | undefined
  /** The rooms that moved into this one, the latest first. */
  readonly was?: readonly string[] | undefined
}

export type Rooms = {
  readonly all: () => readonly string[]
  readonly of: (room: string) => RoomRow | undefined
  readonly set: (room: string, changes: Partial<RoomRow>) => void
  readonly forgetRoom: (room: string) => void
  /** The room stays, its inviter is no longer known. */
  readonly forgetPerson: (person: string) => void
}

/** This room and those that moved into it: what is set for one of them holds for all. */
export const lineage = (rooms: Pick<Rooms, 'of'>, room: string): readonly string[] => [
  room,
  ...(rooms.of(room)?.was ?? []),
]

export function roomsOf(sql: DatabaseSync): Rooms {
  const all = sql.prepare('SELECT room FROM rooms')
  const read = sql.prepare('SELECT * FROM rooms WHERE room=?')
  const write = sql.prepare('INSERT OR REPLACE INTO rooms VALUES(?,?,?,?,?,?)')
  const of = (room: string): RoomRow | undefined => {
    const row = read.get(room)
    if (!row) return undefined
    const number = (name: string): number | undefined => (row[name] === null ? undefined : Number(row[name]))
    const text = (name: string): string | undefined => (row[name] === null ? undefined : String(row[name]))
    const [mute, unread] = [number('mute'), number('unread')]
    return { inviter: text('inviter'), greeted: row['greeted'] === 1, mute, unread, was: text('was')?.split(' ') }
  }
  return {
    all: () => all.all().map((row) => String(row['room'])),
    of,
    set: (room, changes) => {
      const { inviter, greeted, mute, unread, was } = { greeted: false, ...of(room), ...changes }
      write.run(room, inviter ?? null, greeted ? 1 : 0, mute ?? null, unread ?? null, was?.join(' ') ?? null)
    },
    forgetRoom: (room) => void sql.prepare('DELETE FROM rooms WHERE room=?').run(room),
    forgetPerson: (person) => void sql.prepare('UPDATE rooms SET inviter=NULL WHERE inviter=?').run(person),
  }
}
