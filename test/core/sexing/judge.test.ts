// test/core/sexing/judge.test.ts: how well a mark parts the sexes, right and wrong matings alike.
import { describe, expect, test } from 'vitest'
import * as fc from 'fast-check'
import { partSexes, type Kind } from '../../../core/sexing/judge.ts'

/** Chicks of which `marked` show the mark for certain, the others do not. */
const marked = (share: number): readonly Kind[] => [
  ...(share > 0 ? [{ share, noted: [{ mark: 1 }] }] : []),
  ...(share < 1 ? [{ share: 1 - share, noted: [{ plain: 1 }] }] : []),
]

// Counted out by hand for a dominant mark D on the Z: sire x dam, share of marked sons and daughters.
const matings = [
  {
    mating: 'clear sire x marked dam (the right way)',
    sons: 1,
    daughters: 0,
    wrong: 0,
    cockerelsTrue: 1,
    pulletsTrue: 1,
  },
  {
    mating: 'sire with one copy x marked dam',
    sons: 1,
    daughters: 1 / 2,
    wrong: 1 / 4,
    cockerelsTrue: 2 / 3,
    pulletsTrue: 1,
  },
  {
    mating: 'pure marked sire x marked dam',
    sons: 1,
    daughters: 1,
    wrong: 1 / 2,
    cockerelsTrue: null,
    pulletsTrue: null,
  },
  { mating: 'clear sire x clear dam', sons: 0, daughters: 0, wrong: 1 / 2, cockerelsTrue: null, pulletsTrue: null },
  {
    mating: 'sire with one copy x clear dam',
    sons: 1 / 2,
    daughters: 1 / 2,
    wrong: 1 / 2,
    cockerelsTrue: null,
    pulletsTrue: null,
  },
]

describe('a Z-linked mark, read without fault', () => {
  test.each(matings)('$mating', ({ sons, daughters, wrong, cockerelsTrue, pulletsTrue }) => {
    const parting = partSexes(marked(sons), marked(daughters))
    expect(1 - parting.accuracy).toBeCloseTo(wrong, 12)
    if (cockerelsTrue === null) expect(parting.cockerelsTrue).toBeNull()
    else expect(parting.cockerelsTrue).toBeCloseTo(cockerelsTrue, 12)
    if (pulletsTrue === null) expect(parting.pulletsTrue).toBeNull()
    else expect(parting.pulletsTrue).toBeCloseTo(pulletsTrue, 12)
  })

  test('one hen in ten without the mark: 5 in 100 wrong, 91 in 100 of those read as pullets are (1/(1+p))', () => {
    const parting = partSexes(marked(0.9), marked(0))
    expect(1 - parting.accuracy).toBeCloseTo(0.05, 12)
    expect(parting.pulletsTrue).toBeCloseTo(1 / 1.1, 12)
  })
})

describe('misread marks', () => {
  const read = (shown: string, other: string, rate: number): readonly Kind[] => [
    { share: 1, noted: [{ [shown]: 1 - rate, [other]: rate }] },
  ]

  test('a mark misread 5 times in 100 in both sexes parts 95 in 100', () => {
    expect(partSexes(read('spot', 'none', 0.05), read('none', 'spot', 0.05)).accuracy).toBeCloseTo(0.95, 12)
  })

  test('two independent signs beat either alone: 0.9 and 0.8 of them', () => {
    const both = (shown: boolean): readonly Kind[] => [
      {
        share: 1,
        noted: [shown ? { a: 0.9, b: 0.1 } : { a: 0.1, b: 0.9 }, shown ? { a: 0.8, b: 0.2 } : { a: 0.2, b: 0.8 }],
      },
    ]
    // By hand: the stronger sign decides, so the weaker one never overrules it: 0.72 + 0.18.
    expect(partSexes(both(true), both(false)).accuracy).toBeCloseTo(0.9, 12)
  })

  test('never worse than a coin, never better than sure', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (m, f) => {
        const { accuracy, readable } = partSexes(marked(m), marked(f))
        expect(accuracy).toBeGreaterThanOrEqual(0.5 - 1e-12)
        expect(accuracy).toBeLessThanOrEqual(1 + 1e-12)
        expect(readable).toBeLessThanOrEqual(1 + 1e-12)
      }),
    )
  })
})
