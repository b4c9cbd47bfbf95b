// bot/transports/matrix/trust.ts: the account vouches for the bot's device (cross-signing) and keeps a copy of its keys, both opened by one recovery key.
import { setTimeout as sleep } from 'node:timers/promises'
import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs'
import type { MatrixClient } from 'matrix-js-sdk'
import {
  decodeRecoveryKey,
  type CryptoApi,
  type CryptoCallbacks,
  type GeneratedSecretStorageKey,
} from 'matrix-js-sdk/lib/crypto-api/index.js'
import type { Log } from '../../log.ts'
import type { MatrixConfig } from '../../settings.ts'

/** Opens what the account has locked away. The key is looked up when it is asked for, since it may be made on the way. */
export type Opener = { readonly callbacks: CryptoCallbacks; readonly use: (key: Uint8Array) => void }

export function openerOf(): Opener {
  let key: Uint8Array | undefined
  return {
    callbacks: {
      getSecretStorageKey: async ({ keys }, _name) => {
        const [id] = Object.keys(keys)
        return key && id !== undefined ? [id, new Uint8Array(key)] : null
      },
    },
    use: (told) => {
      key = told
    },
  }
}

/** The recovery key: as configured, else as an earlier start has written it down. */
const toldKey = (config: MatrixConfig, file: string): string | undefined =>
  config.recoveryKey ?? (existsSync(file) ? readFileSync(file, 'utf8').trim() : undefined)

const writeDown = (file: string, key: string): void => {
  writeFileSync(file, `${key}\n`, { mode: 0o600 })
  chmodSync(file, 0o600)
}

/** A server asks for the password again before it takes signing keys. */
const withPassword = (config: MatrixConfig) => {
  const { user, password } = config
  return async (request: (auth: Record<string, unknown> | null) => Promise<void>): Promise<void> => {
    try {
      await request(null)
    } catch (error) {
      if (password === undefined || !hasSession(error)) throw error
      const identifier = { type: 'm.id.user', user }
      await request({ type: 'm.login.password', identifier, password, session: error.data.session })
    }
  }
}
const hasSession = (error: unknown): error is { data: { session: string } } =>
  typeof error === 'object' &&
  error !== null &&
  'data' in error &&
  typeof error.data === 'object' &&
  error.data !== null &&
  'session' in error.data

async function makeNew(
  crypto: CryptoApi,
  config: MatrixConfig,
  told: string | undefined,
  file: string,
  opener: Opener,
  log: Log,
): Promise<void> {
  const made: GeneratedSecretStorageKey =
    told === undefined
      ? await crypto.createRecoveryKeyFromPassphrase()
      : { privateKey: decodeRecoveryKey(told), encodedPrivateKey: told }
  if (told === undefined && made.encodedPrivateKey !== undefined) {
    writeDown(file, made.encodedPrivateKey)
    log.warn(
      { file },
      'made a recovery key: copy it to a safe place; it opens the bot account and the copy of its keys',
    )
  }
  opener.use(made.privateKey)
  await crypto.bootstrapCrossSigning({ authUploadDeviceSigningKeys: withPassword(config) })
  await crypto.bootstrapSecretStorage({ createSecretStorageKey: () => Promise.resolve(made), setupNewKeyBackup: true })
}

async function openOld(crypto: CryptoApi, told: string, opener: Opener): Promise<void> {
  opener.use(decodeRecoveryKey(told))
  await crypto.bootstrapCrossSigning({})
  if ((await crypto.getKeyBackupInfo()) === null) return crypto.resetKeyBackup()
  if ((await crypto.getSessionBackupPrivateKey()) === null) await crypto.loadSessionBackupPrivateKeyFromSecretStorage()
  await crypto.checkKeyBackupAndEnable()
}

const isVouchedFor = async (client: MatrixClient, crypto: CryptoApi): Promise<boolean> => {
  const status = await crypto.getDeviceVerificationStatus(client.getUserId() ?? '', client.getDeviceId() ?? '')
  return status?.signedByOwner === true
}

/**
 * Makes cross-signing and key backup where the account has none, else opens them with the recovery key. To be called
 * after the first sync.
 *
 * @param file where a newly made recovery key is written down
 * @returns whether the account vouches for the device; without that, some people's apps will send it no keys
 */
export async function vouch(
  client: MatrixClient,
  config: MatrixConfig,
  file: string,
  opener: Opener,
  log: Log,
): Promise<boolean> {
  const crypto = client.getCrypto()
  if (!crypto) return true
  if (await isVouchedFor(client, crypto)) return true
  const isSigned = await gainTrust(client, crypto, config, file, opener, log)
  const isTrusted = isSigned && (await isSeenVouchedFor(client, crypto))
  if (!isTrusted)
    log.warn('the account does not vouch for this device: give the bot its recovery key (matrix.recoveryKey)')
  return isTrusted
}

/** @returns whether there was a key to gain it with */
async function gainTrust(
  client: MatrixClient,
  crypto: CryptoApi,
  config: MatrixConfig,
  file: string,
  opener: Opener,
  log: Log,
): Promise<boolean> {
  const told = toldKey(config, file)
  const isNew = !(await crypto.userHasCrossSigningKeys(client.getUserId() ?? '', true))
  const { privateKeysCachedLocally: here, privateKeysInSecretStorage: stored } = await crypto.getCrossSigningStatus()
  const isHalfMade = here.masterKey && !stored // a start that was broken off
  if (isNew || isHalfMade) await makeNew(crypto, config, told, file, opener, log)
  else if (told !== undefined) await openOld(crypto, told, opener)
  return isNew || isHalfMade || told !== undefined
}

const patience = 30_000 // ms until the server's word of the new signature comes back with a sync
const lookEvery = 250 // ms

async function isSeenVouchedFor(client: MatrixClient, crypto: CryptoApi): Promise<boolean> {
  for (let waited = 0; waited < patience; waited += lookEvery) {
    if (await isVouchedFor(client, crypto)) return true
    await sleep(lookEvery)
  }
  return false
}
