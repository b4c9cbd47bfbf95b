// test/bot/log.test.ts: what may stand in a log, and what may not.
import { spawn } from 'node:child_process'
import { Writable } from 'node:stream'
import { expect, test } from 'vitest'
import { hashed, openLog, placeOf, scrubbed } from '../../bot/log.ts'

const linesOf = (write: (log: ReturnType<typeof openLog>) => void): string => {
  let text = ''
  const sink = new Writable({
    write(chunk: Buffer, _encoding, done) {
      text += chunk.toString()
      done()
    },
  })
  write(openLog('debug', sink))
  return text
}

test('one JSON object a line, with its time and level in words', () => {
  const line: unknown = JSON.parse(linesOf((log) => log.info({ room: hashed('!r:a.example') }, 'answered')))
  expect(line).toMatchObject({ level: 'info', msg: 'answered' })
  expect(line).toHaveProperty('time')
})

test('neither tokens nor words of a message get in, not even nested', () => {
  const text = linesOf((log) => {
    log.info({ accessToken: 'syt_abc', config: { password: 'sesame', recoveryKey: 'EsT x' } }, 'start')
    log.info({ text: 'my hens at 4 Mill Row', event: { body: 'my hens at 4 Mill Row' } }, 'read')
  })
  for (const secret of ['syt_abc', 'sesame', 'EsT x', 'Mill Row']) expect(text).not.toContain(secret)
})

test('a line of a library loses its ids and tokens and is cut', () => {
  const line = scrubbed(
    'PUT /rooms/!abc123:marlpit.example/send by @wren:marlpit.example for $Qx_1 "access_token":"syt_s_x"',
  )
  for (const secret of ['abc123', 'wren', 'Qx_1', 'syt_s_x']) expect(line).not.toContain(secret)
  expect(line).toContain(`!${hashed('!abc123:marlpit.example')}`)
  expect(scrubbed('x'.repeat(9000))).toHaveLength(500)
})

test('an error is written without ids, also where they stand in an address', () => {
  const text = linesOf((log) =>
    log.warn({ error: new Error('404 GET /rooms/!abc%3Amarlpit.test/event/%24Qx_1 for %40wren%3Amarlpit.test') }, 'x'),
  )
  for (const secret of ['abc', 'Qx_1', 'wren', 'marlpit']) expect(text).not.toContain(secret)
  expect(text).toContain('404 GET /rooms/')
})

test('of a fault of the head only kind and place are written: its message may quote the question', () => {
  const fault = new SyntaxError('unexpected "Mill Row"')
  expect(placeOf(fault)).toMatch(/^SyntaxError at .*log\.test\.ts/u)
  expect(placeOf(fault)).not.toContain('Mill Row')
})

test('a process whose log nobody reads any more still ends', async () => {
  const program = `
    import { openLog } from ${JSON.stringify(new URL('../../bot/log.ts', import.meta.url).href)}
    const log = openLog('info')
    process.stdin.resume().on('end', () => { log.info('one'); log.fatal('two'); process.exit(3) })`
  const child = spawn(process.execPath, ['--input-type=module', '--eval', program], { stdio: 'pipe' })
  child.stdout.destroy()
  child.stderr.destroy()
  child.stdin.end()
  const timer = setTimeout(() => child.kill('SIGKILL'), 50_000)
  expect(await new Promise((resolve) => void child.once('exit', resolve))).toBe(3)
  clearTimeout(timer)
})

test('a room has the same short name in every log and cannot be read back from it', () => {
  expect(hashed('!r:a.example')).toBe(hashed('!r:a.example'))
  expect(hashed('!r:a.example')).not.toBe(hashed('!r:b.example'))
  expect(hashed('!r:a.example')).toMatch(/^[0-9a-f]{8}$/u)
})
