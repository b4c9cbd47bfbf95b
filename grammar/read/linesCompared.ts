// grammar/read/linesCompared.ts: the question of lines: which birds stand side by side, for which goals, with which figures told.
import { breedNamed } from '../../core/breeds.ts'
import { commonOf, goalsOf, refsOf } from './common.ts'
import {
  asksOfBoys,
  asksYears,
  comparedIn,
  goalsSought,
  hensIn,
  isExcluded,
  linesNamed,
  renews,
  tableWeeks,
  wantsOneBreed,
  weeksIn,
  weighsBroilers,
} from './lineTopic.ts'
import { needsIn } from './needs.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import { pricesIn } from './prices.ts'
import { yearIn } from './years.ts'
import type { BirdRef, LinesQuestion } from '../../core/question.ts'
import type { Reading } from '../reading.ts'

function compareOf(reading: Reading): readonly BirdRef[] {
  const birds = refsOf(comparedIn(reading).filter((bird) => weighsBroilers(reading) || !isExcluded(bird, reading)))
  const said = linesNamed(reading)
  const breeds = [...new Set(birds.map(({ breed }) => breed))]
  const [only] = breeds
  const pairs = pairsIn(reading)
  if (pairs.length > 0 && (isToldPair(reading) || (asksYears(reading) && pairs.every(({ by }) => by !== 'nothing'))))
    return pairs.map(({ sire, dam }) => ({ cross: { sire: sire.ref, dam: dam.ref } }))
  if (breeds.length === 1 && only !== undefined && said.length !== 1) {
    const lines = (breedNamed(only)?.lines ?? []).filter(({ id, covers }) =>
      said.some((line) => line === id || (covers as readonly string[]).includes(line)),
    )
    if (lines.length > 1) return lines.map(({ id }) => ({ breed: only, line: id }))
    if (birds.every(({ line }) => line === undefined)) return [{ breed: only }]
  }
  if (birds.length === 0 && said.length > 0) return isOfBreeds(reading) ? [] : linesOfReds(said)
  return [...new Map(birds.map((bird) => [JSON.stringify([bird.breed, bird.line]), bird])).values()].slice(0, 6)
}

/** "any heritage breed": a sort of breed, and not the line of one. */
const isOfBreeds = ({ words }: Reading): boolean =>
  words.some((word, i) => word === 'heritage' && /^breeds?$/u.test(words[i + 1] ?? ''))

/** Lines spoken of with no breed at all are shown on the breed best known for them. */
const linesOfReds = (said: readonly string[]): readonly BirdRef[] =>
  said.length > 1 || said.includes('heritage') ? [{ breed: 'Rhode Island Red' }] : []

/** What a message adds to a question of money: prices, hens, weeks, a year, and what was taken for granted of them. */
export function tellingOf(
  reading: Reading,
  currency?: string,
): Pick<LinesQuestion, 'prices' | 'weeks' | 'hens' | 'year' | 'eggsPerWeek' | 'people' | 'assumed' | 'manner'> {
  const [weeks, hens, year] = [weeksIn(reading), hensIn(reading), yearIn(reading.words)]
  const told = pricesIn(reading, currency)
  const { assumed, manner } = commonOf(reading, comparedIn(reading))
  return {
    prices: told.prices,
    ...(weeks === undefined ? {} : { weeks }),
    ...(hens === undefined ? {} : { hens }),
    ...(year === undefined ? {} : { year }),
    ...needsIn(reading),
    assumed: [...assumed, ...(told.sack ? [{ kind: 'sack' as const, ...told.sack }] : [])],
    manner: told.currency === undefined ? manner : { ...manner, currency: told.currency },
  }
}

export const linesQuestion = (reading: Reading, topic: LinesQuestion['topic']): LinesQuestion => ({
  kind: 'lines',
  goals: goalsSought(reading),
  compare: compareOf(reading),
  topic,
  ...(topic === 'compare' && (renews(reading) || wantsOneBreed(reading)) ? { breedsOn: true } : {}),
  ...(topic === 'cockerel-cost' && (asksOfBoys(reading) || goalsOf(reading).includes('meat'))
    ? { weeks: tableWeeks }
    : {}),
  ...tellingOf(reading),
})
