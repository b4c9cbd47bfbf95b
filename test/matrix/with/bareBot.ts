// test/matrix/with/bareBot.ts: the least bot that keeps keys and answers once: the same SDK, key store and inbox as the real one, and nothing else. To measure against.
import { join } from 'node:path'
import { ClientEvent, createClient, Filter, MatrixEvent, MatrixScheduler, SyncState } from 'matrix-js-sdk'
import { loadConfig } from '../../../bot/config.ts'
import { openLog } from '../../../bot/log.ts'
import { openStore } from '../../../bot/store.ts'
import { installDurableIndexedDb } from '../../../bot/transports/matrix/durableIndexedDb.ts'
import { openKeyFile } from '../../../bot/transports/matrix/keyFile.ts'
import { quietSdk, sdkLogOf } from '../../../bot/transports/matrix/sdkLog.ts'
import { SyncStore } from '../../../bot/transports/matrix/syncStore.ts'

const config = loadConfig()
const log = openLog('info')
quietSdk(log)
const store = config.ok && openStore(config.value.state)
const keys = config.ok && openKeyFile(join(config.value.state, 'keys.sqlite'))
if (!config.ok || !config.value.matrix || !store || !store.ok || !keys || !keys.ok)
  throw new Error('no settings or no files')
const { homeserver, user, password = '' } = config.value.matrix
await installDurableIndexedDb(keys.value, (error) => {
  throw error
})
const { kept, inbox } = store.value
const told = kept.get('session')
const session = told
  ? JSON.parse(told)
  : await createClient({ baseUrl: homeserver }).loginRequest({
      type: 'm.login.password',
      identifier: { type: 'm.id.user', user },
      password,
    })
kept.set('session', JSON.stringify(session))

const waiting: string[] = []
const client = createClient({
  baseUrl: homeserver,
  userId: session.user_id,
  deviceId: session.device_id,
  accessToken: session.access_token,
  logger: sdkLogOf(log),
  scheduler: new MatrixScheduler(
    () => -1,
    () => null,
  ),
  store: new SyncStore(store.value, {
    me: session.user_id,
    greets: false,
    now: Date.now,
    synced: (answer, rooms) => {
      for (const room of Object.keys(answer.rooms?.invite ?? {})) void client.joinRoom(room)
      for (const { room } of rooms) void workOff(room)
    },
  }),
})
await client.initRustCrypto({ useIndexedDB: true })

/** One message of a room after the other, rooms side by side. */
async function workOff(room: string): Promise<void> {
  if (waiting.includes(room)) return
  waiting.push(room)
  for (let row = inbox.next(room); row; row = inbox.next(room)) {
    const event =
      client.getRoom(room)?.findEventById(row.event) ?? new MatrixEvent({ ...JSON.parse(row.raw), room_id: room })
    await client.decryptEventIfNeeded(event)
    // oxlint-disable-next-line typescript/no-explicit-any -- a content is what it is
    const content: any = {
      msgtype: 'm.notice',
      body: `re: ${event.getContent()['body']}`,
      'm.relates_to': { 'm.in_reply_to': { event_id: row.event } },
    }
    if (event.getType() === 'm.room.message') await client.sendMessage(room, null, content, row.event)
    inbox.done(row.event)
  }
  waiting.splice(waiting.indexOf(room), 1)
}

client.on(ClientEvent.Sync, (state, before) => {
  if (state === SyncState.Syncing && before !== SyncState.Syncing) log.info('ready')
})
// It reads no history, so a sync must hold the longest backlog that is measured.
const filter = new Filter(session.user_id)
filter.setTimelineLimit(1000)
await client.startClient({ initialSyncLimit: 5, lazyLoadMembers: true, disablePresence: true, filter })
