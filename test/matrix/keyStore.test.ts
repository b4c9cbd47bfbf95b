// test/matrix/keyStore.test.ts: the store of encryption keys: on disk at each commit, the same after a kill, one process at a time.
import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import * as fc from 'fast-check'
import { keyToText, textToKey, type Key } from '../../bot/transports/matrix/keyText.ts'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'henwife-keys-'))
})
afterEach(() => rmSync(folder, { recursive: true }))
const script = 'test/matrix/keyStoreProcess.ts'
const run = (task: string) => {
  const { stdout, stderr, status, signal } = spawnSync(process.execPath, [script, join(folder, 'keys.sqlite'), task], {
    encoding: 'utf8',
  })
  return { lines: stdout.trim().split('\n'), stderr, status, signal }
}

test('a transaction is on the disk before anyone hears of it, an aborted one never, and a kill loses nothing', () => {
  const first = run('fill')
  expect(first.stderr).toBe('')
  expect(first.signal).toBe('SIGKILL')
  const [onDisk, aborted, refused, before] = first.lines
  expect([onDisk, aborted, refused]).toEqual([
    'on disk when complete: 21',
    'aborted: abort',
    'with a handled refusal: complete',
  ])
  expect(before).toContain('"touched":true')
  expect(before).not.toContain('"refused"')
  const second = run('dump')
  expect(second.lines).toEqual([before])
  expect(run('dump').lines).toEqual([before])
})

test('a second process is refused with a sentence, and let in when the first has gone, however it went', async () => {
  const holder = spawn(process.execPath, [script, join(folder, 'keys.sqlite'), 'hold'])
  await new Promise((resolve) => {
    holder.stdout.once('data', resolve)
  })
  const refused = run('fill')
  expect([refused.status, refused.lines[0]]).toEqual([3, expect.stringContaining('held by another Henwife')])
  const gone = new Promise((resolve) => {
    holder.once('exit', resolve)
  })
  holder.kill('SIGKILL')
  await gone
  expect(run('fill').signal).toBe('SIGKILL')
})

const key: fc.Arbitrary<Key> = fc.letrec<{ key: Key }>((tie) => ({
  key: fc.oneof(
    { maxDepth: 3 },
    fc.string(),
    fc.double({ noNaN: true }),
    fc.date({ noInvalidDate: true }),
    fc.uint8Array(),
    fc.array(tie('key')),
  ),
})).key

test('a key comes back from its text as it was', () => {
  fc.assert(
    fc.property(key, (one) => {
      expect(keyToText(textToKey(keyToText(one)))).toBe(keyToText(one))
    }),
  )
})

test('equal keys have equal text, whatever array or buffer holds them', () => {
  const holey: Key[] = []
  holey[1] = 2
  holey[0] = 'k'
  const buffer = new Uint8Array([0, 1, 2, 3]).subarray(1, 3)
  expect(keyToText(holey)).toBe(keyToText(['k', 2]))
  expect(keyToText(buffer)).toBe(keyToText(new Uint8Array([1, 2]).buffer))
  expect(keyToText(-0)).toBe(keyToText(0))
  expect(keyToText('1')).not.toBe(keyToText(1))
})
