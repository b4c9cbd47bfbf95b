// test/bot/start.test.ts: bot/start.js turns into the program it starts: same process, flags and settings that spare memory.
import { spawn } from 'node:child_process'
import { text } from 'node:stream/consumers'
import { expect, test } from 'vitest'

const tells =
  'process.on("exit", () => process.stderr.write(JSON.stringify([process.pid, process.execArgv, process.env.MALLOC_ARENA_MAX])))'
const hook = `data:text/javascript,${encodeURIComponent(tells)}`

async function started(env: Readonly<Record<string, string>>) {
  const child = spawn(process.execPath, ['bot/start.js', 'ask.ts', 'eggs of a Light Sussex'], {
    env: { ...process.env, NODE_OPTIONS: `--import ${hook}`, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const ended = new Promise((resolve) => {
    child.once('close', resolve)
  })
  const [said, told, code] = await Promise.all([text(child.stdout), text(child.stderr), ended])
  const [pid, flags, arenas]: [number, string[], string] = JSON.parse(told)
  return { said, code, isSame: pid === child.pid, flags, arenas }
}

test('the program runs in the process that was started, with flags and allocator told', async () => {
  const { said, code, isSame, flags, arenas } = await started({})
  expect(said).toContain('Hens lay')
  expect({ code, isSame, arenas }).toEqual({ code: 0, isSame: true, arenas: '1' })
  expect(flags).toContain('--optimize-for-size')
})

test('what the operator says of the allocator stands', async () => {
  expect((await started({ MALLOC_ARENA_MAX: '3' })).arenas).toBe('3')
})
