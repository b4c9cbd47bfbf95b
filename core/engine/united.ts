// core/engine/united.ts: things that belong together, gathered.

/** Groups gathered into sets so that each tie lies in one set. */
export function united(
  groups: readonly number[],
  ties: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  let sets: number[][] = groups.map((group) => [group])
  for (const tie of ties) {
    const touched = sets.filter((set) => set.some((group) => tie.includes(group)))
    sets = [...sets.filter((set) => !touched.includes(set)), touched.flat().toSorted((a, b) => a - b)]
  }
  return sets
}
