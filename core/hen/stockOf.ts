// core/hen/stockOf.ts: from a bird as named to its line, or for a named hybrid the two lines it is the first cross of.
import { breedNamed, breeds, lineOf, type Breed, type Line } from '../breeds.ts'
import { crossing } from '../data/hen/crossing.ts'
import type { BirdRef } from '../question.ts'
import type { Span } from '../vocabulary.ts'
import { distance } from './distance.ts'
import { mapSpan } from './span.ts'
import type { Stock } from './stock.ts'
import { stockFrom } from './stockFrom.ts'

/** A line bred pure, or a named hybrid: the first cross of two lines that lay, weigh and sit alike. */
export type Founder =
  | { readonly kind: 'pure'; readonly stock: Stock }
  | { readonly kind: 'hybrid'; readonly sire: Stock; readonly dam: Stock }

/** Where nothing at all is told of a bird. */
const unknownBird = 'Mixed breed'

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
