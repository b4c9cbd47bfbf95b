// core/hen/stockOf.ts: from a bird of the catalogue to the line, or for a hybrid the two lines, that the hen model reckons with.
import { breedNamed, breeds, lineOf, type Breed, type Line } from '../breeds.ts'
import { crossing } from '../data/hen/crossing.ts'
import { firstEgg } from '../data/hen/laying.ts'
import { brown } from '../data/hen/shell.ts'
import type { BirdRef } from '../question.ts'
import type { Span, Status } from '../vocabulary.ts'
import { distance, kindredOf } from './distance.ts'
import { mapSpan } from './span.ts'
import type { Purpose, Stock } from './stock.ts'

/** A line bred pure, or a named hybrid: the first cross of two lines that lay, weigh and sit alike. */
export type Founder =
  | { readonly kind: 'pure'; readonly stock: Stock }
  | { readonly kind: 'hybrid'; readonly sire: Stock; readonly dam: Stock }

/** Where nothing at all is told of a bird. */
const unknownBird = 'Mixed breed'

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
function stockFrom(breed: Breed, told: Line | undefined): Stock {
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

/** What the lines of a hybrid would lay bred pure: its own figure less what crossing them gained. */
function lessGain(stock: Stock, apart: number): Stock {
  const less = (trait: 'eggsFirstYear' | 'ageFirstEgg' | 'eggWeight' | 'bodyWeight') => (span: Span) =>
    mapSpan(span, (x) => x / (1 + crossing[trait].heterosis.likely * apart))
  return {
    ...stock,
    eggsFirstYear: less('eggsFirstYear')(stock.eggsFirstYear),
    ageFirstEggDays: less('ageFirstEgg')(stock.ageFirstEggDays),
    eggWeightGrams: less('eggWeight')(stock.eggWeightGrams),
    henKg: less('bodyWeight')(stock.henKg),
    cockKg: less('bodyWeight')(stock.cockKg),
  }
}

function founderFrom(breed: Breed, line: Line | undefined): Founder {
  const stock = stockFrom(breed, line)
  const parents = breed.madeFrom?.toSorted((a, b) => b.weight - a.weight)[0]
  const [sire, dam] = [breedNamed(parents?.sire ?? ''), breedNamed(parents?.dam ?? '')]
  if (!sire || !dam) return { kind: 'pure', stock }
  const side = (of: Breed, part: string): Stock => ({
    ...stock,
    id: `${stock.id}, ${part}`,
    family: of.family,
    type: of.type === 'light' ? 'light' : 'heavy',
    barred: false,
  })
  const [one, other] = [side(sire, 'sire line'), side(dam, 'dam line')]
  const apart = distance(one, other)
  return { kind: 'hybrid', sire: lessGain(one, apart), dam: lessGain(other, apart) }
}

const founders: ReadonlyMap<string, Founder> = new Map(
  breeds.flatMap((breed) => [
    [breed.name, founderFrom(breed, undefined)] as const,
    ...breed.lines.map((line) => [`${breed.name}/${line.id}`, founderFrom(breed, line)] as const),
  ]),
)

/** A bird that no name fits is taken as of mixed breed. */
export function stockOf(bird: BirdRef): Founder {
  const breed = breedNamed(bird.breed ?? unknownBird) ?? breedNamed(unknownBird)
  if (!breed) throw new Error(`the catalogue has no ${unknownBird}`)
  const line = lineOf(breed, bird.line)
  return founders.get(line ? `${breed.name}/${line.id}` : breed.name)!
}
