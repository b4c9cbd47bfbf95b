// bot/transports/matrix/wire.ts: the few things asked of a homeserver, over the SDK's client: send, take back, mark, fetch.
import { HTTPError, MatrixError, MatrixEvent, MatrixEventEvent, Method, type MatrixClient } from 'matrix-js-sdk'
import { Attachment } from '@matrix-org/matrix-sdk-crypto-wasm'
import { LRUCache } from 'lru-cache'
import type { Picture } from '../../transport.ts'
import { RawEvent } from './raw.ts'
import type { Content } from './write.ts'

export type Wire = {
  /** Encrypted where the room is. The same `key` twice sends once. Resolves with the event's id. */
  readonly send: (room: string, content: Content, key: string) => Promise<string>
  readonly redact: (room: string, event: string, key: string) => Promise<void>
  /** Uploads a picture, encrypted where the room is, and gives the content that shows it. */
  readonly upload: (room: string, picture: Picture) => Promise<Content>
  readonly seen: (room: string, event: string) => Promise<void>
  readonly typing: (room: string, on: boolean) => Promise<void>
  readonly fetch: (room: string, event: string) => Promise<RawEvent | undefined>
  /** One page of history, newest first. */
  readonly history: (
    room: string,
    from: string,
    to: string | undefined,
  ) => Promise<{ readonly events: readonly unknown[]; readonly end: string | undefined }>
  /** The content of a room message in clear; 'locked' where its key is missing; undefined where it is something else. */
  readonly open: (event: RawEvent, room: string) => Promise<Content | 'locked' | undefined>
  /** Calls `then` when the key of an event that was 'locked' has come. */
  readonly whenOpen: (event: string, then: () => void) => void
}

/** What went wrong, as far as it tells what to do. */
export type Refusal =
  /** The bot has not the right. */
  | 'forbidden'
  /** It will never be taken: too large, malformed, gone. */
  | 'refused'
  /** Nobody is there, or it asks to wait: it will go through another time. */
  | 'unreachable'
  /** The server or we stumbled: it may go through another time. */
  | 'stumbled'

const notThere = new Set(['ConnectionError', 'AbortError', 'TimeoutError'])
const comesBack = new Set([429, 502, 503, 504])

export function refusalOf(error: unknown): Refusal {
  if (error instanceof HTTPError && error.httpStatus !== undefined) {
    const signedOut = error instanceof MatrixError && error.errcode === 'M_UNKNOWN_TOKEN' // the session ends and comes back
    if (comesBack.has(error.httpStatus) || signedOut) return 'unreachable'
    if (error.httpStatus >= 500) return 'stumbled'
    return error.httpStatus === 403 ? 'forbidden' : 'refused'
  }
  return error instanceof Error && (notThere.has(error.name) || error.message === 'fetch failed')
    ? 'unreachable'
    : 'stumbled'
}
export const mayPass = (error: unknown): boolean => ['unreachable', 'stumbled'].includes(refusalOf(error))

const pageSize = 100
const historyFilter = JSON.stringify({
  types: ['m.room.message', 'm.room.encrypted', 'm.room.redaction', 'm.room.member'],
})
const typingMilliseconds = 20_000
const part = encodeURIComponent
const within = (room: string): string => `/rooms/${part(room)}`

async function open(client: MatrixClient, closed: Closed, event: MatrixEvent): Promise<Content | 'locked' | undefined> {
  const id = event.getId() ?? ''
  await client.decryptEventIfNeeded(event)
  if (event.isDecryptionFailure()) {
    closed.set(id, event)
    return 'locked'
  }
  closed.delete(id)
  return event.getType() === 'm.room.message' ? event.getOriginalContent() : undefined
}

const made = ({ event_id, type, sender, origin_server_ts, content }: RawEvent, room: string): MatrixEvent =>
  new MatrixEvent({ event_id, type, sender, origin_server_ts, content, room_id: room })

/** Events that could not be opened, one object each: the SDK tells that object when its key has come. */
type Closed = LRUCache<string, MatrixEvent>
const mostClosed = 2000

/** The SDK's own copy, where it still has one: it is decrypted once then. */
const objectOf = (client: MatrixClient, closed: Closed, event: RawEvent, room: string): MatrixEvent =>
  closed.get(event.event_id) ?? client.getRoom(room)?.findEventById(event.event_id) ?? made(event, room)

// oxlint-disable-next-line typescript/no-explicit-any -- the SDK's type of a content is the union of all that anybody sends
const untyped = (content: Content): any => content

async function send(client: MatrixClient, room: string, content: Content, key: string): Promise<string> {
  const failed = client.getRoom(room)?.getEventForTxnId(key) // a try of this process that did not go through
  const again = failed && client.getRoom(room)
  const sent = again
    ? await client.resendEvent(failed, again)
    : await client.sendMessage(room, null, untyped(content), key)
  return sent.event_id
}

/** MSC2448, not yet in the specification: most clients show it until the picture is there. */
const blurKey = 'xyz.amorgan.blurhash'
const infoOf = ({ png, width, height, blurHash }: Picture): Content => ({
  w: width,
  h: height,
  size: png.byteLength,
  mimetype: 'image/png',
  ...(blurHash === undefined ? {} : { [blurKey]: blurHash }),
})

async function upload(client: MatrixClient, room: string, picture: Picture): Promise<Content> {
  const shown = { msgtype: 'm.image', body: picture.caption, filename: picture.fileName, info: infoOf(picture) }
  if (!client.isRoomEncrypted(room)) {
    const { content_uri: url } = await client.uploadContent(new Blob([new Uint8Array(picture.png)]), {
      type: 'image/png',
      includeFilename: false,
    })
    return { ...shown, url }
  }
  const locked = Attachment.encrypt(picture.png)
  const bytes = new Blob([new Uint8Array(locked.encryptedData)])
  const { content_uri: url } = await client.uploadContent(bytes, {
    type: 'application/octet-stream',
    includeFilename: false,
  })
  const how: Record<string, unknown> = JSON.parse(locked.mediaEncryptionInfo ?? '{}')
  return { ...shown, file: { ...how, url } }
}

export function wireOf(client: MatrixClient): Wire {
  const closed: Closed = new LRUCache({ max: mostClosed })
  const ask = <T>(method: Method, path: string, query?: Record<string, string>, body?: object): Promise<T> =>
    client.http.authedRequest<T>(method, path, query, body as Parameters<typeof client.http.authedRequest>[3])
  return {
    send: (room, content, key) => send(client, room, content, key),
    redact: async (room, event, key) => {
      await ask(Method.Put, `${within(room)}/redact/${part(event)}/${part(key)}`, undefined, {})
    },
    upload: (room, picture) => upload(client, room, picture),
    seen: async (room, event) => {
      await ask(Method.Post, `${within(room)}/receipt/m.read/${part(event)}`, undefined, {})
    },
    typing: async (room, on) => {
      await client.sendTyping(room, on, typingMilliseconds)
    },
    fetch: async (room, event) => {
      const read = await ask(Method.Get, `${within(room)}/event/${part(event)}`).catch((error: unknown) => {
        if (mayPass(error)) throw error
      })
      return RawEvent.safeParse(read).data
    },
    history: async (room, from, to) => {
      const query = {
        from,
        dir: 'b',
        limit: String(pageSize),
        filter: historyFilter,
        ...(to === undefined ? {} : { to }),
      }
      const page = await ask<{ chunk?: unknown[]; end?: string }>(Method.Get, `${within(room)}/messages`, query)
      return { events: page.chunk ?? [], end: page.end }
    },
    open: (event, room) => open(client, closed, objectOf(client, closed, event, room)),
    whenOpen: (event, then) => {
      const object = closed.get(event)
      if (!object?.isDecryptionFailure()) return then() // it has come in the meantime
      object.on(MatrixEventEvent.Decrypted, () => {
        if (!object.isDecryptionFailure()) then()
      })
    },
  }
}
