// bot/transports/matrix/sdkLog.ts: the SDK's own log lines, led into ours: warnings and worse, ids hashed, nothing of it at higher levels than it deserves.
import { logger as sdkLogger } from 'matrix-js-sdk/lib/logger.js'
import { scrubbed, type Log } from '../../log.ts'

type SdkLogger = ReturnType<typeof sdkLogger.getChild>

const isPlain = (part: unknown): part is string | number | boolean =>
  ['string', 'number', 'boolean'].includes(typeof part)
const words = (parts: readonly unknown[]): string =>
  scrubbed(
    parts
      .map((part) => (part instanceof Error ? `${part.name}: ${part.message}` : isPlain(part) ? String(part) : ''))
      .join(' '),
  )

/** Objects may hold message contents, so of them only errors are written. */
export function sdkLogOf(log: Log): SdkLogger {
  const ours: SdkLogger = {
    trace: () => undefined,
    debug: () => undefined,
    info: () => undefined,
    warn: (...parts) => log.debug({ sdk: words(parts) }, 'sdk'),
    error: (...parts) => log.warn({ sdk: words(parts) }, 'sdk'),
    getChild: () => ours,
  }
  return ours
}

/** Some parts of the SDK write to a logger of their own, whatever logger the client is given. */
export function quietSdk(log: Log): void {
  const ours = sdkLogOf(log)
  const factory = (name: string): SdkLogger['warn'] =>
    name === 'error' ? ours.error : name === 'warn' ? ours.warn : ours.debug
  Reflect.set(sdkLogger, 'methodFactory', factory)
  const rebuild: () => void = Reflect.get(sdkLogger, 'rebuild')
  rebuild.call(sdkLogger)
}
