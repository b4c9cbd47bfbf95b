// bot/transports/matrix/durableIndexedDb.ts: IndexedDB for Node whose every transaction is on the disk before anybody hears that it is complete.
import { serialize } from 'node:v8'
import {
  classes,
  installGlobals,
  type IdbCursor,
  type IdbDatabase,
  type IdbFactory,
  type IdbRange,
  type IdbRequest,
  type IdbStore,
  type IdbTransaction,
  type Method,
} from './indexedDb.ts'
import type { Change, DatabaseShape, KeyFile, StoreShape } from './keyFile.ts'
import type { Key } from './keyText.ts'

/** A change as it is asked for: the key of a put, and whether it failed, are known only when its request is done. */
type Asked = { readonly store: string } & (
  | { readonly kind: 'put'; readonly value: Buffer; readonly request: IdbRequest<Key> }
  | { readonly kind: 'delete'; readonly what: Key | IdbRange }
  | { readonly kind: 'clear' }
)

const settled = (asked: readonly Asked[]): readonly Change[] =>
  asked.flatMap((one): readonly Change[] => {
    if (one.kind !== 'put') return [one]
    return one.request.error ? [] : [{ kind: 'put', store: one.store, key: one.request.result, value: one.value }]
  })

const patch = (prototype: Record<string, Method>, name: string, around: (original: Method) => Method): void => {
  const original = prototype[name]
  if (!original) throw new Error(`fake-indexeddb has no ${name}: another version than 6.2 is installed`)
  prototype[name] = around(original)
}

/** Everything that writes a record, and in which transaction. */
const watchRecords = (note: (transaction: IdbTransaction, asked: Asked) => void): void => {
  const put = (original: Method): Method =>
    function (this: IdbStore, value: unknown, ...rest: unknown[]) {
      const copy = serialize(value) // as it is now: the caller may change it later
      const request: IdbRequest<Key> = original.call(this, value, ...rest)
      note(this.transaction, { kind: 'put', store: this.name, value: copy, request })
      return request
    }
  patch(classes.IDBObjectStore.prototype, 'put', put)
  patch(classes.IDBObjectStore.prototype, 'add', put)
  patch(
    classes.IDBObjectStore.prototype,
    'delete',
    (original) =>
      function (this: IdbStore, what: Key | IdbRange) {
        const request: unknown = original.call(this, what)
        note(this.transaction, { kind: 'delete', store: this.name, what })
        return request
      },
  )
  patch(
    classes.IDBObjectStore.prototype,
    'clear',
    (original) =>
      function (this: IdbStore) {
        const request: unknown = original.call(this)
        note(this.transaction, { kind: 'clear', store: this.name })
        return request
      },
  )
}

const storeOf = (cursor: IdbCursor): IdbStore =>
  'objectStore' in cursor.source ? cursor.source.objectStore : cursor.source

const watchCursors = (note: (transaction: IdbTransaction, asked: Asked) => void): void => {
  patch(
    classes.IDBCursor.prototype,
    'update',
    (original) =>
      function (this: IdbCursor, value: unknown) {
        const copy = serialize(value)
        const store = storeOf(this)
        const request: IdbRequest<Key> = original.call(this, value)
        note(store.transaction, { kind: 'put', store: store.name, value: copy, request })
        return request
      },
  )
  patch(
    classes.IDBCursor.prototype,
    'delete',
    (original) =>
      function (this: IdbCursor) {
        const store = storeOf(this)
        const key = this.primaryKey
        const request: unknown = original.call(this)
        note(store.transaction, { kind: 'delete', store: store.name, what: key })
        return request
      },
  )
}

const shapeOf = (database: IdbDatabase, names: readonly string[]): readonly StoreShape[] => {
  if (names.length === 0) return []
  const transaction = database.transaction(names, 'readonly')
  return names.map((name) => {
    const store = transaction.objectStore(name)
    const indexes = [...store.indexNames].map((each) => {
      const { name, keyPath, unique, multiEntry } = store.index(each)
      return { name, keyPath, unique, multiEntry }
    })
    return { name, keyPath: store.keyPath, autoIncrement: store.autoIncrement, indexes }
  })
}

/** Calls `commit` when a writing transaction, or the opening of a database in a new version, has gone through. */
const watchTransactions = (
  commit: (transaction: IdbTransaction, shape?: DatabaseShape) => void,
  dropped: (database: string) => void,
): void => {
  patch(
    classes.IDBDatabase.prototype,
    'transaction',
    (original) =>
      function (this: IdbDatabase, ...args: unknown[]) {
        const transaction: IdbTransaction = original.apply(this, args)
        if (transaction.mode === 'readwrite') transaction.addEventListener('complete', () => commit(transaction))
        return transaction
      },
  )
  patch(
    classes.IDBFactory.prototype,
    'open',
    (original) =>
      function (this: IdbFactory, ...args: unknown[]) {
        const request: IdbRequest<IdbDatabase> = original.apply(this, args)
        let upgrade: IdbTransaction | null = null
        request.addEventListener('upgradeneeded', () => {
          upgrade = request.transaction
        })
        request.addEventListener('success', () => {
          if (!upgrade) return
          const { name, version, objectStoreNames } = request.result
          commit(upgrade, { name, version, stores: shapeOf(request.result, [...objectStoreNames]) })
        })
        return request
      },
  )
  patch(
    classes.IDBFactory.prototype,
    'deleteDatabase',
    (original) =>
      function (this: IdbFactory, name: string) {
        const request: IdbRequest = original.call(this, name)
        request.addEventListener('success', () => dropped(name))
        return request
      },
  )
}

const rebuildStore = (database: IdbDatabase, shape: StoreShape, file: KeyFile): void => {
  const { name, keyPath, autoIncrement, indexes } = shape
  if (autoIncrement && keyPath !== null) throw new Error(`${name}: keys made inside values cannot be restored`)
  const store = database.createObjectStore(name, { keyPath, autoIncrement })
  for (const { name: index, keyPath: path, unique, multiEntry } of indexes)
    store.createIndex(index, path, { unique, multiEntry })
  for (const { key, value } of file.records(database.name, name))
    if (keyPath === null) store.put(value, key)
    else store.put(value)
}

const rebuild = (factory: IdbFactory, shape: DatabaseShape, file: KeyFile): Promise<void> =>
  new Promise((resolve, reject) => {
    const request = factory.open(shape.name, shape.version)
    request.addEventListener('upgradeneeded', () => {
      for (const store of shape.stores) rebuildStore(request.result, store, file)
    })
    request.addEventListener('error', () => reject(request.error))
    request.addEventListener('success', () => {
      request.result.close()
      resolve()
    })
  })

/**
 * Puts an IndexedDB under the global names, holding what the file holds, and writes every later transaction through to
 * the file as one commit. To be called once a process, before the library that will use it starts.
 *
 * @param lost called when a commit fails: memory is then ahead of the disk and must not be used any more
 */
export async function installDurableIndexedDb(file: KeyFile, lost: (error: unknown) => never): Promise<void> {
  const factory = new classes.IDBFactory()
  for (const shape of file.databases()) await rebuild(factory, shape, file) // before anything is watched
  const log = new WeakMap<IdbTransaction, Asked[]>()
  const note = (transaction: IdbTransaction, asked: Asked): void => {
    const noted = log.get(transaction)
    if (noted) noted.push(asked)
    else log.set(transaction, [asked])
  }
  const commit = (transaction: IdbTransaction, shape?: DatabaseShape): void => {
    const changes = settled(log.get(transaction) ?? [])
    log.delete(transaction)
    if (changes.length === 0 && !shape) return
    try {
      file.commit(transaction.db.name, changes, shape)
    } catch (error) {
      lost(error)
    }
  }
  watchRecords(note)
  watchCursors(note)
  watchTransactions(commit, file.drop)
  installGlobals(factory)
}
