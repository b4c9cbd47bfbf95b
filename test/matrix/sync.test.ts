// test/matrix/sync.test.ts: one answer of the server to /sync: what is taken in, what is missing, and that all of it or nothing is kept.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { openStore, type Store } from '../../bot/store.ts'
import { fillGap } from '../../bot/transports/matrix/gaps.ts'
import { intake } from '../../bot/transports/matrix/intake.ts'
import { keepSync, keptSync, type SyncAnswer } from '../../bot/transports/matrix/keepSync.ts'
import { emptyRoom, merged } from '../../bot/transports/matrix/roomState.ts'

const me = '@hen:marlpit.example'
const wren = '@wren:marlpit.example'
let ids = 0
const event = (type: string, sender: string, content: object, more: object = {}) => ({
  event_id: `$${(ids += 1)}`,
  type,
  sender,
  content,
  origin_server_ts: ids,
  ...more,
})
const said = (body: string, sender = wren) => event('m.room.message', sender, { msgtype: 'm.text', body })
const member = (user: string, membership: string, before?: string) =>
  event(
    'm.room.member',
    user,
    { membership },
    { state_key: user, unsigned: before === undefined ? {} : { prev_content: { membership: before } } },
  )
const bodies = (messages: readonly { raw: string }[]): readonly unknown[] =>
  messages.map(({ raw }) => JSON.parse(raw).content.body)
const roomOf = (events: readonly object[], more: object = {}, isKnown = true) => {
  const [room] = intake({ join: { '!a': { timeline: { events, ...more } } } }, me, () => isKnown)
  if (!room) throw new Error('no room')
  return room
}

describe('what is taken in', () => {
  test('messages of others, not its own, not state, not other kinds', () => {
    const room = roomOf([
      said('one'),
      said('mine', me),
      member(wren, 'join'),
      event('m.sticker', wren, {}),
      said('two'),
    ])
    expect(bodies(room.messages)).toEqual(['one', 'two'])
  })

  test('of a room it has just come into, what was said since; a change of its name is no coming', () => {
    const since = roomOf(
      [said('before'), member(me, 'join', 'invite'), said('one'), member(me, 'join', 'join'), said('two')],
      {},
      false,
    )
    expect(bodies(since.messages)).toEqual(['one', 'two'])
    expect(since.joined).toBeDefined()
    expect(since.gap).toBeUndefined()
  })

  test('of a room it is not known to be in, nothing', () => {
    expect(roomOf([said('one')], {}, false).messages).toEqual([])
  })

  test('a short timeline leaves a gap, unless it reaches back to where the bot came in', () => {
    const short = { limited: true, prev_batch: 't1' }
    expect(roomOf([said('one')], short).gap).toBe('t1')
    expect(roomOf([member(me, 'join', 'invite'), said('one')], short, false).gap).toBeUndefined()
  })

  test('its own messages come back under the key they were sent with, or by what they answer', () => {
    const answer = { msgtype: 'm.notice', 'm.relates_to': { 'm.in_reply_to': { event_id: '$q' } } }
    const known = event('m.room.message', me, answer, { unsigned: { transaction_id: 'k' } })
    const unknown = event('m.room.message', me, answer)
    const edit = event('m.room.message', me, { 'm.relates_to': { rel_type: 'm.replace', event_id: '$a' } })
    expect(roomOf([known, unknown, edit]).echoes.map(({ key }) => key)).toEqual(['k', '$q.text'])
  })

  test('events that are no events are passed over', () => {
    const room = roomOf([{}, { event_id: 7 }, said('one')])
    expect(bodies(room.messages)).toEqual(['one'])
  })
})

describe('what a room is like', () => {
  const name = (words: string) => event('m.room.name', wren, { name: words }, { state_key: '' })

  test('later state replaces earlier; who has left is not kept; messages are not kept', () => {
    const first = merged(emptyRoom, { state: { events: [name('old'), member(wren, 'join')] } }) ?? emptyRoom
    const second = merged(first, {
      timeline: { events: [said('private'), name('new'), member(wren, 'leave', 'join')] },
    })
    expect(second?.state.map(({ content }) => content)).toEqual([{ name: 'new' }])
  })

  test('where the server tells the state after the timeline, the timeline does not count', () => {
    const after = merged(emptyRoom, {
      timeline: { events: [name('outdated')] },
      'org.matrix.msc4222.state_after': { events: [name('right')] },
    })
    expect(after?.state.map(({ content }) => content)).toEqual([{ name: 'right' }])
  })

  test('a sync without news of the room changes nothing', () => {
    expect(merged(emptyRoom, { timeline: { events: [said('one')] } })).toBeUndefined()
  })
})

describe('what is kept', () => {
  let folder = ''
  let store: Store
  const house = { me, greets: true, now: () => 1 }
  const answer = (token: string, timeline: object, more: object = {}): SyncAnswer => ({
    next_batch: token,
    rooms: { join: { '!a': { timeline, ...more } } },
  })
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'henwife-sync-'))
    const opened = openStore(folder)
    if (!opened.ok) throw new Error('no store')
    store = opened.value
  })
  afterEach(() => {
    store.close()
    rmSync(folder, { recursive: true })
  })
  const waiting = (): readonly unknown[] => {
    const found = []
    for (let next = store.inbox.next('!a'); next; next = store.inbox.next('!a')) {
      found.push(JSON.parse(next.raw).content.body)
      store.inbox.done(next.event)
    }
    return found
  }

  test('of the very first sync no message is answered and no room greeted, nor is anything before it read', () => {
    keepSync(
      store,
      answer('s1', { events: [member(me, 'join', 'invite'), said('old')], limited: true, prev_batch: 't0' }),
      house,
    )
    expect([waiting(), store.inbox.gaps()]).toEqual([[], []])
    keepSync(store, answer('s2', { events: [said('new')] }), house)
    expect(waiting()).toEqual(['new'])
  })

  test('a fault in the middle keeps neither messages nor token, so the server is asked again', () => {
    keepSync(store, answer('s1', { events: [] }), house)
    const broken = {
      ...store,
      synced: {
        ...store.synced,
        set: () => {
          throw new Error('disk full')
        },
      },
    }
    const news = answer('s2', { events: [said('one')] }, { summary: { 'm.joined_member_count': 2 } })
    expect(() => keepSync(broken, news, house)).toThrow('disk full')
    expect([store.kept.get('token'), waiting()]).toEqual(['s1', []])
  })

  test('no message text is left in what is kept of a room', () => {
    keepSync(
      store,
      answer('s1', { events: [said('private words')] }, { state: { events: [member(wren, 'join')] } }),
      house,
    )
    expect(JSON.stringify(keptSync(store))).not.toContain('private words')
    expect(JSON.stringify(keptSync(store))).toContain(wren)
  })

  test('a room that was left is gone from it', () => {
    keepSync(store, answer('s1', {}, { state: { events: [member(wren, 'join')] } }), house)
    keepSync(store, { next_batch: 's2', rooms: { leave: { '!a': {} } } }, house)
    expect(keptSync(store)?.roomsData.join).toEqual({})
    expect(store.rooms.all()).toEqual([])
  })

  describe('a gap', () => {
    const history = (pages: readonly (readonly object[])[]) => {
      const asked: string[] = []
      return {
        asked,
        history: (_room: string, from: string) => {
          asked.push(from)
          const index = asked.length - 1
          return Promise.resolve({
            events: pages[index] ?? [],
            end: index + 1 < pages.length ? `p${index + 1}` : undefined,
          })
        },
      }
    }
    const bounds = { messages: 1000, after: 0 }
    const gapOf = () => {
      keepSync(store, answer('s1', { events: [said('known')] }), house)
      keepSync(store, answer('s2', { events: [said('late')], limited: true, prev_batch: 'p0' }), house)
      const [gap] = store.inbox.gaps()
      if (!gap) throw new Error('no gap')
      return gap
    }

    test('is read backwards, page by page, and answered forwards, before what came after it', async () => {
      const gap = gapOf()
      const wire = history([
        [said('four'), said('three')],
        [said('two'), said('one')],
      ])
      expect(await fillGap(store, gap, wire, me, bounds, 1)).toBe(4)
      expect(wire.asked).toEqual(['p0', 'p1'])
      expect(waiting()).toEqual(['one', 'two', 'three', 'four', 'late'])
    })

    test('ends where the bot came in, where it knows the message, where it is too old, and where it is enough', async () => {
      const [old, enough] = [said('old'), said('enough')]
      const ends = [
        { page: [said('one'), member(me, 'join', 'invite'), said('before its time')], bounds },
        { page: [said('one'), { ...said('seen'), event_id: '$seen' }, said('earlier')], bounds },
        { page: [said('one'), old], bounds: { messages: 1000, after: old.origin_server_ts + 1 } },
        { page: [said('one'), enough], bounds: { messages: 1, after: 0 } },
      ]
      store.inbox.take([{ event: '$seen', room: '!a', raw: '{}' }], { batch: 1, firstPlace: 0, now: 1, seen: true })
      for (const { page, bounds } of ends) {
        const found = await fillGap(
          store,
          { room: '!a', batch: store.inbox.nextBatch(), newest: 'p', oldest: undefined },
          history([page]),
          me,
          bounds,
          1,
        )
        expect(found).toBe(1)
      }
    })

    test('that cannot be read stays open: nothing of the room is answered out of order', async () => {
      const gap = gapOf()
      const wire = { history: () => Promise.reject(new Error('away')) }
      await expect(fillGap(store, gap, wire, me, bounds, 1)).rejects.toThrow('away')
      expect([waiting(), store.inbox.gaps()]).toEqual([[], [gap]])
    })
  })
})
