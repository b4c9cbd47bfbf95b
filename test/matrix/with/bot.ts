// test/matrix/with/bot.ts: the bot as a process of its own, as an operator runs it: started, waited for, stopped, killed.
import { spawn, type ChildProcess } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import type { Readable } from 'node:stream'
import packageJson from '../../../package.json' with { type: 'json' }

export type Line = { readonly level: string; readonly msg: string; readonly [key: string]: unknown }
export type Ended = { readonly code: number | null; readonly signal: NodeJS.Signals | null }

export type Bot = {
  readonly lines: readonly Line[]
  /** Resolves with the first line of the log that says this, now or later; rejects when the bot ends before. */
  readonly says: (msg: string) => Promise<Line>
  readonly ended: Promise<Ended>
  /** Why it could not go on; '' where it has not said so. */
  readonly lastWords: () => string
  readonly stop: (signal: NodeJS.Signals) => Promise<Ended>
  /** Of its own pages: status and text. */
  readonly page: (path: string) => Promise<{ readonly status: number; readonly text: string }>
  readonly pid: number
}

export const newFolder = (): string => mkdtempSync(join(tmpdir(), 'henwife-bot-'))
export const removeFolder = (folder: string): void => rmSync(folder, { recursive: true, force: true })

/** The bot with an echo in place of its head: it says back what it is asked. */
export const echo = '../test/matrix/with/echoBot.ts'
/** The bot as it is. */
export const whole = 'main.ts'

/** As `npm start` does it, so that what is tested and measured is what an operator runs. */
const launch = packageJson.scripts.start.split(' ').slice(1, -1)

const running = new Set<ChildProcess>()
process.once('exit', () => {
  for (const child of running) child.kill('SIGKILL')
})

/**
 * @param script a program, as seen from the folder of bot/launch.js
 * @param settings over those that fit a test: nothing but loopback, any port, no limits
 */
export function startBot(script: string, settings: Readonly<Record<string, string>>): Bot {
  const env = {
    PATH: process.env['PATH'],
    NODE_COMPILE_CACHE: join(tmpdir(), 'henwife-compiled'), // half the time of a start
    HENWIFE_HEALTH_PORT: '0',
    HENWIFE_MATRIX_INVITES_FROM_SERVERS: 'marlpit.test',
    HENWIFE_LIMITS_ANSWERS_PER_PERSON_PER_MINUTE: '100000',
    HENWIFE_LIMITS_ANSWERS_PER_ROOM_PER_MINUTE: '100000',
    ...settings,
  }
  const child = spawn(process.execPath, [...launch, script], { env, stdio: ['ignore', 'pipe', 'pipe'] })
  running.add(child)
  const lines: Line[] = []
  const waiting = new Set<() => void>()
  const tell = (): void => {
    for (const look of waiting) look()
  }
  const take = (text: string): void => {
    try {
      lines.push(JSON.parse(text))
    } catch {
      lines.push({ level: 'stderr', msg: text })
    }
    tell()
  }
  const read = (input: Readable): Promise<void> =>
    new Promise((resolve) => {
      createInterface({ input }).on('line', take).once('close', resolve)
    })
  const allRead = Promise.all([read(child.stdout), read(child.stderr)])
  let end: Ended | undefined
  const ended = new Promise<Ended>((resolve) => {
    child.once('close', (code, signal) => {
      running.delete(child)
      void allRead.then(() => {
        end = { code, signal }
        tell()
        resolve(end)
      })
    })
  })
  const says = (msg: string): Promise<Line> =>
    new Promise((resolve, reject) => {
      const look = (): void => {
        const line = lines.find((one) => one.msg.includes(msg))
        if (line) resolve(line)
        else if (end) reject(new Error(`the bot ended without saying "${msg}":\n${JSON.stringify(lines.slice(-5))}`))
        if (line ?? end) waiting.delete(look)
      }
      waiting.add(look)
      look()
    })
  return {
    lines,
    says,
    ended,
    lastWords: () => lines.find(({ level }) => level === 'fatal')?.msg ?? '',
    pid: child.pid ?? 0,
    stop: (signal) => {
      child.kill(signal)
      return ended
    },
    page: async (path) => {
      const { health } = await says('started')
      const answer = await fetch(`${String(health)}${path}`)
      return { status: answer.status, text: await answer.text() }
    },
  }
}

/** What the bot needs to be told of a server and an account. */
export const told = (url: string, account: { readonly user: string; readonly password: string }, folder: string) => ({
  HENWIFE_MATRIX_HOMESERVER: url,
  HENWIFE_MATRIX_USER: account.user,
  HENWIFE_MATRIX_PASSWORD: account.password,
  HENWIFE_STATE: folder,
})
