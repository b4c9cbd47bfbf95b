// bot/render/symbols.ts: the genes behind the looks, for those who write in symbols.
import { grouped } from './chicks.ts'
import { mixture, type Telling } from './mixture.ts'
import type { LookShare } from '../../core/answer.ts'

/** Alleles that the keeper wrote himself, or all there are. */
export type Wanted = readonly string[] | 'all'

const pairs = ({ alleles }: LookShare): readonly string[] => alleles.split(' ').filter(Boolean)

/** Which pairs to show: those on which chicks differ, and those with an allele the keeper wrote. */
export function worthShowing(looks: readonly LookShare[], wanted: Wanted): (pair: string) => boolean {
  if (wanted === 'all') return () => true
  const everywhere = (pair: string): boolean => looks.every((one) => pairs(one).includes(pair))
  const written = (pair: string): boolean => pair.split('/').some((allele) => wanted.includes(allele))
  return (pair) => written(pair) || !everywhere(pair)
}

/** The genes of one sex with their shares. */
export const symbols = (looks: readonly LookShare[], telling: Telling, shown: (pair: string) => boolean): string =>
  mixture(
    grouped(looks, (one) => pairs(one).filter(shown).join(' ')),
    telling,
  )
