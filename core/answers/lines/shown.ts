// core/answers/lines/shown.ts: which lines and crosses a question is about: those named, or the best of the catalogue.
import { breedNamed } from '../../breeds.ts'
import type { BirdRef, LinesQuestion } from '../../question.ts'
import { candidate, type Candidate } from './candidate.ts'
import { breedingOn, poolFor } from './pool.ts'
import { bestFew, ranked } from './rank.ts'

const mostFromCatalogue = 3

/** What is meant by a hen where a keeper asks of costs and names none: a hybrid, and an old line kept for use. */
const usualHens: readonly BirdRef[] = [
  { breed: 'Red sex-link', line: 'production' },
  { breed: 'Rhode Island Red', line: 'heritage' },
]

/** One breed named alone, no line told, is a question about its lines. */
function linesOf(compare: readonly BirdRef[]): readonly BirdRef[] {
  const [only] = compare
  if (compare.length !== 1 || only?.breed === undefined || only.line !== undefined || only.cross) return compare
  const lines = breedNamed(only.breed)?.lines.filter((line) => line.eggsFirstYear) ?? []
  return lines.length > 1 ? lines.map((line) => ({ ...only, line: line.id })) : compare
}

/** Best for the goals first. */
export function birdsShown({ compare, goals, topic, breedsOn }: LinesQuestion): readonly Candidate[] {
  if (compare.length > 0) {
    const birds = topic === 'compare' ? linesOf(compare) : compare
    return ranked(birds.map(candidate), goals)
  }
  if (topic === 'compare') {
    const pool = poolFor(goals)
    return bestFew(ranked(breedsOn === true ? breedingOn(pool) : pool, goals), mostFromCatalogue)
  }
  return topic === 'cockerel-cost' ? [] : usualHens.map(candidate)
}
