// bot/transports/matrix/patience.ts: requests that obey "slow down" and wait out a server that is restarting, for all that the SDK asks.
import { setTimeout as sleep } from 'node:timers/promises'

export type Patience = {
  /** Told of each "slow down" (429) with the wait in milliseconds. */
  readonly slowedDown: (milliseconds: number) => void
  /** Ends every wait. */
  readonly stop: AbortSignal
  /** For tests: the shortest pause between two tries. */
  readonly firstPause?: number
}

const longestWait = 30_000 // ms; a server may name more, but then it is asked again a little early
const firstPause = 500 // ms
const tries = 6 // in about 15 seconds; what still fails is the caller's to try again later
const attemptLimit = 60_000 // ms for one answer

/** A little more than told, so that many waiting at once do not come back at once. */
const jittered = (milliseconds: number): number => Math.min(milliseconds, longestWait) * (1 + Math.random() / 5)

const waitTold = async (response: Response): Promise<number> => {
  const header = Number(response.headers.get('retry-after'))
  const body: unknown = await response.json().catch(() => undefined)
  const told =
    typeof body === 'object' && body !== null && 'retry_after_ms' in body ? Number(body.retry_after_ms) : header * 1000
  return Number.isFinite(told) && told > 0 ? told : 1000
}

const isSync = (url: URL): boolean => url.pathname.endsWith('/sync')
/** Done twice, it does what it does once. A login would leave a second device behind. */
const isRepeatable = (method: string, url: URL): boolean =>
  !isSync(url) && !(method === 'POST' && url.pathname.endsWith('/login'))
const isPassing = (status: number): boolean => status >= 500

const pause = (milliseconds: number, signals: readonly AbortSignal[]): Promise<unknown> =>
  sleep(milliseconds, undefined, { signal: AbortSignal.any([...signals]) })

/**
 * A `fetch` for the SDK. Waits as long as told after 429, however often. Tries again, with growing pauses, what failed
 * on the way or with 5xx, but not a sync: the SDK watches that itself.
 */
export function patientFetch({ slowedDown, stop, firstPause: first = firstPause }: Patience): typeof globalThis.fetch {
  return async (resource, options = {}) => {
    const url = new URL(resource instanceof Request ? resource.url : resource)
    const ending = options.signal ? [stop, options.signal] : [stop]
    const repeatable = isRepeatable(options.method ?? 'GET', url)
    const once = (): Promise<Response> => {
      const limits = isSync(url) ? ending : [...ending, AbortSignal.timeout(attemptLimit)]
      return fetch(resource, { ...options, signal: AbortSignal.any(limits) })
    }
    for (let failures = 0; ;) {
      const response = await once().catch((error: unknown) => {
        if (!repeatable || failures + 1 >= tries || ending.some((signal) => signal.aborted)) throw error
      })
      if (response?.status === 429) {
        const wait = jittered(await waitTold(response))
        slowedDown(wait)
        await pause(wait, ending)
        continue
      }
      if (response && !(repeatable && isPassing(response.status) && failures + 1 < tries)) return response
      await response?.body?.cancel()
      failures += 1
      await pause(jittered(first * 2 ** (failures - 1)), ending)
    }
  }
}
