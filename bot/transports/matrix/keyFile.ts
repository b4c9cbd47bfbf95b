// bot/transports/matrix/keyFile.ts: the encryption keys on disk: IndexedDB databases as rows of one SQLite file.
import type { DatabaseSync } from 'node:sqlite'
import { deserialize } from 'node:v8'
import type { Result } from '../../../core/vocabulary.ts'
import { atOnce, openFile, type FileFault } from '../../store/file.ts'
import type { IdbRange, KeyPath } from './indexedDb.ts'
import { keyToText, textToKey, type Key } from './keyText.ts'

/** One change of one record, in the order in which it was made. */
export type Change =
  | { readonly kind: 'put'; readonly store: string; readonly key: Key; readonly value: Buffer }
  | { readonly kind: 'delete'; readonly store: string; readonly what: Key | IdbRange }
  | { readonly kind: 'clear'; readonly store: string }

export type StoreShape = {
  readonly name: string
  readonly keyPath: KeyPath
  readonly autoIncrement: boolean
  readonly indexes: readonly {
    readonly name: string
    readonly keyPath: KeyPath
    readonly unique: boolean
    readonly multiEntry: boolean
  }[]
}
export type DatabaseShape = { readonly name: string; readonly version: number; readonly stores: readonly StoreShape[] }

export type KeyFile = {
  readonly databases: () => readonly DatabaseShape[]
  readonly records: (database: string, store: string) => Iterable<{ readonly key: Key; readonly value: unknown }>
  /** All changes of one transaction, and the new shape where it made one, as one commit: on the disk when this returns. */
  readonly commit: (database: string, changes: readonly Change[], shape?: DatabaseShape) => void
  readonly drop: (database: string) => void
  readonly close: () => void
}

const steps = [
  `CREATE TABLE databases(name TEXT PRIMARY KEY, version INTEGER NOT NULL, stores TEXT NOT NULL) STRICT, WITHOUT ROWID;
   CREATE TABLE records(database TEXT NOT NULL, store TEXT NOT NULL, key TEXT NOT NULL, value BLOB NOT NULL,
     PRIMARY KEY(database, store, key)) STRICT, WITHOUT ROWID`,
]

const isRange = (what: Key | IdbRange): what is IdbRange =>
  typeof what === 'object' && 'includes' in what && !Array.isArray(what)

const statementsOf = (sql: DatabaseSync) => ({
  put: sql.prepare('INSERT INTO records VALUES(?,?,?,?) ON CONFLICT DO UPDATE SET value=excluded.value'),
  remove: sql.prepare('DELETE FROM records WHERE database=? AND store=? AND key=?'),
  keys: sql.prepare('SELECT key FROM records WHERE database=? AND store=?'),
  clear: sql.prepare('DELETE FROM records WHERE database=? AND store=?'),
  stores: sql.prepare('SELECT DISTINCT store FROM records WHERE database=?'),
  shape: sql.prepare(
    'INSERT INTO databases VALUES(?,?,?) ON CONFLICT DO UPDATE SET version=excluded.version, stores=excluded.stores',
  ),
  read: sql.prepare('SELECT key, value FROM records WHERE database=? AND store=?'),
  list: sql.prepare('SELECT name, version, stores FROM databases'),
})
type Statements = ReturnType<typeof statementsOf>

const apply = (run: Statements, database: string, change: Change): void => {
  if (change.kind === 'put') run.put.run(database, change.store, keyToText(change.key), change.value)
  else if (change.kind === 'clear') run.clear.run(database, change.store)
  else if (!isRange(change.what)) run.remove.run(database, change.store, keyToText(change.what))
  else
    for (const { key } of run.keys.all(database, change.store))
      if (change.what.includes(textToKey(String(key)))) run.remove.run(database, change.store, String(key))
}

const reshape = (run: Statements, shape: DatabaseShape): void => {
  const kept = new Set(shape.stores.map((store) => store.name))
  for (const { store } of run.stores.all(shape.name))
    if (!kept.has(String(store))) run.clear.run(shape.name, String(store))
  run.shape.run(shape.name, shape.version, JSON.stringify(shape.stores))
}

/** @fault in-use when another process holds the file: its keys and ours would part ways */
export function openKeyFile(file: string): Result<KeyFile, FileFault> {
  const opened = openFile(file, steps)
  if (!opened.ok) return opened
  const sql = opened.value
  const run = statementsOf(sql)
  return {
    ok: true,
    value: {
      databases: () =>
        run.list.all().map((row) => {
          const stores: StoreShape[] = JSON.parse(String(row['stores']))
          return { name: String(row['name']), version: Number(row['version']), stores }
        }),
      *records(database, store) {
        for (const { key, value } of run.read.iterate(database, store))
          if (value instanceof Uint8Array) yield { key: textToKey(String(key)), value: deserialize(value) }
      },
      commit: (database, changes, shape) =>
        atOnce(sql, () => {
          for (const change of changes) apply(run, database, change)
          if (shape) reshape(run, shape)
        }),
      drop: (database) =>
        atOnce(sql, () => {
          for (const { store } of run.stores.all(database)) run.clear.run(database, String(store))
          sql.prepare('DELETE FROM databases WHERE name=?').run(database)
        }),
      close: () => sql.close(),
    },
  }
}
