// core/cross/linked.ts: which shares of a cross hang on how often linked genes part, said so that a keeper can judge them.
import { linkageGroups } from '../data/linkage.ts'
import { parting } from '../data/parting.ts'
import { chickGroups } from '../engine/cross.ts'
import type { Mating } from '../engine/mating.ts'
import { carriedName } from '../flock/carriedName.ts'
import { loci as book } from '../data/loci.ts'
import type { BirdRef } from '../question.ts'
import type { Genotype, LinkageGroup, Locus } from '../vocabulary.ts'
import type { Choice } from './founder.ts'
import { pairs } from './pair.ts'
import { foundersOf, settle, type Pedigree } from './pedigree.ts'

/** 'slow feathering and silver are linked: they part in 2 or 3 of 100 chicks'; empty where no share hangs on it. */
export function linkageNotes(sire: BirdRef, dam: BirdRef): readonly string[] {
  const [likeliest] = pairs({ sire, dam }).toSorted((a, b) => b.weight - a.weight)
  if (likeliest === undefined) return []
  const mating = {
    sire: settle(likeliest.sire, phases(likeliest.sire)),
    dam: settle(likeliest.dam, phases(likeliest.dam)),
  }
  return linkageGroups.filter(({ loci }) => loci.length > 1).flatMap((group) => notesOn(mating, group))
}

/** One way round for every bird whose linked genes may lie either way: which one does not matter here. */
const phases = (pedigree: Pedigree): ReadonlyMap<string, Choice> =>
  new Map(
    foundersOf(pedigree)
      .flatMap(({ doubts }) => doubts)
      .filter(({ choices }) => choices[0]?.phase !== undefined)
      .map(({ id, choices }) => [id, choices[0]!]),
  )

/** A fraction matters where the chicks would be others if these two never parted. */
function notesOn(mating: Mating, group: LinkageGroup): readonly string[] {
  const [as] = chickGroups(mating, [group])
  return group.r.flatMap((_, i) => {
    const words = parting[`${group.loci[i]} ${group.loci[i + 1]}`]?.words
    if (words === undefined || as === undefined || ![i, i + 1].every((at) => as.loci.includes(group.loci[at]!)))
      return []
    const [tight] = chickGroups(mating, [{ ...group, r: group.r.with(i, 0) }])
    if (shares(as.M, as.F) === shares(tight!.M, tight!.F)) return []
    const [one, other] = [i, i + 1].map((at) => nameOf(group.loci[at]!, [...as.M, ...as.F]))
    return [`${one} and ${other} are linked: they ${words}`]
  })
}

type Classes = readonly { readonly genotype: Genotype; readonly p: number }[]

const shares = (...sexes: readonly Classes[]): string =>
  sexes
    .flatMap((classes, sex) => classes.map(({ genotype, p }) => `${sex} ${JSON.stringify(genotype)} ${p.toFixed(4)}`))
    .filter((row) => !row.endsWith(' 0.0000'))
    .toSorted()
    .join('\n')

/** By the allele of the chicks that is not wild. */
function nameOf(locus: string, classes: Classes): string {
  const { wild } = (book as Readonly<Record<string, Locus>>)[locus]!
  const allele = classes.flatMap(({ genotype }) => genotype[locus] ?? []).find((one) => one !== wild)
  return carriedName(allele ?? wild)
}
