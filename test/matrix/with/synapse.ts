// test/matrix/with/synapse.ts: a real chat server for a test: Synapse on loopback with a database of its own, gone afterwards.
import { spawn, spawnSync, type ChildProcess } from 'node:child_process'
import { createHmac } from 'node:crypto'
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { stringify } from 'yaml'

const python = '.synapse/server/bin/python'
/** test/tools/synapse.sh installs it. */
export const synapseInstalled = (): boolean => existsSync(python)

export type Account = {
  readonly user: string
  readonly password: string
  readonly token: string
  readonly device: string
}
export type Synapse = {
  readonly url: string
  readonly register: (name: string) => Promise<Account>
  readonly stop: () => Promise<void>
  readonly start: () => Promise<void>
  /** Stops it and removes its folder. */
  readonly remove: () => Promise<void>
}

export const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer()
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0))
    })
  })

const secret = 'for tests only'
const unlimited = { per_second: 100_000, burst_count: 100_000 }

const settings = (folder: string, port: number, slow: boolean) => ({
  server_name: 'marlpit.test',
  listeners: [{ port, type: 'http', bind_addresses: ['127.0.0.1'], resources: [{ names: ['client'] }] }],
  database: { name: 'sqlite3', args: { database: join(folder, 'homeserver.db') } },
  log_config: join(folder, 'log.yaml'),
  media_store_path: join(folder, 'media'),
  signing_key_path: join(folder, 'signing.key'),
  registration_shared_secret: secret,
  macaroon_secret_key: secret,
  form_secret: secret,
  pid_file: join(folder, 'pid'),
  report_stats: false,
  trusted_key_servers: [],
  presence: { enabled: false },
  rc_message: slow ? { per_second: 5, burst_count: 5 } : unlimited,
  rc_login: { address: unlimited, account: unlimited, failed_attempts: unlimited },
  rc_joins: { local: unlimited, remote: unlimited },
  rc_joins_per_room: unlimited,
  rc_invites: { per_room: unlimited, per_user: unlimited, per_issuer: unlimited },
  rc_room_creation: unlimited,
  rc_registration: unlimited,
  rc_admin_redaction: unlimited,
  rc_key_requests: unlimited,
})

const logging = (folder: string) => ({
  version: 1,
  formatters: { plain: { format: '%(asctime)s %(levelname)s %(name)s %(message)s' } },
  handlers: { file: { class: 'logging.FileHandler', filename: join(folder, 'log'), formatter: 'plain' } },
  root: { level: 'WARNING', handlers: ['file'] },
})

const until = async (isDone: () => Promise<boolean>): Promise<void> => {
  for (let tries = 0; tries < 600; tries += 1) {
    if (await isDone()) return
    await new Promise((resolve) => {
      setTimeout(resolve, 100)
    })
  }
  throw new Error('Synapse did not come up within a minute')
}

const ended = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) resolve()
    else child.once('exit', () => resolve())
  })

async function register(url: string, name: string): Promise<Account> {
  const at = `${url}/_synapse/admin/v1/register`
  const { nonce }: { nonce: string } = await (await fetch(at)).json()
  const password = `${name} sesame`
  const mac = createHmac('sha1', secret).update([nonce, name, password, 'notadmin'].join('\0')).digest('hex')
  const body = JSON.stringify({ nonce, username: name, password, admin: false, mac })
  const made: Record<string, string> = await (await fetch(at, { method: 'POST', body })).json()
  return { user: made['user_id'] ?? '', password, token: made['access_token'] ?? '', device: made['device_id'] ?? '' }
}

/** @param slow with the server's own limit on messages, five a second */
export async function startSynapse({ slow = false } = {}): Promise<Synapse> {
  const folder = mkdtempSync(join(tmpdir(), 'henwife-synapse-'))
  const port = await freePort()
  const url = `http://127.0.0.1:${port}`
  const config = join(folder, 'homeserver.yaml')
  writeFileSync(config, stringify(settings(folder, port, slow)))
  writeFileSync(join(folder, 'log.yaml'), stringify(logging(folder)))
  spawnSync(python, ['-m', 'synapse.app.homeserver', '-c', config, '--generate-keys'])
  let child: ChildProcess | undefined
  const start = async (): Promise<void> => {
    child = spawn(python, ['-m', 'synapse.app.homeserver', '-c', config], { stdio: 'ignore' })
    await until(() =>
      fetch(`${url}/_matrix/client/versions`).then(
        ({ ok }) => ok,
        () => false,
      ),
    )
  }
  const stop = async (): Promise<void> => {
    if (!child) return
    child.kill('SIGTERM')
    await ended(child)
  }
  await start()
  return {
    url,
    register: (name) => register(url, name),
    start,
    stop,
    remove: async () => {
      await stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
