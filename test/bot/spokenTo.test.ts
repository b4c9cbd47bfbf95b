// test/bot/spokenTo.test.ts: when the bot is spoken to, by the cues a network gives.
import { expect, test } from 'vitest'
import { spokenTo, type RoomSettings } from '../../bot/spokenTo.ts'
import type { Cues } from '../../bot/transport.ts'

const none: Cues = { direct: false, mentioned: false, repliesTo: 'nobody', inOurThread: false }
const room: RoomSettings = { prefix: '!hen', listens: false }
const to = (cues: Partial<Cues>, text = 'RIR over BR', settings = room) =>
  spokenTo({ text, cues: { ...none, ...cues } }, settings)

test('in a room of two, by name, or in reply to the bot: it is spoken to', () => {
  expect(to({ direct: true }).to).toBe('us')
  expect(to({ mentioned: true }).to).toBe('us')
  expect(to({ repliesTo: 'the bot' }).to).toBe('us')
})

test('talk among others is not for the bot, nor is a reply to another in its own thread', () => {
  expect(to({}).to).toBe('others')
  expect(to({ repliesTo: 'another' }).to).toBe('others')
  expect(to({ repliesTo: 'another', inOurThread: true }).to).toBe('others')
  expect(to({ repliesTo: 'another' }, 'RIR over BR', { ...room, listens: true }).to).toBe('others')
})

test('in its own thread, and in rooms where it listens, the bot is perhaps meant', () => {
  expect(to({ inOurThread: true }).to).toBe('perhaps us')
  expect(to({}, 'RIR over BR', { ...room, listens: true }).to).toBe('perhaps us')
})

test.each([
  ['!hen RIR over BR', 'us', 'RIR over BR'],
  ['  !HEN: RIR over BR', 'us', 'RIR over BR'],
  ['!hen', 'us', ''],
  ['!henhouse is full', 'others', '!henhouse is full'],
  ['my !hen', 'others', 'my !hen'],
])('the calling word: %j is for %s', (text, whom, rest) => {
  expect(to({}, text)).toEqual({ to: whom, text: rest })
})

test('without a calling word nothing is cut off', () => {
  expect(to({ direct: true }, 'RIR', { ...room, prefix: '' })).toEqual({ to: 'us', text: 'RIR' })
})
