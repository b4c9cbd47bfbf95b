// core/cross/why.ts: why a mating cannot be sexed at hatch, as one clause, from the parents' genes and the chicks' looks.
import type { Hatch } from '../sexing/hatch.ts'
import type { Genotype } from '../vocabulary.ts'

const has = (genotype: Genotype, locus: string, allele: string): boolean => genotype[locus]?.includes(allele) ?? false
const pure = (genotype: Genotype, locus: string, allele: string): boolean =>
  genotype[locus]?.every((carried) => carried === allele) ?? false

const all = ({ M, F }: Hatch, test: (look: Hatch['M'][number]['look']) => boolean): boolean =>
  [...M, ...F].every(({ look }) => test(look))

/** Reasons in order of weight; the first that holds is given. */
export function whyNot(sire: Genotype, dam: Genotype, hatch: Hatch, colourTold: boolean): string {
  if (!colourTold) return 'that hangs on the parents’ colours, which are not told'
  const silverHen = has(dam, 'S', 'S')
  const barredHen = has(dam, 'B', 'B')
  if (all(hatch, ({ plumage }) => plumage.white)) return 'white hides every colour sign'
  if (has(sire, 'B', 'B') && barredHen) return 'both parents are barred, so every chick is'
  if (pure(sire, 'B', 'B')) return 'a barred cock bars sons and daughters alike; the bars must be on the hen'
  if (pure(sire, 'S', 'S') && !all(hatch, ({ chick }) => chick.ground === 'hidden'))
    return silverHen
      ? 'both parents are silver, so every chick is'
      : 'a silver cock makes sons and daughters silver alike; the silver must be on the hen'
  if (has(sire, 'S', 's+') && silverHen && all(hatch, ({ chick }) => chick.ground === 'hidden'))
    return 'black down hides gold and silver'
  if (has(sire, 'B', 'B') || (has(sire, 'S', 'S') && !all(hatch, ({ chick }) => chick.ground === 'hidden')))
    return 'the cock carries the mark himself, so both sexes show it'
  if (all(hatch, ({ chick }) => chick.ground === 'hidden'))
    return 'both sexes come in the same down, and the hens have no bars to give to their sons'
  return 'the hen has neither silver nor bars to give to her sons alone'
}
