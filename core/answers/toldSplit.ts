// core/answers/toldSplit.ts: a parent was told to hide a recessive, and nothing else is asked: how many chicks show that one is the answer.
import { shownIds, shownOf, type ShownId } from '../looks/shown.ts'
import type { Crossed } from '../answer.ts'
import type { Aspect, BirdRef } from '../question.ts'

const hides = ({ genotype = {} }: BirdRef, allele: string): boolean =>
  Object.values(genotype).some((pair) => pair.length === 2 && pair[1] === allele && pair[0] !== allele)

/** Only where the rest of the look hangs on doubts: else the verdict tells all the colours. */
export function toldSplit(
  { sire, dam }: { readonly sire: BirdRef; readonly dam: BirdRef },
  { cases }: Crossed,
  aspects: readonly Aspect[],
): readonly ShownId[] {
  if (cases.length < 2 || aspects.some((aspect) => aspect !== 'chicks' && aspect !== 'shares')) return []
  return shownIds.filter((id) => {
    const allele = id === 'split' ? undefined : shownOf(id).allele
    return allele !== undefined && allele !== 's+' && (hides(sire, allele) || hides(dam, allele))
  })
}
