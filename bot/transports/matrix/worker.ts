// bot/transports/matrix/worker.ts: works the inbox off: one message of a room after the other, rooms side by side, each message to its end or kept.
import PQueue from 'p-queue'
import type { Limits } from '../../limits.ts'
import { hashed, placeOf, type Log } from '../../log.ts'
import type { Metrics } from '../../metrics.ts'
import { askedTooMuch } from '../../render/room.ts'
import { asReply } from '../../render/reply.ts'
import type { Service } from '../../serve.ts'
import { spokenTo } from '../../spokenTo.ts'
import type { Arrived } from '../../store/inbox.ts'
import type { Incoming } from '../../transport.ts'
import { read, type Surroundings } from './read.ts'
import { openUnit, type Surface, type Unit } from './unit.ts'
import { refusalOf } from './wire.ts'

export type Workshop = Surface & {
  readonly around: Surroundings
  readonly serve: (service: Service, incoming: Incoming) => Promise<void>
  readonly settingsOf: Service['settingsOf']
  readonly draw: Service['draw']
  readonly limits: Limits
  readonly log: Log
  readonly metrics: Metrics
  /** The bot may not write there. */
  readonly muted: (room: string) => void
  /** The message's key is missing. */
  readonly locked: (message: Arrived) => void
}

export type Worker = {
  /** There may be something to do in this room. */
  readonly wake: (room: string) => void
  readonly wakeAll: () => void
  /** Takes no new message; resolves when those at hand are done. */
  readonly stop: () => Promise<void>
}

const roomsAtOnce = 32
const typingAfter = 1000 // ms
const firstPause = 2000 // ms, before a room is tried again
const longestPause = 60_000 // ms
const mostStumbles = 20 // in about a quarter of an hour; a message that fails so long would shut its room for ever

/** Shows "is writing" only where it takes longer, and always takes it away again. */
async function whileTyping(unit: Unit, room: string, work: Promise<void>): Promise<void> {
  let shown: Promise<void> | undefined
  const timer = setTimeout(() => {
    shown = unit.transport.typing(room, true)
  }, typingAfter)
  try {
    await work
  } finally {
    clearTimeout(timer)
    if (shown) void shown.then(() => unit.transport.typing(room, false))
  }
}

const isQuestion = (incoming: Incoming): incoming is Extract<Incoming, { kind: 'said' | 'edited' }> =>
  incoming.kind === 'said' || incoming.kind === 'edited'

/** Beyond the limit one line says so, then there is silence; the message is done either way. */
async function isOverLimit(shop: Workshop, unit: Unit, incoming: Incoming): Promise<boolean> {
  if (!isQuestion(incoming) || spokenTo(incoming, shop.settingsOf(incoming.room)).to === 'others') return false
  const { person, room, sentAt, id } = incoming
  const judged = shop.limits.judge(person, room, Math.min(sentAt, shop.now()))
  if (judged === 'answer') return false
  shop.metrics.limited.inc()
  if (judged === 'say so') await unit.transport.reply(id, incoming, asReply(askedTooMuch), `${id}.limit`)
  return true
}

async function answerOne(shop: Workshop, row: Arrived, incoming: Incoming): Promise<void> {
  const started = performance.now()
  const unit = openUnit(shop, row.event, incoming)
  if (await isOverLimit(shop, unit, incoming)) return unit.commit()
  const { settingsOf, draw, log, metrics, serve } = shop
  const fault: Service['log'] = (error, what) => {
    metrics.faults.inc({ kind: what })
    log.error(
      { what, room: hashed(row.room), error: what === 'answer' ? placeOf(error) : error },
      'something of ours went wrong',
    )
  }
  const count: Service['count'] = (kind) => metrics.answers.inc({ kind })
  await whileTyping(unit, row.room, serve({ ...unit, settingsOf, draw, count, log: fault }, incoming))
  unit.commit()
  if (unit.sends() === 0) return
  if (isQuestion(incoming)) shop.limits.count(incoming.person, incoming.room, Math.min(incoming.sentAt, shop.now()))
  if (incoming.kind === 'joined') metrics.greetings.inc()
  metrics.seconds.observe((performance.now() - started) / 1000)
  log.info({ room: hashed(row.room), after: incoming.kind, ms: Math.round(performance.now() - started) }, 'answered')
}

async function handle(shop: Workshop, row: Arrived): Promise<void> {
  const { inbox, sent } = shop.store
  const found = await read(row, shop.around)
  if (found.kind === 'locked') {
    inbox.lock(row.event)
    shop.metrics.undecryptable.inc()
    return shop.locked(row)
  }
  if (found.kind === 'incoming' && !(found.incoming.kind === 'said' && sent.answersTo(row.event).length > 0))
    return answerOne(shop, row, found.incoming)
  shop.store.atOnce(() => {
    if (found.kind === 'nothing' && found.freed !== undefined) {
      inbox.done(found.freed)
      sent.drop(found.freed)
    }
    inbox.done(row.event)
  })
}

type Failures = { readonly tries: number; readonly stumbles: number }

/** What of a failed message is left to do: nothing, or to try again. */
function survive(shop: Workshop, row: Arrived, error: unknown, { tries, stumbles }: Failures): 'done' | 'again' {
  const refusal = refusalOf(error)
  shop.metrics.faults.inc({ kind: refusal })
  shop.log.warn({ room: hashed(row.room), refusal, tries, error }, 'not sent')
  if (refusal === 'forbidden') shop.muted(row.room)
  if (refusal === 'unreachable' || (refusal === 'stumbled' && stumbles < mostStumbles)) return 'again'
  shop.store.inbox.done(row.event)
  return 'done'
}

export function workerOf(shop: Workshop): Worker {
  const queue = new PQueue({ concurrency: roomsAtOnce })
  const busy = new Set<string>()
  const resting = new Map<string, NodeJS.Timeout>()
  let isStopped = false

  const rest = (room: string, tries: number): void => {
    const pause = Math.min(firstPause * 2 ** (tries - 1), longestPause)
    const timer = setTimeout(() => {
      resting.delete(room)
      wake(room)
    }, pause)
    resting.set(room, timer)
  }
  const failed = new Map<string, Failures>() // by event
  const fail = (row: Arrived, error: unknown): Failures => {
    const { tries, stumbles } = failed.get(row.event) ?? { tries: 0, stumbles: 0 }
    const more = { tries: tries + 1, stumbles: stumbles + (refusalOf(error) === 'stumbled' ? 1 : 0) }
    failed.set(row.event, more)
    return more
  }
  const workOff = async (room: string): Promise<void> => {
    for (;;) {
      const row = isStopped ? undefined : shop.store.inbox.next(room)
      if (!row) break
      try {
        await handle(shop, row)
        failed.delete(row.event)
      } catch (error) {
        if (isStopped) break
        const many = fail(row, error)
        if (survive(shop, row, error, many) === 'done') continue
        rest(room, many.tries)
        break
      }
    }
    busy.delete(room) // in the same breath as the last look into the inbox, so that no wake falls between
    shop.metrics.waiting.set(shop.store.inbox.waiting())
  }
  const wake = (room: string): void => {
    if (isStopped || busy.has(room) || resting.has(room)) return
    busy.add(room)
    void queue.add(() => workOff(room))
  }
  return {
    wake,
    wakeAll: () => {
      for (const room of shop.store.inbox.roomsWaiting()) wake(room)
    },
    stop: async () => {
      isStopped = true
      for (const timer of resting.values()) clearTimeout(timer)
      await queue.onIdle()
    },
  }
}
