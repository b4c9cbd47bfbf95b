// bot/transports/matrix/account.ts: who the bot is at its server: one device, kept over restarts, signed in by password or token.
import { randomInt } from 'node:crypto'
import { createClient, MatrixError, type MatrixClient } from 'matrix-js-sdk'
import type { Result } from '../../../core/vocabulary.ts'
import type { MatrixConfig } from '../../settings.ts'
import type { Kept } from '../../store/kept.ts'

export type Session = { readonly user: string; readonly device: string; readonly token: string }

/** Sentences for the operator: each ends the start. */
export type AccountFault = string

type Fetch = typeof globalThis.fetch
type Asked = Result<{ readonly user: string; readonly device: string }, 'signed out' | 'device gone' | 'no device'>

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'
const newDevice = (): string => `HEN${Array.from({ length: 7 }, () => letters[randomInt(letters.length)]).join('')}`

const clientFor = (config: MatrixConfig, fetchFn: Fetch, token?: string): MatrixClient =>
  createClient({ baseUrl: config.homeserver, fetchFn, ...(token === undefined ? {} : { accessToken: token }) })

/** Whom the server takes the token for. Rejects where the server cannot be asked. */
async function whoIs(config: MatrixConfig, fetchFn: Fetch, token: string): Promise<Asked> {
  try {
    const { user_id: user, device_id: device } = await clientFor(config, fetchFn, token).whoami()
    return device === undefined ? { ok: false, fault: 'no device' } : { ok: true, value: { user, device } }
  } catch (error) {
    if (!(error instanceof MatrixError) || error.errcode !== 'M_UNKNOWN_TOKEN') throw error
    return { ok: false, fault: error.data['soft_logout'] === true ? 'signed out' : 'device gone' }
  }
}

async function signIn(
  config: MatrixConfig,
  password: string,
  device: string,
  fetchFn: Fetch,
): Promise<Result<Session, AccountFault>> {
  try {
    const {
      user_id: user,
      access_token: token,
      device_id,
    } = await clientFor(config, fetchFn).loginRequest({
      type: 'm.login.password',
      identifier: { type: 'm.id.user', user: config.user },
      password,
      device_id: device,
      initial_device_display_name: config.deviceName,
    })
    return { ok: true, value: { user, token, device: device_id } }
  } catch (error) {
    if (!(error instanceof MatrixError) || error.httpStatus !== 403) throw error
    return { ok: false, fault: `${config.homeserver} does not take the password of ${config.user}.` }
  }
}

const goneFault = (device: string): AccountFault =>
  `The server has signed out the bot's device ${device}, and with it its keys. Move the state folder away and start again: the bot then signs in as a new device.`

async function byToken(
  config: MatrixConfig,
  token: string,
  kept: Kept,
  fetchFn: Fetch,
): Promise<Result<Session, AccountFault>> {
  const asked = await whoIs(config, fetchFn, token)
  if (!asked.ok) {
    const why = asked.fault === 'no device' ? 'belongs to no device' : 'is not known there'
    return { ok: false, fault: `The access token of ${config.user} ${why}.` }
  }
  const device = kept.get('device')
  if (device !== undefined && device !== asked.value.device) {
    const fault = `The access token is of device ${asked.value.device}, the state folder of device ${device}. Give the bot a token of ${device}, or move the state folder away.`
    return { ok: false, fault }
  }
  kept.set('device', asked.value.device)
  return { ok: true, value: { ...asked.value, token } }
}

/** The device's name is kept before the first sign-in, so that a crash in between leaves no second device behind. */
async function byPassword(
  config: MatrixConfig,
  password: string,
  kept: Kept,
  fetchFn: Fetch,
): Promise<Result<Session, AccountFault>> {
  const device = kept.get('device') ?? newDevice()
  kept.set('device', device)
  const token = kept.get('accessToken')
  const asked = token === undefined ? undefined : await whoIs(config, fetchFn, token)
  if (token !== undefined && asked?.ok) return { ok: true, value: { ...asked.value, token } }
  if (asked?.ok === false && asked.fault !== 'signed out') return { ok: false, fault: goneFault(device) }
  const made = await signIn(config, password, device, fetchFn)
  if (made.ok) kept.set('accessToken', made.value.token)
  return made
}

/**
 * The session of before where there is one, else a new one.
 *
 * @fault a sentence where the operator must do something; rejects where the server cannot be reached
 */
export async function session(
  config: MatrixConfig,
  kept: Kept,
  fetchFn: Fetch,
): Promise<Result<Session, AccountFault>> {
  const { accessToken, password } = config
  const got =
    accessToken !== undefined
      ? await byToken(config, accessToken, kept, fetchFn)
      : await byPassword(config, password ?? '', kept, fetchFn)
  if (!got.ok || got.value.user === config.user) return got
  return { ok: false, fault: `The server takes the bot for ${got.value.user}, the settings say ${config.user}.` }
}
