// grammar/follow/cross.ts: the cross before once more: its birds, what was asked of it, and what lasts.
import { commonOf } from '../read/common.ts'
import type { Aspect, Assumed, BirdRef, CrossQuestion } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'
import type { Reading } from '../reading.ts'

export type Mating = CrossQuestion['matings'][number]

const nameOf = (ref: BirdRef): string =>
  [
    ref.line,
    ref.breed ?? (ref.cross ? `${nameOf(ref.cross.sire)} x ${nameOf(ref.cross.dam)}` : (ref.asWritten ?? 'the bird')),
  ]
    .filter(Boolean)
    .join(' ')

export const restated = ({ sire, dam }: Mating): Assumed => ({
  kind: 'context',
  restated: `${nameOf(sire)} on ${nameOf(dam)}`,
})

/** "why" and "more" were asked of the birds before; what else was asked holds for the new ones too. */
export const lasting = ({ aspects }: CrossQuestion): readonly Aspect[] =>
  aspects.filter((aspect) => aspect !== 'why' && aspect !== 'more')

export function crossAgain(
  base: CrossQuestion,
  matings: readonly Mating[],
  aspects: readonly Aspect[],
  reading: Reading,
): CrossQuestion {
  const common = commonOf(reading)
  const { shown: _, ...rest } = base
  return {
    ...rest,
    matings,
    aspects: [...new Set(aspects)],
    assumed: [...common.assumed, ...matings.slice(0, 2).map(restated)],
    manner:
      reading.manner.symbols || reading.manner.units !== 'both' ? { ...base.manner, ...reading.manner } : base.manner,
  }
}

// --- birds put in the place of others ---

export const withBird = (mating: Mating, part: Sex, bird: BirdRef): Mating =>
  part === 'M' ? { ...mating, sire: bird } : { ...mating, dam: bird }

export const inPlace = ({ sire, dam }: Mating, part: Sex): BirdRef => (part === 'M' ? sire : dam)
