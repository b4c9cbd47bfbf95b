// test/matrix/patience.test.ts: what is tried again and what is not; when the bot counts as deaf; when a closed message is owned up to.
import { createServer } from 'node:http'
import { describe, expect, test } from 'vitest'
import { openLog } from '../../bot/log.ts'
import { openMetrics } from '../../bot/metrics.ts'
import type { Arrived } from '../../bot/store/inbox.ts'
import type { RoomRow } from '../../bot/store/rooms.ts'
import { lateOf, type Around } from '../../bot/transports/matrix/late.ts'
import { patientFetch } from '../../bot/transports/matrix/patience.ts'
import type { Content } from '../../bot/transports/matrix/write.ts'
import { usualPatience as patience, watchOf } from '../../bot/transports/matrix/watch.ts'

/** A server that answers with these statuses in turn, the last one for ever. */
async function serverOf(statuses: readonly number[]) {
  let asked = 0
  const server = createServer((_request, response) => {
    const status = statuses[Math.min(asked, statuses.length - 1)] ?? 200
    asked += 1
    response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify({ retry_after_ms: 20 }))
  })
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve)
  })
  const address = server.address()
  const url = `http://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}/_matrix/client/v3`
  return { url, asked: () => asked, close: () => server.close() }
}
const patient = (stop = new AbortController().signal, waits: number[] = []) =>
  patientFetch({ slowedDown: (wait) => waits.push(wait), stop, firstPause: 1 })

describe('requests', () => {
  test.each([
    ['a send that meets a stumbling server is sent again', 'PUT', '/rooms/a/send/x/1', [500, 503, 200], 200, 3],
    ['a send that is refused is not', 'PUT', '/rooms/a/send/x/1', [403, 200], 403, 1],
    ['a sync is left to the SDK, which watches it', 'GET', '/sync', [502, 200], 502, 1],
    ['a login is not repeated: it would leave a second device', 'POST', '/login', [502, 200], 502, 1],
    ['but "slow down" is obeyed there too', 'POST', '/login', [429, 429, 200], 200, 3],
    ['and in a sync', 'GET', '/sync', [429, 200], 200, 2],
    ['a server that stays down is given back to the caller in the end', 'PUT', '/rooms/a/send/x/1', [503], 503, 6],
  ] as const)('%s', async (_claim, method, path, statuses, status, asked) => {
    const server = await serverOf(statuses)
    const response = await patient()(server.url + path, { method })
    expect([response.status, server.asked()]).toEqual([status, asked])
    server.close()
  })

  test('"slow down" is waited out as long as told, and a little more, however often', async () => {
    const server = await serverOf([...Array.from({ length: 12 }, () => 429), 200])
    const waits: number[] = []
    expect((await patient(undefined, waits)(`${server.url}/join/a`, { method: 'POST' })).status).toBe(200)
    expect(waits).toHaveLength(12)
    expect(waits.every((wait) => wait >= 20 && wait <= 24)).toBe(true)
    server.close()
  })

  test('the end of the session ends every wait', async () => {
    const server = await serverOf([429])
    const stop = new AbortController()
    const asked = patient(stop.signal)(`${server.url}/join/a`, { method: 'POST' })
    setTimeout(() => stop.abort(), 50)
    await expect(asked).rejects.toThrow(/abort/iu)
    server.close()
  })
})

describe('hearing', () => {
  const at = (start = 0) => {
    let now = start
    return { watch: watchOf(() => now, patience), goOn: (milliseconds: number) => (now += milliseconds) }
  }
  test('it hears for three minutes after a sync, and not before the first', () => {
    const { watch, goOn } = at()
    expect(watch.isHearing()).toBe(false)
    watch.heard()
    goOn(patience - 1)
    expect([watch.isHearing(), watch.isDeaf()]).toEqual([true, false])
    goOn(1)
    expect([watch.isHearing(), watch.isDeaf()]).toEqual([false, true])
  })

  test('a server that is away makes it not ready, but not deaf: a new start would not help', () => {
    const { watch, goOn } = at()
    watch.heard()
    for (let i = 0; i < 5; i += 1) {
      goOn(patience - 1)
      watch.failed()
    }
    expect([watch.isHearing(), watch.isDeaf()]).toEqual([false, false])
  })
})

describe('a message that stays closed', () => {
  const day = 24 * 60 * 60 * 1000
  const closed: Arrived & { taken: number } = {
    event: '$1',
    room: '!a',
    raw: JSON.stringify({
      event_id: '$1',
      type: 'm.room.encrypted',
      sender: '@wren:a',
      origin_server_ts: 0,
      content: { 'm.relates_to': { rel_type: 'm.thread', event_id: '$t' } },
    }),
    taken: 0,
  }
  const setting = (now: () => number) => {
    const sent: { room: string; content: Content; key: string }[] = []
    let row: RoomRow = { greeted: true }
    const around: Around = {
      store: {
        inbox: { locked: () => [closed], unlock: () => undefined },
        rooms: {
          of: () => row,
          set: (_room, changes) => {
            row = { ...row, ...changes }
          },
        },
        sent: { note: () => undefined },
      },
      wire: {
        send: (room, content, key) => {
          sent.push({ room, content, key })
          return Promise.resolve('$s')
        },
        open: () => Promise.resolve('locked'),
        whenOpen: () => undefined,
      },
      log: openLog('error'),
      metrics: openMetrics(),
      now,
      wake: () => undefined,
    }
    return { sent, late: lateOf(around) }
  }

  test('is owned up to after a minute, in its thread, once a room and day', async () => {
    let now = 59_999
    const { sent, late } = setting(() => now)
    await late.ownUp()
    expect(sent).toEqual([])
    now = 60_001
    await late.ownUp()
    await late.ownUp()
    expect(sent).toHaveLength(1)
    expect(sent[0]).toMatchObject({ room: '!a', key: '$1.locked' })
    expect(sent[0]?.content['m.relates_to']).toMatchObject({
      rel_type: 'm.thread',
      event_id: '$t',
      'm.in_reply_to': { event_id: '$1' },
    })
    expect(sent[0]?.content['body']).toContain('cannot read it')
  })

  test('is not brought up again days later', async () => {
    const { sent, late } = setting(() => day)
    await late.ownUp()
    expect(sent).toEqual([])
  })
})
