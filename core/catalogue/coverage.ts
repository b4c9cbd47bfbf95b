// core/catalogue/coverage.ts: how much of what the bot knows was read, is practice, or is from memory: plain counts.
import { breeds, type Breed } from '../breeds.ts'
import { rules } from '../looks/rules.ts'
import { topics } from '../topics.ts'
import type { Status } from '../vocabulary.ts'

type Count = { readonly what: string; readonly facts: number } & Readonly<Record<Status, number>>

const counted = (what: string, statuses: readonly Status[]): Count => {
  const of = (status: Status): number => statuses.filter((one) => one === status).length
  return {
    what,
    facts: statuses.length,
    read: of('read'),
    'common practice': of('common practice'),
    'from memory': of('from memory'),
  }
}

const genesIn = (breed: Breed): readonly Status[] =>
  [breed.genes, ...breed.lines.map(({ genes }) => genes ?? {})].flatMap((genes) =>
    Object.values(genes).map(({ status }) => status),
  )

const figuresIn = (breed: Breed): readonly Status[] => [
  breed.shell.status,
  breed.weights.status,
  breed.eggGrams.status,
  breed.eggsFirstYear.status,
  breed.broody.status,
  breed.hardiness.status,
  ...breed.lines.flatMap(({ eggsFirstYear, status, henKg, cockKg, eggGrams, broodyRate, brownScore }) => [
    ...(eggsFirstYear ? [eggsFirstYear.status] : []),
    ...[henKg, cockKg, eggGrams, broodyRate, brownScore].filter((figure) => figure !== undefined).map(() => status),
  ]),
]

const order: readonly Status[] = ['read', 'common practice', 'from memory']
/** A record stands as well as the best of its sources. */
const best = (sources: readonly { readonly status: Status }[]): Status =>
  order.find((status) => sources.some((source) => source.status === status)) ?? 'from memory'

export type Coverage = {
  readonly birds: number
  readonly counts: readonly Count[]
  readonly confidence: Readonly<Record<string, number>>
}

export function coverage(): Coverage {
  const real = breeds.filter(({ type }) => type !== 'described')
  const records = real.flatMap((breed) => Object.values(breed.genes))
  const sure = (level: string): number => records.filter(({ confidence }) => confidence === level).length
  return {
    birds: breeds.length,
    counts: [
      counted('genes of birds', real.flatMap(genesIn)),
      counted('figures of birds', real.flatMap(figuresIn)),
      counted(
        'rules of looks',
        rules.map(({ source }) => source.status),
      ),
      counted(
        'facts and beliefs',
        topics.map(({ sources }) => best(sources)),
      ),
    ],
    confidence: { high: sure('high'), medium: sure('medium'), low: sure('low') },
  }
}
