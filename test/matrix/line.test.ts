// test/matrix/line.test.ts: faults of the server and of the line: slow down, cut, refused, hung, not there. Against the scripted homeserver.
import { expect } from 'vitest'
import { refusal } from '../homeserver/routes.ts'
import { me } from '../homeserver/world.ts'
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

test('a fault of its own head costs an answer in the end, but neither the process nor the other rooms', async ({
  yard,
}) => {
  const [bad, good] = [yard.home.world.makeRoom([wren, me]), yard.home.world.makeRoom([wren, me])]
  const bot = await yard.ready()
  yard.say(bad, 'throw')
  await bot.says('not sent')
  await yard.settle(good)
})
