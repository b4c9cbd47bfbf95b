// core/hen/genome.ts: which lines a bird's genes come from, by chromosome set: the bookkeeping of crossbreeding.

/** Share of a gamete's genes by line id; the shares add to 1. */
export type Gamete = ReadonlyMap<string, number>

/** What a bird got from each parent, and the lines of its Z: two of them in a cock, one, her sire's, in a hen. */
export type Genome = { readonly fromSire: Gamete; readonly fromDam: Gamete; readonly zs: readonly Gamete[] }

/** The mean of several gametes, equal weight each. */
function blend(gametes: readonly Gamete[]): Gamete {
  const shares = new Map<string, number>()
  for (const gamete of gametes)
    for (const [line, share] of gamete) shares.set(line, (shares.get(line) ?? 0) + share / gametes.length)
  return shares
}

/** A bird of one line. */
export function pureGenome(line: string, sex: 'M' | 'F'): Genome {
  const gamete = new Map([[line, 1]])
  return { fromSire: gamete, fromDam: gamete, zs: sex === 'M' ? [gamete, gamete] : [gamete] }
}

/** Expected make-up of what a bird passes on. */
export const gameteOf = (bird: Genome): Gamete => blend([bird.fromSire, bird.fromDam])

/** A son has a Z of each parent; a daughter has her sire's alone: nothing on her dam's Z ever reaches her. */
export function offspring(sire: Genome, dam: Genome, sex: 'M' | 'F'): Genome {
  const sireZ = blend(sire.zs)
  return { fromSire: gameteOf(sire), fromDam: gameteOf(dam), zs: sex === 'M' ? [sireZ, blend(dam.zs)] : [sireZ] }
}

/** Share of loci at which the two genes of a bird come from these two different lines: 1 in a first cross, 1/2 in its F2. */
export function crossedShare(bird: Genome, one: string, other: string): number {
  const at = (gamete: Gamete, line: string): number => gamete.get(line) ?? 0
  return at(bird.fromSire, one) * at(bird.fromDam, other) + at(bird.fromSire, other) * at(bird.fromDam, one)
}
