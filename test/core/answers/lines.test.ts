// test/core/answers/lines.test.ts: lines and crosses against a goal, and the costs of keeping them.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { LinesAnswer } from '../../../core/answer.ts'
import { answerLines } from '../../../core/answers/lines.ts'
import { breedNamed } from '../../../core/breeds.ts'
import { eggCrosses, sexedCrosses } from '../../../core/data/hen/classicCrosses.ts'
import { disagreements } from '../../../core/data/hen/practice.ts'
import type { BirdRef, LinesQuestion } from '../../../core/question.ts'
import { Goal } from '../../../core/question.ts'

const ask = (asked: Partial<LinesQuestion>): LinesQuestion => ({
  kind: 'lines',
  goals: [],
  compare: [],
  prices: {},
  topic: 'compare',
  assumed: [],
  manner: { symbols: false, units: 'metric', currency: '£' },
  ...asked,
})
const red = (line: string): BirdRef => ({ breed: 'Rhode Island Red', line })
const names = (answer: LinesAnswer): readonly string[] => answer.options.map((option) => option.name)

describe('lines the keeper names', () => {
  const answer = answerLines(ask({ compare: [red('heritage'), red('production')], goals: ['eggs'] }))
  test('stand side by side, the best for the goal first', () => {
    expect(names(answer)).toEqual(['production Rhode Island Red', 'heritage Rhode Island Red'])
    const [production, heritage] = answer.options
    expect(production!.eggsThreeYears.likely).toBeGreaterThan(heritage!.eggsThreeYears.likely)
    expect(production!.feedKgPerDozen.likely).toBeLessThan(heritage!.feedKgPerDozen.likely)
    expect(heritage!.carcassKg.likely).toBeGreaterThan(production!.carcassKg.likely)
  })
  test('the trade-off names both sides in one sentence', () => {
    expect(answer.tradeOff).toMatch(
      /production Rhode Island Red.*more eggs.*heritage Rhode Island Red.*more on a cockerel/,
    )
    expect(answer.tradeOff.match(/[.!?](\s|$)/g)).toHaveLength(1)
  })
  test('where keepers and print differ both figures are given', () => {
    expect(answer.says.join(' ')).toMatch(/keepers say 200 to 250.*150 to 220/)
  })
  test('for meat the order turns round', () => {
    expect(names(answerLines(ask({ compare: [red('heritage'), red('production')], goals: ['meat'] })))[0]).toMatch(
      /^heritage/,
    )
  })
  test('without prices there is no money; with them the year is counted', () => {
    expect(answer.options.every((option) => option.money === undefined)).toBe(true)
    const priced = answerLines(ask({ compare: [red('production')], prices: { feedPerKg: 0.9, eggsPerDozen: 3 } }))
    expect(priced.options[0]!.money!.incomeLessFeedByYear).toHaveLength(5)
    expect(priced.options[0]!.money!.keepUntilYear).toBeGreaterThan(0)
    const feedOnly = answerLines(ask({ compare: [red('production')], prices: { feedPerKg: 0.9 } }))
    expect(feedOnly.options[0]!.money).toMatchObject({ incomeLessFeedByYear: [], keepUntilYear: null })
  })
})

test('two breeds named for sexable chicks: which is to be the cock is said first, and that the other way does not do', () => {
  const answer = answerLines(
    ask({ goals: ['sexable'], compare: [{ breed: 'Barred Plymouth Rock', line: 'exhibition' }, red('hatchery')] }),
  )
  expect(answer.summary).toMatch(
    /^hatchery Rhode Island Red cock on exhibition Barred Plymouth Rock hens: chicks are sexed at hatch/,
  )
  expect(answer.says[0]).toMatch(/^exhibition Barred Plymouth Rock cock on hatchery Rhode Island Red hens: no sexing/)
})
test('one breed named alone is a question about its lines', () => {
  const lines = breedNamed('Rhode Island Red')!.lines.filter((line) => line.eggsFirstYear).length
  expect(answerLines(ask({ compare: [{ breed: 'Rhode Island Red' }] })).options).toHaveLength(lines)
})
test('a cross stands beside a line', () => {
  const cross = { cross: { sire: red('heritage'), dam: { breed: 'Rhode Island White', line: 'production' } } }
  const answer = answerLines(ask({ compare: [cross, { breed: 'Light Sussex' }], goals: ['eggs'] }))
  expect(names(answer)).toContain('heritage Rhode Island Red x production Rhode Island White')
  expect(answer.assumptions.join(' ')).toMatch(/Light Sussex means its utility line/)
})

describe('the best of the catalogue', () => {
  const best = (...goals: LinesQuestion['goals']): LinesAnswer => answerLines(ask({ goals }))
  test('for eggs: light or hybrid laying stock, over 650 in three years, under 2.3 kg a dozen', () => {
    for (const option of best('eggs').options) {
      expect(option.eggsThreeYears.likely).toBeGreaterThan(650)
      expect(option.feedKgPerDozen.likely).toBeLessThan(2.3)
    }
  })
  test('for meat and eggs: dual-purpose stock, none of it a mere layer or a mere table bird', () => {
    for (const option of best('eggs', 'meat').options) {
      expect(option.eggsThreeYears.likely).toBeGreaterThan(500)
      expect(option.carcassKg.likely).toBeGreaterThan(1.3)
    }
  })
  test('for show: show lines', () => {
    for (const option of best('show').options) expect(option.name).toMatch(/exhibition/)
  })
  test('otherwise none', () => {
    for (const goal of ['eggs', 'calm', 'cold', 'family'] as const)
      for (const name of names(best(goal))) expect(name).not.toMatch(/exhibition/)
  })
  test('for calm: nothing flighty, wild or assertive', () => {
    for (const option of best('calm').options) expect(option.temper).toMatch(/^(very )?calm$/)
  })
  test('for broody hens: more days sitting than for eggs', () => {
    const least = Math.min(...best('broody').options.map((option) => option.broodyDays.likely))
    expect(least).toBeGreaterThan(Math.max(...best('eggs').options.map((option) => option.broodyDays.likely)))
  })
  test('for olive eggs: a dark-egg and a blue-egg breed crossed', () => {
    expect(names(best('olive-eggs')).join(' ')).toMatch(/Marans.*x.*(Legbar|Ameraucana)/)
  })
  test('wishes that no bird meets are said to be too many', () => {
    const none = best('blue-eggs', 'dark-eggs')
    expect(none.options).toEqual([])
    expect(none.summary).toMatch(/leave one wish out/)
  })
})

describe('costs', () => {
  test('a meat hybrid takes two of feed to one of live bird in seven to eight weeks, a dual-purpose cockerel over three in sixteen', () => {
    const { summary, says } = answerLines(ask({ topic: 'cockerel-cost', compare: [{ breed: 'Cornish Cross' }] }))
    expect(summary).toContain('about 2 of feed to 1 of live bird at 7 to 8 weeks')
    expect(summary).toContain('about 3.1 to 1')
    expect(says.join(' ')).toContain('3.2 kg alive')
  })

  test('a flock that is to renew itself gets pure breeds, no first cross and no hybrid', () => {
    const { options } = answerLines(ask({ topic: 'compare', goals: ['eggs', 'meat'], breedsOn: true }))
    expect(options.length).toBeGreaterThan(1)
    for (const { name } of options) expect(name).not.toMatch(/ x |sex-link|hybrid/)
  })

  test('a price of chicks alone is set against the feed of the brother', () => {
    const { summary } = answerLines(
      ask({ topic: 'buy-or-hatch', compare: [{ breed: 'White Leghorn' }], prices: { chick: 14 } }),
    )
    expect(summary).toMatch(/^At £14.00 a pullet chick, hatching is cheaper while feed is under /)
  })

  test('a cockerel to eight weeks at 1.00 a kilogram costs what he eats', () => {
    const answer = answerLines(ask({ topic: 'cockerel-cost', weeks: 8, prices: { feedPerKg: 1 } }))
    expect(answer.summary).toMatch(/2\.1 kg of feed, £2\.10/)
    expect(answer.cautions.map((caution) => caution.topic)).toEqual(['surplus-males'])
  })
  test('without a price: kilograms, and the price is asked for', () => {
    const says = answerLines(
      ask({ topic: 'cockerel-cost', weeks: 16, manner: { symbols: false, units: 'imperial' } }),
    ).says.join(' ')
    expect(says).toMatch(/16 lb/)
    expect(says).not.toMatch(/£|\$/)
    expect(says).toMatch(/Tell me/)
  })
  test('six hens eat six times one hen', () => {
    const kilograms = (hens: number): number => {
      const { summary, says } = answerLines(ask({ topic: 'feed-cost', hens, compare: [red('production')] }))
      return Number(/([\d.]+) kg a month/.exec(hens > 1 ? summary : says[0]!)![1])
    }
    expect(Math.abs(kilograms(6) - 6 * kilograms(1))).toBeLessThanOrEqual(0.8) // each rounded
  })
  test('a dozen that costs more feed than it sells for pays in no year, and the verdict says so', () => {
    const answer = answerLines(
      ask({ topic: 'feed-cost', compare: [red('heritage')], prices: { feedPerKg: 1, eggsPerDozen: 2 } }),
    )
    expect(answer.summary).toMatch(/takes £\d\.\d\d of feed .* sells at £2\.00: that pays in no year/)
    expect(answer.options[0]!.money!.keepUntilYear).toBe(0)
  })
  test('prices at which a hen pays as long as anybody reckons are told without a year', () => {
    const { summary } = answerLines(
      ask({ topic: 'keep-until', compare: [red('heritage')], prices: { feedPerKg: 0.01, eggsPerDozen: 20 } }),
    )
    expect(summary).toMatch(/as long as she lays/)
  })
  test('hatching counts the brother, buying the chick', () => {
    const answer = answerLines(ask({ topic: 'buy-or-hatch', prices: { feedPerKg: 0.6, chick: 8 } }))
    expect(answer.summary).toMatch(/£\d+\.\d\d from a bought sexed chick, £\d+\.\d\d hatched/)
    expect(answer.options).toEqual([])
  })
})

describe('one laying year', () => {
  const asked = (year: number, prices: LinesQuestion['prices'] = {}): LinesAnswer =>
    answerLines(ask({ topic: 'keep-until', year, compare: [red('production')], prices }))
  const eggs = (answer: LinesAnswer): number => Number(/perhaps \d+ to (\d+) eggs/.exec(answer.says[0]!)![1])
  test('she lays less in each later one, and the sum of those before grows', () => {
    const sums = [2, 3, 4].map((year) => Number(/before about (\d+)/.exec(asked(year).says[0]!)![1]))
    expect([1, 2, 3, 4].map((year) => eggs(asked(year)))).toEqual(
      [1, 2, 3, 4].map((year) => eggs(asked(year))).toSorted((a, b) => b - a),
    )
    expect(sums).toEqual(sums.toSorted((a, b) => a - b))
    expect(asked(1).says[0]).not.toMatch(/before|each 100/)
  })
  test('the third year is 62 in 100 of the first (as the table of years has it)', () =>
    expect(asked(3).says[0]).toMatch(/about 62 for each 100 of her first; the 2 years before/))
  test('without prices it is asked for them, with them it is said whether that year pays', () => {
    expect(asked(3).says.join(' ')).toMatch(/Tell me your feed price/)
    expect(asked(3, { feedPerKg: 0.5, eggsPerDozen: 4 }).summary).toMatch(/brings £\d+\.\d\d over her feed/)
    const dear = asked(5, { feedPerKg: 1, eggsPerDozen: 2 })
    expect(dear.summary).toMatch(/falls £\d+\.\d\d short of her feed/)
    expect(dear.says.join(' ')).not.toMatch(/Tell me/)
  })
  test('a year pays exactly where the answer about all years says that hens are kept to it', () => {
    const prices = { feedPerKg: 0.9, eggsPerDozen: 3 }
    const until = asked(1, prices).options[0]!.money!.keepUntilYear!
    expect(asked(until, prices).summary).toMatch(/over her feed/)
    expect(asked(until + 1, prices).summary).toMatch(/short of her feed/)
  })
})

test('the classic crosses and the disputed lines are of the catalogue, lines and all', () => {
  const known = ({ breed, line }: BirdRef): boolean => {
    const found = breedNamed(breed ?? '')
    return found?.name === breed && (line === undefined || found?.lines.some((l) => l.id === line) === true)
  }
  const birds = [...sexedCrosses, ...eggCrosses].flatMap(({ sire, dam }) => [sire, dam])
  expect([...birds, ...disagreements].filter((bird) => !known(bird))).toEqual([])
})

test('whatever is asked, the answer has its shape and a summary that fits', () => {
  const bird = fc.constantFrom<BirdRef>(
    { breed: 'Light Sussex' },
    red('production'),
    {},
    { breed: 'Red bird' },
    { cross: { sire: {}, dam: red('heritage') } },
  )
  fc.assert(
    fc.property(
      fc.subarray(Goal.options, { maxLength: 4 }),
      fc.array(bird, { maxLength: 3 }),
      fc.constantFrom<LinesQuestion['topic']>('compare', 'feed-cost', 'keep-until', 'cockerel-cost', 'buy-or-hatch'),
      fc.record(
        {
          feedPerKg: fc.double({ min: 0.01, max: 50, noNaN: true }),
          eggsPerDozen: fc.double({ min: 0.01, max: 50, noNaN: true }),
          chick: fc.nat(50),
        },
        { requiredKeys: [] },
      ),
      (goals, compare, topic, prices) => {
        const answer = answerLines(ask({ goals, compare, topic, prices: { ...prices } }))
        expect(LinesAnswer.safeParse(answer).error).toBeUndefined()
        expect(answer.summary.length).toBeGreaterThan(10)
      },
    ),
    { numRuns: 200 },
  )
})

describe('hens for eggs: a hen of 290 eggs a year lays 5.6 a week', () => {
  const production = { compare: [{ breed: 'Red sex-link', line: 'production' }], topic: 'needs' } as const
  test('48 eggs a week take nine of them', () => {
    expect(answerLines(ask({ ...production, eggsPerWeek: 48 })).summary).toMatch(/^For 48 eggs a week: about 9 hens/)
  })
  test('two are not enough for four people, and eight are', () => {
    expect(answerLines(ask({ ...production, hens: 2, people: 4 })).summary).toMatch(/^No: 2 hens .* about 11 eggs/)
    expect(answerLines(ask({ ...production, hens: 8, people: 4 })).summary).toMatch(/^Yes: 8 hens .* about 4\d eggs/)
  })
  test('where no need is told, only what they lay is', () => {
    expect(answerLines(ask({ ...production, hens: 6 })).summary).toMatch(/^6 hens .* lay about 3\d eggs/)
  })
})

test('a cross that is compared names its sire and its dam', () => {
  const cross = { sire: { breed: 'Black Copper Marans' }, dam: { breed: 'White Leghorn' } }
  const { sire, dam } = answerLines(ask({ topic: 'buy-or-hatch', compare: [{ cross }] }))
  expect([sire[0]?.breed, dam[0]?.breed]).toEqual(['Black Copper Marans', 'White Leghorn'])
})
