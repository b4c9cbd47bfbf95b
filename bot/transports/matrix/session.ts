// bot/transports/matrix/session.ts: one connection with the homeserver, from signing in to its end, in order.
import { join } from 'node:path'
import { ClientEvent, HttpApiEvent, SyncState, type MatrixClient } from 'matrix-js-sdk'
import { session as signIn } from './account.ts'
import { scrubbed } from '../../log.ts'
import type { House } from './house.ts'
import { clientOf, startSyncing, versionFault } from './client.ts'
import { deviceKeyFault, isPublished } from './deviceKey.ts'
import { lateOf, type Late } from './late.ts'
import { patientFetch } from './patience.ts'
import { roundsOf, type Rounds } from './rounds.ts'
import { shopOf } from './shop.ts'
import { SyncStore } from './syncStore.ts'
import { openerOf, vouch, type Opener } from './trust.ts'
import { watchOf } from './watch.ts'
import { wireOf } from './wire.ts'
import { workerOf, type Worker } from './worker.ts'

export type Ending =
  | { readonly kind: 'stopped' }
  /** Nothing was heard for long, not even a fault: worth a new try, unless nothing was ever heard in this one. */
  | { readonly kind: 'deaf'; readonly hasHeard: boolean }
  /** The server no longer knows the token: worth signing in again. */
  | { readonly kind: 'signed out' }
  /** The operator must do something. */
  | { readonly kind: 'fault'; readonly sentence: string }

type Running = { readonly worker: Worker; readonly late: Late; readonly rounds: Rounds }

const looks = 18 // for deafness, in the time of one patience
const ownUpEvery = 60_000 // ms
const stopWithin = 10_000 // ms, for the answers at hand

function runningOf(house: House, client: MatrixClient, cut: AbortSignal): Running {
  const { config, matrix, store, log, metrics } = house
  const stop = AbortSignal.any([house.stop, cut])
  const wire = wireOf(client)
  const now = Date.now
  const shop = shopOf(house, client, wire, () => late, now)
  const worker = workerOf(shop)
  const late: Late = lateOf({ store, wire, log, metrics, now, wake: worker.wake })
  return { worker, late, rounds: roundsOf({ config, matrix, client, store, wire, worker, log, now, stop }) }
}

/** Others must be able to find the device before anybody writes to it. */
async function untilPublished(client: MatrixClient, cut: AbortSignal): Promise<void> {
  while (!cut.aborted && !(await isPublished(client).catch(() => false)))
    await new Promise((resolve) => {
      setTimeout(resolve, 200)
    })
}

async function trusted({ matrix, config, log, metrics }: House, client: MatrixClient, opener: Opener): Promise<void> {
  try {
    const isTrusted = await vouch(client, matrix, join(config.state, 'recovery-key'), opener, log)
    metrics.trusted.set(isTrusted ? 1 : 0)
  } catch (error) {
    metrics.faults.inc({ kind: 'trust' })
    log.error({ error }, 'could not have the account vouch for this device')
  }
}

const within = (milliseconds: number, work: Promise<void>): Promise<void> =>
  Promise.race([
    work,
    new Promise<void>((resolve) => {
      setTimeout(resolve, milliseconds).unref()
    }),
  ])

/** Resolves when the session is over and its client has stopped. Rejects where the server cannot be reached to sign in. */
export async function runSession(house: House): Promise<Ending> {
  const cut = new AbortController()
  try {
    return await untilOver(house, cut)
  } finally {
    cut.abort() // ends every wait
  }
}

async function untilOver(house: House, cut: AbortController): Promise<Ending> {
  const { matrix, store, log, metrics, stop } = house
  const whileOpen = { signal: cut.signal }
  const giveUp = (): void => cut.abort() // nothing is at hand yet that would have to be finished
  stop.addEventListener('abort', giveUp, whileOpen)
  const slowedDown = (): void => metrics.slowedDown.inc()
  const fetchFn = patientFetch({ slowedDown, stop: cut.signal })
  const account = await signIn(matrix, store.kept, fetchFn)
  if (!account.ok) return { kind: 'fault', sentence: account.fault }

  const watch = watchOf(Date.now, house.patience)
  const opener = openerOf()
  let running: Running | undefined
  const syncStore = new SyncStore(store, {
    me: account.value.user,
    greets: matrix.greets,
    now: Date.now,
    synced: (answer, rooms) => {
      watch.heard()
      metrics.syncs.inc()
      metrics.messages.inc(rooms.reduce((sum, { messages }) => sum + messages.length, 0))
      metrics.rooms.set(store.rooms.all().length)
      running?.rounds.after(answer, rooms)
    },
  })
  const client = clientOf(matrix.homeserver, account.value, syncStore, opener, fetchFn, log)
  const unfit = await unfitness(client, house)
  if (unfit !== undefined) {
    client.stopClient()
    return { kind: 'fault', sentence: unfit }
  }

  stop.removeEventListener('abort', giveUp)
  let isAtWork = false
  house.asks(() => isAtWork && watch.isHearing())
  const ending = new Promise<Ending>((resolve) => {
    const begin = async (): Promise<void> => {
      running = runningOf(house, client, cut.signal)
      running.rounds.begin()
      await running.late.watchAll()
      await untilPublished(client, cut.signal)
      running.worker.wakeAll()
      isAtWork = true
      log.info({ rooms: store.rooms.all().length, encrypted: client.getCrypto() !== undefined }, 'ready')
      void trusted(house, client, opener)
    }
    client.on(ClientEvent.Sync, (state, _before, data) => {
      if (state === SyncState.Error || state === SyncState.Reconnecting) watch.failed()
      if (state !== SyncState.Syncing || data?.catchingUp === true || running) return
      void begin().catch((error: unknown) =>
        resolve({ kind: 'fault', sentence: `Could not begin: ${scrubbed(String(error))}` }),
      )
    })
    client.on(HttpApiEvent.SessionLoggedOut, () => resolve({ kind: 'signed out' }))
    if (stop.aborted) resolve({ kind: 'stopped' })
    stop.addEventListener('abort', () => resolve({ kind: 'stopped' }), whileOpen)
    const look = setInterval(() => {
      if (watch.isDeaf()) resolve({ kind: 'deaf', hasHeard: watch.hasHeard() })
    }, house.patience / looks)
    const confess = setInterval(() => void running?.late.ownUp(), ownUpEvery)
    void startSyncing(client)
    cut.signal.addEventListener('abort', () => {
      clearInterval(look)
      clearInterval(confess)
    })
  })
  const end = await ending
  house.asks(() => false)
  if (running) await within(stopWithin, running.worker.stop())
  client.stopClient()
  return end
}

/** What stands against working with this server and this device. */
async function unfitness(client: MatrixClient, { matrix, store }: House): Promise<string | undefined> {
  const fault = await versionFault(client)
  if (fault !== undefined || !matrix.encryption) return fault
  await client.initRustCrypto({ useIndexedDB: true })
  return deviceKeyFault(client, store.kept)
}
