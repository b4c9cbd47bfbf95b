// test/grammar/leftAlone.test.ts: texts that must be left alone: nobody spoke to the bot, or nothing in them is for it.
import { describe, expect, test } from 'vitest'
import { emptyContext, type Context } from '../../grammar/context.ts'
import { understand } from '../../grammar/understand.ts'

const overheard: Context = { ...emptyContext(), addressed: false }
const listening: Context = { ...overheard, listen: true }
const addressed = emptyContext()

const chatter = [
  'morning all! frost on the coop today',
  'lol that roo is a legend 😂😂',
  'im crossing the road lol get it',
  'roosters crowing rights in town, vote thursday',
  'the x factor was rubbish last night',
  'my girls are loving the sun',
  'roo crowed at 4am again',
  'crossing my fingers for saturday',
  'fox got my best hen last night',
  'happy birthday jo!',
  'selling 3 POL pullets £20 each',
  'anyone got a spare broody coop?',
  'x',
  'roo',
  'hens',
  '❤️',
  'Total: $1,194.09 [image: View Reservation]',
  'Meeting moved to 3 pm on the 4th',
] as const

describe('what was not said to the bot gets silence, whatever it is', () => {
  test.each([...chatter, 'RIR roo over barred rock hens, can I sex the chicks?', 'thanks', '2'])('%s', (text) => {
    expect(understand(text, overheard)).toEqual({ question: { kind: 'silent' }, context: overheard })
  })
})

describe('chatter overheard by a bot set to listen is not taken for a mating', () => {
  test.each(chatter)('%s', (text) => {
    expect(['silent', 'decline', 'ask-back']).toContain(understand(text, listening).question.kind)
  })
})

describe('chatter said to the bot is declined or asked about, and is no mating either', () => {
  test.each(chatter)('%s', (text) => {
    expect(['decline', 'ask-back']).toContain(understand(text, addressed).question.kind)
  })
})

test('a plain question is read by a bot set to listen', () => {
  expect(understand('RIR roo over barred rock hens, can I sex the chicks?', listening).question.kind).toBe('cross')
})

test('a price or a weight for each pound names no breed', () => {
  const { question } = understand('is a cornish cross better than my dual purpose cockerels, feed per lb', addressed)
  expect(JSON.stringify(question)).not.toContain('Light Brahma')
})
