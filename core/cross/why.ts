// core/cross/why.ts: why a mating cannot be sexed at hatch, as one clause, from the parents' genes and the chicks' looks.
import type { Hatch } from '../sexing/hatch.ts'
import type { Genotype } from '../vocabulary.ts'

const has = (genotype: Genotype, locus: string, allele: string): boolean => genotype[locus]?.includes(allele) ?? false
const pure = (genotype: Genotype, locus: string, allele: string): boolean =>
  genotype[locus]?.every((carried) => carried === allele) ?? false
const mixed = (genotype: Genotype, locus: string): boolean => new Set(genotype[locus]).size > 1

/** Black or birchen ground: what lies in S cannot be seen. */
const dark = (genotype: Genotype): boolean => has(genotype, 'E', 'E') || has(genotype, 'E', 'E^R')

const all = ({ M, F }: Hatch, test: (look: Hatch['M'][number]['look']) => boolean): boolean =>
  [...M, ...F].every(({ look }) => test(look))

/** Reasons in order of weight; the first that holds is given. */
export function whyNot(sire: Genotype, dam: Genotype, hatch: Hatch, colourTold: boolean): string {
  if (!colourTold) return 'that hangs on the parents’ colours, which are not told'
  const hidden = all(hatch, ({ chick }) => chick.ground === 'hidden')
  const silverHen = has(dam, 'S', 'S')
  if (all(hatch, ({ plumage }) => plumage.white) && hidden) return 'white hides every colour sign'
  if (pure(sire, 'B', 'B'))
    return has(dam, 'B', 'B')
      ? 'both parents are barred, so every chick is'
      : 'a barred cock bars sons and daughters alike; the bars must be on the hen'
  if (mixed(sire, 'B')) return 'the cock has one copy of barring, so half the sons and half the daughters get it'
  if (!hidden && pure(sire, 'S', 'S'))
    return silverHen
      ? 'both parents are silver, so every chick is'
      : 'a silver cock makes sons and daughters silver alike; the silver must be on the hen'
  if (!hidden && mixed(sire, 'S')) return 'the cock carries gold and silver both, so sons and daughters come in either'
  if (silverHen && pure(sire, 'S', 's+') && (has(sire, 'I', 'I') || has(dam, 'I', 'I')))
    return 'dominant white pales the down, so that gold and silver cannot be read in it'
  if (hidden && silverHen && dark(sire) && !dark(dam)) return 'the cock’s black hides gold and silver in the chicks'
  if (!hidden && !silverHen) return 'the hens have no silver and no bars to give to their sons alone'
  return 'cockerels and pullets hatch in the same down, and the hens have no bars to give to their sons alone'
}
