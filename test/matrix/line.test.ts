// test/matrix/line.test.ts: faults of the server and of the line: slow down, cut, refused, hung, not there. Against the scripted homeserver.
import { expect } from 'vitest'
import { refusal } from '../homeserver/routes.ts'
import { me } from '../homeserver/world.ts'
import { whole } from './with/bot.ts'
import { isSend, test, wren } from './with/yard.ts'

test('"slow down" is obeyed, and then it sends', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const bot = await yard.ready()
  const tries: number[] = []
  yard.home.misbehave = (request) => {
    if (!isSend(request)) return undefined
    tries.push(Date.now())
    return tries.length < 7 ? refusal(429, 'M_LIMIT_EXCEEDED', { retry_after_ms: 120 }) : undefined
  }
  const question = yard.say(room, 'one')
  await yard.answered(question)
  await yard.settle(room)
  const pauses = tries.slice(1, 7).map((time, i) => time - (tries[i] ?? 0))
  expect(pauses.every((pause) => pause >= 119)).toBe(true)
  expect(yard.answersTo(question)).toHaveLength(1)
  expect((await bot.page('/metrics')).text).toContain('henwife_rate_limited_total 6')
})

test.for(['cut', refusal(502, 'M_UNKNOWN')] as const)(
  'a line that fails on the way (%j) is tried again, whether or not the server took it',
  async (how, { yard }) => {
    const room = yard.home.world.makeRoom([wren, me])
    await yard.ready()
    let [before, after] = [2, 2]
    yard.home.misbehave = (request) => (isSend(request) && (before -= 1) >= 0 ? how : undefined)
    yard.home.misbehaveAfter = (request) => (isSend(request) && (after -= 1) >= 0 ? how : undefined)
    const question = yard.say(room, 'one')
    await yard.answered(question)
    await yard.settle(room)
    expect(yard.answersTo(question)).toHaveLength(1)
  },
)

test('a refused reply costs that reply: other rooms, and later the same room, are answered', async ({ yard }) => {
  const [shut, open] = [yard.home.world.makeRoom([wren, me]), yard.home.world.makeRoom([wren, me])]
  const bot = await yard.ready()
  yard.home.misbehave = (request) =>
    isSend(request) && request.path.includes(shut) ? refusal(403, 'M_FORBIDDEN') : undefined
  const refused = yard.say(shut, 'one')
  await bot.says('may not write in a room')
  await yard.settle(open)
  yard.home.misbehave = () => undefined
  await yard.settle(shut)
  expect(yard.answersTo(refused)).toEqual([])
})

test('a room that hangs does not hold up another', async ({ yard }) => {
  const [slow, quick] = [yard.home.world.makeRoom([wren, me]), yard.home.world.makeRoom([wren, me])]
  await yard.ready()
  yard.home.misbehave = (request) => (isSend(request) && request.path.includes(slow) ? 'hang' : undefined)
  yard.say(slow, 'one')
  await yard.until(() => yard.home.asked.some(isSend))
  await yard.settle(quick)
})

test('a server that is not there yet is waited for', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  let isUp = false
  yard.home.misbehave = () => (isUp ? undefined : 'cut')
  const bot = yard.start()
  await bot.says('started')
  expect([(await bot.page('/live')).status, (await bot.page('/ready')).status]).toEqual([200, 503])
  isUp = true
  await bot.says('ready')
  expect((await bot.page('/ready')).status).toBe(200)
  await yard.settle(room)
})

test('told to stop while it waits for a server, it stops at once', async ({ yard }) => {
  yard.home.misbehave = () => 'hang'
  const bot = yard.start()
  await yard.until(() => yard.home.asked.length > 0)
  const told = Date.now()
  expect(await bot.stop('SIGTERM')).toEqual({ code: 0, signal: null })
  expect(Date.now() - told).toBeLessThan(5000)
})

test('a fault of its own head costs an answer in the end, but neither the process nor the other rooms', async ({
  yard,
}) => {
  const [bad, good] = [yard.home.world.makeRoom([wren, me]), yard.home.world.makeRoom([wren, me])]
  const bot = await yard.ready()
  yard.say(bad, 'throw')
  await bot.says('not sent')
  await yard.settle(good)
})

test('a server that goes silent makes it not ready, then start over, then end', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const bot = await yard.ready({ ECHO_PATIENCE: '3000' })
  await yard.settle(room)
  yard.home.misbehave = ({ path }) => (path === '/sync' ? 'hang' : undefined)
  await yard.until(() => bot.lines.some(({ msg }) => msg === 'starting over'))
  expect((await bot.page('/ready')).status).toBe(503)
  expect(await bot.ended).toEqual({ code: 1, signal: null })
  expect(bot.lastWords()).toContain('Nothing is heard')
})

test('a server that was silent for a while is heard again after the new start', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const bot = await yard.ready({ ECHO_PATIENCE: '3000' })
  await yard.settle(room)
  let isSilent = true
  yard.home.misbehave = ({ path }) => (isSilent && path === '/sync' ? 'hang' : undefined)
  const question = yard.say(room, 'one')
  await bot.says('starting over')
  isSilent = false
  await yard.answered(question)
  await yard.settle(room)
  expect(yard.answersTo(question)).toHaveLength(1)
})

test('"is writing" shows only where an answer takes more than a second, and goes again; what was answered is marked as read', async ({
  yard,
}) => {
  const room = yard.home.world.makeRoom([wren, me])
  await yard.ready()
  await yard.settle(room)
  const typing = (): readonly unknown[] =>
    yard.home.asked.filter(({ path }) => path.includes('/typing/')).map(({ body }) => body['typing'])
  expect(typing()).toEqual([])
  let isFirst = true
  yard.home.misbehave = (request) => {
    if (!isSend(request) || !isFirst) return undefined
    isFirst = false
    return refusal(429, 'M_LIMIT_EXCEEDED', { retry_after_ms: 1500 })
  }
  const question = yard.say(room, 'one')
  await yard.answered(question)
  await yard.until(() => typing().length === 2)
  expect(typing()).toEqual([true, false])
  await yard.until(() => yard.home.asked.some(({ path }) => path.endsWith(`/receipt/m.read/${question}`)))
})

test('a picture that cannot be uploaded costs the picture only', { timeout: 60_000 }, async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const bot = await yard.ready({}, whole)
  yard.home.misbehave = ({ path }) => (path === '/upload' ? refusal(413, 'M_TOO_LARGE') : undefined)
  const first = yard.say(room, 'Rhode Island Red cock over Light Sussex hens')
  await bot.says('something of ours went wrong')
  yard.home.misbehave = () => undefined
  const second = yard.say(room, 'and the other way round?')
  await yard.until(() => yard.answersTo(second).length === 2)
  const kinds = [first, second].map((question) => yard.answersTo(question).map(({ content }) => content['msgtype']))
  expect(kinds).toEqual([['m.notice'], ['m.notice', 'm.image']])
})
