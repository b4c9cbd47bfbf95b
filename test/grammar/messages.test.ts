// test/grammar/messages.test.ts: every message of the tables is read as the question beside it, kind and birds.
import { describe, expect, test } from 'vitest'
import { asked, print } from './print.ts'
import { tables } from './messages.ts'

test('there are tables of all kinds of message, with hundreds of messages', () => {
  expect(tables.length).toBeGreaterThanOrEqual(24)
  expect(tables.reduce((sum, { rows }) => sum + rows.length, 0)).toBeGreaterThan(700)
})

for (const { name, about, rows } of tables)
  describe(`${name}: ${about}`, () => {
    test.each(rows.map(({ text, wanted, before }) => [text, before, wanted] as const))('%s', (text, before, wanted) => {
      const found = print(asked(text, before))
      expect(found.startsWith(wanted) ? wanted : found).toBe(wanted)
    })
  })
