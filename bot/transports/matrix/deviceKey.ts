// bot/transports/matrix/deviceKey.ts: the key by which others know the bot's device: always the same, here and at the server, or the bot does not start.
import { Method, type MatrixClient } from 'matrix-js-sdk'
import * as z from 'zod'
import type { Kept } from '../../store/kept.ts'

const Answer = z.object({
  device_keys: z.record(z.string(), z.record(z.string(), z.object({ keys: z.record(z.string(), z.string()) }))),
})

/** What the server has told others of this device; undefined where it has none yet. */
async function keyAtServer(client: MatrixClient, user: string, device: string): Promise<string | undefined> {
  const body = { device_keys: { [user]: [device] } }
  const told = Answer.safeParse(await client.http.authedRequest(Method.Post, '/keys/query', undefined, body))
  return told.data?.device_keys[user]?.[device]?.keys[`ed25519:${device}`]
}

/**
 * Two keys on one device would be taken for an attack: nobody would send the bot keys any more.
 *
 * @returns a sentence for the operator where the keys differ; undefined where all is well
 */
export async function deviceKeyFault(client: MatrixClient, kept: Kept): Promise<string | undefined> {
  const crypto = client.getCrypto()
  const [user, device] = [client.getUserId() ?? '', client.getDeviceId() ?? '']
  if (!crypto) return undefined
  const { ed25519: ours } = await crypto.getOwnDeviceKeys()
  const pinned = kept.get('deviceKey')
  if (pinned !== undefined && pinned !== ours)
    return `The key file is not the one of device ${device}: it was lost or exchanged. Put the right one back, or move the whole state folder away; the bot then signs in as a new device.`
  const theirs = await keyAtServer(client, user, device)
  if (theirs !== undefined && theirs !== ours)
    return `Device ${device} has keys at the server that are not in the state folder: another program uses it, or the folder is a new one. Give the bot a device of its own: a password, or a fresh access token.`
  kept.set('deviceKey', ours)
  return undefined
}

/** Whether others can find the device yet: messages sent before could not be read. */
export const isPublished = async (client: MatrixClient): Promise<boolean> =>
  client.getCrypto() === undefined ||
  (await keyAtServer(client, client.getUserId() ?? '', client.getDeviceId() ?? '')) !== undefined
