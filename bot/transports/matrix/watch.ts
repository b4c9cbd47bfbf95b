// bot/transports/matrix/watch.ts: is the bot still hearing? A sync that neither ends nor fails for minutes is a hung one.

export type Watch = {
  /** A sync has ended well. */
  readonly heard: () => void
  /** The server could not be reached, or refused: that is trouble, but no deafness, and the SDK goes on trying. */
  readonly failed: () => void
  /** Heard from the server within the last three minutes. */
  readonly isHearing: () => boolean
  /** Neither heard nor failed within the last three minutes. */
  readonly isDeaf: () => boolean
  readonly hasHeard: () => boolean
}

/** ms without a word; an idle server ends a sync after 30 s */
export const usualPatience = 180_000

export function watchOf(now: () => number, patience: number): Watch {
  let [lastHeard, lastSign] = [-Infinity, now()]
  return {
    heard: () => {
      lastHeard = now()
      lastSign = lastHeard
    },
    failed: () => {
      lastSign = now()
    },
    isHearing: () => now() - lastHeard < patience,
    isDeaf: () => now() - lastSign >= patience,
    hasHeard: () => lastHeard > -Infinity,
  }
}
