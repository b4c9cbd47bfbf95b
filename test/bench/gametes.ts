// test/bench/gametes.ts: the plain way to do a cross, as fast as plain goes: every gamete with every gamete, in typed arrays.

/**
 * Two parents unlike at `loci` unlinked loci: 2^loci gametes of each, all pairs, counted by phenotype class
 * (dominant or not at each locus).
 *
 * @returns the share of each of the 2^loci classes; bit i set = recessive at locus i
 */
export function everyGamete(loci: number): Float64Array {
  const gametes = 2 ** loci
  const classes = new Float64Array(gametes)
  const chance = 1 / (gametes * gametes)
  for (let sperm = 0; sperm < gametes; sperm += 1)
    for (let egg = 0; egg < gametes; egg += 1) classes[sperm & egg]! += chance
  return classes
}
