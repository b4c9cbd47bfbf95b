// test/matrix/synapseTrouble.test.ts: one answer a question against a real homeserver, while the bot is killed, the line is bad, the server stops.
import { EventType } from 'matrix-js-sdk'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Person } from './with/person.ts'
import { startProxy, type Fate } from './with/proxy.ts'
import { isInstalled, openScene, type Scene } from './with/scene.ts'

const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, milliseconds)
  })

describe.skipIf(!isInstalled)('trouble, with Synapse', { timeout: 120_000 }, () => {
  let scene: Scene
  let wren: Person
  beforeAll(async () => {
    scene = await openScene()
    wren = scene.wren
    await scene.start()
  }, 180_000)
  afterAll(() => scene?.clear())

  /** Asks one after the other, and a last one when all is over; then nothing is left to come. */
  const counts = async (room: string, questions: readonly string[]): Promise<readonly number[]> => {
    for (const question of questions) await wren.answerTo(question)
    await wren.answerTo(await wren.say(room, 'settled?'))
    return questions.map((question) => wren.answersTo(question).length)
  }
  const ones = (questions: readonly string[]): readonly number[] => questions.map(() => 1)

  test('killed at ten odd moments while forty are asked in encrypted rooms: each is answered once, by the same device', async () => {
    const rooms = [await scene.room(true), await scene.room(true)]
    const asked: string[][] = [[], []]
    const asking = (async () => {
      for (let i = 0; i < 20; i += 1) {
        for (const [n, room] of rooms.entries()) asked[n]?.push(await wren.say(room, `number ${i}`))
        await pause(250)
      }
    })()
    for (const moment of [40, 90, 170, 260, 310, 450, 520, 640, 710, 830]) {
      await pause(moment)
      await scene.bot().stop('SIGKILL')
      await scene.start()
    }
    await asking
    for (const [n, room] of rooms.entries()) {
      const questions = asked[n] ?? []
      expect(await counts(room, questions)).toEqual(ones(questions))
    }
    const info = await wren.client.getCrypto()?.getUserDeviceInfo([scene.hen.user], true)
    expect(info?.get(scene.hen.user)?.size).toBe(1)
  })

  test('eighty while it was away, more than one sync holds, in an encrypted room: all answered, in order', async () => {
    const room = await scene.room(true)
    await wren.answerTo(await wren.say(room, 'before'))
    await scene.bot().stop('SIGKILL')
    const questions: string[] = []
    for (let i = 0; i < 80; i += 1) questions.push(await wren.say(room, `number ${i}`))
    await scene.start()
    expect(await counts(room, questions)).toEqual(ones(questions))
    const order = wren.seen.filter((one) => one.room === room && String(one.content['body']).startsWith('re: number'))
    expect(order.map(({ content }) => content['body'])).toEqual(questions.map((_, i) => `re: number ${i}`))
  })

  test('on a line that loses, cuts, slows and limits a third of all requests, each is answered once', async () => {
    const proxy = await startProxy(scene.synapse.url)
    await scene.bot().stop('SIGTERM')
    const bot = await scene.start({ HENWIFE_MATRIX_HOMESERVER: proxy.url })
    const room = await scene.room(true)
    const fates: readonly Fate[] = [
      { kind: 'lost' },
      { kind: 'deaf' },
      { kind: 'half' },
      { kind: 'slow', milliseconds: 300 },
      { kind: 'limited', milliseconds: 200 },
    ]
    let n = 0
    proxy.fate = () => ((n += 1) % 3 === 0 ? (fates[(n / 3) % fates.length] ?? { kind: 'passed' }) : { kind: 'passed' })
    const questions: string[] = []
    for (let i = 0; i < 20; i += 1) {
      questions.push(await wren.say(room, `number ${i}`))
      await pause(100)
    }
    await pause(5000)
    proxy.fate = () => ({ kind: 'passed' })
    expect(await counts(room, questions)).toEqual(ones(questions))
    expect(fates.map(({ kind }) => (proxy.counts.get(kind) ?? 0) > 0)).toEqual(fates.map(() => true))
    await bot.stop('SIGTERM')
    await proxy.close()
    await scene.start()
  })

  test('the server stops in the middle and comes back: each is answered once, by the same process', async () => {
    const room = await scene.room(true)
    const bot = scene.bot()
    const questions = [await wren.say(room, 'one')]
    await scene.synapse.stop()
    await pause(3000)
    await scene.synapse.start()
    questions.push(await wren.say(room, 'two'))
    expect(await counts(room, questions)).toEqual(ones(questions))
    expect(scene.bot()).toBe(bot)
    expect((await bot.page('/ready')).status).toBe(200)
  })

  const levels = (room: string, bots: number): Promise<unknown> =>
    wren.client.sendStateEvent(room, EventType.RoomPowerLevels, {
      events_default: 50,
      users: { [scene.hen.user]: bots },
    })

  test('where it may not write it stays alive, tells who brought it in, and answers again once it may', async () => {
    const room = await scene.room(false)
    const own = await scene.room(false)
    await levels(room, 0)
    const unanswered = await wren.say(room, 'one')
    await scene.bot().says('may not write in a room')
    await wren.sees((seen) =>
      seen.find((one) => one.room !== room && String(one.content['body']).includes('may not write there')),
    )
    await levels(room, 50)
    await wren.answerTo(await wren.say(room, 'two'))
    await wren.answerTo(await wren.say(own, 'three'))
    expect(wren.answersTo(unanswered)).toEqual([])
  })

  test('a room that is upgraded is followed, and the bot does not greet again', async () => {
    const room = await scene.room(false)
    await wren.answerTo(await wren.say(room, 'one'))
    const { replacement_room: next } = await wren.client.upgradeRoom(room, '10')
    await wren.client.invite(next, scene.hen.user)
    for (let tries = 0; wren.client.getRoom(next)?.getMember(scene.hen.user)?.membership !== 'join'; tries += 1) {
      expect(tries).toBeLessThan(100)
      await pause(100)
    }
    await wren.answerTo(await wren.say(next, '!hen two'))
    expect(wren.seen.filter((one) => one.room === next && one.content['body'] === 'hello')).toEqual([])
    for (let tries = 0; wren.client.getRoom(room)?.getMember(scene.hen.user)?.membership === 'join'; tries += 1) {
      expect(tries).toBeLessThan(100)
      await pause(100)
    }
  })
})
