// bot/transports/terminal.ts: a chat in the terminal: one line typed is one message, read by one person alone with the bot.
import { createInterface } from 'node:readline/promises'
import { styleText } from 'node:util'
import type { Readable, Writable } from 'node:stream'
import type { Place, Reply, Said, Swatch, Transport } from '../transport.ts'

export type Screen = {
  readonly input: Readable
  readonly output: Writable
  /** Columns of the screen, where it has any: lines are broken between words. */
  readonly columns?: number
  /** Colours may be used. */
  readonly coloured: boolean
}

const widest = 96
const here: Place = { room: 'terminal', person: 'you' }
const cues = { direct: true, mentioned: false, repliesTo: 'nobody', inOurThread: false } as const

/** Breaks one line between words; what follows a list mark is set in. */
export function wrapped(line: string, columns: number): string {
  const width = Math.max(20, Math.min(columns - 1, widest))
  const indent = ' '.repeat(/^(?:- |\d+\. )/.exec(line)?.[0].length ?? 0)
  let [row, ...rows]: [string, ...string[]] = ['']
  for (const word of line.split(' ')) {
    const longer = row === '' ? word : `${row} ${word}`
    if (longer.length <= width || row.trim() === '') row = longer
    else [rows, row] = [[...rows, row], indent + word]
  }
  return [...rows, row].join('\n')
}

/** A patch of 24-bit colour, two signs wide. */
function patch(colour: string): string {
  const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16))
  return `\u001B[48;2;${r};${g};${b}m  \u001B[0m`
}
const swatchLine = ({ colours, words }: Swatch): string => `${colours.map(patch).join('')} ${words}`

/** The verdict stands out; the rest is as it was written; colours stand below their words. */
function shown({ text, swatches = [] }: Reply, { columns, coloured }: Screen): string {
  const [first = '', ...rest] = text.split('\n').map((line) => (columns === undefined ? line : wrapped(line, columns)))
  if (!coloured) return [first, ...rest].join('\n')
  return [styleText('bold', first, { validateStream: false }), ...rest, ...swatches.map(swatchLine)].join('\n')
}

const say = (words: string, sentAt: number, n: number): Said => ({
  ...here,
  kind: 'said',
  id: `line ${n}`,
  text: words,
  sentAt,
  cues,
})

/** Ends at end of input, at Ctrl-C or Ctrl-D, and when told to stop. Time comes from `now`, so that a test can set it. */
export function terminal(screen: Screen, now: () => number): Transport {
  const print = (words: string): Promise<void> => new Promise((done) => void screen.output.write(words, () => done()))
  const prompt = screen.columns === undefined ? '' : '> '
  return {
    listen: async (handle, stop) => {
      const lines = createInterface({
        input: screen.input,
        output: screen.output,
        prompt,
        terminal: prompt !== '',
        signal: stop,
      })
      let open = true
      lines.once('close', () => (open = false))
      lines.on('SIGINT', () => lines.close())
      const ask = (): void => (open && prompt !== '' ? lines.prompt() : undefined)
      let n = 0
      ask()
      for await (const line of lines) {
        if (line.trim() !== '') await handle(say(line, now(), (n += 1)))
        ask()
      }
      if (prompt !== '') await print('\n')
    },
    reply: async (to, _at, reply) => {
      await print(`${shown(reply, screen)}\n\n`)
      return `reply to ${to}`
    },
    amend: (_sent, _at, reply) => print(`${shown(reply, screen)}\n\n`),
    withdraw: () => Promise.resolve(),
    show: (to) => Promise.resolve(`picture for ${to}`),
    seen: () => Promise.resolve(),
    typing: () => Promise.resolve(),
  }
}
