// bot/transports/matrix.ts: the bot in its rooms on a Matrix homeserver, from settings to the end of the process.
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { openHealth } from '../health.ts'
import { openLog, type Log } from '../log.ts'
import { keptMilliseconds } from '../memory.ts'
import { openMetrics } from '../metrics.ts'
import type { Service } from '../serve.ts'
import type { Config, MatrixConfig } from '../settings.ts'
import { wordedFault } from '../store/file.ts'
import { openStore, sweep, type Store } from '../store.ts'
import type { Incoming } from '../transport.ts'
import { installDurableIndexedDb } from './matrix/durableIndexedDb.ts'
import { openKeyFile, type KeyFile } from './matrix/keyFile.ts'
import { quietSdk } from './matrix/sdkLog.ts'
import { runSession, type Ending } from './matrix/session.ts'
import type { House } from './matrix/house.ts'
import { usualPatience } from './matrix/watch.ts'

export type Parts = {
  readonly serve: (service: Service, incoming: Incoming) => Promise<void>
  readonly draw: Service['draw']
  /** ms without a word from the server after which the bot starts over; three minutes unless told */
  readonly patience?: number
}

const hour = 60 * 60 * 1000 // ms
const pauseAfterFailure = 10_000 // ms, before a server that is not there is asked again

type Files = { readonly store: Store; readonly keys: KeyFile }

/** Both files at once, or a sentence. */
function openFiles(folder: string): Files | string {
  const store = openStore(folder)
  if (!store.ok) return wordedFault(store.fault)
  const keys = openKeyFile(join(folder, 'keys.sqlite'))
  if (keys.ok) return { store: store.value, keys: keys.value }
  store.value.close()
  return wordedFault(keys.fault)
}

const deaf = 'Nothing is heard from the server, not even after a new start.'

/** One session after the other until it is to stop, or cannot go on; then a sentence. */
async function sessions(house: House): Promise<string | undefined> {
  for (let isNewStart = false; ; isNewStart = true) {
    const ending: Ending | Error = await runSession(house).catch((error: unknown) =>
      error instanceof Error ? error : new Error(String(error)),
    )
    if (house.stop.aborted) return undefined
    if (ending instanceof Error) {
      house.log.warn({ error: ending }, 'the server cannot be reached')
      await sleep(pauseAfterFailure, undefined, { signal: house.stop }).catch(() => undefined)
    } else if (ending.kind === 'fault') return ending.sentence
    else if (ending.kind === 'deaf' && isNewStart && !ending.hasHeard) return deaf
    else house.log.warn({ why: ending.kind }, 'starting over')
  }
}

/** First signal: end in order. Second: at once. */
function stopOnSignals(log: Log): AbortSignal {
  const stop = new AbortController()
  const onSignal = (signal: NodeJS.Signals): void => {
    if (stop.signal.aborted) process.exit(1)
    log.info({ signal }, 'stopping')
    stop.abort()
  }
  process.on('SIGTERM', onSignal)
  process.on('SIGINT', onSignal)
  return stop.signal
}

/** What nobody has caught is a fault of ours: better a fresh start by whoever watches the process than half a bot. */
function exitOnFault(log: Log): void {
  const exit = (error: unknown): void => {
    log.fatal({ error: error instanceof Error ? error.stack : error }, 'a fault of ours')
    process.exit(1)
  }
  process.on('unhandledRejection', exit)
  process.on('uncaughtException', exit)
}

/** Resolves with the exit code once everything is closed. */
async function run(config: Config, matrix: MatrixConfig, parts: Parts, log: Log): Promise<number> {
  const files = openFiles(config.state)
  if (typeof files === 'string') {
    log.fatal(files)
    return 1
  }
  const metrics = openMetrics()
  let isReady = (): boolean => false
  const health = await openHealth(config.health, () => isReady(), metrics.registry).catch(String)
  if (typeof health === 'string') {
    log.fatal(`health.port ${config.health.port} cannot be used: ${health}`)
    return 1
  }
  log.info({ health: `http://${config.health.host}:${health.port}` }, 'started')
  if (matrix.encryption)
    await installDurableIndexedDb(files.keys, (error) => {
      log.fatal({ error }, 'the keys could not be written to disk')
      process.exit(1)
    })
  const { answersDays, seenDays } = config.keep
  const tidy = (): void =>
    sweep(files.store, { answersDays, seenDays, memoryMilliseconds: keptMilliseconds }, Date.now())
  tidy()
  const tidying = setInterval(tidy, hour)
  const asks = (ask: () => boolean): void => {
    isReady = ask
  }
  const sentence = await sessions({
    config,
    matrix,
    log,
    metrics,
    asks,
    store: files.store,
    stop: stopOnSignals(log),
    patience: usualPatience,
    ...parts,
  })
  clearInterval(tidying)
  await health.close()
  files.store.close()
  files.keys.close()
  if (sentence !== undefined) log.fatal(sentence)
  else log.info('stopped')
  return sentence === undefined ? 0 : 1
}

/** The real thing, loaded when it is needed: it brings the whole catalogue with it. */
async function allParts({ pictures }: MatrixConfig): Promise<Parts> {
  const { serve } = await import('../serve.ts')
  const { picture } = await import('../render/picture.ts')
  return { serve, draw: pictures ? (answer) => picture(answer) : () => Promise.resolve(undefined) }
}

/**
 * Runs the bot until it is told to stop, then ends the process: 0 when told to, 1 when it cannot go on.
 *
 * @param parts what answers; the real thing where nothing else is handed in
 */
export async function runMatrix(config: Config, parts?: Parts): Promise<void> {
  const log = openLog(config.log.level)
  if (!config.matrix) throw new Error('no homeserver is configured')
  exitOnFault(log)
  quietSdk(log)
  process.exit(await run(config, config.matrix, parts ?? (await allParts(config.matrix)), log))
}
