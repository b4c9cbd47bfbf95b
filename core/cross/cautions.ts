// core/cross/cautions.ts: which cautions a mating calls for, and the one that is shown.
import type { Caution, Crossed } from '../answer.ts'
import { breedNamed } from '../breeds.ts'
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

/** What the broiler was made from. */
function makesMeatBirds({ sire, dam }: Mating): boolean {
  const families = [sire, dam].map(({ breed }) => (breed === undefined ? undefined : breedNamed(breed)?.family))
  return families.includes('Cornish') && families.includes('Plymouth Rock')
}

/** A cock of this many times the weight of the hen is a danger to her; of this little, he may fail. In one breed he weighs about 1.3 times as much. */
const twice = 2
const much = 0.6

/** Who of two named breeds is far the heavier. */
function unlikeInSize({ sire, dam }: Mating): readonly CautionId[] {
  const [cock, hen] = [sire, dam].map(({ breed }) => (breed === undefined ? undefined : breedNamed(breed)))
  if (!cock || !hen || cock.family === 'described' || hen.family === 'described') return []
  const ratio = cock.weights.cockKg / hen.weights.henKg
  return ratio >= twice ? ['heavyCock'] : ratio <= much ? ['smallCock'] : []
}

/** Cautions due for a mating, in no order. Sexed chicks mean that somebody will not want the cockerels. */
function due(crossed: Crossed, mating: Mating): readonly CautionId[] {
  const { sire, dam } = parentGenotypes(mating.sire, mating.dam)
  const sexed = crossed.cases.some(({ sexing }) => sexing.verdict !== 'no')
  return [
    ...matingCautions(sire, dam),
    ...unlikeInSize(mating),
    ...(sexed ? (['surplusMales'] as const) : []),
    ...(fullSibs(mating) ? (['inbreeding'] as const) : []),
    ...(makesMeatBirds(mating) ? (['meatStrains'] as const) : []),
  ]
}

/** Harm of what was told of both birds: it is said, whatever else of them may harm more. */
const toldHarm = ({ sire, dam }: Mating): readonly Caution[] =>
  cautionsFor(matingCautions(sire.genotype ?? {}, dam.genotype ?? {}))

/** At most one beside what was told of both, or all of them where welfare is what was asked. */
export function crossCautions(crossed: Crossed, mating: Mating, aspects: readonly Aspect[]): readonly Caution[] {
  const ids = due(crossed, mating)
  const told = toldHarm(mating)
  if (aspects.includes('welfare'))
    return [...told, ...cautionsFor(ids).filter(({ text }) => !told.some((one) => one.text === text))]
  return [...told, ...cautionFor(ids).filter(({ text }) => !told.some((one) => one.text === text))]
}
