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

/** The same for functions of one object, known by itself and not by a key. */
export function memoOf<K extends object, R>(make: (of: K) => R): (of: K) => R {
  const known = new WeakMap<K, R>()
  return (of) => {
    if (!known.has(of)) known.set(of, make(of))
    return known.get(of)!
  }
}
