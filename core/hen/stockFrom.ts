// core/hen/stockFrom.ts: from a record of the catalogue to the line that the hen model reckons with.
import type { Breed, Line } from '../breeds.ts'
import { firstEgg } from '../data/hen/laying.ts'
import { brown } from '../data/hen/shell.ts'
import type { Span, Status } from '../vocabulary.ts'
import { kindredOf } from './distance.ts'
import { mapSpan } from './span.ts'
import type { Purpose, Stock } from './stock.ts'

const purposes: Readonly<Record<string, Purpose>> = {
  production: 'production',
  heritage: 'kept for use',
  exhibition: 'exhibition',
}
function purposeOf(breed: Breed, line: Line | undefined): Purpose {
  if (breed.type === 'landrace') return 'landrace'
  return purposes[line?.id ?? ''] ?? (breed.type === 'hybrid' ? 'production' : 'hatchery')
}

const about = (x: number, share: number): Span => ({ low: x * (1 - share), likely: x, high: x * (1 + share) })
const level = { low: 0, medium: 1, high: 2 } as const

const flights: readonly (readonly [RegExp, number])[] = [
  [/wild/, 4],
  [/flighty|nervous/, 3],
  [/very calm/, 0],
  [/calm|friendly|placid|aloof/, 1],
  [/not known/, 1.25],
]
const flightOf = (temper: string): number => flights.find(([words]) => words.test(temper))?.[1] ?? 2

function firstEggOf(breed: Breed, purpose: Purpose): Span {
  const later = (firstEgg.byFamily as Readonly<Record<string, number>>)[breed.family] ?? 0
  return mapSpan(firstEgg.byPurpose[purpose], (days) => days + later)
}

/** Weight of a line whose record gives only the other sex: in the proportion of the standard. */
function weightsOf({ weights }: Breed, line: Line | undefined): { readonly hen: number; readonly cock: number } {
  const ratio = weights.cockKg / weights.henKg
  const hen = line?.henKg ?? (line?.cockKg === undefined ? weights.henKg : line.cockKg / ratio)
  return { hen, cock: line?.cockKg ?? hen * ratio }
}

/** With no line told the usual one stands for the bird, and the range takes in the breed's other lines. */
export function stockFrom(breed: Breed, told: Line | undefined): Stock {
  const line = told ?? breed.lines.find((l) => l.id === breed.usualLine)
  const purpose = purposeOf(breed, line)
  const weights = weightsOf(breed, line)
  const brownScore = line?.brownScore ?? breed.shell.brownScore
  const barring = breed.genes['B']
  return {
    id: told ? `${breed.name}/${told.id}` : breed.name,
    name: told ? `${told.id} ${breed.name}` : breed.name,
    family: breed.family,
    type: breed.type === 'hybrid' || breed.type === 'described' ? 'heavy' : breed.type,
    purpose,
    eggsFirstYear: told?.eggsFirstYear ?? breed.eggsFirstYear,
    ageFirstEggDays: firstEggOf(breed, purpose),
    eggWeightGrams: about(line?.eggGrams ?? breed.eggGrams.likely, 0.05),
    henKg: about(weights.hen, 0.08),
    cockKg: about(weights.cock, 0.08),
    brownScore,
    paleZ: kindredOf(breed.family) === 'mediterranean' && brownScore < brown.whiteBelow,
    broodyRate: line?.broodyRate ?? breed.broody.rate,
    calm: flightOf(breed.temper),
    sharp: /aggressive|assertive|sharp|fights/.test(breed.temper),
    cold: level[breed.hardiness.cold],
    heat: level[breed.hardiness.heat],
    barred: barring?.kind === 'fixed' && barring.allele === 'B',
    comb: breed.comb,
    status: statusOf(breed, told),
  }
}

const statusOf = (breed: Breed, line: Line | undefined): Status =>
  line?.eggsFirstYear?.status ?? breed.eggsFirstYear.status
