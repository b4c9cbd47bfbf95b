// bot/store/kept.ts: single values that must outlive the process, by name.
import type { DatabaseSync } from 'node:sqlite'

export type Kept = {
  readonly get: (name: string) => string | undefined
  readonly set: (name: string, value: string) => void
  readonly drop: (name: string) => void
}

export function keptOf(sql: DatabaseSync): Kept {
  const read = sql.prepare('SELECT value FROM kept WHERE name=?')
  const write = sql.prepare('INSERT INTO kept VALUES(?,?) ON CONFLICT DO UPDATE SET value=excluded.value')
  const remove = sql.prepare('DELETE FROM kept WHERE name=?')
  return {
    get: (name) => {
      const row = read.get(name)
      return row ? String(row['value']) : undefined
    },
    set: (name, value) => void write.run(name, value),
    drop: (name) => void remove.run(name),
  }
}
