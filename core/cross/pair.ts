// core/cross/pair.ts: the two parents of a mating with their pedigrees, in every way they may have come about.
import type { Parent } from '../engine/mating.ts'
import type { BirdRef } from '../question.ts'
import type { Genotype, Sex } from '../vocabulary.ts'
import { outcome } from './outcome.ts'
import { groundFor, origins, settle, type Pedigree } from './pedigree.ts'

export type Mating = { readonly sire: BirdRef; readonly dam: BirdRef }
/** `weight`: belief in this way; `as`: the way in words, '' where there is only one. */
export type Pair = { readonly sire: Pedigree; readonly dam: Pedigree; readonly weight: number; readonly as: string }

export const bredOn = ({ sire, dam }: Pair): boolean => sire.kind === 'bred' || dam.kind === 'bred'

/** Ids of the founders that are mated themselves. */
export const parentsIn = ({ sire, dam }: Pair): ReadonlySet<string> =>
  new Set([sire, dam].flatMap((one) => (one.kind === 'founder' ? [one.founder.id] : [])))

/** Is it in doubt how linked genes lie in one of the two? */
export const hangsOnPhase = ({ sire, dam }: Pair): boolean =>
  [sire, dam].some(
    (one) =>
      one.kind === 'founder' &&
      one.founder.doubts.some(({ choices }) => choices.some(({ phase }) => phase !== undefined)),
  )

/** Every way the two parents may have come about. Birds of one named hybrid are taken to be made alike. */
export function pairs({ sire, dam }: Mating): readonly Pair[] {
  const ground = groundFor(sire, dam)
  const [sires, dams] = [origins(sire, 'M', ground), origins(dam, 'F', ground)]
  const alike = sire.breed !== undefined && sire.breed === dam.breed && sires.length > 1
  return sires.flatMap((s, at) =>
    (alike ? dams.slice(at, at + 1) : dams).map((d) => ({
      sire: s.pedigree,
      dam: d.pedigree,
      weight: alike ? s.weight : s.weight * d.weight,
      as: alike
        ? s.as && `both are bred from ${s.as}`
        : [s.as && `the cock is bred from ${s.as}`, d.as && `the hens are bred from ${d.as}`]
            .filter(Boolean)
            .join(', and '),
    })),
  )
}

/** A parent's own genotype; of a cross-bred one, that of its commonest kind. */
export function genotypeOf(parent: Parent, sex: Sex): Genotype {
  if (!('cross' in parent)) return parent.genotype
  const [commonest] = outcome(parent.cross.sire, parent.cross.dam)[sex].kinds
  return { ...commonest?.genotypes[0], ...parent.genotype }
}

/** Genotypes of both parents as they most likely are; of a cross-bred one, those of its commonest kind. */
export function parentGenotypes(sire: BirdRef, dam: BirdRef): { readonly sire: Genotype; readonly dam: Genotype } {
  const [likeliest] = pairs({ sire, dam }).toSorted((a, b) => b.weight - a.weight)
  return {
    sire: genotypeOf(settle(likeliest!.sire, new Map()), 'M'),
    dam: genotypeOf(settle(likeliest!.dam, new Map()), 'F'),
  }
}
