// test/bot/store.test.ts: what the bot remembers: once, in order, no longer than said, and gone when asked to forget.
import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openStore, sweep, type Store } from '../../bot/store.ts'
import { openFile, wordedFault } from '../../bot/store/file.ts'
import { steps } from '../../bot/store/steps.ts'
import { emptyContext } from '../../grammar/context.ts'

const day = 24 * 60 * 60 * 1000
let folder = ''
let store: Store
const reopened = (): Store => {
  const opened = openStore(folder)
  if (!opened.ok) throw new Error(wordedFault(opened.fault))
  return opened.value
}
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'henwife-store-'))
  store = reopened()
})
afterEach(() => {
  store.close()
  rmSync(folder, { recursive: true })
})

const arrived = (event: string, room = '!a') => ({ event, room, raw: `{"of":"${event}"}` })
const place = { room: '!a', person: '@wren:marlpit.example' }
const memory = (at: number) => ({ context: emptyContext(), turns: [], rest: [], at })
const sent = (key: string, more = {}) => ({ key, event: `$sent-${key}`, room: '!a', ...more })

test('a message is taken once, however often the network delivers it', () => {
  const at = { firstPlace: 0, now: 1 }
  expect(store.inbox.take([arrived('$1')], { ...at, batch: 1 })).toBe(1)
  expect(store.inbox.take([arrived('$1')], { ...at, batch: 2 })).toBe(0)
  store.inbox.done('$1')
  expect(store.inbox.take([arrived('$1')], { ...at, batch: 3 })).toBe(0)
  expect(store.inbox.next('!a')).toBeUndefined()
})

test('a message that was handled leaves its id and not its words', () => {
  store.inbox.take([arrived('$1')], { batch: 1, firstPlace: 0, now: 1 })
  store.inbox.done('$1')
  store.close()
  const sql = new DatabaseSync(join(folder, 'henwife.sqlite'))
  expect(sql.prepare('SELECT event, raw FROM inbox').all()).toEqual([{ event: '$1', raw: '' }])
  sql.close()
  store = reopened()
})

test('what was fetched to fill a gap comes before what arrived after the gap, and nothing comes while it is open', () => {
  const gap = { room: '!a', batch: 7, newest: 't9', oldest: 's1' }
  store.inbox.take([arrived('$late')], { batch: 7, firstPlace: 0, now: 1 })
  store.inbox.openGap(gap)
  expect(store.inbox.next('!a')).toBeUndefined()
  store.inbox.take([arrived('$early'), arrived('$middle')], { batch: 7, firstPlace: -2, now: 1 })
  store.inbox.closeGap(gap)
  const order = []
  for (let next = store.inbox.next('!a'); next; next = store.inbox.next('!a')) {
    order.push(next.event)
    store.inbox.done(next.event)
  }
  expect(order).toEqual(['$early', '$middle', '$late'])
})

test('a message without its key is passed over, and takes its old place when the key has come', () => {
  store.inbox.take([arrived('$1'), arrived('$2')], { batch: 1, firstPlace: 0, now: 5 })
  store.inbox.lock('$1')
  expect(store.inbox.next('!a')?.event).toBe('$2')
  expect(store.inbox.locked()).toMatchObject([{ event: '$1', taken: 5 }])
  store.inbox.unlock('$1')
  expect(store.inbox.next('!a')?.event).toBe('$1')
})

test('batches go on rising after a restart, so order holds', () => {
  store.inbox.take([arrived('$1')], { batch: store.inbox.nextBatch(), firstPlace: 0, now: 1 })
  const before = store.inbox.nextBatch() - 1
  store.close()
  store = reopened()
  expect(store.inbox.nextBatch()).toBeGreaterThan(before)
})

test('all of a step is kept, or none of it', () => {
  expect(() =>
    store.atOnce(() => {
      store.kept.set('token', 's2')
      store.inbox.take([arrived('$1')], { batch: 1, firstPlace: 0, now: 1 })
      throw new Error('no')
    }),
  ).toThrow('no')
  expect([store.kept.get('token'), store.inbox.knows('$1')]).toEqual([undefined, false])
})

test('an echo from the network counts as sent, and is completed later without losing its id', () => {
  store.sent.echo({ key: 'r-1', event: '$e', room: '!a' }, 1)
  expect(store.sent.byKey('r-1')?.event).toBe('$e')
  store.sent.note({ key: 'r-1', event: '$e', room: '!a', question: '$1', person: place.person }, 2)
  store.sent.echo({ key: 'r-1', event: '$other', room: '!a' }, 3)
  expect(store.sent.answersTo('$1')).toMatchObject([{ key: 'r-1', event: '$e', question: '$1' }])
})

test('a thread is ours when we spoke in it, began it, or answered what began it', () => {
  store.sent.note(sent('r-1', { question: '$1', thread: '$root' }), 1)
  store.sent.note(sent('r-2', { question: '$2' }), 1)
  expect(['$root', '$sent-r-2', '$2', '$3'].map((thread) => store.sent.isOurThread(thread))).toEqual([
    true,
    true,
    true,
    false,
  ])
})

test('each thing goes after its time and not before', () => {
  const now = 100 * day
  store.memories.set(place, memory(now - day - 1))
  store.memories.set({ ...place, room: '!b' }, memory(now - day))
  store.sent.note(sent('old', { question: '$1' }), now - 7 * day - 1)
  store.sent.note(sent('new', { question: '$2' }), now - 7 * day)
  store.inbox.take([arrived('$old')], { batch: 1, firstPlace: 0, now: now - 30 * day - 1, seen: true })
  store.inbox.take([arrived('$new')], { batch: 2, firstPlace: 0, now: now - 30 * day, seen: true })
  store.inbox.take([arrived('$unanswered')], { batch: 3, firstPlace: 0, now: 0 })
  sweep(store, { answersDays: 7, seenDays: 30, memoryMilliseconds: day }, now)
  expect([store.memories.of(place), store.memories.of({ ...place, room: '!b' })]).toEqual([
    undefined,
    memory(now - day),
  ])
  expect(['old', 'new'].map((key) => store.sent.byKey(key)?.key)).toEqual([undefined, 'new'])
  expect(['$old', '$new', '$unanswered'].map((event) => store.inbox.knows(event))).toEqual([false, true, true])
})

const everything = (): string => {
  const sql = new DatabaseSync(join(folder, 'henwife.sqlite'))
  const tables = sql
    .prepare(`SELECT name FROM sqlite_schema WHERE type='table'`)
    .all()
    .map(({ name }) => String(name))
  const rows = JSON.stringify(tables.map((table) => sql.prepare(`SELECT * FROM ${table}`).all()))
  sql.close()
  return rows
}
const fill = (room: string): void => {
  store.inbox.take([arrived(`$${room}`, room)], { batch: 1, firstPlace: 0, now: 1 })
  store.inbox.openGap({ room, batch: 1, newest: 't', oldest: undefined })
  store.sent.note({ ...sent(room, { question: '$1', person: place.person }), room }, 1)
  store.memories.set({ ...place, room }, memory(1))
  store.rooms.set(room, { inviter: place.person, greeted: true })
  store.synced.set({ room, how: 'join', data: '{}' })
}

test('"forget me" leaves no row that names the person', () => {
  fill('!a')
  store.forgetPerson(place.person)
  store.close()
  expect(everything()).not.toContain('wren')
  store = reopened()
  expect(store.rooms.of('!a')).toMatchObject({ greeted: true }) // the room itself is not forgotten
})

test('a room that was left leaves nothing', () => {
  fill('!left')
  fill('!stays')
  store.forgetRoom('!left')
  store.close()
  expect(everything()).not.toContain('!left')
  expect(everything()).toContain('!stays')
  store = reopened()
})

test('the file is for its owner only', () => {
  expect(statSync(join(folder, 'henwife.sqlite')).mode & 0o777).toBe(0o600)
})

test('a second opening is refused with a sentence', () => {
  const second = openStore(folder)
  expect(second.ok ? '' : wordedFault(second.fault)).toContain('held by another Henwife')
})

test('an older file is brought up to date, a newer one is left alone', () => {
  const file = join(folder, 'steps.sqlite')
  const first = openFile(file, steps.slice(0, 1))
  if (first.ok) first.value.close()
  const later = openFile(file, [...steps, 'CREATE TABLE later(x) STRICT'.replace('(x)', '(x INTEGER)')])
  expect(later.ok && later.value.prepare('SELECT count(*) AS n FROM later').get()).toEqual({ n: 0 })
  if (later.ok) later.value.close()
  const older = openFile(file, steps)
  expect(older.ok ? '' : wordedFault(older.fault)).toContain('written by a newer Henwife')
})

test('a file that is no database is named, not used', () => {
  const opened = openFile('/dev/null/x.sqlite', steps)
  expect(opened.ok ? '' : wordedFault(opened.fault)).toContain('cannot be used')
})
