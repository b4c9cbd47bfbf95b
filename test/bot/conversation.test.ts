// test/bot/conversation.test.ts: a conversation as people lead one: follow-ups, edits, taking back, forgetting, and when to be silent.
import { expect, test } from 'vitest'
import { greeting, pictureUnread } from '../../bot/render/sentences.ts'
import { converse } from '../../bot/conversation.ts'
import { asReply } from '../../bot/render/reply.ts'
import { asText } from '../../bot/render/text.ts'
import { Memory } from '../../bot/memory.ts'
import { chatter, edited, kindsOf, noon, room, said, talk, textOf, withdrawn } from './people.ts'

const cross = said('Rhode Island Red cock over Light Sussex hens')
const day = 24 * 60 * 60 * 1000

test('a question is answered, and the memory it leaves is plain data that survives being stored', () => {
  const { memory, out } = talk([cross])
  expect(out).toHaveLength(1)
  expect(textOf({ out })).toContain('Light Sussex')
  expect(Memory.parse(JSON.parse(JSON.stringify(memory)))).toEqual(JSON.parse(JSON.stringify(memory)))
})

test('"and the other way round?" is answered for the birds spoken of, an hour later too', () => {
  const later = said('and the other way round?', { sentAt: noon + day / 24 })
  const turned = talk([cross, later])
  expect(kindsOf(turned)).toEqual(['cross'])
  expect(textOf(turned)).toMatch(/Light Sussex[^:]* over Rhode Island Red/)
})

test('after a day the birds are forgotten', () => {
  const turned = talk([cross, said('and the other way round?', { sentAt: noon + day + 1 })])
  expect(kindsOf(turned)).toEqual(['ask-back'])
})

test('an edited question changes its answer, and what follows refers to the new words', () => {
  const edit = edited(cross, 'Rhode Island Red cock over Barred Plymouth Rock hens')
  const turned = talk([cross, edit])
  expect(turned.out).toMatchObject([{ kind: 'answer', question: cross.id }])
  expect(textOf(turned)).toContain('Barred Plymouth Rock')
  const after = talk([cross, edit, said('and the other way round?')])
  expect(textOf(after)).toMatch(/Barred Plymouth Rock[^:]* over Rhode Island Red/)
})

test('an edited follow-up is read as the follow-up it was', () => {
  const follow = said('eggs?')
  const turned = talk([cross, follow, edited(follow, 'and the other way round?')])
  expect(turned.out).toMatchObject([{ kind: 'answer', question: follow.id }])
  expect(textOf(turned)).toMatch(/Light Sussex[^:]* over Rhode Island Red/)
})

test('an edit of a message that was not for the bot, now calling it, is answered', () => {
  const before = said('RIR over Light Sussex', { cues: chatter })
  expect(talk([before]).out).toEqual([])
  expect(kindsOf(talk([before, edited(before, '!hen RIR cock over Light Sussex hens')]))).toEqual(['cross'])
})

test('a question taken back takes its answer along, and what it told', () => {
  const turned = talk([cross, withdrawn(cross)])
  expect(turned.out).toEqual([{ kind: 'withdraw', question: cross.id }])
  expect(JSON.stringify(turned.memory)).not.toContain('Sussex')
})

test('an older question taken back leaves nothing that was built on it', () => {
  const turned = talk([cross, said('eggs?'), withdrawn(cross)])
  expect(turned.memory).toBeUndefined()
})

test('"forget me" wipes first, then confirms', () => {
  const turned = talk([cross, said('forget me')])
  expect(turned.out.map((one) => one.kind)).toEqual(['forget', 'answer'])
  expect(turned.memory).toBeUndefined()
})

test('talk among others gets no answer and leaves no trace', () => {
  const turned = talk([said('RIR cock over Light Sussex hens', { cues: chatter })])
  expect(turned).toEqual({ memory: undefined, out: [] })
})

test('in its own thread the bot answers what is plainly for it and keeps out of the rest', () => {
  const thread = { ...chatter, inOurThread: true }
  expect(kindsOf(talk([said('RIR cock over Light Sussex hens', { cues: thread })]))).toEqual(['cross'])
  expect(talk([said('lol that roo is a legend', { cues: thread })]).out).toEqual([])
  expect(talk([said('thanks all', { cues: thread })]).out).toEqual([])
})

test('where it was set to listen, a plain question is answered and chatter is not', () => {
  const listening = { ...room, listens: true }
  const heard = (text: string) => talk([said(text, { cues: chatter })], listening)
  expect(kindsOf(heard('RIR cock over Light Sussex hens, can I sex the chicks?'))).toEqual(['cross'])
  for (const text of [
    'im crossing the road lol',
    'x',
    'roosters crowing rights in town, vote thursday',
    'morning all!',
  ])
    expect(heard(text).out).toEqual([])
})

test('called without words it greets; a picture without words is asked about in words', () => {
  const called = { ...chatter, mentioned: true }
  expect(textOf(talk([said('', { cues: called })]))).toBe(asText(greeting))
  expect(textOf(talk([said('', { cues: called, attachment: true })]))).toBe(asText(pictureUnread))
})

test('on coming into a room it greets once', () => {
  const { room: where, person } = cross
  const turned = converse(undefined, { kind: 'joined', room: where, person, id: '$join', direct: false }, room)
  expect(turned.out).toEqual([{ kind: 'greet', reply: asReply(greeting) }])
})
