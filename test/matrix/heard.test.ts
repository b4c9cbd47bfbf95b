// test/matrix/heard.test.ts: who is heard and who is not; edits, redactions, long answers, too many questions. Against the scripted homeserver.
import { expect } from 'vitest'
import { me, type Sent } from '../homeserver/world.ts'
import { finch, relationOf, test, wren, type Yard } from './with/yard.ts'

test('not itself, not notices, not edits as new questions, not a call copied down a chain of replies, not chatter', async ({
  yard,
}) => {
  const room = yard.home.world.makeRoom([wren, finch, me])
  await yard.ready()
  const called = yard.say(room, '!hen one')
  await yard.answered(called)
  const before = yard.home.world.sent.length
  const call = { 'm.mentions': { user_ids: [me] } }
  const unheard = [
    yard.home.world.say(room, me, '!hen two'),
    yard.say(room, '!hen three', { msgtype: 'm.notice' }),
    yard.say(room, 'so do I', { ...call, 'm.relates_to': { 'm.in_reply_to': { event_id: called } } }),
    yard.say(room, 'my hen lays well, which breed crosses are good?'),
    yard.home.world.add(room, { type: 'm.sticker', sender: wren, content: { body: '!hen four' } }),
  ]
  await yard.settle(room)
  expect(unheard.flatMap(yard.answersTo)).toEqual([])
  expect(yard.home.world.sent).toHaveLength(before + 1)
})

const edit = (yard: Yard, room: string, question: string, body: string, sender = wren): string =>
  yard.home.world.say(room, sender, `* ${body}`, {
    'm.new_content': { msgtype: 'm.text', body },
    'm.relates_to': { rel_type: 'm.replace', event_id: question },
  })
const edits = (yard: Yard): readonly Sent[] =>
  yard.home.world.sent.filter((sent) => relationOf(sent)['rel_type'] === 'm.replace')

test('an edit by the asker changes the answer; one by anybody else, or of what was said before its time, does nothing', async ({
  yard,
}) => {
  const room = yard.home.world.makeRoom([wren, finch, me])
  const early = yard.say(room, '!hen early')
  await yard.ready()
  const question = yard.say(room, '!hen one')
  await yard.answered(question)
  edit(yard, room, question, '!hen mine', finch)
  edit(yard, room, early, '!hen early again')
  edit(yard, room, question, '!hen two')
  await yard.until(() => edits(yard).length > 0)
  await yard.settle(room)
  expect(edits(yard).map(({ content }) => Object(content['m.new_content'])['body'])).toEqual(['re: two'])
  expect(relationOf(edits(yard)[0] ?? Object())['event_id']).toBe(yard.answersTo(question)[0]?.id)
})

test('an edit that first calls the bot is answered; the answer hangs on the message first written', async ({
  yard,
}) => {
  const room = yard.home.world.makeRoom([wren, finch, me])
  await yard.ready()
  const chatter = yard.say(room, 'one')
  await yard.settle(room)
  edit(yard, room, chatter, '!hen one')
  await yard.answered(chatter)
  edit(yard, room, chatter, '!hen two')
  await yard.until(() => edits(yard).length > 0)
  expect(yard.answersTo(chatter)).toHaveLength(1)
})

test('a question taken back takes its answer with it; one not yet answered is never answered', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const first = await yard.ready()
  const question = yard.say(room, 'one')
  await yard.answered(question)
  const takeBack = (event: string): string =>
    yard.home.world.add(room, { type: 'm.room.redaction', sender: wren, content: { redacts: event } })
  takeBack(question)
  await yard.until(() => yard.home.world.sent.some(({ type }) => type === 'm.room.redaction'))
  expect(yard.home.world.sent.at(-1)?.content['redacts']).toBe(yard.answersTo(question)[0]?.id)
  await first.stop('SIGTERM')
  const unanswered = yard.say(room, 'two')
  const gone = yard.home.world.entries.find(({ event }) => event.event_id === unanswered)
  if (gone) gone.event.content = {} // what a server shows of a message that was taken back
  takeBack(unanswered)
  await yard.ready()
  await yard.settle(room)
  expect(yard.answersTo(unanswered)).toEqual([])
})

test('an amended answer is taken back with all the words it ever had', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  await yard.ready()
  const question = yard.say(room, 'one')
  await yard.answered(question)
  for (const [n, words] of ['two', 'three'].entries()) {
    edit(yard, room, question, words)
    await yard.until(() => edits(yard).length === n + 1)
  }
  yard.home.world.add(room, { type: 'm.room.redaction', sender: wren, content: { redacts: question } })
  await yard.settle(room)
  const redacted = yard.home.world.sent.flatMap(({ content }) => content['redacts'] ?? [])
  const said = [...yard.answersTo(question), ...edits(yard)].map(({ id }) => id)
  expect(said).toHaveLength(3)
  expect(new Set(redacted)).toEqual(new Set(said))
})

test('70 kB are answered in pages, each in the thread, all taken back with the question', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  await yard.ready()
  const question = yard.say(room, 'word '.repeat(14_000))
  await yard.until(() => yard.answersTo(question).length === 5)
  yard.home.world.add(room, { type: 'm.room.redaction', sender: wren, content: { redacts: question } })
  await yard.until(() => yard.home.world.sent.filter(({ type }) => type === 'm.room.redaction').length === 5)
  await yard.settle(room)
  const redacted = yard.home.world.sent
    .filter(({ type }) => type === 'm.room.redaction')
    .map(({ content }) => content['redacts'])
  expect(new Set(redacted)).toEqual(new Set(yard.answersTo(question).map(({ id }) => id)))
})

test('six questions a minute of one person, then one notice, then silence; others are still answered', async ({
  yard,
}) => {
  const room = yard.home.world.makeRoom([wren, finch, me])
  await yard.ready({ HENWIFE_LIMITS_ANSWERS_PER_PERSON_PER_MINUTE: '6' })
  const questions = Array.from({ length: 10 }, (_, i) => yard.say(room, `!hen number ${i}`))
  const other = yard.home.world.say(room, finch, '!hen mine')
  await yard.answered(other)
  expect(questions.map((question) => yard.answersTo(question).length)).toEqual([1, 1, 1, 1, 1, 1, 1, 0, 0, 0])
  expect(yard.answersTo(questions[6] ?? '')[0]?.content['body']).toContain('more than I can answer at once')
})

test('a backlog is no flood: what was asked over an hour is answered at once', async ({ yard }) => {
  const room = yard.home.world.makeRoom([wren, me])
  const first = await yard.ready()
  await yard.settle(room)
  await first.stop('SIGTERM')
  const hourAgo = Date.now() - 3_600_000
  const questions = Array.from({ length: 12 }, (_, i) =>
    yard.home.world.add(room, {
      type: 'm.room.message',
      sender: wren,
      content: { msgtype: 'm.text', body: `number ${i}` },
      origin_server_ts: hourAgo + i * 300_000,
    }),
  )
  await yard.ready({ HENWIFE_LIMITS_ANSWERS_PER_PERSON_PER_MINUTE: '6' })
  await yard.answered(questions.at(-1) ?? '')
  expect(questions.every((question) => yard.answersTo(question).length === 1)).toBe(true)
})
