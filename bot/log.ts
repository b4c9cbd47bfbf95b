// bot/log.ts: structured logs, one JSON line an event: no message texts, no tokens, rooms and people only as hashes.
import { createHash } from 'node:crypto'
import { pino, type Logger } from 'pino'

export type Log = Logger

/** The same eight letters for the same room, in every log, and no way back to its id. */
export const hashed = (id: string): string => createHash('sha256').update(id).digest('hex').slice(0, 8)

const longestLine = 500 // characters; a library's line may quote a whole response

/** As they stand in an address: %40wren%3Amarlpit.test. */
const plainSigns = (line: string): string =>
  line.replaceAll(/%(?:21|24|40|3a)/giu, (coded) => decodeURIComponent(coded))

/** A library's own line: ids become hashes, tokens and keys go, the rest is cut to a length. */
export const scrubbed = (line: string): string =>
  plainSigns(line)
    .replaceAll(/\b(?:syt|mct|mat)_[\w-]+/gu, '[token]')
    .replaceAll(/(access_token|password|Bearer)(["':=\s]+)[^\s"',}&]+/giu, '$1$2[token]')
    .replaceAll(/[!@$][\w.~=/+-]+(?::[\w.-]+(?::\d+)?)?/gu, (id) => `${id[0]}${hashed(id)}`)
    .slice(0, longestLine)

/** Where a fault of ours arose, and of what kind it is: its message may quote what somebody wrote. */
export const placeOf = (fault: unknown): string => {
  if (!(fault instanceof Error)) return typeof fault
  const frames = (fault.stack ?? '').split('\n').filter((line) => /^\s+at /u.test(line))
  return [fault.name, ...frames.slice(0, mostFrames).map((frame) => frame.trim())].join(' ')
}
const mostFrames = 4

const secretPaths = ['password', 'accessToken', 'recoveryKey', 'access_token', 'headers.authorization', 'body', 'text']

/**
 * Standard output, line by line and at once, so that the last words before an exit get out; where nobody reads any
 * more, they are lost. (The library's own writer tries for ever then, and the process never ends.)
 */
const standardOutput = (): { readonly write: (line: string) => void } => {
  process.stdout.on('error', () => undefined)
  return { write: (line) => void process.stdout.write(line) }
}

/** @param level the least that is written; message texts are on no level */
export function openLog(level: string, destination?: NodeJS.WritableStream): Log {
  const options = {
    level,
    base: null,
    timestamp: pino.stdTimeFunctions.isoTime,
    formatters: { level: (label: string) => ({ level: label }) },
    serializers: { error: (error: unknown) => scrubbed(String(error)) },
    redact: { paths: secretPaths.flatMap((path) => [path, `*.${path}`]), censor: '[hidden]' },
  }
  return pino(options, destination ?? standardOutput())
}
