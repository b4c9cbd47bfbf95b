// test/matrix/with/person.ts: a member with a chat client (the SDK's, its keys in memory): says things, and sees what others say.
import { createClient, Preset, RoomEvent, Visibility, type MatrixClient, type MatrixEvent } from 'matrix-js-sdk'
import { logger as sdkLogger } from 'matrix-js-sdk/lib/logger.js'

type Content = Record<string, unknown>
export type Seen = {
  readonly id: string
  readonly room: string
  readonly sender: string
  readonly type: string
  readonly content: Content
  /** m.relates_to, which stands outside the encryption. */
  readonly relation: Content
  readonly isRedacted: () => boolean
  readonly at: number
}

export type Person = {
  readonly id: string
  readonly client: MatrixClient
  /** Everything that others said, in the order in which it was seen. */
  readonly seen: readonly Seen[]
  readonly say: (room: string, body: string, more?: Content) => Promise<string>
  readonly edit: (room: string, event: string, body: string) => Promise<string>
  readonly makeRoom: (how: { encrypted?: boolean; direct?: boolean; invite?: readonly string[] }) => Promise<string>
  /** Resolves when `find` finds something in what was seen. */
  readonly sees: <T>(find: (seen: readonly Seen[]) => T | undefined, within?: number) => Promise<T>
  /** The answers to a message: replies by the bot, no edits. */
  readonly answersTo: (event: string) => readonly Seen[]
  readonly answerTo: (event: string) => Promise<Seen>
  readonly stop: () => void
}

type Account = { readonly user: string; readonly token: string; readonly device: string }

const silent = { trace() {}, debug() {}, info() {}, warn() {}, error() {}, getChild: () => silent }
Reflect.set(sdkLogger, 'methodFactory', () => () => undefined)
const rebuild: () => void = Reflect.get(sdkLogger, 'rebuild')
rebuild.call(sdkLogger)

const asContent = (value: unknown): Content => (typeof value === 'object' && value !== null ? { ...value } : {})
const asSeen = (event: MatrixEvent): Seen => ({
  id: event.getId() ?? '',
  room: event.getRoomId() ?? '',
  sender: event.getSender() ?? '',
  type: event.getType(),
  content: event.getOriginalContent(),
  relation: asContent(event.getWireContent()['m.relates_to']),
  isRedacted: () => event.isRedacted(),
  at: Date.now(),
})

const replyTarget = ({ relation }: Seen): unknown => asContent(relation['m.in_reply_to'])['event_id']

export async function person(url: string, account: Account): Promise<Person> {
  const client = createClient({
    baseUrl: url,
    userId: account.user,
    deviceId: account.device,
    accessToken: account.token,
    logger: silent,
  })
  await client.initRustCrypto({ useIndexedDB: false })
  const seen: Seen[] = []
  const waiting = new Set<() => void>()
  client.on(RoomEvent.Timeline, (event, _room, toStart) => {
    if (toStart || event.getSender() === account.user || event.isState()) return
    void client.decryptEventIfNeeded(event).then(() => {
      seen.push(asSeen(event))
      for (const look of waiting) look()
    })
  })
  await client.startClient({ initialSyncLimit: 0 })
  const sees: Person['sees'] = (find, within = 45_000) =>
    new Promise((resolve, reject) => {
      const timer = setTimeout(() => {
        waiting.delete(look)
        reject(new Error(`not seen within ${within} ms; seen: ${JSON.stringify(seen.slice(-6), null, 1)}`))
      }, within)
      const look = (): void => {
        const found = find(seen)
        if (found === undefined) return
        waiting.delete(look)
        clearTimeout(timer)
        resolve(found)
      }
      waiting.add(look)
      look()
    })
  const send = async (room: string, content: Content): Promise<string> => {
    // oxlint-disable-next-line typescript/no-explicit-any -- whatever a client may send
    const untyped: any = content
    return (await client.sendMessage(room, null, untyped)).event_id
  }
  const answersTo = (event: string): readonly Seen[] =>
    seen.filter((one) => replyTarget(one) === event && one.relation['rel_type'] !== 'm.replace')
  return {
    id: account.user,
    client,
    seen,
    sees,
    answersTo,
    say: (room, body, more = {}) => send(room, { msgtype: 'm.text', body, ...more }),
    edit: (room, event, body) =>
      send(room, {
        msgtype: 'm.text',
        body: `* ${body}`,
        'm.new_content': { msgtype: 'm.text', body },
        'm.relates_to': { rel_type: 'm.replace', event_id: event },
      }),
    makeRoom: async ({ encrypted = false, direct = false, invite = [] }) => {
      const algorithm = { algorithm: 'm.megolm.v1.aes-sha2' }
      const encryption = { type: 'm.room.encryption', state_key: '', content: algorithm }
      const { room_id: room } = await client.createRoom({
        preset: Preset.PrivateChat,
        visibility: Visibility.Private,
        is_direct: direct,
        invite: [...invite],
        initial_state: encrypted ? [encryption] : [],
      })
      return room
    },
    answerTo: (event) => sees(() => answersTo(event)[0]),
    stop: () => client.stopClient(),
  }
}

/** Resolves when a member has come into the room, as this person sees it. */
export const comesIn = (who: Person, room: string, member: string): Promise<void> =>
  new Promise((resolve) => {
    const look = (): void => {
      if (who.client.getRoom(room)?.getMember(member)?.membership === 'join') {
        clearInterval(timer)
        resolve()
      }
    }
    const timer = setInterval(look, 50)
  })
