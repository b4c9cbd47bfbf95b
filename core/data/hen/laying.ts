// core/data/hen/laying.ts: how lay falls with the years, when it begins, how many hens live through it. Data only.
import type { Citation, Span } from '../../vocabulary.ts'

const judged: Citation = { ref: 'judgement of the project between the sources listed', status: 'from memory' }

/** Eggs of laying year n as a share of the first, n from 1; beyond the list each year is the last one's times `later`. */
export const persistency = {
  byPurpose: {
    production: [1, 0.78, 0.62, 0.47, 0.36],
    hatchery: [1, 0.82, 0.7, 0.59, 0.5],
    'kept for use': [1, 0.85, 0.74, 0.63, 0.53],
    exhibition: [1, 0.85, 0.74, 0.63, 0.53],
    landrace: [1, 0.82, 0.7, 0.59, 0.5],
  },
  /** Doubt about each later year, as a share of that year's own figure and growing with the years. */
  doubtPerYear: 0.06,
  /** Crosses hold their lay better than their parents late in life: more, as a share, for each year after the first. */
  heterosisPerYear: { low: 0, likely: 0.02, high: 0.05 },
  sources: [
    { ref: 'Florida extension figures as quoted by the farm press: 80, 70, 60 in 100', status: 'read' },
    { ref: 'Ni et al. 2023, Genet. Sel. Evol.: at 72-100 weeks crosses lay 3.8-3.9 eggs a week, the Leghorn parent 3.5', status: 'read' },
    judged,
  ],
} as const satisfies {
  byPurpose: Record<string, readonly number[]>
  doubtPerYear: number
  heterosisPerYear: Span
  sources: readonly Citation[]
}

/** A year counts as worth keeping while she lays this share of her first year: usual view, patient keeper, strict keeper. */
export const worthKeeping = {
  strict: 0.7,
  usual: 0.6,
  patient: 0.5,
  sources: [{ ref: 'judgement of the project; with prices told, money decides instead', status: 'from memory' }],
} as const satisfies Record<string, number | readonly Citation[]>

/** Age at first egg in days where the catalogue has no figure for the line: by purpose, then later for heavy slow breeds. */
export const firstEgg = {
  byPurpose: {
    production: { low: 133, likely: 143, high: 154 },
    hatchery: { low: 140, likely: 154, high: 175 },
    'kept for use': { low: 150, likely: 168, high: 190 },
    exhibition: { low: 160, likely: 182, high: 210 },
    landrace: { low: 150, likely: 170, high: 200 },
  },
  /** Days more for the slow and heavy, fewer for the light. */
  byFamily: {
    'Jersey Giant': 28,
    Brahma: 28,
    Cochin: 28,
    Langshan: 14,
    Orpington: 14,
    Silkie: 21,
    Cornish: 10,
    Leghorn: -8,
    Ancona: -8,
    Minorca: -4,
    Fayoumi: -14,
    Hamburg: -7,
    Jaerhon: -7,
  },
  sources: [
    { ref: 'Kashmiri station flock of Rhode Island Reds: first egg at 148 days', status: 'read' },
    { ref: 'hatchery pages and keepers: hybrids 18-20 weeks, heavy breeds 22-28', status: 'common practice' },
    judged,
  ],
} as const satisfies {
  byPurpose: Record<string, Span>
  byFamily: Readonly<Record<string, number>>
  sources: readonly Citation[]
}

/** Share of hens alive after a laying year. No gain from crossing in the laying house; only in rearing. */
export const liveability = {
  byPurpose: {
    production: { low: 0.88, likely: 0.92, high: 0.96 },
    hatchery: { low: 0.88, likely: 0.93, high: 0.97 },
    'kept for use': { low: 0.88, likely: 0.93, high: 0.97 },
    exhibition: { low: 0.85, likely: 0.92, high: 0.97 },
    landrace: { low: 0.88, likely: 0.94, high: 0.98 },
  },
  sources: [
    { ref: 'Morris and Skaller 1958 (Leghorn x Australorp): adult liveability no better in crosses', status: 'read' },
    { ref: 'judgement of the project: 5 to 10 in 100 a year', status: 'from memory' },
  ],
} as const satisfies { byPurpose: Record<string, Span>; sources: readonly Citation[] }

/** What is left for the pot: a brother of the hens at sixteen weeks, dressed. */
export const carcass = {
  weeks: 16,
  forward: { low: 0.87, likely: 1, high: 1.12 }, // how far along for his age, against the table of growing birds
  dressedShare: { low: 0.62, likely: 0.66, high: 0.7 },
  sources: [{ ref: 'judgement of the project: dual-purpose cockerels dress 1.4 to 1.8 kg at sixteen weeks', status: 'from memory' }],
} as const satisfies Record<string, Span | number | readonly Citation[]>
