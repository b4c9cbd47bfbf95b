// test/core/testMating.test.ts: how many chicks unmask a carrier, held against the closed forms of the breeding books.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  chicksForDoubt,
  chicksForPower,
  chicksToUnmask,
  matesForPower,
  stillCarrier,
  type TestState,
  unmasked,
} from '../../core/testMating.ts'
import stored from '../data/statements.json' with { type: 'json' }

const value = (text: string): number => {
  const [n, d = '1'] = text.split('/')
  return Number(n) / Number(d)
}
const closed = (kind: string) => stored.closedForm.filter((one) => one.kind === kind)

describe.each(closed('test-mating-count'))(
  '$id, $description [$source]',
  ({ n, p_chick_clear_given_carrier, p_detect }) => {
    const clear = value(p_chick_clear_given_carrier!)
    const states: readonly TestState[] = [{ weight: 1, carrier: true, clear }]
    test.each(Object.entries(typeof n === 'object' ? n : {}))(
      'unmasked with a chance of %s after %i',
      (power, chicks) => {
        const missed = Number((1 - Number(power)).toFixed(3))
        expect(chicksToUnmask(clear, missed)).toEqual({ ok: true, value: chicks })
        expect(chicksForPower(states, missed)).toEqual({ kind: 'enough', n: chicks })
      },
    )
    test.each(Object.entries(p_detect!))('after %s chicks the chance is %d', (chicks, p) => {
      expect(unmasked(states, Number(chicks))).toBeCloseTo(p, 12)
    })
  },
)

test('a known carrier needs 17 clear chicks to be shown clear to 99 in 100, and 16 are one too few', () => {
  expect(chicksToUnmask(3 / 4, 0.01)).toEqual({ ok: true, value: 17 })
  expect(1 - (3 / 4) ** 16).toBeLessThan(0.99)
})

const matings: Readonly<Record<string, number>> = { recessive_tester: 1 / 2, known_het: 3 / 4, own_daughters: 7 / 8 }

test.each(closed('test-mating-count-posterior'))('$id, $description [$source]', ({ id, n }) => {
  const [, prior, mating, doubt] = /^n-post-(\d+_\d+)-(\w+)-(\d+_\d+)$/u.exec(id)!
  const p = value(prior!.replace('_', '/'))
  const states: readonly TestState[] = [
    { weight: p, carrier: true, clear: matings[mating!]! },
    { weight: 1 - p, carrier: false, clear: 1 },
  ]
  expect(chicksForDoubt(states, value(doubt!.replace('_', '/')))).toEqual({ kind: 'enough', n })
})

test.each(closed('chicks-to-hatch'))('$id, $description [$source]', ({ n }) => {
  expect(chicksToUnmask(63 / 64, 1 / 20)).toEqual({ ok: true, value: n })
})

describe('values of the books', () => {
  const carrier = (p: number, clear: number, otherwise = 1): readonly TestState[] => [
    { weight: p, carrier: true, clear },
    { weight: 1 - p, carrier: false, clear: otherwise },
  ]
  const book = (id: string): number => stored.closedForm.find((one) => one.id === id)!.answer!
  test('prior 2/3, ten clear chicks of a recessive tester: 1/513', () =>
    expect(stillCarrier(carrier(2 / 3, 1 / 2), 10)).toBeCloseTo(book('v-post-2_3-10'), 15))
  test('prior 1/2, seven and ten: 1/129 and 1/1025', () => {
    expect(stillCarrier(carrier(1 / 2, 1 / 2), 7)).toBeCloseTo(book('v-post-1_2-7'), 15)
    expect(stillCarrier(carrier(1 / 2, 1 / 2), 10)).toBeCloseTo(book('v-post-1_2-10'), 15)
  })
  test('prior 1/4, seven: 1/385', () =>
    expect(stillCarrier(carrier(1 / 4, 1 / 2), 7)).toBeCloseTo(book('v-post-1_4-7'), 15))
  test('readings right in 19 of 20, prior 2/3, five read clear', () =>
    expect(stillCarrier(carrier(2 / 3, 1 / 2, 19 / 20), 5)).toBeCloseTo(book('v-mis-19_20-5'), 14))
  test('one own daughter with eight chicks unmasks in 45 of 100', () => {
    const daughters = [
      { weight: 1 / 2, carrier: true, clear: 3 / 4 },
      { weight: 1 / 2, carrier: true, clear: 1 },
    ]
    expect(unmasked(daughters, 8)).toBeCloseTo(book('v-d1x8'), 14)
  })
})

describe('a mate of whom nobody knows', () => {
  const states: readonly TestState[] = [
    { weight: 0.1, carrier: true, clear: 3 / 4 },
    { weight: 0.4, carrier: true, clear: 1 },
    { weight: 0.5, carrier: false, clear: 1 },
  ]
  test('may never unmask him, and the limit says how near it comes', () => {
    expect(chicksForPower(states, 0.05)).toEqual({ kind: 'never', limit: 0.8 })
    expect(chicksForDoubt(states, 0.05)).toEqual({ kind: 'never', limit: 0.4 / 0.9 })
  })
  test('the power is that of the sum, not of the mean chance: fewer unmask him than the mean would', () => {
    expect(unmasked(states, 4)).toBeCloseTo(0.2 * (1 - (3 / 4) ** 4), 12)
    expect(unmasked(states, 4)).toBeLessThan(1 - (0.2 * 0.75 + 0.8) ** 4)
  })
  test('several such mates, each with a brood, do it together', () => {
    expect(
      matesForPower(
        [
          { share: 1 / 2, clear: 3 / 4 },
          { share: 1 / 2, clear: 1 },
        ],
        1,
        0.05,
      ),
    ).toEqual({ kind: 'enough', n: 23 })
    expect(
      matesForPower(
        [
          { share: 1 / 2, clear: 3 / 4 },
          { share: 1 / 2, clear: 1 },
        ],
        8,
        0.05,
      ),
    ).toEqual({ kind: 'enough', n: 6 })
    expect(matesForPower([{ share: 1, clear: 1 }], 8, 0.05)).toEqual({ kind: 'never', limit: 1 })
  })
})

describe('edges', () => {
  test('a brood that meets the wish exactly is enough: 1/2 for 1/2, 1/10 for 1/10', () => {
    expect(chicksToUnmask(1 / 2, 1 / 2)).toEqual({ ok: true, value: 1 })
    expect(chicksToUnmask(0.1, 0.1)).toEqual({ ok: true, value: 1 })
    expect(chicksToUnmask(0.1, 0.001)).toEqual({ ok: true, value: 3 })
  })
  test('at least one chick is asked for', () => expect(chicksToUnmask(0.5, 0.9)).toEqual({ ok: true, value: 1 }))
  test.each([
    [0, 0.05, 'clear', 0],
    [1, 0.05, 'clear', 1],
    [0.5, 0, 'missed', 0],
    [0.5, 1, 'missed', 1],
    [Number.NaN, 0.05, 'clear', Number.NaN],
  ])('clear %d, missed %d: %s is no chance', (clear, missed, name, got) =>
    expect(chicksToUnmask(clear, missed)).toEqual({ ok: false, fault: { kind: 'not-a-chance', name, got } }),
  )
  test('chicks already seen count: what seven clear ones leave of 128 to 1 needs none further', () => {
    const states: readonly TestState[] = [{ weight: 1, carrier: true, clear: 1 / 2 }]
    expect(chicksForPower(states, 0.01, 1 / 128)).toEqual({ kind: 'enough', n: 0 })
    expect(chicksForPower(states, 0.01, 1 / 64)).toEqual({ kind: 'enough', n: 1 })
    expect(chicksForPower(states, 0.01, 1 / 4)).toEqual({ kind: 'enough', n: 5 })
  })
  test('where there is no carrier nothing slips through', () => {
    const clear: readonly TestState[] = [{ weight: 1, carrier: false, clear: 1 }]
    expect(unmasked(clear, 0)).toBe(1)
    expect(stillCarrier(clear, 3)).toBe(0)
  })
  test('one chick fewer than the answer never does', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.double({ min: 0.001, max: 0.9, noNaN: true }),
        (clear, missed) => {
          const found = chicksToUnmask(clear, missed)
          if (!found.ok) throw new Error('a chance that is one')
          expect(clear ** found.value).toBeLessThanOrEqual(missed * (1 + 1e-9))
          if (found.value > 1) expect(clear ** (found.value - 1)).toBeGreaterThan(missed)
        },
      ),
    )
  })
})

test('a bird that cannot be a carrier lets nothing slip: no chick is needed', () => {
  const states = [
    { weight: 0, carrier: true, clear: 1 / 2 },
    { weight: 1, carrier: false, clear: 1 },
  ]
  expect(chicksForPower(states, 0.05)).toEqual({ kind: 'enough', n: 0 })
})
