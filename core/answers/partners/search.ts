// core/answers/partners/search.ts: candidates for a goal out of the whole catalogue: a first look at all, the best of them played through.
import { breedNamed, breeds, genesOf, lineOf, type Breed } from '../../breeds.ts'
import type { Crossed } from '../../answer.ts'
import { mate } from '../../cross/mate.ts'
import { findable, harmful, lineForGoal, tableBred } from '../../data/partners.ts'
import type { BirdRef, Goal } from '../../question.ts'
import type { Sex } from '../../vocabulary.ts'
import { carriesOf, quickGoal, quickSexing } from './quick.ts'
import { goalWorth, leastWorth, overCases } from './score.ts'

/** `wanted` is the part of the bird that is looked for. */
export type Hunt = {
  readonly own: BirdRef
  readonly wanted: Sex
  readonly goals: readonly Goal[]
  readonly line?: string // only birds of that line
}
export type Candidate = {
  readonly bird: BirdRef
  readonly own: BirdRef
  readonly crossed: Crossed
  readonly worth: number // 0 to about 1, how well and how easily found
  readonly serves: boolean // reaches what each goal asks at least
}

const found = (breed: string | undefined): number => findable[breed ?? ''] ?? 1
const pairOf = ({ own, wanted }: Hunt, bird: BirdRef): { readonly sire: BirdRef; readonly dam: BirdRef } =>
  wanted === 'F' ? { sire: own, dam: bird } : { sire: bird, dam: own }

/** The candidate in the line that the goals ask for, where the breed has it. */
function inLine(breed: Breed, { goals, line: told }: Pick<Hunt, 'goals' | 'line'>): BirdRef {
  const wish = told ?? goals.map((goal) => lineForGoal[goal]).find((line) => line !== undefined)
  const line = lineOf(breed, wish)
  return line ? { breed: breed.name, line: line.id } : { breed: breed.name }
}

function quickWorth(hunt: Hunt, bird: BirdRef, breed: Breed): number {
  const { sire, dam } = pairOf(hunt, bird)
  const parts = hunt.goals.map((goal) =>
    goal === 'sexable' ? quickSexing(carriesOf(sire), carriesOf(dam)) : quickGoal[goal](hunt.own, bird, breed),
  )
  return parts.reduce((product, part) => product * part, 1) * (0.4 + 0.2 * found(breed.name)) * meatier(hunt, bird)
}

/** Figures of weight do not show who was bred for the breast. */
const meatier = ({ goals }: Hunt, { breed }: BirdRef): number =>
  goals.includes('meat') && tableBred.has(breed ?? '') ? 1.35 : 1

type Harm = (typeof harmful)[keyof typeof harmful]
/** Genes of which two copies kill or maim, and that both birds may have. */
export const harmTogether = (own: BirdRef, other: BirdRef): Harm | undefined => {
  const [a, b] = [carriesOf(own), carriesOf(other)]
  return Object.entries(harmful).find(([locus, { allele }]) => a(locus, allele) >= 0.2 && b(locus, allele) >= 0.2)?.[1]
}

const offered = (breed: Breed): boolean => breed.type !== 'described' && breed.type !== 'hybrid'
/** Bantams go to bantams: with large fowl the mating itself is the trouble. Silkies go to both. */
const ofOneSize = (own: BirdRef, breed: Breed): boolean => {
  const kept = breedNamed(own.breed ?? '')
  const small = (one: Breed | undefined): boolean => one?.type === 'bantam'
  return small(kept) === small(breed) || kept?.family === 'Silkie' || breed.family === 'Silkie'
}

/** A breed in its usual line, and the lines that carry something of their own where the chicks are to be sexed. */
function birdsOf(breed: Breed, hunt: Hunt): readonly BirdRef[] {
  const usual = inLine(breed, hunt)
  const own =
    hunt.goals.includes('sexable') && hunt.line === undefined
      ? breed.lines.filter(({ id, genes }) => genes && id !== usual.line)
      : []
  return [usual, ...own.map(({ id }): BirdRef => ({ breed: breed.name, line: id }))]
}

/** Goals of degree are met by any bird more or less; the others have a least worth. */
const isServed = (goals: readonly Goal[], parts: readonly number[]): boolean =>
  goals.every((goal, at) => parts[at]! >= (leastWorth[goal] ?? 0))

/** A barred cock gives every chick bars, which confuse the sign that tells: he comes after a plain one. */
const barredCock = ({ wanted, goals }: Hunt, bird: BirdRef): boolean =>
  wanted === 'M' && goals.includes('sexable') && carriesOf(bird)('B', 'B') > 0.5

export function playThrough(hunt: Hunt, bird: BirdRef, withHen: boolean): Candidate {
  const { sire, dam } = pairOf(hunt, bird)
  const crossed = mate(sire, dam, { hen: withHen, reverse: false })
  const parts = hunt.goals.map((goal) => overCases(crossed, (one) => goalWorth(goal, one)))
  const worth = parts.reduce((product, part) => product * (0.15 + 0.85 * part), 1) * (0.55 + 0.15 * found(bird.breed))
  const usual = inLine(breedNamed(bird.breed ?? '') ?? breeds[0]!, hunt).line === bird.line
  return {
    bird,
    own: hunt.own,
    crossed,
    worth: worth * (usual ? 1 : 0.95) * (barredCock(hunt, bird) ? 0.7 : 1) * meatier(hunt, bird),
    serves: isServed(hunt.goals, parts),
  }
}

/** Each thing in doubt of a bird multiplies the ways a mating is played through, so fewer mates are tried with it. */
function doubtOf(own: BirdRef): number {
  const breed = breedNamed(own.breed ?? '')
  if (!breed) return 1
  const open = ['E', 'S', 'B', 'I', 'c', 'O', 'Bl'].filter((locus) => {
    const gene = genesOf(breed, own.line)[locus]
    return gene?.kind === 'segregates' && own.genotype?.[locus] === undefined
  })
  return Math.min(3, (breed.madeFrom?.length ?? 1) * (1 + open.length / 3))
}

/** Playing through the daughters too costs more, so fewer are played. */
const played = { sexingOnly: 22, withHen: 12 } as const

/**
 * Most worth first.
 *
 * @param share of the search that this hunt may spend, where the keeper has several birds
 */
export function search(hunt: Hunt, share: number): readonly Candidate[] {
  const withHen = hunt.goals.some((goal) => !['sexable', 'barred', 'laced', 'show'].includes(goal))
  const ofHens = hunt.goals.every((goal) => !['sexable', 'barred', 'laced', 'show'].includes(goal)) // all colours of a breed do it alike
  const most = Math.max(8, Math.round((played[withHen ? 'withHen' : 'sexingOnly'] * share) / doubtOf(hunt.own)))
  return breeds
    .filter((breed) => offered(breed) && ofOneSize(hunt.own, breed))
    .flatMap((breed) => birdsOf(breed, hunt).map((bird) => ({ breed, bird })))
    .filter(({ bird }) => !harmTogether(hunt.own, bird))
    .map(({ breed, bird }) => ({ breed, bird, quick: quickWorth(hunt, bird, breed) }))
    .filter(({ quick }) => quick > 0.03)
    .toSorted((a, b) => b.quick - a.quick)
    .filter(({ breed }, at, all) => !ofHens || all.findIndex((other) => other.breed.family === breed.family) === at)
    .slice(0, most)
    .map(({ bird }) => playThrough(hunt, bird, withHen))
    .toSorted((a, b) => b.worth - a.worth)
}
