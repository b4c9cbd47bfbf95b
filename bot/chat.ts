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
  const service: Service = {
    transport: terminal(
      { input: stdin, output: stdout, coloured, ...(columns === undefined ? {} : { columns }) },
      Date.now,
    ),
    desk: deskInMemory(),
    settingsOf: () => ({ prefix: '', listens: false }),
    draw: () => Promise.resolve(undefined),
    log: (fault) => void stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`),
  }
  if (columns !== undefined) stdout.write(`${wrapped(`${asText(greeting)} ${quit}`, columns)}\n\n`)
  await service.transport.listen((message) => serve(service, message), stop.signal)
}
