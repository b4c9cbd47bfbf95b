// grammar/words/entries.ts: the pairs of a word list, with the type of its keys kept.

export function entries<K extends string, V>(record: Readonly<Record<K, V>>): readonly (readonly [K, V])[] {
  const pairs: (readonly [K, V])[] = []
  for (const key in record) pairs.push([key, record[key]])
  return pairs
}
