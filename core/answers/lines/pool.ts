// core/answers/lines/pool.ts: the birds to choose from where a keeper names none: lines of the catalogue and classic crosses.
import { breedNamed, breeds, genesOf, type Breed } from '../../breeds.ts'
import { eggCrosses, sexedCrosses } from '../../data/hen/classicCrosses.ts'
import { birdAsBred } from '../../hen/lineage.ts'
import { brownScore } from '../../hen/shell.ts'
import type { BirdRef, Goal } from '../../question.ts'
import { candidate, type Candidate } from './candidate.ts'

/** A line that says what it lays stands for itself; a breed without such lines stands as a whole. */
function linesOf(breed: Breed): readonly BirdRef[] {
  const own = breed.lines.filter((line) => line.eggsFirstYear)
  return own.length > 0 ? own.map((line) => ({ breed: breed.name, line: line.id })) : [{ breed: breed.name }]
}

const isNamed = (breed: Breed): boolean => breed.type !== 'described'

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined
  return () => (made ??= { value: make() }).value
}

const isShown = (bird: BirdRef): boolean => birdAsBred(bird, 'F').stocks.some((stock) => stock.purpose === 'exhibition')
const isBantam = (bird: BirdRef): boolean => birdAsBred(bird, 'F').stocks.some((stock) => stock.type === 'bantam')

const everyLine = once((): readonly BirdRef[] => breeds.filter(isNamed).flatMap(linesOf))
const isUsual = (bird: BirdRef): boolean => !isShown(bird) && !isBantam(bird)

/** Lines for yard and table, and every classic cross; reckoned when first asked for. */
const usualCandidates = once((): readonly Candidate[] => [
  ...everyLine().filter(isUsual).map(candidate),
  ...[...sexedCrosses, ...eggCrosses].map((cross) => candidate({ cross })),
])

/** Show lines and bantams. */
const otherCandidates = once((): readonly Candidate[] =>
  everyLine()
    .filter((bird) => !isUsual(bird))
    .map(candidate),
)

const breedOf = ({ bird }: Candidate): Breed | undefined =>
  bird.breed === undefined ? undefined : breedNamed(bird.breed)

/** Chance that a gamete of the bird has blue. */
function blueOf(bird: BirdRef): number {
  if (bird.cross) return (blueOf(bird.cross.sire) + blueOf(bird.cross.dam)) / 2
  const breed = breedNamed(bird.breed ?? '')
  const gene = breed && genesOf(breed, bird.line)['O']
  if (gene?.kind === 'fixed') return gene.allele === 'O' ? 1 : 0
  return gene?.kind === 'segregates' ? (gene.freq['O'] ?? 0) : 0
}

/** Most hens of it lay blue-shelled: bred pure for it, or with one parent that is. */
const hasBlue = ({ bird }: Candidate): boolean => blueOf(bird) >= 0.5

const brown = (one: Candidate): number => brownScore(one.figures.daughter)
const isSexed = ({ bird }: Candidate): boolean => sexedCrosses.some((cross) => cross === bird.cross)

/** What a goal asks of a bird before anything is compared. */
const musts: Partial<Record<Goal, (one: Candidate) => boolean>> = {
  sexable: (one) => isSexed(one) || breedOf(one)?.class === 'Autosexing',
  'blue-eggs': (one) => hasBlue(one) && brown(one) < 0.8,
  'green-eggs': (one) => hasBlue(one) && brown(one) >= 1.5 && brown(one) < 3.5,
  'olive-eggs': (one) => hasBlue(one) && brown(one) >= 3.5,
  'white-eggs': (one) => !hasBlue(one) && brown(one) < 0.6,
  'brown-eggs': (one) => !hasBlue(one) && brown(one) >= 4,
  'dark-eggs': (one) => !hasBlue(one) && brown(one) >= 6.7,
  barred: (one) => one.figures.daughter.stocks.every((stock) => stock.barred),
  laced: (one) => /laced/i.test(one.name),
  show: ({ bird }) => isShown(bird),
  broody: (one) => one.broody.likely >= 0.3,
}

/** Feed for a dozen beyond which a bird is kept for meat alone, kg. */
const noLayer = 6

const isLayer = (one: Candidate): boolean => one.feedKgPerDozen.likely < noLayer

/** Gives its own kind again: a pure breed, and no first cross. */
const givesItsKind = (one: Candidate): boolean =>
  one.bird.cross === undefined &&
  (breedOf(one)?.madeFrom ?? []).length === 0 &&
  !/hybrid|sex-link|Cross$/.test(one.name)

/** Of a pool, those from which a flock renews itself. */
export const breedingOn = (pool: readonly Candidate[]): readonly Candidate[] => pool.filter(givesItsKind)

/** The candidates that meet every goal's condition; show stock, bantams and mere table birds only for those who want them. */
export function poolFor(goals: readonly Goal[]): readonly Candidate[] {
  const wantsShow = goals.includes('show')
  const wantsMeat = goals.length === 1 && goals[0] === 'meat'
  const others = wantsShow || goals.includes('broody') ? otherCandidates() : []
  return [...usualCandidates(), ...others].filter(
    (one) =>
      (wantsShow || !isShown(one.bird)) &&
      (wantsShow || wantsMeat || isLayer(one)) &&
      goals.every((goal) => musts[goal]?.(one) ?? true),
  )
}
