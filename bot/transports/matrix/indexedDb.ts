// bot/transports/matrix/indexedDb.ts: the parts of IndexedDB that are watched and restored, as types; the rest is the library's.
import * as library from 'fake-indexeddb'
import type { Key } from './keyText.ts'

type Listener = (event: string, listener: () => void) => void
export type IdbRequest<T = unknown> = {
  readonly result: T
  readonly error: unknown
  readonly transaction: IdbTransaction | null
  readonly addEventListener: Listener
}
export type IdbIndex = {
  readonly name: string
  readonly keyPath: KeyPath
  readonly unique: boolean
  readonly multiEntry: boolean
}
export type KeyPath = string | readonly string[] | null
export type IdbStore = {
  readonly name: string
  readonly keyPath: KeyPath
  readonly autoIncrement: boolean
  readonly indexNames: Iterable<string>
  readonly transaction: IdbTransaction
  readonly index: (name: string) => IdbIndex
  readonly createIndex: (name: string, path: KeyPath, how: { unique: boolean; multiEntry: boolean }) => unknown
  readonly put: (value: unknown, key?: Key) => IdbRequest<Key>
}
export type IdbTransaction = {
  readonly db: IdbDatabase
  readonly mode: 'readonly' | 'readwrite' | 'versionchange'
  readonly objectStore: (name: string) => IdbStore
  readonly addEventListener: Listener
}
export type IdbDatabase = {
  readonly name: string
  readonly version: number
  readonly objectStoreNames: Iterable<string>
  readonly transaction: (names: readonly string[], mode: 'readonly' | 'readwrite') => IdbTransaction
  readonly createObjectStore: (name: string, how: { keyPath: KeyPath; autoIncrement: boolean }) => IdbStore
  readonly close: () => void
}
export type IdbCursor = { readonly source: IdbStore | { readonly objectStore: IdbStore }; readonly primaryKey: Key }
export type IdbRange = { readonly includes: (key: Key) => boolean }
export type IdbFactory = { readonly open: (name: string, version?: number) => IdbRequest<IdbDatabase> }

// oxlint-disable-next-line typescript/no-explicit-any -- a method of a class that the library types by the DOM, which is not here
export type Method = (this: any, ...args: any[]) => any
type Class<T> = { readonly prototype: Record<string, Method>; new (): T }

// oxlint-disable-next-line typescript/no-explicit-any -- see above
const loosely = (module: unknown): any => module

/** The library's classes, under the names that IndexedDB gives them. */
export const classes: {
  readonly IDBFactory: Class<IdbFactory>
  readonly IDBDatabase: Class<IdbDatabase>
  readonly IDBObjectStore: Class<IdbStore>
  readonly IDBCursor: Class<IdbCursor>
  readonly IDBKeyRange: Class<IdbRange>
} = loosely(library)

/** Makes the classes and one database factory what any library finds under the global names. */
export function installGlobals(factory: IdbFactory): void {
  const named = Object.entries(library).filter(([name]) => name.startsWith('IDB'))
  Object.assign(globalThis, Object.fromEntries(named), { indexedDB: factory })
}
