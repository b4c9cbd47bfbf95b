// bot/chat.ts: the conversation in the terminal, from greeting to end of input.
import { deskInMemory } from './desk.ts'
import { asText } from './render/text.ts'
import { greeting } from './render/sentences.ts'
import { serve, type Service } from './serve.ts'
import { terminal, wrapped } from './transports/terminal.ts'

const trueColour = 24
const quit = 'End with Ctrl-D.'

/** Resolves at end of input or Ctrl-C. */
export async function chat({ stdin, stdout, stderr } = process): Promise<void> {
  const stop = new AbortController()
  process.once('SIGTERM', () => stop.abort())
  const columns = stdin.isTTY && stdout.isTTY ? stdout.columns : undefined
  const coloured = stdout.isTTY && stdout.getColorDepth() >= trueColour
  const room = { input: stdin, output: stdout, coloured, ...(columns === undefined ? {} : { columns }) }
  const transport = terminal(room, Date.now)
  const service: Service = {
    transport,
    desk: deskInMemory(),
    settingsOf: () => ({ prefix: '', listens: false }),
    draw: () => Promise.resolve(undefined),
    log: (fault) => void stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`),
  }
  if (columns !== undefined) stdout.write(`${wrapped(`${asText(greeting)} ${quit}`, columns)}\n\n`)
  await transport.listen((message) => serve(service, message), stop.signal)
}
