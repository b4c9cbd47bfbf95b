// test/bot/picture/chartAnswers.ts: answers with something to chart; each passes the schema before it is used.
import { CarrierAnswer, HatchAnswer, LinesAnswer } from '../../../core/answer.ts'

const common = { summary: 'x', assumptions: [], assumed: [], cautions: [], sources: [], birds: [], sire: [], dam: [] }
const span = (low: number, likely: number, high: number) => ({ low, likely, high })

export const carrier = CarrierAnswer.parse({
  kind: 'carrier',
  ...common,
  bird: { name: 'Bert', breed: 'Black Orpington' },
  allele: 'lav',
  trait: 'lavender',
  possible: true,
  why: '',
  before: 2 / 3,
  now: 2 / 3,
  nowFraction: '2/3',
  moved: [],
  moreChicks: [
    { mating: 'with a lavender hen', for95: 5, for99: 7, clear: 1 / 2 },
    { mating: 'with a hen known to carry it', for95: 11, for99: 17, clear: 3 / 4 },
  ],
  oneContraryChick: '',
  conflict: [],
  rivals: [],
  sensitivity: null,
})

const option = (name: string, years: readonly (readonly [number, number, number])[]) => ({
  name,
  bird: { breed: 'Rhode Island Red' },
  eggsThreeYears: span(500, 600, 700),
  eggsByYear: years.map(([low, likely, high]) => span(low, likely, high)),
  feedKgPerDozen: span(1.6, 1.9, 2.3),
  carcassKg: span(1.6, 1.9, 2.2),
  broodyDays: span(0, 2, 5),
  hardiness: '',
  temper: '',
  keep: '',
  why: '',
})
export const twoLines = LinesAnswer.parse({
  kind: 'lines',
  ...common,
  topic: 'compare',
  goal: ['eggs'],
  options: [
    option('production Rhode Island Red', [
      [240, 270, 300],
      [180, 210, 240],
    ]),
    option('heritage Rhode Island Red', [
      [195, 220, 250],
      [160, 190, 215],
    ]),
  ],
  tradeOff: '',
  says: [],
})

export const enough = HatchAnswer.parse({
  kind: 'hatch',
  ...common,
  topic: 'eggs-to-set',
  pulletsWanted: 12,
  certainty: 0.9,
  eggsToSet: 46,
  eggsToSetOnAverage: 34,
  pulletsExpected: 16,
  cockerelsExpected: 16,
  chance: 0.91,
  distribution: [
    { eggs: 34, chance: 0.52 },
    { eggs: 42, chance: 0.83 },
    { eggs: 46, chance: 0.91 },
  ],
  given: {
    fertility: 0.9,
    hatchOfFertile: 0.8,
    femaleShare: 0.5,
    survival: 0.95,
    shipped: false,
    sexingAccuracy: null,
    status: 'common practice',
  },
  dates: null,
  says: [],
})
