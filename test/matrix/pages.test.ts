// test/matrix/pages.test.ts: what goes into one event and what does not: long texts are cut, nothing is lost, nothing is too large.
import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { pagesOf } from '../../bot/transports/matrix/pages.ts'
import { amendmentContent, answerContent, noticeContent, pictureContent } from '../../bot/transports/matrix/write.ts'
import { replyLimitBytes } from '../../bot/transport.ts'

const reply = (text: string) => ({ text, html: `<p>${text}</p>` })
const bytes = (text: string): number => Buffer.byteLength(text)
const letters = (text: string): string => text.replaceAll(/\s/gu, '')

test('a reply that fits is one message, as it is', () => {
  expect(pagesOf(reply('x'.repeat(replyLimitBytes)))).toEqual([reply('x'.repeat(replyLimitBytes))])
})

test('70 kB become five messages, cut between lines', () => {
  const line = `${'a'.repeat(98)}.`
  const pages = pagesOf(reply(Array.from({ length: 700 }, () => line).join('\n')))
  expect(pages).toHaveLength(5)
  expect(pages.every(({ text }) => text.split('\n').every((one) => one === line))).toBe(true)
})

test('whatever the text, every page fits and no letter is lost', () => {
  const word = fc.string({ unit: 'grapheme', maxLength: 60 })
  fc.assert(
    fc.property(fc.array(word, { maxLength: 60 }), fc.constantFrom(' ', '\n', '\n\n'), (words, mark) => {
      const text = words.join(mark)
      const pages = pagesOf(reply(text), 64)
      expect(pages.every((page) => bytes(page.text) <= 64)).toBe(true)
      expect(letters(pages.map((page) => page.text).join(' '))).toBe(letters(text))
    }),
  )
})

const at = { room: '!a', person: '@wren:marlpit.example' }
const limit = 65_536 // bytes of an event, by the specification
/** Encryption makes four bytes of three; the envelope has its own few hundred. */
const encrypted = (content: object): number => Math.ceil(bytes(JSON.stringify(content)) / 3) * 4 + 1500
const largest = {
  text: 'x'.repeat(replyLimitBytes),
  html: `<p>${'<strong>x</strong>'.repeat((3 * replyLimitBytes) / 18)}</p>`,
}

test('the largest reply fits an encrypted event, sent and amended, with all its words', () => {
  const answer = answerContent(largest, '$q', { ...at, thread: '$t' }, at.person)
  const amendment = amendmentContent(largest, '$a')
  for (const content of [answer, amendment, noticeContent(largest)]) expect(encrypted(content)).toBeLessThan(limit)
  expect(answer['body']).toBe(largest.text)
  expect(amendment['m.new_content']).toMatchObject({ body: largest.text })
})

test('an answer calls its asker and nobody else; a room of two needs no call', () => {
  expect(answerContent(reply('a'), '$q', at, at.person)['m.mentions']).toEqual({ user_ids: [at.person] })
  expect(answerContent(reply('a'), '$q', at, undefined)['m.mentions']).toEqual({})
  expect(amendmentContent(reply('a'), '$a')['m.mentions']).toEqual({})
})

test('an answer hangs on its question, and stays in its thread', () => {
  expect(answerContent(reply('a'), '$q', at, undefined)['m.relates_to']).toEqual({
    'm.in_reply_to': { event_id: '$q' },
  })
  expect(pictureContent({}, '$q', { ...at, thread: '$t' })['m.relates_to']).toEqual({
    rel_type: 'm.thread',
    event_id: '$t',
    is_falling_back: false,
    'm.in_reply_to': { event_id: '$q' },
  })
})

test('everything the bot says is a notice, so that other bots leave it alone', () => {
  const said = [
    answerContent(reply('a'), '$q', at, undefined),
    amendmentContent(reply('a'), '$a'),
    noticeContent(reply('a')),
  ]
  expect(said.map((content) => content['msgtype'])).toEqual(['m.notice', 'm.notice', 'm.notice'])
})
