// test/bot/ask/row.test.ts: a line of a batch: what counts as a message, and that its id goes out as it came in.
import { expect, test } from 'vitest'
import { readRow } from '../../../bot/ask/row.ts'

test.each(['1', '"1"', '12345678901234567890', '1.5', 'null', '{"a":[1]}'])('id %s keeps its type and digits', (id) => {
  const row = readRow(`{"id": ${id}, "text": "RIR"}`)
  expect(row.ok && JSON.stringify(row.value.id)).toBe(id)
})

test('only id and text are needed; a message counts as addressed unless it says not', () => {
  const row = readRow('{"id": 1, "text": "RIR"}')
  expect(row).toEqual({ ok: true, value: { id: 1, text: 'RIR', addressed: true } })
  const full = readRow('{"id":1,"text":"RIR","context":"hi","addressed":false,"at":"2027-03-01","more":true}')
  expect(full.ok && full.value).toMatchObject({ context: 'hi', addressed: false, at: '2027-03-01' })
})

test.each([
  ['', 'not JSON'],
  ['RIR over BR', 'not JSON'],
  ['[1]', 'no object'],
  ['"text"', 'no object'],
  ['{"id": 1}', '"text"'],
  ['{"text": "RIR"}', '"id"'],
  ['{"id": 1, "text": 5}', '"text"'],
  ['{"id": 1, "text": "RIR", "at": "tomorrow"}', '"at"'],
])('the line %s is no message, and the fault says why', (line, why) => {
  const row = readRow(line)
  expect(row.ok ? '' : row.fault).toContain(why)
})
