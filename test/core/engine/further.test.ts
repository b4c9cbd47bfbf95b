// test/core/engine/further.test.ts: one more reading, edited in, gives what a fresh start gives.
import { describe, expect, test } from 'vitest'
import { doubles } from '../../../core/engine/doubles.ts'
import type { Tables } from '../../../core/engine/factor.ts'
import { fractions } from '../../../core/engine/fractions.ts'
import { further } from '../../../core/engine/further.ts'
import { rollOf } from '../../../core/engine/everybody.ts'
import { askCarries } from '../../../core/engine/item.ts'
import { formatRatio, ratio } from '../../../core/engine/num.ts'
import type { Pedigree } from '../../../core/engine/pedigree.ts'
import { chanceFor, stand } from '../../../core/engine/stand.ts'
import { type Reading, readGenotype, readState, type Trait } from '../../../core/engine/trait.ts'
import { closedFlock, genome, white } from '../../closedFlock.ts'

const item = askCarries(genome, 0, 1)
const flock = closedFlock({ birds: 60, cocks: 2, hens: 5, chicks: 12 }, 3)
const unread = flock.birds.flatMap(({ readings }, bird) => (readings.length === 0 ? [bird] : []))
const read = (of: Pedigree, bird: number, reading: Reading): Pedigree => ({
  ...of,
  birds: of.birds.with(bird, { ...of.birds[bird]!, readings: [...of.birds[bird]!.readings, reading] }),
})

function standing<T, W, S>(of: Pedigree, tables: Tables<T, W, S>) {
  const outcome = stand(of, item, tables)
  if (outcome.kind !== 'answer') throw new Error(outcome.kind)
  return outcome.answer
}

/** Wrong in one reading of ten. */
const doubtful: Trait = {
  id: 'seen',
  loci: [0],
  states: ['coloured', 'white'],
  given: (_sex, [code]) => (code === 2 ? [ratio(1n, 10n), ratio(9n, 10n)] : [ratio(9n, 10n), ratio(1n, 10n)]),
}

describe.each([
  ['coloured', readState(white, 0)],
  ['doubtfully white', readState(doubtful, 1)],
  ['a genotype that nobody asked after', readGenotype(0, 1, 'C: C/c')],
])('%s, read of each bird that was not read', (_, reading) => {
  test.each(unread)('b%i', (bird) => {
    const before = standing(flock, doubles)
    const after = further(before, bird, reading)
    const fresh = stand(read(flock, bird, reading), item, doubles)
    expect(after.kind).toBe(fresh.kind)
    if (after.kind !== 'answer' || fresh.kind !== 'answer') return
    expect(after.answer.evidence / fresh.answer.evidence).toBeCloseTo(1, 12)
    const wanted = rollOf(fresh.answer, 'yes').chances
    rollOf(after.answer, 'yes').chances.forEach((p, i) => expect(p).toBeCloseTo(wanted[i]!, 12))
    for (const one of [0, bird, 59]) expect(chanceFor(after.answer, one, 'yes')).toBeCloseTo(wanted[one]!, 12)
  })
})

test('in fractions the chance of all readings stays exact, over several further readings', () => {
  let after = standing(flock, fractions)
  let told = flock
  for (const bird of unread.slice(0, 6)) {
    const outcome = further(after, bird, readState(doubtful, 0))
    if (outcome.kind !== 'answer') throw new Error(outcome.kind)
    after = outcome.answer
    told = read(told, bird, readState(doubtful, 0))
  }
  const fresh = standing(told, fractions)
  expect(formatRatio(after.evidence)).toBe(formatRatio(fresh.evidence))
  expect(rollOf(after, 'yes').chances.map(formatRatio)).toEqual(rollOf(fresh, 'yes').chances.map(formatRatio))
})

test('a reading that cannot be true beside the others is told as such', () => {
  const cock = flock.birds.findIndex(({ parents }) => parents === undefined)
  const known = read(flock, cock, readGenotype(0, 0, 'C: C/C'))
  const chick = flock.birds.findIndex(({ parents }) => parents?.sire === cock)
  expect(further(standing(known, doubles), chick, readGenotype(0, 2, 'C: c/c')).kind).toBe('impossible')
})

test('a bird whose genotype is settled, leaf or parent, still counts a doubtful reading', () => {
  for (const bird of [0, 59]) {
    const before = standing(read(flock, bird, readGenotype(0, 1, 'C: C/c')), doubles)
    const after = further(before, bird, readState(doubtful, 1))
    expect(after.kind === 'answer' && after.answer.evidence / before.evidence).toBeCloseTo(1 / 10, 12)
  }
})

test('of a bird of unknown sex everything is worked again', () => {
  const birds = [...flock.birds, { id: 'U', sex: 'U' as const, parents: flock.birds.at(-1)!.parents, readings: [] }]
  const after = further(standing({ ...flock, birds }, doubles), birds.length - 1, readState(doubtful, 0))
  const fresh = standing(read({ ...flock, birds }, birds.length - 1, readState(doubtful, 0)), doubles)
  expect(after.kind === 'answer' && after.answer.evidence / fresh.evidence).toBeCloseTo(1, 12)
})

test('the first standing is left as it was', () => {
  const before = standing(flock, doubles)
  const chances = rollOf(before, 'yes').chances
  further(before, unread[0]!, readState(doubtful, 1))
  expect(rollOf(before, 'yes').chances).toEqual(chances)
})

describe('what is worked again', () => {
  const leaf = unread.find((bird) =>
    flock.birds.every(({ parents }) => parents?.sire !== bird && parents?.dam !== bird),
  )!
  const parent = unread.find((bird) =>
    flock.birds.some(({ parents }) => parents?.sire === bird || parents?.dam === bird),
  )!

  test.each([
    ['a chick', leaf, readState(white, 0)],
    ['a breeding bird', parent, readState(white, 0)],
    ['a breeding bird, by a sign that was never read before', parent, readState(doubtful, 0)],
  ])('%s: only messages between it and the root', (_, bird, reading) => {
    const before = standing(flock, doubles)
    const after = further(before, bird, reading)
    if (after.kind !== 'answer') throw new Error(after.kind)
    const { plan, up } = before.collected
    const again = up.flatMap((message, b) => (after.answer.collected.up[b] === message ? [] : [b]))
    expect(after.answer.prepared.narrowed).toBe(before.prepared.narrowed)
    expect(again.length).toBeGreaterThan(0)
    expect(again.length).toBeLessThan(up.length)
    for (const b of again.slice(0, -1)) expect(again).toContain(plan.cliques[b]!.parent)
  })
  test('what a bird was told from above is kept where that still holds', () => {
    const before = standing(flock, doubles)
    rollOf(before, 'yes')
    const after = further(before, parent, readState(white, 0))
    if (after.kind !== 'answer') throw new Error(after.kind)
    const kept = after.answer.collected.down.filter((told) => told !== undefined)
    expect(kept.length).toBeGreaterThan(0)
    for (const told of kept) expect(before.collected.down).toContain(told)
  })
})

describe('everything is worked again', () => {
  const three: Pedigree['genome'] = {
    loci: [
      { id: 'C', on: 'A', alleles: ['C', 'c', 'x'], freqs: [ratio(1n, 2n), ratio(1n, 4n), ratio(1n, 4n)] },
      { id: 'D', on: 'A', alleles: ['D', 'd'], freqs: [ratio(1n, 2n), ratio(1n, 2n)] },
    ],
    groups: [
      { on: 'A', loci: [0], r: [] },
      { on: 'A', loci: [1], r: [] },
    ],
  }
  const trio: Pedigree = {
    genome: three,
    birds: [
      { id: 'cock', sex: 'M', readings: [] },
      { id: 'hen', sex: 'F', readings: [] },
      { id: 'son', sex: 'M', parents: { sire: 0, dam: 1 }, readings: [readGenotype(1, 1, 'D: D/d')] },
    ],
  }
  const eitherOne: Trait = {
    id: 'either',
    loci: [0, 1],
    states: ['no', 'yes'],
    given: (_sex, [c, d]) => (c === 0 && d === 0 ? [ratio(1n), ratio(0n)] : [ratio(0n), ratio(1n)]),
  }
  test.each([
    ['the reading tells apart what was alike', readGenotype(0, 1, 'C: C/c')],
    ['the reading lies on two groups', readState(eitherOne, 1)],
  ])('where %s', (_, reading) => {
    const asked = askCarries(three, 0, 0)
    const fresh = (of: Pedigree) => {
      const outcome = stand(of, asked, fractions)
      if (outcome.kind !== 'answer') throw new Error(outcome.kind)
      return outcome.answer
    }
    for (const bird of [0, 1, 2]) {
      const after = further(fresh(trio), bird, reading)
      if (after.kind !== 'answer') throw new Error(after.kind)
      const wanted = fresh(read(trio, bird, reading))
      expect(formatRatio(after.answer.evidence)).toBe(formatRatio(wanted.evidence))
      for (const one of [0, 1, 2])
        expect(formatRatio(chanceFor(after.answer, one, 'yes'))).toBe(formatRatio(chanceFor(wanted, one, 'yes')))
    }
  })
})
