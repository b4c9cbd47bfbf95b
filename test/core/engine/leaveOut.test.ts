// test/core/engine/leaveOut.test.ts: the cost of a flock is known beforehand, and what to leave out where it is too much.
import { describe, expect, test } from 'vitest'
import { askBird } from '../../../core/engine/ask.ts'
import { askEverybody } from '../../../core/engine/everybody.ts'
import { doubles } from '../../../core/engine/doubles.ts'
import { askCarries } from '../../../core/engine/item.ts'
import { leaveOut } from '../../../core/engine/leaveOut.ts'
import type { Pedigree } from '../../../core/engine/pedigree.ts'
import { closedFlock, genome } from '../../closedFlock.ts'

const item = askCarries(genome, 0, 1)
const flock = closedFlock({ birds: 120, cocks: 3, hens: 9, chicks: 20 }, 2)
const without = (of: Pedigree, gone: readonly number[]): Pedigree => ({
  ...of,
  birds: of.birds.map((bird, i) => ({
    ...bird,
    readings: gone.includes(i) ? [] : bird.readings,
    parents:
      bird.parents && (gone.includes(bird.parents.sire) || gone.includes(bird.parents.dam)) ? undefined : bird.parents,
  })),
})
const budget = 2000

test('within the budget there is an answer, beyond it the cells and the birds that meet in the widest table', () => {
  const whole = askBird(flock, 100, [item], doubles)
  expect(whole.kind).toBe('answer')
  const small = askBird(flock, 100, [item], doubles, budget)
  if (small.kind !== 'too-large') throw new Error(small.kind)
  expect(small.cells).toBeGreaterThan(budget)
  expect(small.budget).toBe(budget)
  expect(new Set(small.widest).size).toBe(small.widest.length)
  expect(small.widest.length).toBeGreaterThan(3)
  expect(askBird(flock, 100, [item], doubles, small.cells).kind).toBe('answer')
  expect(askBird(flock, 100, [item], doubles, small.cells - 1).kind).toBe('too-large')
  expect(askEverybody(flock, item, 'yes', doubles, budget).kind).toBe('too-large')
})

describe('left out for one bird', () => {
  const goneOut = () => leaveOut(flock, 100, [item], budget)!
  test('the rest can be answered, and the bird is not among those left out', () => {
    const gone = goneOut()
    expect(gone).not.toContain(100)
    expect(askBird(without(flock, gone), 100, [item], doubles, budget).kind).toBe('answer')
  })
  test('parents and chicks go after those farther away', () => {
    const gone = goneOut()
    const { sire, dam } = flock.birds[100]!.parents!
    expect(gone).not.toContain(sire)
    expect(gone).not.toContain(dam)
  })
  test('birds that have nothing to do with it go first', () => {
    const strangers = closedFlock({ birds: 120, cocks: 3, hens: 9, chicks: 20 }, 5).birds.map((bird) => ({
      ...bird,
      id: `other ${bird.id}`,
      parents: bird.parents && { sire: bird.parents.sire + 120, dam: bird.parents.dam + 120 },
    }))
    const both = { ...flock, birds: [...flock.birds, ...strangers] }
    const first = leaveOut(both, 100, [item], 1e5)!
    expect(first.filter((bird) => bird < 120)).toEqual([])
  })
})

test('left out for all birds, the oldest generations go first', () => {
  const gone = leaveOut(flock, undefined, [item], budget)!
  expect(gone.slice(0, 12)).toEqual(flock.birds.flatMap(({ parents }, i) => (parents ? [] : [i])).slice(0, 12))
  expect(gone).not.toContain(119)
})

test('whoever is told first: chicks before their parents are left out as their generation is', () => {
  const last = flock.birds.length - 1
  const turned: Pedigree = {
    ...flock,
    birds: flock.birds.toReversed().map((bird) => ({
      ...bird,
      parents: bird.parents && { sire: last - bird.parents.sire, dam: last - bird.parents.dam },
    })),
  }
  const generation = (bird: number): number => {
    const { parents } = flock.birds[bird]!
    return parents === undefined ? 0 : 1 + Math.max(generation(parents.sire), generation(parents.dam))
  }
  const gone = leaveOut(turned, undefined, [item], budget)!
  expect(gone).toEqual(gone.toSorted((a, b) => a - b))
  const youngestGone = Math.max(...gone.map((bird) => generation(last - bird)))
  expect(youngestGone).toBeGreaterThan(0)
  flock.birds.forEach((_, bird) => {
    if (generation(bird) < youngestGone) expect(gone).toContain(last - bird)
  })
})

test('of two birds the one that is not asked about may go', () => {
  const pair: Pedigree = { ...flock, birds: flock.birds.filter(({ parents }) => parents === undefined).slice(0, 2) }
  expect(leaveOut(pair, 0, [item], budget)).toEqual([1])
  expect(leaveOut({ ...pair, birds: pair.birds.slice(0, 1) }, 0, [item], budget)).toBeUndefined()
})

test('a budget that nothing fits has no such hint', () => expect(leaveOut(flock, 100, [item], 0)).toBeUndefined())
