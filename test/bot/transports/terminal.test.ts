// test/bot/transports/terminal.test.ts: the terminal: lines in, replies out, words never broken, colours only beside words.
import { PassThrough } from 'node:stream'
import { text } from 'node:stream/consumers'
import { expect, test } from 'vitest'
import { terminal, wrapped, type Screen } from '../../../bot/transports/terminal.ts'
import type { Reply, Said } from '../../../bot/transport.ts'

const screen = (input: string, rest: Partial<Screen> = {}) => {
  const [into, output] = [new PassThrough(), new PassThrough()]
  into.end(input)
  return { input: into, output, coloured: false, ...rest }
}
const place = { room: 'terminal', person: 'you' }
const reply: Reply = {
  text: 'Yes.\nCockerels: pale yellow.',
  html: '',
  swatches: [{ colours: ['#f8ecae'], words: 'cockerel chicks' }],
}

test('each line typed is one message, blank ones are none, and end of input ends the chat', async () => {
  const heard: Said[] = []
  const chat = terminal(screen('RIR over BR\n\neggs?'), () => 5)
  await chat.listen(
    async (message) => void (message.kind === 'said' && heard.push(message)),
    new AbortController().signal,
  )
  expect(heard.map((m) => m.text)).toEqual(['RIR over BR', 'eggs?'])
  expect(new Set(heard.map((m) => m.id)).size).toBe(2)
  expect(heard[0]).toMatchObject({ sentAt: 5, cues: { direct: true } })
})

test('told to stop, it ends though input goes on', async () => {
  const stop = new AbortController()
  const open = { input: new PassThrough(), output: new PassThrough(), coloured: false }
  const listening = terminal(open, () => 0).listen(() => Promise.resolve(), stop.signal)
  stop.abort()
  await listening
})

async function printed(rest: Partial<Screen>): Promise<string> {
  const output = new PassThrough()
  await terminal({ ...screen('', rest), output }, () => 0).reply('1', place, reply, 'key')
  output.end()
  return text(output)
}

test('without colour the text is as written, with nothing added', async () => {
  expect(await printed({})).toBe(`${reply.text}\n\n`)
})

test('with colour every patch has its words beside it', async () => {
  const shown = await printed({ coloured: true })
  expect(shown).toContain('\u001B[48;2;248;236;174m')
  expect(shown).toContain('\u001B[0m cockerel chicks')
})

test('lines break between words; what follows a number is set in', () => {
  const line = '1. Rhode Island Red over Light Sussex: can be sexed at hatch by the colour of the down'
  const rows = wrapped(line, 40).split('\n')
  expect(rows.every((row) => row.length < 40)).toBe(true)
  expect(rows[1]).toMatch(/^ {3}\S/)
  expect(rows.join(' ').replace(/ +/g, ' ')).toBe(line)
})
