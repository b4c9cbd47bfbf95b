// test/matrix/synapse.test.ts: the bot against a real homeserver (Synapse), asked by real accounts. Runs where test/tools/synapse.sh has been run.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { pythons, startNio } from './with/otherClient.ts'
import { comesIn, type Person, type Seen } from './with/person.ts'
import { isInstalled, openScene, type Scene } from './with/scene.ts'

test('the chat server to test against is there', () => {
  if (!isInstalled) console.warn('Synapse is not installed: its tests are skipped. test/tools/synapse.sh installs it.')
  expect(isInstalled || process.env['CI'] !== 'true').toBe(true)
})

test('so is a client that is not made by its SDK', () => {
  if (isInstalled && pythons.length === 0)
    console.warn('matrix-nio is not installed: its test is skipped. test/tools/synapse.sh installs it.')
  expect(pythons.length > 0 || process.env['CI'] !== 'true').toBe(true)
})

describe.skipIf(!isInstalled)('with Synapse', { timeout: 120_000 }, () => {
  let scene: Scene
  let wren: Person
  let finch: Person
  beforeAll(async () => {
    scene = await openScene()
    wren = scene.wren
    finch = await scene.join('finch')
    await scene.start()
  }, 180_000)
  afterAll(() => scene?.clear())

  const wordsOf = ({ content }: Seen): unknown => content['body']
  const editsOf = (who: Person, event: string): readonly Seen[] =>
    who.seen.filter(({ relation }) => relation['rel_type'] === 'm.replace' && relation['event_id'] === event)

  for (const encrypted of [false, true]) {
    const kind = encrypted ? 'an encrypted' : 'a plain'

    test(`in ${kind} direct chat: greeting, question, answer, edit, redaction`, async () => {
      const room = await scene.room(encrypted)
      await wren.sees((seen) => seen.find((one) => one.room === room && wordsOf(one) === 'hello'))
      const question = await wren.say(room, 'one')
      const answer = await wren.answerTo(question)
      expect(answer.content).toMatchObject({ msgtype: 'm.notice', body: 're: one', formatted_body: '<p>re: one</p>' })
      expect(answer.content['m.mentions']).toEqual({})
      await wren.edit(room, question, 'two')
      const [amended] = await wren.sees(() =>
        editsOf(wren, answer.id).length > 0 ? editsOf(wren, answer.id) : undefined,
      )
      expect(amended?.content['m.new_content']).toMatchObject({ msgtype: 'm.notice', body: 're: two' })
      await wren.client.redactEvent(room, question)
      await wren.sees(() => answer.isRedacted() || undefined)
      expect(wren.answersTo(question)).toHaveLength(1)
      expect(wren.seen.filter((one) => one.room === room && wordsOf(one) === 'hello')).toHaveLength(1)
    })

    test(`in ${kind} room of three: only when called, in its place, naming the asker`, async () => {
      const room = await scene.room(encrypted, [finch])
      const chatter = await wren.say(room, 'lovely weather for the hens')
      const called = await finch.say(room, '!hen one')
      expect((await finch.answerTo(called)).content).toMatchObject({
        body: 're: one',
        'm.mentions': { user_ids: [finch.id] },
      })
      const mentioned = await wren.say(room, `${scene.hen.user}: two`, { 'm.mentions': { user_ids: [scene.hen.user] } })
      const answer = await wren.answerTo(mentioned)
      expect(wordsOf(answer)).toBe('re: two')
      const followUp = await wren.say(room, 'three', { 'm.relates_to': { 'm.in_reply_to': { event_id: answer.id } } })
      expect(wordsOf(await wren.answerTo(followUp))).toBe('re: three')
      const toAnother = await finch.say(room, 'I think so too', {
        'm.relates_to': { 'm.in_reply_to': { event_id: mentioned } },
        'm.mentions': { user_ids: [wren.id, scene.hen.user] }, // copied down the chain by the client
      })
      const inThread = await wren.say(room, '!hen four', {
        'm.relates_to': { rel_type: 'm.thread', event_id: chatter },
      })
      const threaded = await wren.answerTo(inThread)
      expect(threaded.relation).toMatchObject({
        rel_type: 'm.thread',
        event_id: chatter,
        'm.in_reply_to': { event_id: inThread },
      })
      expect([wren.answersTo(chatter), wren.answersTo(toAnother)]).toEqual([[], []])
    })
  }

  test('after a stop and a start it is the same device with the same key, answers what was said meanwhile, and nothing twice', async () => {
    const room = await scene.room(true)
    const before = await wren.say(room, 'before')
    await wren.answerTo(before)
    expect(await scene.bot().stop('SIGTERM')).toEqual({ code: 0, signal: null })
    const meanwhile = [await wren.say(room, 'one'), await wren.say(room, 'two')]
    await scene.start()
    for (const question of meanwhile) await wren.answerTo(question)
    const after = await wren.say(room, 'after')
    await wren.answerTo(after)
    expect([before, ...meanwhile, after].map((question) => wren.answersTo(question).length)).toEqual([1, 1, 1, 1])
    const devices = await wren.client.getCrypto()?.getUserDeviceInfo([scene.hen.user], true)
    expect([...(devices?.get(scene.hen.user)?.keys() ?? [])]).toHaveLength(1)
  })

  test.each(pythons)(
    'a client not made by this SDK (matrix-nio under %s) reads its encrypted answer',
    async (python) => {
      const robin = await scene.synapse.register(`robin${pythons.indexOf(python)}`)
      const room = await wren.makeRoom({ encrypted: true, invite: [robin.user] })
      const nio = startNio(python, scene.synapse.url, robin, room, '!hen one')
      try {
        await nio.prints(({ kind }) => kind === 'ready')
        await wren.client.invite(room, scene.hen.user)
        await wren.sees((seen) => seen.find((one) => one.room === room && wordsOf(one) === 'hello'))
        nio.ask()
        const question = await nio.prints(({ kind }) => kind === 'sent')
        expect(question['encrypted']).toBe(true)
        const answer = await nio.prints(({ kind, content }) => kind === 'seen' && Object(content)['body'] === 're: one')
        expect(answer).toMatchObject({ sender: scene.hen.user, decrypted: true })
        expect(answer['content']).toMatchObject({
          msgtype: 'm.notice',
          'm.mentions': { user_ids: [robin.user] },
          'm.relates_to': { 'm.in_reply_to': { event_id: question['id'] } },
        })
      } finally {
        nio.stop()
      }
    },
  )

  test('members of a named space may invite it, and nobody else', async () => {
    const made = await wren.client.createRoom({ creation_content: { type: 'm.space' }, invite: [finch.id] })
    const space = made.room_id
    await scene.bot().stop('SIGTERM')
    await scene.start({
      HENWIFE_MATRIX_INVITES_FROM_SERVERS: 'elsewhere.test',
      HENWIFE_MATRIX_INVITES_FROM_SPACES: space,
    })
    await wren.client.invite(space, scene.hen.user)
    await comesIn(wren, space, scene.hen.user)
    const stranger = await finch.makeRoom({ invite: [scene.hen.user] }) // finch is only invited into the space
    await expect
      .poll(() => finch.client.getStateEvent(stranger, 'm.room.member', scene.hen.user), { timeout: 45_000 })
      .toMatchObject({ membership: 'leave', reason: expect.stringContaining(`members of ${space}`) })
    await finch.client.joinRoom(space)
    const room = await finch.makeRoom({ invite: [scene.hen.user] })
    await comesIn(finch, room, scene.hen.user)
    await finch.sees((seen) => seen.find((one) => one.room === room && wordsOf(one) === 'hello'))
    expect(wren.seen.filter((one) => one.room === space && wordsOf(one) === 'hello')).toEqual([])
  })
})
