// test/matrix/with/otherClient.ts: runs otherClient.py and reads what it prints.
import { spawn, spawnSync } from 'node:child_process'
import { createInterface } from 'node:readline'
import type { Account } from './synapse.ts'

export type NioLine = { readonly kind: string; readonly [key: string]: unknown }
export type Nio = {
  readonly lines: readonly NioLine[]
  readonly prints: (is: (line: NioLine) => boolean) => Promise<NioLine>
  readonly ask: () => void
  readonly stop: () => void
}

/** The one of PyPI, installed with the server, and, where it is there, Debian's older one, whose encryption is another library (libolm). */
export const pythons: readonly string[] = ['.synapse/nio/bin/python', '/usr/bin/python3'].filter(
  (python) => spawnSync(python, ['-c', 'import nio.crypto as c; assert c.ENCRYPTION_ENABLED']).status === 0,
)

export function startNio(python: string, url: string, account: Account, room: string, question: string): Nio {
  const { user, device, token } = account
  const told = JSON.stringify({ url, user, device, token, room, question })
  const child = spawn(python, ['test/matrix/with/otherClient.py', told], {
    stdio: ['pipe', 'pipe', 'pipe'],
  })
  const lines: NioLine[] = []
  const noise: string[] = []
  const waiting = new Set<() => void>()
  createInterface({ input: child.stderr }).on('line', (line) => noise.push(line))
  createInterface({ input: child.stdout }).on('line', (line) => {
    lines.push(JSON.parse(line))
    for (const look of waiting) look()
  })
  return {
    lines,
    prints: (is) =>
      new Promise((resolve, reject) => {
        const timer = setTimeout(
          () => reject(new Error(`nio did not print it: ${JSON.stringify(lines)} ${noise.slice(-5).join('\n')}`)),
          30_000,
        )
        const look = (): void => {
          const line = lines.find(is)
          if (!line) return
          clearTimeout(timer)
          waiting.delete(look)
          resolve(line)
        }
        waiting.add(look)
        look()
      }),
    ask: () => void child.stdin.write('now\n'),
    stop: () => void child.kill('SIGKILL'),
  }
}
