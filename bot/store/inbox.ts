// bot/store/inbox.ts: messages between the network and the bot: each is in it once, and is worked off in its room's order.
import type { DatabaseSync, SQLOutputValue } from 'node:sqlite'

/** A message as it came: `raw` is its JSON, still encrypted where it came so. */
export type Arrived = { readonly event: string; readonly room: string; readonly raw: string }
export type Gap = {
  readonly room: string
  readonly batch: number
  /** Tokens of the network: read backwards from `newest`, at most to `oldest`. */
  readonly newest: string
  readonly oldest: string | undefined
}

export type Inbox = {
  /** Number for the messages of the next sync: higher than any before. */
  readonly nextBatch: () => number
  /** Adds what is not in it yet. `firstPlace` + index gives the order. `seen`: never to be handled. */
  readonly take: (
    messages: readonly Arrived[],
    at: { batch: number; firstPlace: number; now: number; seen?: boolean },
  ) => number
  readonly knows: (event: string) => boolean
  /** The next message to handle in a room; none while a gap before it is unread. */
  readonly next: (room: string) => Arrived | undefined
  readonly roomsWaiting: () => readonly string[]
  readonly waiting: () => number
  readonly done: (event: string) => void
  /** Its key is missing: kept, and passed over until `unlock`. */
  readonly lock: (event: string) => void
  readonly unlock: (event: string) => void
  readonly locked: () => readonly (Arrived & { readonly taken: number })[]
  readonly openGap: (gap: Gap) => void
  readonly gaps: () => readonly Gap[]
  readonly closeGap: (gap: Gap) => void
  /** Rows handled, or locked and given up, before that time. */
  readonly dropBefore: (time: number) => void
  readonly forgetRoom: (room: string) => void
}

type Row = Record<string, SQLOutputValue>
const asArrived = (row: Row): Arrived => ({
  event: String(row['event']),
  room: String(row['room']),
  raw: String(row['raw']),
})
const asGap = (row: Row): Gap => ({
  room: String(row['room']),
  batch: Number(row['batch']),
  newest: String(row['newest']),
  oldest: row['oldest'] === null ? undefined : String(row['oldest']),
})

export function inboxOf(sql: DatabaseSync): Inbox {
  const insert = sql.prepare('INSERT OR IGNORE INTO inbox VALUES(?,?,?,?,?,?,?)')
  const known = sql.prepare('SELECT 1 FROM inbox WHERE event=?')
  const batch = sql.prepare('SELECT max(batch) AS top FROM (SELECT batch FROM inbox UNION ALL SELECT batch FROM gaps)')
  const next = sql.prepare(`SELECT event, room, raw FROM inbox WHERE room=? AND state='new'
    AND NOT EXISTS(SELECT 1 FROM gaps WHERE gaps.room=inbox.room) ORDER BY batch, place LIMIT 1`)
  const roomsWaiting = sql.prepare(`SELECT DISTINCT room FROM inbox WHERE state='new'`)
  const waiting = sql.prepare(`SELECT count(*) AS many FROM inbox WHERE state='new'`)
  const done = sql.prepare(`UPDATE inbox SET state='done', raw='' WHERE event=?`)
  const lock = sql.prepare(`UPDATE inbox SET state='locked' WHERE event=? AND state='new'`)
  const unlock = sql.prepare(`UPDATE inbox SET state='new' WHERE event=? AND state='locked'`)
  const locked = sql.prepare(`SELECT event, room, raw, taken FROM inbox WHERE state='locked' ORDER BY batch, place`)
  const openGap = sql.prepare('INSERT INTO gaps VALUES(?,?,?,?)')
  const gaps = sql.prepare('SELECT * FROM gaps ORDER BY batch')
  const closeGap = sql.prepare('DELETE FROM gaps WHERE room=? AND batch=?')
  const drop = sql.prepare(`DELETE FROM inbox WHERE taken < ? AND state != 'new'`)
  let last = Number(batch.get()?.['top'] ?? 0)
  return {
    nextBatch: () => (last += 1),
    take: (messages, { batch, firstPlace, now, seen }) => {
      let added = 0
      for (const [index, { event, room, raw }] of messages.entries())
        added += Number(
          insert.run(event, room, batch, firstPlace + index, seen ? 'done' : 'new', seen ? '' : raw, now).changes,
        )
      return added
    },
    knows: (event) => known.get(event) !== undefined,
    next: (room) => {
      const row = next.get(room)
      return row && asArrived(row)
    },
    roomsWaiting: () => roomsWaiting.all().map((row) => String(row['room'])),
    waiting: () => Number(waiting.get()?.['many']),
    done: (event) => void done.run(event),
    lock: (event) => void lock.run(event),
    unlock: (event) => void unlock.run(event),
    locked: () => locked.all().map((row) => ({ ...asArrived(row), taken: Number(row['taken']) })),
    openGap: (gap) => void openGap.run(gap.room, gap.batch, gap.newest, gap.oldest ?? null),
    gaps: () => gaps.all().map(asGap),
    closeGap: (gap) => void closeGap.run(gap.room, gap.batch),
    dropBefore: (time) => void drop.run(time),
    forgetRoom: (room) => {
      sql.prepare('DELETE FROM inbox WHERE room=?').run(room)
      sql.prepare('DELETE FROM gaps WHERE room=?').run(room)
    },
  }
}
