// core/answers/hatch/sexed.ts: how surely the chicks of the very cross that is set are sexed at hatch.
import { mate } from '../../cross/mate.ts'
import type { HatchQuestion } from '../../question.ts'

/** Share of chicks that end in the right pen, in the likeliest case; null where no cross is told, or it cannot be sexed. */
export function sexingAccuracy({ mating }: HatchQuestion): number | null {
  if (!mating) return null
  const [likeliest] = mate(mating.sire, mating.dam, { hen: false, reverse: false }).cases
  return likeliest && likeliest.sexing.verdict === 'yes' ? likeliest.sexing.accuracy : null
}
