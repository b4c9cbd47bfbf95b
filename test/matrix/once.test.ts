// test/matrix/once.test.ts: once, however it is stopped: killed, told to stop, away for long. Against the scripted homeserver.
import { expect } from 'vitest'
import { refusal } from '../homeserver/routes.ts'
import { me } from '../homeserver/world.ts'
import { removeFolder } from './with/bot.ts'
import { isSend, test, wren } from './with/yard.ts'

test('started twice, it answers once, and what was said before its time not at all', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const early = yard.say(room, 'too early')
  const first = await yard.ready()
  const question = yard.say(room, 'one')
  await yard.answered(question)
  await first.stop('SIGTERM')
  await yard.ready()
  await yard.settle(room)
  expect([yard.answersTo(early).length, yard.answersTo(question).length]).toEqual([0, 1])
})

test.for<readonly [string, boolean, boolean]>([
  ['and the server remembers the transaction', true, true],
  ['and the server forgot it, but shows it beside the message', false, true],
  ['and the server shows it to no one, only what the message answers', false, false],
])('killed between sending and noting, %s', async ([, remembers, shows], { yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const first = await yard.ready()
  yard.home.world.rules = { showTransactions: shows }
  yard.home.misbehaveAfter = (request) => {
    if (!isSend(request)) return undefined
    void first.stop('SIGKILL')
    if (!remembers) yard.home.world.transactions.clear()
    return 'hang'
  }
  const question = yard.say(room, 'one')
  await first.ended
  yard.home.misbehaveAfter = () => undefined
  await yard.ready()
  await yard.settle(room)
  expect(yard.answersTo(question)).toHaveLength(1)
})

test('killed before sending, it sends after the next start', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const first = await yard.ready()
  yard.home.misbehave = (request) => {
    if (!isSend(request)) return undefined
    void first.stop('SIGKILL')
    return 'hang'
  }
  const question = yard.say(room, 'one')
  await first.ended
  yard.home.misbehave = () => undefined
  await yard.ready()
  await yard.settle(room)
  expect(yard.answersTo(question)).toHaveLength(1)
})

test('with a new state folder it takes up nothing old', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const first = await yard.ready()
  const question = yard.say(room, 'one')
  await yard.answered(question)
  await first.stop('SIGTERM')
  removeFolder(yard.folder)
  const meanwhile = yard.say(room, 'two')
  await yard.ready()
  await yard.settle(room)
  expect([yard.answersTo(question).length, yard.answersTo(meanwhile).length]).toEqual([1, 0])
})

test('five hundred messages while it was away are read page by page and answered in order', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const first = await yard.ready()
  await yard.settle(room)
  await first.stop('SIGKILL')
  const questions = Array.from({ length: 500 }, (_, i) => yard.say(room, `number ${i}`))
  await yard.ready()
  await yard.until(() => yard.answersTo(questions.at(-1) ?? '').length > 0)
  const order = yard.home.world.sent.slice(1).map(({ content }) => content['body'])
  expect(order).toEqual(questions.map((_, i) => `re: number ${i}`))
})

test('how far back it reads is bounded, and the newest are answered', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const first = await yard.ready()
  await yard.settle(room)
  await first.stop('SIGKILL')
  const questions = Array.from({ length: 200 }, (_, i) => yard.say(room, `number ${i}`))
  await yard.ready({ HENWIFE_CATCH_UP_MESSAGES_PER_ROOM: '20' })
  await yard.settle(room)
  const counts = questions.map((question) => yard.answersTo(question).length)
  expect(counts.slice(0, 100).every((count) => count === 0)).toBe(true)
  expect(counts.slice(-70).every((count) => count === 1)).toBe(true)
})

test('a history that the server cannot read holds up its own room only', async ({ yard }) => {
  const [lost, whole] = [yard.home.world.makeRoom([wren, me]), yard.home.world.makeRoom([wren, me])]
  const first = await yard.ready()
  await Promise.all([yard.settle(lost), yard.settle(whole)])
  await first.stop('SIGKILL')
  for (let i = 0; i < 80; i += 1) yard.say(lost, `number ${i}`)
  const question = yard.say(whole, 'one')
  yard.home.misbehave = ({ path }) =>
    path.endsWith('/messages') && path.includes(lost) ? refusal(500, 'M_UNKNOWN') : undefined
  const second = await yard.ready()
  await yard.answered(question)
  expect((await second.page('/ready')).status).toBe(200)
  yard.home.misbehave = () => undefined
  await yard.settle(lost)
})

test('told to stop under load it finishes what is at hand, and the rest is answered after the next start', async ({
  yard,
}) => {
  const rooms = Array.from({ length: 5 }, () => yard.home.world.makeRoom([wren, me]))
  const first = await yard.ready()
  const questions = rooms.flatMap((room) => Array.from({ length: 20 }, (_, i) => yard.say(room, `number ${i}`)))
  await yard.until(() => yard.home.world.sent.length > 10)
  expect(await first.stop('SIGTERM')).toEqual({ code: 0, signal: null })
  expect(yard.home.world.sent.length).toBeLessThan(100)
  await yard.ready()
  await yard.until(() => yard.home.world.sent.length >= 100)
  await Promise.all(rooms.map(yard.settle))
  expect(questions.map((question) => yard.answersTo(question).length)).toEqual(questions.map(() => 1))
})

test('a second signal ends it at once', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const bot = await yard.ready()
  yard.home.misbehave = (request) => (isSend(request) ? 'hang' : undefined)
  yard.say(room, 'one')
  await yard.until(() => yard.home.asked.some(isSend))
  const ended = bot.stop('SIGTERM')
  await bot.says('stopping')
  void bot.stop('SIGTERM')
  expect(await ended).toEqual({ code: 1, signal: null })
})
