// bot/main.ts: `npm start`: a chat in the terminal where no homeserver is configured, else the bot in its rooms.
import { loadConfig } from './config.ts'

const config = loadConfig()
if (!config.ok) {
  process.stderr.write(`The settings do not hold:\n${config.fault.map((fault) => `- ${fault}\n`).join('')}`)
  process.exitCode = 2
} else if (config.value.matrix) {
  const { runMatrix } = await import('./transports/matrix.ts')
  await runMatrix(config.value)
} else {
  const { chat } = await import('./chat.ts')
  await chat()
}
