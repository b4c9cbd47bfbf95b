// test/core/answers/hatch.test.ts: the hatch answer: numbers that follow from what it says it took for granted, dates, luck.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { HatchAnswer } from '../../../core/answer.ts'
import { answerHatch } from '../../../core/answers/hatch.ts'
import { chanceOfAtLeast } from '../../../core/hen/hatchChance.ts'
import type { HatchQuestion } from '../../../core/question.ts'

const ask = (asked: Partial<HatchQuestion>): HatchQuestion => ({
  kind: 'hatch',
  topic: 'eggs-to-set',
  assumed: [],
  manner: { symbols: false, units: 'metric' },
  ...asked,
})
const perEgg = ({ given: g }: HatchAnswer): number =>
  g.fertility * g.hatchOfFertile * g.femaleShare * g.survival * (g.sexingAccuracy ?? 1)

describe('eggs to set', () => {
  test('twelve pullets at a hatch of 75 in 100: 32 on average before losses in rearing, about 42 to be nine-tenths sure (keepers’ arithmetic)', () => {
    const answer = answerHatch(ask({ pulletsWanted: 12, hatchRate: 0.75 }))
    expect(answer.given.fertility * answer.given.hatchOfFertile).toBeCloseTo(0.75, 12)
    expect(answer.eggsToSetOnAverage! * answer.given.survival).toBeCloseTo(32, 0)
    expect(Math.abs(answer.eggsToSet! * answer.given.survival - 42)).toBeLessThan(1)
  })
  test('the number follows from the shares it names', () => {
    for (const asked of [
      { pulletsWanted: 6 },
      { pulletsWanted: 12, shipped: true },
      { pulletsWanted: 3, hatchRate: 0.9, certainty: 0.95 },
    ]) {
      const answer = answerHatch(ask(asked))
      expect(chanceOfAtLeast(asked.pulletsWanted, answer.eggsToSet!, perEgg(answer))).toBeGreaterThanOrEqual(
        answer.certainty,
      )
      expect(chanceOfAtLeast(asked.pulletsWanted, answer.eggsToSet! - 1, perEgg(answer))).toBeLessThan(answer.certainty)
      expect(answer.pulletsExpected).toBeCloseTo(answer.eggsToSet! * perEgg(answer), 9)
    }
  })
  test('posted eggs ask for more, and a keeper who tells neither hears both', () => {
    const own = answerHatch(ask({ pulletsWanted: 12, shipped: false }))
    const posted = answerHatch(ask({ pulletsWanted: 12, shipped: true }))
    expect(posted.eggsToSet!).toBeGreaterThan(own.eggsToSet! * 1.3)
    const untold = answerHatch(ask({ pulletsWanted: 12 }))
    expect(untold.says.join(' ')).toContain(String(posted.eggsToSet))
    expect(untold.assumptions.join(' ')).toMatch(/not posted/)
  })
  test('chicks sexed at hatch nine in ten right ask for a tenth more eggs, and as many cockerels hatch as before', () => {
    const sure = answerHatch(ask({ pulletsWanted: 12 }), 1)
    const fair = answerHatch(ask({ pulletsWanted: 12 }), 0.9)
    expect(fair.eggsToSet! / sure.eggsToSet!).toBeGreaterThan(1.05)
    expect(fair.cockerelsExpected! / fair.eggsToSet!).toBeCloseTo(sure.cockerelsExpected! / sure.eggsToSet!, 9)
  })
  test('a told hatch rate is kept even above the usual fertility', () => {
    const { given } = answerHatch(ask({ pulletsWanted: 2, hatchRate: 0.95 }))
    expect(given.fertility * given.hatchOfFertile).toBeCloseTo(0.95, 12)
    expect(given.status).toBe('told')
  })
})

describe('pullets from eggs', () => {
  test('ten eggs under a broody at a hatch of 70 in 100: at least one pullet is as good as sure (1 - 0.65^10 before losses)', () => {
    const answer = answerHatch(ask({ topic: 'pullets-from', eggsSet: 10, pulletsWanted: 1, hatchRate: 0.7 }))
    expect(answer.chance).toBeCloseTo(1 - (1 - 0.35 * answer.given.survival) ** 10, 9)
    expect(answer.chance!).toBeGreaterThan(0.98)
  })
  test('pullets and cockerels come alike', () => {
    const answer = answerHatch(ask({ topic: 'pullets-from', eggsSet: 22 }))
    expect(answer.pulletsExpected).toBeCloseTo(answer.cockerelsExpected!, 9)
  })
})

describe('dates', () => {
  test('a setting of 1 March 2027 hatches on the 22nd, over a month’s end too', () => {
    expect(answerHatch(ask({ topic: 'dates', setOn: '2027-03-01' })).dates).toMatchObject({
      set: '2027-03-01',
      candle: '2027-03-08',
      secondCandle: '2027-03-15',
      lockdown: '2027-03-19',
      hatch: '2027-03-22',
      feathered: '2027-05-03',
    })
    expect(answerHatch(ask({ topic: 'dates', setOn: '2028-02-20' })).dates!.hatch).toBe('2028-03-12')
  })
  test('a laying line comes into lay before a heavy one', () => {
    const lay = (breed: string, line: string): string =>
      answerHatch(ask({ topic: 'dates', setOn: '2027-03-01', mating: { sire: { breed, line }, dam: { breed, line } } }))
        .dates!.pointOfLay
    expect(lay('Rhode Island Red', 'production') < lay('Light Brahma', 'exhibition')).toBe(true)
  })
  test('a day that does not exist gives no dates, and no fault', () => {
    expect(answerHatch(ask({ topic: 'dates', setOn: '2027-02-30' })).dates).toBeNull()
  })
})

describe('rules of the pen', () => {
  test('after a change of cock wait three to four weeks', () => {
    expect(answerHatch(ask({ topic: 'new-cock-wait' })).summary).toMatch(/3 to 4 weeks/)
  })
  test('a Brahma cock gets fewer hens than a Leghorn', () => {
    const says = (breed: string): string =>
      answerHatch(ask({ topic: 'ratio', mating: { sire: { breed }, dam: { breed } } })).summary
    expect(says('Light Brahma')).toMatch(/6 to 8/)
    expect(says('White Leghorn')).toMatch(/10 to 12/)
  })
  test('eight cockerels of ten is luck that one hatch in eighteen sees', () => {
    const answer = answerHatch(ask({ topic: 'sex-ratio', males: 8, chicks: 10 }))
    expect(answer.chance).toBeCloseTo((45 + 10 + 1) / 1024, 12)
  })
  test('and two of ten is the same luck the other way', () => {
    expect(answerHatch(ask({ topic: 'sex-ratio', males: 2, chicks: 10 })).chance).toBeCloseTo(56 / 1024, 12)
  })
})

test('whatever is asked, the answer has its shape and a summary that fits', () => {
  const topic = fc.constantFrom<HatchQuestion['topic']>(
    'eggs-to-set',
    'pullets-from',
    'dates',
    'new-cock-wait',
    'ratio',
    'sex-ratio',
  )
  const some = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined })
  fc.assert(
    fc.property(
      fc.record({
        topic,
        pulletsWanted: some(fc.integer({ min: 1, max: 3_000_000 })),
        eggsSet: some(fc.integer({ min: 1, max: 100_000 })),
        certainty: some(fc.double({ min: 0.01, max: 0.999, noNaN: true })),
        hatchRate: some(fc.double({ min: 1e-9, max: 1, noNaN: true })),
        shipped: some(fc.boolean()),
        setOn: some(fc.constantFrom('2027-03-01', 'soon', '9999-12-31')),
        males: some(fc.nat(30)),
        chicks: some(fc.integer({ min: 1, max: 30 })),
      }),
      (asked) => {
        const answer = answerHatch(ask(asked))
        expect(HatchAnswer.safeParse(answer).error).toBeUndefined()
      },
    ),
    { numRuns: 300 },
  )
})
