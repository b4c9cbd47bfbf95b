// test/matrix/keyStoreProcess.ts: a process with a durable IndexedDB, driven by the tests: fills it and dies, prints it, or is refused.
import { writeSync } from 'node:fs'
import { installDurableIndexedDb } from '../../bot/transports/matrix/durableIndexedDb.ts'
import { openKeyFile } from '../../bot/transports/matrix/keyFile.ts'
import { wordedFault } from '../../bot/store/file.ts'

const [file = '', task] = process.argv.slice(2)
// oxlint-disable-next-line typescript/no-explicit-any -- IndexedDB is typed by the DOM, which this project does not load
type Any = any
const say = (words: string): void => void writeSync(1, `${words}\n`)
const die = (): never => {
  process.kill(process.pid, 'SIGKILL')
  throw new Error('still alive')
}
const settled = (request: Any): Promise<Any> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.addEventListener('error', () => reject(new Error(String(request.error))))
  })
const ended = (transaction: Any): Promise<string> =>
  new Promise((resolve) => {
    transaction.oncomplete = () => resolve('complete')
    transaction.addEventListener('abort', () => resolve('abort'))
  })

const opened = openKeyFile(file)
if (!opened.ok) {
  say(wordedFault(opened.fault))
  process.exit(3)
}
await installDurableIndexedDb(opened.value, (error) => {
  say(`lost: ${String(error)}`)
  process.exit(4)
})
const indexedDB: Any = Reflect.get(globalThis, 'indexedDB')
const IDBKeyRange: Any = Reflect.get(globalThis, 'IDBKeyRange')
const rowsOnDisk = (store: string): number => [...opened.value.records('d', store)].length

async function fill(): Promise<void> {
  const request = indexedDB.open('d', 3)
  request.onupgradeneeded = () => {
    const store = request.result.createObjectStore('plain')
    store.createIndex('by', 'a.b', { unique: false })
    request.result.createObjectStore('counted', { autoIncrement: true })
    request.result.createObjectStore('keyed', { keyPath: ['x', 'y'] })
    store.put({ a: { b: 1 } }, 'made in the upgrade')
  }
  const db = await settled(request)
  const writing = (...stores: string[]): Any => db.transaction(stores, 'readwrite')

  const many = writing('plain')
  for (let i = 0; i < 20; i += 1)
    many.objectStore('plain').put({ a: { b: i }, bytes: new Uint8Array([i]), nothing: null, u: undefined }, ['k', i])
  many.oncomplete = () => say(`on disk when complete: ${rowsOnDisk('plain')}`)
  await new Promise((resolve) => {
    setTimeout(resolve, 50)
  })

  const aborted = writing('plain')
  aborted.objectStore('plain').put({ a: { b: 999 } }, 'aborted')
  aborted.objectStore('plain').clear()
  aborted.abort()
  say(`aborted: ${await ended(aborted)}`)

  const ranged = writing('plain')
  ranged.objectStore('plain').delete(IDBKeyRange.bound(['k', 5], ['k', 9]))
  await ended(ranged)

  const walking = writing('plain')
  const cursor = walking.objectStore('plain').index('by').openCursor(IDBKeyRange.lowerBound(15))
  cursor.onsuccess = () => {
    const at = cursor.result
    if (!at) return
    if (at.value.a.b % 2 === 1) at.delete()
    else at.update({ ...at.value, touched: true })
    at.continue()
  }
  await ended(walking)

  const mixed = writing('counted', 'keyed')
  mixed.objectStore('counted').put('first')
  mixed.objectStore('counted').put('second')
  mixed.objectStore('keyed').put({ x: 1, y: 2, z: 'kept' })
  const refused = mixed.objectStore('keyed').add({ x: 1, y: 2, z: 'refused' })
  refused.addEventListener('error', (event: Any) => {
    event.preventDefault()
    event.stopPropagation()
  })
  say(`with a handled refusal: ${await ended(mixed)}`)
}

async function dump(): Promise<string> {
  const db = await settled(indexedDB.open('d'))
  const stores: string[] = [...db.objectStoreNames]
  const parts = stores.map(async (name) => {
    const store = db.transaction(name).objectStore(name)
    return [name, [...store.indexNames], await settled(store.getAllKeys()), await settled(store.getAll())]
  })
  return JSON.stringify([db.version, await Promise.all(parts)])
}

if (task === 'fill') {
  await fill()
  say(await dump())
  die()
}
if (task === 'dump') say(await dump())
if (task === 'hold') {
  say('holding')
  setTimeout(() => process.exit(0), 20_000)
}
