// test/matrix/synapse.test.ts: the bot against a real homeserver (Synapse), asked by real accounts. Runs where test/tools/synapse.sh has been run.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { echo, newFolder, removeFolder, startBot, told, type Bot } from './with/bot.ts'
import { comesIn, person, type Person, type Seen } from './with/person.ts'
import { startSynapse, synapseInstalled, type Account, type Synapse } from './with/synapse.ts'

const isInstalled = synapseInstalled()
test('the chat server to test against is there', () => {
  if (!isInstalled) console.warn('Synapse is not installed: its tests are skipped. test/tools/synapse.sh installs it.')
  expect(isInstalled || process.env['CI'] !== 'true').toBe(true)
})

describe.skipIf(!isInstalled)('with Synapse', { timeout: 60_000 }, () => {
  const folder = newFolder()
  let synapse: Synapse
  let hen: Account
  let wren: Person
  let finch: Person
  let bot: Bot
  const startAgain = async (): Promise<Bot> => {
    bot = startBot(echo, told(synapse.url, hen, folder))
    await bot.says('ready')
    return bot
  }
  const roomWithBot = async (encrypted: boolean, others: readonly Person[] = []): Promise<string> => {
    const invite = [hen.user, ...others.map(({ id }) => id)]
    const room = await wren.makeRoom({ encrypted, direct: others.length === 0, invite })
    for (const other of others) await other.client.joinRoom(room)
    await comesIn(wren, room, hen.user)
    return room
  }

  beforeAll(async () => {
    synapse = await startSynapse()
    hen = await synapse.register('hen')
    wren = await person(synapse.url, await synapse.register('wren'))
    finch = await person(synapse.url, await synapse.register('finch'))
    await startAgain()
  }, 60_000)
  afterAll(async () => {
    await bot?.stop('SIGTERM')
    wren?.stop()
    finch?.stop()
    await synapse?.remove()
    removeFolder(folder)
  })

  const wordsOf = ({ content }: Seen): unknown => content['body']
  const editsOf = (who: Person, event: string): readonly Seen[] =>
    who.seen.filter(({ relation }) => relation['rel_type'] === 'm.replace' && relation['event_id'] === event)

  for (const encrypted of [false, true]) {
    const kind = encrypted ? 'an encrypted' : 'a plain'

    test(`in ${kind} direct chat: greeting, question, answer, edit, redaction`, async () => {
      const room = await roomWithBot(encrypted)
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
      const room = await roomWithBot(encrypted, [finch])
      const chatter = await wren.say(room, 'lovely weather for the hens')
      const called = await finch.say(room, '!hen one')
      expect((await finch.answerTo(called)).content).toMatchObject({
        body: 're: one',
        'm.mentions': { user_ids: [finch.id] },
      })
      const mentioned = await wren.say(room, `${hen.user}: two`, { 'm.mentions': { user_ids: [hen.user] } })
      const answer = await wren.answerTo(mentioned)
      expect(wordsOf(answer)).toBe('re: two')
      const followUp = await wren.say(room, 'three', { 'm.relates_to': { 'm.in_reply_to': { event_id: answer.id } } })
      expect(wordsOf(await wren.answerTo(followUp))).toBe('re: three')
      const toAnother = await finch.say(room, 'I think so too', {
        'm.relates_to': { 'm.in_reply_to': { event_id: mentioned } },
        'm.mentions': { user_ids: [wren.id, hen.user] }, // copied down the chain by the client
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
    const room = await roomWithBot(true)
    const before = await wren.say(room, 'before')
    await wren.answerTo(before)
    expect(await bot.stop('SIGTERM')).toEqual({ code: 0, signal: null })
    const meanwhile = [await wren.say(room, 'one'), await wren.say(room, 'two')]
    await startAgain()
    for (const question of meanwhile) await wren.answerTo(question)
    const after = await wren.say(room, 'after')
    await wren.answerTo(after)
    expect([before, ...meanwhile, after].map((question) => wren.answersTo(question).length)).toEqual([1, 1, 1, 1])
    const devices = await wren.client.getCrypto()?.getUserDeviceInfo([hen.user], true)
    expect([...(devices?.get(hen.user)?.keys() ?? [])]).toHaveLength(1)
  })
})
