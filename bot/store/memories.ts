// bot/store/memories.ts: the conversations, one row for one person in one thread, dropped a day after the last word.
import type { DatabaseSync } from 'node:sqlite'
import { Memory, memoryKey } from '../memory.ts'
import type { Place } from '../transport.ts'

export type Memories = {
  /** undefined where there is none, or where an older version of the bot wrote what this one cannot read. */
  readonly of: (place: Place) => Memory | undefined
  readonly set: (place: Place, memory: Memory | undefined) => void
  readonly dropBefore: (time: number) => void
  readonly forgetRoom: (room: string) => void
  readonly forgetPerson: (person: string) => void
}

export function memoriesOf(sql: DatabaseSync): Memories {
  const read = sql.prepare('SELECT memory FROM memories WHERE key=?')
  const write = sql.prepare(
    'INSERT INTO memories VALUES(?,?,?,?,?) ON CONFLICT DO UPDATE SET memory=excluded.memory, at=excluded.at',
  )
  const remove = sql.prepare('DELETE FROM memories WHERE key=?')
  return {
    of: (place) => {
      const row = read.get(memoryKey(place))
      return row ? Memory.safeParse(JSON.parse(String(row['memory']))).data : undefined
    },
    set: (place, memory) => {
      const key = memoryKey(place)
      if (memory) write.run(key, place.room, place.person, JSON.stringify(memory), memory.at)
      else remove.run(key)
    },
    dropBefore: (time) => void sql.prepare('DELETE FROM memories WHERE at < ?').run(time),
    forgetRoom: (room) => void sql.prepare('DELETE FROM memories WHERE room=?').run(room),
    forgetPerson: (person) => void sql.prepare('DELETE FROM memories WHERE person=?').run(person),
  }
}
