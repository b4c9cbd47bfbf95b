// bot/store/file.ts: one SQLite file that one process holds, durable at each commit, readable by its owner only.
import { closeSync, mkdirSync, openSync } from 'node:fs'
import { dirname } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import type { Result } from '../../core/vocabulary.ts'

export type FileFault =
  | { readonly kind: 'in-use'; readonly file: string }
  | { readonly kind: 'unreadable'; readonly file: string; readonly why: string }
  | { readonly kind: 'too-new'; readonly file: string; readonly version: number; readonly known: number }

/** One sentence for the operator. */
export const wordedFault = (fault: FileFault): string => {
  switch (fault.kind) {
    case 'in-use':
      return `${fault.file} is held by another Henwife that is still running. Stop that one first: two on one device would spoil its keys.`
    case 'unreadable':
      return `${fault.file} cannot be used: ${fault.why}.`
    case 'too-new':
      return `${fault.file} was written by a newer Henwife (its version is ${fault.version}, this one knows ${fault.known}). Start the newer one.`
  }
}

/** Empty and readable by its owner only, before SQLite opens it; its -wal file takes the same rights. */
const makePrivate = (file: string): void => {
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 })
  closeSync(openSync(file, 'a', 0o600))
}

const takeLock = (sql: DatabaseSync): void => {
  sql.exec('PRAGMA locking_mode=EXCLUSIVE; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL')
  sql.exec('BEGIN IMMEDIATE; COMMIT')
}

const migrate = (sql: DatabaseSync, steps: readonly string[]): number => {
  const version = Number(sql.prepare('PRAGMA user_version').get()?.['user_version'])
  for (let next = version; next < steps.length; next += 1)
    sql.exec(`BEGIN IMMEDIATE; ${steps[next]}; PRAGMA user_version=${next + 1}; COMMIT`)
  return version
}

/**
 * Opens the file, makes it where there is none, and brings its tables up to date.
 *
 * @param steps SQL that leads from version n to version n + 1; never changed once written, only added to
 * @fault in-use when another process holds it; too-new when its version is above `steps.length`
 */
export function openFile(file: string, steps: readonly string[]): Result<DatabaseSync, FileFault> {
  let sql: DatabaseSync | undefined
  try {
    makePrivate(file)
    sql = new DatabaseSync(file)
    takeLock(sql)
    const version = migrate(sql, steps)
    if (version <= steps.length) return { ok: true, value: sql }
    sql.close()
    return { ok: false, fault: { kind: 'too-new', file, version, known: steps.length } }
  } catch (error) {
    sql?.close()
    const why = error instanceof Error ? error.message : String(error)
    return { ok: false, fault: /locked|busy/u.test(why) ? { kind: 'in-use', file } : { kind: 'unreadable', file, why } }
  }
}

/** Runs `work` as one commit: all of it is on the disk when this returns, or none of it. */
export function atOnce<T>(sql: DatabaseSync, work: () => T): T {
  sql.exec('BEGIN IMMEDIATE')
  try {
    const made = work()
    sql.exec('COMMIT')
    return made
  } catch (error) {
    sql.exec('ROLLBACK')
    throw error
  }
}
