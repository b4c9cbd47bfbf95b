// core/engine/memo.ts: a pure function that remembers what it made.

/** @param key equal for arguments that give the same */
export function memo<A extends readonly unknown[], R>(
  key: (...args: A) => string,
  make: (...args: A) => R,
): (...args: A) => R {
  const known = new Map<string, R>()
  return (...args) => {
    const at = key(...args)
    if (!known.has(at)) known.set(at, make(...args))
    return known.get(at)!
  }
}
