// bot/store/sent.ts: what the bot has sent: so that nothing is sent twice, and an answer can be amended or taken back.
import type { DatabaseSync, SQLOutputValue } from 'node:sqlite'

export type SentMessage = {
  /** Transaction id: made of the question's id, so it is the same after a crash. */
  readonly key: string
  readonly event: string
  readonly room: string
  readonly question?: string | undefined
  readonly thread?: string | undefined
  readonly person?: string | undefined
}

export type Sent = {
  /** Adds it, or completes what an echo from the network has put here already. */
  readonly note: (message: SentMessage, at: number) => void
  /** An own message came back from the network: it arrived, whether or not we lived to note it. */
  readonly echo: (message: Pick<SentMessage, 'key' | 'event' | 'room'>, at: number) => void
  readonly byKey: (key: string) => SentMessage | undefined
  readonly byEvent: (event: string) => SentMessage | undefined
  /** All messages sent in answer to a question, oldest first. */
  readonly answersTo: (question: string) => readonly SentMessage[]
  /** The bot has spoken in this thread, or began it, or answered the message that began it. */
  readonly isOurThread: (thread: string) => boolean
  readonly drop: (event: string) => void
  readonly dropBefore: (time: number) => void
  readonly forgetRoom: (room: string) => void
  readonly forgetPerson: (person: string) => void
}

const text = (value: SQLOutputValue | undefined): string | undefined => (value === null ? undefined : String(value))
const asSent = (row: Record<string, SQLOutputValue>): SentMessage => ({
  key: String(row['key']),
  event: String(row['event']),
  room: String(row['room']),
  question: text(row['question']),
  thread: text(row['thread']),
  person: text(row['person']),
})

export function sentOf(sql: DatabaseSync): Sent {
  const note = sql.prepare(`INSERT INTO sent VALUES(?,?,?,?,?,?,?) ON CONFLICT DO UPDATE SET
    event=excluded.event, question=excluded.question, thread=excluded.thread, person=excluded.person`)
  const echo = sql.prepare('INSERT OR IGNORE INTO sent(key, event, room, at) VALUES(?,?,?,?)')
  const byKey = sql.prepare('SELECT * FROM sent WHERE key=?')
  const byEvent = sql.prepare('SELECT * FROM sent WHERE event=?')
  const answers = sql.prepare('SELECT * FROM sent WHERE question=? ORDER BY at, key')
  const ours = sql.prepare(
    'SELECT 1 FROM sent WHERE thread=?1 UNION ALL SELECT 1 FROM sent WHERE event=?1 UNION ALL SELECT 1 FROM sent WHERE question=?1 LIMIT 1',
  )
  const drop = sql.prepare('DELETE FROM sent WHERE event=?')
  const dropOld = sql.prepare('DELETE FROM sent WHERE at < ?')
  const one = (row: Record<string, SQLOutputValue> | undefined): SentMessage | undefined => row && asSent(row)
  return {
    note: ({ key, event, room, question, thread, person }, at) =>
      void note.run(key, event, room, question ?? null, thread ?? null, person ?? null, at),
    echo: ({ key, event, room }, at) => void echo.run(key, event, room, at),
    byKey: (key) => one(byKey.get(key)),
    byEvent: (event) => one(byEvent.get(event)),
    answersTo: (question) => answers.all(question).map(asSent),
    isOurThread: (thread) => ours.get(thread) !== undefined,
    drop: (event) => void drop.run(event),
    dropBefore: (time) => void dropOld.run(time),
    forgetRoom: (room) => void sql.prepare('DELETE FROM sent WHERE room=?').run(room),
    forgetPerson: (person) => void sql.prepare('DELETE FROM sent WHERE person=?').run(person),
  }
}
