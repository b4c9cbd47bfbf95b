// bot/ask.ts: the command line: one message, a file of messages, or a flock statement in; answers on stdout, nothing else.
import { perform } from './ask/perform.ts'

process.exitCode = await perform(process.argv.slice(2))
