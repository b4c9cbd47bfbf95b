// test/matrix/with/echoBot.ts: the bot as a process, with an echo in place of its head: says back what it was asked. Settings by environment.
import { loadConfig } from '../../../bot/config.ts'
import { spokenTo } from '../../../bot/spokenTo.ts'
import { runMatrix } from '../../../bot/transports/matrix.ts'
import type { Service } from '../../../bot/serve.ts'
import type { Incoming } from '../../../bot/transport.ts'

const asReply = (text: string) => ({ text, html: `<p>${text}</p>` })

async function serve({ transport, desk, settingsOf }: Service, incoming: Incoming): Promise<void> {
  const { id } = incoming
  if (incoming.kind === 'joined') return void (await transport.reply(id, incoming, asReply('hello'), `${id}.greeting`))
  const before = desk.answerTo(id)
  if (incoming.kind === 'withdrawn') {
    if (before) await transport.withdraw(before.text, incoming, `${id}.no-text`)
    return desk.dropAnswer(id)
  }
  const spoken = spokenTo(incoming, settingsOf(incoming.room))
  if (spoken.to !== 'us') return
  if (spoken.text.startsWith('throw')) throw new Error('a fault of the head')
  const reply = asReply(`re: ${spoken.text}`)
  if (before && incoming.kind === 'edited')
    await transport.amend(before.text, incoming, reply, `${incoming.editId}.text`)
  else await transport.reply(id, incoming, reply, `${id}.text`)
  if (incoming.kind === 'said') await transport.seen(id, incoming.room)
}

const config = loadConfig()
if (!config.ok) {
  process.stderr.write(`${config.fault.join('\n')}\n`)
  process.exit(2)
}
const { ECHO_PATIENCE: patience } = process.env
await runMatrix(config.value, {
  serve,
  draw: () => Promise.resolve(undefined),
  ...(patience === undefined ? {} : { patience: Number(patience) }),
})
