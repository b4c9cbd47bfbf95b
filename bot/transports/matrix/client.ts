// bot/transports/matrix/client.ts: the SDK's client as the bot wants it: small syncs, no timelines to show, no calls, nothing retried behind our back.
import { createClient, Filter, MatrixScheduler, type MatrixClient } from 'matrix-js-sdk'
import { SUPPORTED_MATRIX_VERSIONS } from 'matrix-js-sdk/lib/version-support.js'
import type { Log } from '../../log.ts'
import type { Session } from './account.ts'
import { sdkLogOf } from './sdkLog.ts'
import type { SyncStore } from './syncStore.ts'
import type { Opener } from './trust.ts'

const messages = ['m.room.message', 'm.room.encrypted', 'm.room.redaction']
const moves = ['m.room.member', 'm.room.tombstone', 'm.room.encryption', 'm.room.power_levels', 'm.room.create']
const looks = ['m.room.name', 'm.room.canonical_alias', 'm.room.history_visibility']
const secrets = ['m.secret_storage.*', 'm.cross_signing.*', 'm.megolm_backup.*', 'm.push_rules']
const timelineLimit = 50 // events of a room in one sync; more is read page by page

function filterFor(user: string): Filter {
  const filter = new Filter(user)
  filter.setDefinition({
    presence: { types: [] },
    account_data: { types: secrets },
    room: {
      timeline: { types: [...messages, ...moves, ...looks], limit: timelineLimit },
      state: { types: [...moves, ...looks] },
      ephemeral: { types: [] },
      account_data: { types: [] },
    },
  })
  return filter
}

export function clientOf(
  homeserver: string,
  session: Session,
  store: SyncStore,
  opener: Opener,
  fetchFn: typeof globalThis.fetch,
  log: Log,
): MatrixClient {
  return createClient({
    baseUrl: homeserver,
    userId: session.user,
    deviceId: session.device,
    accessToken: session.token,
    store,
    fetchFn,
    logger: sdkLogOf(log),
    cryptoCallbacks: opener.callbacks,
    // One queue for all rooms, and giving up after four tries, is not what is wanted: each room has its own worker.
    scheduler: new MatrixScheduler(
      () => -1,
      () => null,
    ),
    disableVoip: true,
  })
}

export const startSyncing = (client: MatrixClient): Promise<void> =>
  client.startClient({
    initialSyncLimit: 5,
    lazyLoadMembers: true,
    disablePresence: true,
    threadSupport: false,
    filter: filterFor(client.getUserId() ?? ''),
  })

/** @returns a sentence for the operator where the server is too old; rejects where it cannot be asked */
export async function versionFault(client: MatrixClient): Promise<string | undefined> {
  const { versions } = await client.getVersions()
  if (versions.some((version) => SUPPORTED_MATRIX_VERSIONS.includes(version))) return undefined
  return `${client.baseUrl} speaks Matrix ${versions.at(-1) ?? 'of no known version'}; the bot needs ${SUPPORTED_MATRIX_VERSIONS[0]} or later.`
}
