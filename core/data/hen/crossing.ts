// core/data/hen/crossing.ts: crossbreeding parameters of each trait: heterosis at distance 1, share of the Z, doubts. Data only.
import type { Citation, Span } from '../../vocabulary.ts'

export type CrossingParameters = {
  /** Gain over the mean of the two lines where every locus has one allele of each, as a share of that mean, at distance 1. */
  readonly heterosis: Span
  /** The same where one of the lines is a small closed flock, kept for show. */
  readonly heterosisFromClosed?: Span
  /** Share of a hen's own line difference that lies on her one Z, which is her sire's. */
  readonly onZ: number
  /** What reciprocal crosses may differ by beyond the Z, as a share: mother's egg, yolk, rearing. */
  readonly maternal: Span
  /** No flock's own mean is taken as known better than this share, on either side. */
  readonly strainDoubt: number
  /** Share of the difference of two lines that may fail to reach their cross: 30 in 100 came through where 50 was due. */
  readonly shortfall?: number
  /** No cross is put above its best line by more than this share. */
  readonly cap?: number
  readonly sources: readonly Citation[]
}

/**
 * The Z carries some 82 of 1050 megabases, and a hen has one of it against two of each other chromosome: 82 / (2 x 968 + 82).
 * Taken for every trait, since no trial separates the Z from the mother's own effect.
 */
const zShare = 0.04

const judged: Citation = {
  ref: 'judgement of the project, set beside the trials listed with each trait',
  status: 'from memory',
}
const ni: Citation = { ref: 'Ni et al. 2023, Genet. Sel. Evol. (White Leghorn x Beijing-You)', status: 'read' }
const amuzu: Citation = { ref: 'Amuzu-Aweh et al. 2015, Genet. Sel. Evol. (Leghorn line crosses)', status: 'read' }
const wang: Citation = { ref: 'Wang et al. 2022, Poult. Sci. (White Leghorn x Beijing-You)', status: 'read' }
const morris: Citation = { ref: 'Morris and Skaller 1958, Aust. J. Agric. Res. 9:842-851 (Leghorn x Australorp)', status: 'read' }
const hale: Citation = { ref: 'Hale and Clayton 1965, Br. Poult. Sci. 6:153-174', status: 'read' }
const poggenpoel: Citation = { ref: 'Poggenpoel 1990, World Congr. Genet. Appl. Livest. Prod. 16:81-83 (Australorp x Leghorn)', status: 'read' }
const barua: Citation = { ref: 'Barua 1998, AJAS (Fayoumi x Rhode Island Red)', status: 'read' }
const norfa: Citation = { ref: 'El-Salamony 2002 (Norfa lines)', status: 'read' }

export const crossing = {
  eggsFirstYear: {
    heterosis: { low: 0, likely: 0.05, high: 0.12 },
    heterosisFromClosed: { low: 0.02, likely: 0.08, high: 0.15 },
    onZ: zShare,
    maternal: { low: -0.01, likely: 0, high: 0.01 },
    strainDoubt: 0.12,
    shortfall: 0.2,
    cap: 0.1,
    sources: [ni, wang, amuzu, hale, poggenpoel, judged],
  },
  ageFirstEgg: {
    heterosis: { low: -0.04, likely: -0.012, high: 0.01 },
    onZ: zShare,
    maternal: { low: 0, likely: 0, high: 0 },
    strainDoubt: 0.05,
    sources: [wang, barua, norfa, judged],
  },
  eggWeight: {
    heterosis: { low: 0, likely: 0.01, high: 0.03 },
    onZ: zShare,
    maternal: { low: -0.01, likely: 0, high: 0.01 },
    strainDoubt: 0.05,
    sources: [ni, amuzu, hale, judged],
  },
  bodyWeight: {
    heterosis: { low: -0.03, likely: 0.02, high: 0.08 },
    onZ: zShare,
    maternal: { low: -0.01, likely: 0, high: 0.01 },
    strainDoubt: 0.08,
    sources: [morris, norfa, hale, judged],
  },
  liveability: {
    heterosis: { low: 0, likely: 0, high: 0.01 },
    onZ: zShare,
    maternal: { low: 0, likely: 0, high: 0 },
    strainDoubt: 0.02,
    sources: [morris, judged],
  },
} as const satisfies Record<string, CrossingParameters>

/** Beyond this ratio of weights the mean of two lines is taken on the scale of ratios: heavy x light crosses fall below the plain mean. */
export const unequalWeights = {
  ratio: 1.5,
  sources: [{ ref: 'Soliman 2016 (meat type x Fayoumi: 27 in 100 below the plain mean at 12 weeks)', status: 'read' }, judged],
} as const satisfies { ratio: number; sources: readonly Citation[] }
