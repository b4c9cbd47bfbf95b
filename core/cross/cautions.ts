// core/cross/cautions.ts: which cautions a mating calls for, and the one that is shown.
import type { Caution, Crossed } from '../answer.ts'
import { cautionFor, cautionsFor, matingCautions, type CautionId } from '../data/cautions.ts'
import type { Aspect, BirdRef } from '../question.ts'
import { parentGenotypes } from './pair.ts'

type Mating = { readonly sire: BirdRef; readonly dam: BirdRef }

const same = (a: BirdRef, b: BirdRef): boolean => JSON.stringify(a) === JSON.stringify(b)
const fullSibs = ({ sire, dam }: Mating): boolean =>
  sire.cross !== undefined &&
  dam.cross !== undefined &&
  same(sire.cross.sire, dam.cross.sire) &&
  same(sire.cross.dam, dam.cross.dam)

/** Cautions due for a mating, in no order. Sexed chicks mean that somebody will not want the cockerels. */
function due(crossed: Crossed, mating: Mating): readonly CautionId[] {
  const { sire, dam } = parentGenotypes(mating.sire, mating.dam)
  const sexed = crossed.cases.some(({ sexing }) => sexing.verdict !== 'no')
  return [
    ...matingCautions(sire, dam),
    ...(sexed ? (['surplusMales'] as const) : []),
    ...(fullSibs(mating) ? (['inbreeding'] as const) : []),
  ]
}

/** At most one, or all of them where welfare is what was asked. */
export function crossCautions(crossed: Crossed, mating: Mating, aspects: readonly Aspect[]): readonly Caution[] {
  const ids = due(crossed, mating)
  return aspects.includes('welfare') ? cautionsFor(ids) : cautionFor(ids)
}
