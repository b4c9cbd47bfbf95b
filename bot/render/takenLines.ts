// bot/render/takenLines.ts: lines that nobody told, named beside their breeds instead of in a sentence of their own.

const usual = /^the lines are the usual ones: (.+)$/
const each = /([^,()]+) \(([^()]+)\)/g

/** 'Rhode Island Red (production) over Light Sussex (utility)'. */
export function withLines(mating: string, assumptions: readonly string[]): string {
  const taken = assumptions.flatMap((words) => usual.exec(words)?.[1] ?? [])
  const pairs = taken.flatMap((words) => [...words.matchAll(each)])
  return pairs.reduce(
    (name, [, breed = '', kind]) => name.replaceAll(breed.trim(), `${breed.trim()} (${kind})`),
    mating,
  )
}

/** What else was taken for granted. */
export const otherAssumptions = (assumptions: readonly string[]): readonly string[] =>
  assumptions.filter((words) => !usual.test(words))
