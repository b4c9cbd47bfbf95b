// test/matrix/account.test.ts: its account and its device: signed in once, never out. Against the scripted homeserver.
import { expect } from 'vitest'
import { refusal } from '../homeserver/routes.ts'
import { me } from '../homeserver/world.ts'
import { test, wren, type Yard } from './with/yard.ts'

const logins = (yard: Yard): number => yard.home.asked.filter(({ path }) => path === '/login').length

test('signed in once, the device is kept', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const first = await yard.ready()
  await first.stop('SIGTERM')
  await yard.ready()
  await yard.settle(room)
  expect([logins(yard), new Set(yard.home.world.tokens.values()).size]).toEqual([1, 1])
})

test('it never signs out', async ({ yard }) => {
  const first = await yard.ready()
  await first.stop('SIGTERM')
  expect(yard.home.asked.some(({ path }) => path.includes('logout'))).toBe(false)
})

test('a token that ran out softly is renewed on the same device, in the middle of the work', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  await yard.ready()
  await yard.settle(room)
  const [old] = yard.home.world.tokens.keys()
  yard.home.misbehave = ({ token }) =>
    token === old ? refusal(401, 'M_UNKNOWN_TOKEN', { soft_logout: true }) : undefined
  await yard.settle(room)
  expect([logins(yard), new Set(yard.home.world.tokens.values()).size]).toEqual([2, 1])
})

test('a device that was signed out for good is not taken up again: it stops with a sentence', async ({ yard }) => {
  const first = await yard.ready()
  await first.stop('SIGTERM')
  yard.home.world.tokens.clear()
  const second = yard.start()
  expect((await second.ended).code).toBe(1)
  expect(second.lastWords()).toContain('Move the state folder away')
})

test('a wrong password is a sentence, not a loop', async ({ yard }) => {
  const bot = yard.start({ HENWIFE_MATRIX_PASSWORD: 'wrong' })
  expect((await bot.ended).code).toBe(1)
  expect(bot.lastWords()).toContain('does not take the password')
  expect(logins(yard)).toBe(1)
})

test('a server too old is named', async ({ yard }) => {
  yard.home.misbehave = ({ path }) =>
    path === '/versions' ? { status: 200, body: { versions: ['r0.6.0'] } } : undefined
  const bot = yard.start()
  expect((await bot.ended).code).toBe(1)
  expect(bot.lastWords()).toContain('r0.6.0')
})

test('the same state folder twice at once is refused', async ({ yard }) => {
  await yard.ready()
  const second = yard.start()
  expect((await second.ended).code).toBe(1)
  expect(second.lastWords()).toContain('held by another Henwife')
})

test('neither message texts nor tokens get into the log', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const bot = await yard.ready({ HENWIFE_LOG_LEVEL: 'debug' })
  await yard.answered(yard.say(room, 'private words'))
  await bot.stop('SIGTERM')
  const log = JSON.stringify(bot.lines)
  for (const secret of ['private words', 'sesame', ...yard.home.world.tokens.keys(), room, wren])
    expect(log).not.toContain(secret)
})
