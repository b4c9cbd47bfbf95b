// test/matrix/doors.test.ts: which rooms it enters, follows and leaves. Against the scripted homeserver.
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { expect } from 'vitest'
import { refusal } from '../homeserver/routes.ts'
import { me } from '../homeserver/world.ts'
import { finch, test, wren, type Yard } from './with/yard.ts'

const standing = (yard: Yard, room: string): string | undefined => yard.home.world.standing.get(room)?.how
const hellos = (yard: Yard, room: string): number =>
  yard.home.world.sent.filter((sent) => sent.room === room && sent.content['body'] === 'hello').length

test('invited by one who may, it comes, greets once, and answers from then on, also after a restart', async ({
  yard,
}) => {
  const first = await yard.ready()
  const room = yard.home.world.makeRoom([wren])
  const early = yard.say(room, 'too early')
  yard.home.world.invite(room, wren)
  await yard.until(() => standing(yard, room) === 'join')
  await yard.settle(room)
  await first.stop('SIGKILL')
  await yard.ready()
  await yard.settle(room)
  expect([hellos(yard, room), yard.answersTo(early).length]).toEqual([1, 0])
})

test('invited while it was down, it comes at the next start', async ({ yard }) => {
  const first = await yard.ready()
  await first.stop('SIGKILL')
  const room = yard.home.world.makeRoom([wren])
  yard.home.world.invite(room, wren)
  await yard.ready()
  await yard.until(() => standing(yard, room) === 'join')
})

test('a join that fails at first is tried again', async ({ yard }) => {
  await yard.ready()
  const room = yard.home.world.makeRoom([wren])
  let failures = 2
  yard.home.misbehave = ({ path }) =>
    path.startsWith('/join/') && (failures -= 1) >= 0 ? refusal(403, 'M_FORBIDDEN') : undefined
  yard.home.world.invite(room, wren)
  await yard.until(() => standing(yard, room) === 'join')
})

test('invited by a stranger, it declines and says who may', async ({ yard }) => {
  await yard.ready({ HENWIFE_MATRIX_INVITES_FROM_SERVERS: 'elsewhere.test', HENWIFE_MATRIX_INVITES_FROM_USERS: finch })
  const room = yard.home.world.makeRoom([wren])
  yard.home.world.invite(room, wren)
  await yard.until(() => standing(yard, room) === 'leave')
  const reason = yard.home.asked.find(({ path }) => path.endsWith('/leave'))?.body['reason']
  expect(reason).toContain(finch)
  expect(reason).toContain('members of elsewhere.test')
  const other = yard.home.world.makeRoom([finch])
  yard.home.world.invite(other, finch)
  await yard.until(() => standing(yard, other) === 'join')
})

test('members of a named space may invite once the bot is in the space; it says nothing there', async ({ yard }) => {
  const space = yard.home.world.makeRoom([wren])
  const bot = await yard.ready({
    HENWIFE_MATRIX_INVITES_FROM_SERVERS: 'elsewhere.test',
    HENWIFE_MATRIX_INVITES_FROM_SPACES: space,
  })
  const early = yard.home.world.makeRoom([wren])
  yard.home.world.invite(early, wren)
  await yard.until(() => standing(yard, early) === 'leave')
  await bot.says('could not see who is in a space')
  const reason = yard.home.asked.find(({ path }) => path.endsWith('/leave'))?.body['reason']
  expect(reason).toContain(`members of ${space}`)
  yard.home.world.invite(space, finch)
  await yard.until(() => standing(yard, space) === 'join')
  const [ofMember, ofStranger] = [yard.home.world.makeRoom([wren]), yard.home.world.makeRoom([finch])]
  yard.home.world.invite(ofMember, wren)
  yard.home.world.invite(ofStranger, finch)
  await yard.until(() => standing(yard, ofMember) === 'join' && standing(yard, ofStranger) === 'leave')
  await yard.until(() => hellos(yard, ofMember) === 1)
  expect(hellos(yard, space)).toBe(0)
})

const moveTo = (yard: Yard, from: string, to: string, by = wren): string =>
  yard.home.world.add(from, {
    type: 'm.room.tombstone',
    sender: by,
    state_key: '',
    content: { body: 'moved', replacement_room: to },
  })
const roomAfter = (yard: Yard, old: string | undefined): string => {
  const room = yard.home.world.makeRoom([wren])
  const content = old === undefined ? {} : { predecessor: { room_id: old } }
  const made = yard.home.world.entries.find((entry) => entry.room === room && entry.event.type === 'm.room.create')
  if (made) made.event.content = content
  return room
}

test('a room that moves is followed where the new one names the old; it does not greet again', async ({ yard }) => {
  const old = yard.home.world.makeRoom([wren, me])
  await yard.ready()
  const room = roomAfter(yard, old)
  moveTo(yard, old, room)
  await yard.until(() => standing(yard, room) === 'join' && standing(yard, old) === 'leave')
  await yard.answered(yard.say(room, '!hen settled?'))
  expect(hellos(yard, room)).toBe(0)
})

test('what is set for a room goes with it, however often it moves', async ({ yard }) => {
  const first = yard.home.world.makeRoom([finch, wren, me])
  await yard.ready({ HENWIFE_MATRIX_INVITES_FROM_SERVERS: 'elsewhere.test', HENWIFE_MATRIX_INVITES_TO_ROOMS: first })
  const second = roomAfter(yard, first)
  moveTo(yard, first, second)
  await yard.until(() => standing(yard, second) === 'join' && standing(yard, first) === 'leave')
  const third = roomAfter(yard, second)
  moveTo(yard, second, third)
  await yard.until(() => standing(yard, third) === 'join' && standing(yard, second) === 'leave')
  await yard.settle(third)
})

test('a room that only claims to be the new one is left, and the old one kept', async ({ yard }) => {
  const old = yard.home.world.makeRoom([wren, finch, me])
  await yard.ready()
  const stray = roomAfter(yard, undefined)
  moveTo(yard, old, stray)
  await yard.until(() => standing(yard, stray) === 'leave')
  await yard.settle(old)
  expect(standing(yard, old)).toBe('join')
})

test('a move on the word of a stranger is not followed', async ({ yard }) => {
  const old = yard.home.world.makeRoom([wren, finch, me])
  const bot = await yard.ready({ HENWIFE_MATRIX_INVITES_FROM_SERVERS: 'elsewhere.test' })
  moveTo(yard, old, roomAfter(yard, old), finch)
  await bot.says('on the word of somebody who may not invite')
  await yard.settle(old)
})

test('an empty room is left', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  await yard.ready()
  await yard.settle(room)
  yard.home.world.add(room, { type: 'm.room.member', sender: wren, state_key: wren, content: { membership: 'leave' } })
  await yard.until(() => standing(yard, room) === 'leave')
})

test('a room that it was put out of is forgotten, on disk too', async ({ yard }) => {
  const [gone, stays] = [yard.home.world.makeRoom([wren, me]), yard.home.world.makeRoom([wren, me])]
  const bot = await yard.ready()
  await yard.settle(gone)
  yard.home.world.leave(gone)
  await yard.settle(stays)
  await bot.stop('SIGTERM')
  const sql = new DatabaseSync(join(yard.folder, 'henwife.sqlite'))
  const rows = ['inbox', 'sent', 'memories', 'rooms', 'synced'].flatMap((table) =>
    sql.prepare(`SELECT room FROM ${table}`).all(),
  )
  sql.close()
  expect(new Set(rows.map(({ room }) => room)).has(gone)).toBe(false)
  expect(new Set(rows.map(({ room }) => room)).has(stays)).toBe(true)
})
