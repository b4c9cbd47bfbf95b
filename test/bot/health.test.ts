// test/bot/health.test.ts: the operator's pages: alive, ready or not, figures without names.
import { afterEach, expect, test } from 'vitest'
import { openHealth, type Health } from '../../bot/health.ts'
import { openMetrics } from '../../bot/metrics.ts'

let health: Health | undefined
afterEach(async () => {
  await health?.close()
  health = undefined
})
const statusOf = async (path: string): Promise<number> =>
  (await fetch(`http://127.0.0.1:${health?.port}${path}`)).status

test('alive from the first moment, ready only when the bot is', async () => {
  let ready = false
  health = await openHealth({ host: '127.0.0.1', port: 0 }, () => ready, openMetrics().registry)
  expect([await statusOf('/live'), await statusOf('/ready')]).toEqual([200, 503])
  ready = true
  expect(await statusOf('/ready')).toBe(200)
})

test('no other path answers, so a misspelt probe is seen', async () => {
  health = await openHealth({ host: '127.0.0.1', port: 0 }, () => true, openMetrics().registry)
  expect([await statusOf('/healthz'), await statusOf('/')]).toEqual([404, 404])
})

test('the figures are those counted', async () => {
  const metrics = openMetrics()
  metrics.answers.inc({ kind: 'cross' }, 3)
  health = await openHealth({ host: '127.0.0.1', port: 0 }, () => true, metrics.registry)
  const text = await (await fetch(`http://127.0.0.1:${health.port}/metrics`)).text()
  expect(text).toContain('henwife_answers_total{kind="cross"} 3')
  expect(text).toContain('henwife_process_resident_memory_bytes')
})
