// test/matrix/words.test.ts: which spellings name the bot, which do not, and what is left of a message without them.
import { describe, expect, test } from 'vitest'
import { isForReading, mentions, spokenIn, wordsOf, type Self } from '../../bot/transports/matrix/words.ts'

const self: Self = { id: '@hen:marlpit.example', displayName: 'Hen Wife' }
const link = '<a href="https://matrix.to/#/@hen:marlpit.example">Hen Wife</a>'
const said = (body: string, more: Record<string, unknown> = {}) => spokenIn({ msgtype: 'm.text', body, ...more })
const listed = (...ids: string[]) => ({ 'm.mentions': { user_ids: ids } })

describe('without a list of mentions, the text names the bot', () => {
  test.each([
    ['Hen Wife: red x sussex', {}],
    ['hen wife, red x sussex', {}],
    ['@Hen Wife red x sussex', {}],
    ['hen: red x sussex', {}],
    ['@hen: red x sussex', {}],
    ['@hen:marlpit.example red x sussex', {}],
    ['@hen:marlpit.example: red x sussex', {}],
    ['Hen Wife: red x sussex', { formatted_body: `${link}: red x sussex` }],
    ['Hen Wife red x sussex', { formatted_body: `${link} red x sussex` }],
    ['Hen Wife red x sussex', { formatted_body: `${link.replace('@', '%40').replace('hen:', 'hen%3A')} red x sussex` }],
  ])('%s', (body, more) => {
    expect(mentions(said(body, more), self, false)).toBe(true)
    expect(wordsOf(said(body, more), self)).toBe('red x sussex')
  })

  test('in the middle and at the end too, by its full name', () => {
    expect(wordsOf(said('ask @hen:marlpit.example about it'), self)).toBe('ask about it')
    expect(wordsOf(said('red x sussex @hen'), self)).toBe('red x sussex')
  })
})

describe('these are about hens, not to the bot', () => {
  test.each([
    'hen 3 is broody',
    'my hen, the red one, lays well',
    'the hen wife next door',
    '@henry: good morning',
    '@hen:marlpit.example.org: hello',
    '@hen:other.example: hello',
    'mail hen@marlpit.example',
    'https://matrix.to/#/@hen:elsewhere.example',
  ])('%s', (body) => {
    expect(mentions(said(body), self, false)).toBe(false)
    expect(wordsOf(said(body), self)).toBe(body)
  })
})

test('where there is a list of mentions it decides, whatever the text says', () => {
  expect(mentions(said('red x sussex', listed(self.id)), self, false)).toBe(true)
  expect(mentions(said('Hen Wife: red x sussex', listed()), self, false)).toBe(false)
})

test('in a reply to somebody else the list alone does not count: clients copy it down the chain', () => {
  expect(mentions(said('I think so too', listed(self.id)), self, true)).toBe(false)
  expect(mentions(said('Hen Wife: is that so?', listed(self.id)), self, true)).toBe(true)
})

test('the quotation that older clients put before a reply is not read', () => {
  const body = '> <@hen:marlpit.example> Day-old chicks can be sexed\n> by down colour\n\nwhich colour?'
  expect(wordsOf(said(body), self)).toBe('which colour?')
  expect(mentions(said(body), self, false)).toBe(false)
})

test('a picture has the words of its caption, and none where the words are its file name', () => {
  const picture = { msgtype: 'm.image', body: 'IMG_2041.jpg', filename: 'IMG_2041.jpg' }
  expect(wordsOf(spokenIn(picture), self)).toBe('')
  expect(wordsOf(spokenIn({ ...picture, body: 'what is this chick?' }), self)).toBe('what is this chick?')
  expect(wordsOf(spokenIn({ msgtype: 'm.image', body: 'IMG_2041.jpg' }), self)).toBe('')
})

test('notices are how bots speak, and are not read; nor are emotes and places', () => {
  const kinds = ['m.text', 'm.image', 'm.notice', 'm.emote', 'm.location', 'x.other']
  expect(kinds.filter((msgtype) => isForReading(spokenIn({ msgtype, body: 'x' })))).toEqual(['m.text', 'm.image'])
})

test.each([
  undefined,
  null,
  7,
  'text',
  [],
  { body: 3 },
  { body: {}, msgtype: [] },
  { 'm.mentions': 'all' },
  { 'm.mentions': { user_ids: 'x' } },
])('a content that is no content (%j) is no words and no mention', (content) => {
  expect(wordsOf(spokenIn(content), self)).toBe('')
  expect(mentions(spokenIn(content), self, false)).toBe(false)
  expect(isForReading(spokenIn(content))).toBe(false)
})

test('a bot whose shown name is made of signs is still found, and breaks nothing', () => {
  const odd: Self = { id: '@hen:marlpit.example', displayName: 'Hen (bot) [*.]' }
  expect(mentions(said('Hen (bot) [*.]: hello'), odd, false)).toBe(true)
  expect(wordsOf(said('Hen (bot) [*.]: hello'), odd)).toBe('hello')
})
