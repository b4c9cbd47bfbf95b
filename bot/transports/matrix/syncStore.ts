// bot/transports/matrix/syncStore.ts: where the SDK keeps what it has synced: in memory, and, through keepSync, on disk.
import { MemoryStore, type ISyncResponse } from 'matrix-js-sdk'
import type { Store } from '../../store.ts'
import type { RoomIntake } from './intake.ts'
import { keepSync, keptSync, type KeepingHouse, type SyncAnswer } from './keepSync.ts'

type SavedSync = Awaited<ReturnType<MemoryStore['getSavedSync']>>
// oxlint-disable-next-line typescript/no-explicit-any -- JSON that the SDK itself made, come back from the disk
const untyped = (json: unknown): any => json

export type SyncHooks = KeepingHouse & {
  /** A sync is on disk: its messages can be worked off. */
  readonly synced: (answer: SyncAnswer, rooms: readonly RoomIntake[]) => void
}

const longestTimeline = 30 // events; the SDK would keep every event it ever saw
const filterNamed = (name: string): string => `filter ${name}`

/** The SDK awaits `setSyncData` once it has worked a sync in, and asks for the next one only then. */
export class SyncStore extends MemoryStore {
  readonly #store: Store
  readonly #hooks: SyncHooks

  constructor(store: Store, hooks: SyncHooks) {
    super()
    this.#store = store
    this.#hooks = hooks
  }

  override getSavedSyncToken(): Promise<string | null> {
    return Promise.resolve(this.#store.kept.get('token') ?? null)
  }

  override isNewlyCreated(): Promise<boolean> {
    return Promise.resolve(this.#store.kept.get('token') === undefined)
  }

  override getSavedSync(): Promise<SavedSync> {
    return Promise.resolve(untyped(keptSync(this.#store)))
  }

  override getFilterIdByName(name: string): string | null {
    return this.#store.kept.get(filterNamed(name)) ?? null
  }

  override setFilterIdByName(name: string, id?: string): void {
    if (id === undefined) this.#store.kept.drop(filterNamed(name))
    else this.#store.kept.set(filterNamed(name), id)
  }

  override async setSyncData(data: ISyncResponse): Promise<void> {
    const answer: SyncAnswer = untyped(data)
    const rooms = keepSync(this.#store, answer, this.#hooks)
    for (const { room } of rooms) this.#shorten(room)
    for (const room of Object.keys(answer.rooms?.leave ?? {})) this.removeRoom(room)
    this.#hooks.synced(answer, rooms)
  }

  /** The bot reads messages from the inbox, so the SDK need not keep them. */
  #shorten(id: string): void {
    const room = this.getRoom(id)
    if (room && room.getLiveTimeline().getEvents().length > longestTimeline) room.resetLiveTimeline(null, null)
  }
}
