// core/data/linkage.ts: which loci travel together, and how often they part. Data only.
import type { Citation, LinkageGroup } from '../vocabulary.ts'
import { literature as by } from './literature.ts'
import { loci, locusIds, type LocusId } from './loci.ts'

/**
 * Groups of two or more. `r[i]` is the chance that loci i and i+1 part in one meiosis; no interference. On the Z only
 * the cock recombines. Loci far apart on one chromosome (S and B, D and Po, Db and Ml) assort freely, and stand apart.
 */
const together = [
  {
    on: 'Z', loci: ['K', 'S', 'dw', 'choc'], r: [0.025, 0.055, 0.27],
    sources: [by.bitgood1999, by.nature1964, by.hutt1949],
    doubt:
      'K-S agrees in two works (2.4 and 2.8 in 100). S-dw is from memory: the printed 0.7 in 100 looks like a misprint beside a place some 2.5 Mb away. S-choc (about 0.3) is an estimate from their distance; no cross that measured it was found.',
  },
  {
    on: 'Z', loci: ['B', 'Id'], r: [0.1],
    sources: [by.hutt1949, by.shank2026],
    doubt: 'from memory, between 0 and 0.13; the newest mapping puts both in one place. Say "usually together", never a figure.',
  },
  {
    on: 'A', loci: ['O', 'P', 'Cha'], r: [0.04, 0.01],
    sources: [by.brucknerHutt1939, by.carefoot2001],
    doubt: 'O-P about 3 to 5 in 100, from memory. P-Cha: none of 35 chicks parted, so anything up to 8 in 100 may be.',
  },
  { on: 'A', loci: ['Ml', 'Pg'], r: [0.12], sources: [by.campo1991], doubt: '12.2 in 100, standard error 2.1' },
  {
    on: 'A', loci: ['Cr', 'I', 'F'], r: [0.125, 0.171],
    sources: [by.warrenHutt1936],
    doubt: 'Cr-F was measured as 29.4 in 100, with no double exchange among 284 gametes; without interference the two steps make 25.3.',
  },
  {
    on: 'A', loci: ['R', 'Cp'], r: [0.005],
    sources: [by.serebrovsky1928, by.landauer1932, by.imsland2012],
    doubt: '8 in 100 in 1928, far less in later work; the creeper deletion lies inside the inversion that makes the rose comb, which speaks for hardly ever.',
  },
  { on: 'A', loci: ['Na', 'h'], r: [0.43], sources: [by.omiaNa], doubt: 'about 43 in 100, near free assortment' },
] as const satisfies readonly (LinkageGroup & { readonly loci: readonly LocusId[] })[]

const grouped: ReadonlySet<string> = new Set(together.flatMap((group) => group.loci))
const free: readonly Citation[] = [{ ref: 'no close partner found in the works read', status: 'from memory' }]
const alone = (id: LocusId): LinkageGroup => ({ on: loci[id].on, loci: [id], r: [], sources: free })

/** Every locus stands in exactly one group; those without a known partner in one of their own. */
export const linkageGroups: readonly LinkageGroup[] = [
  ...together,
  ...locusIds.filter((id) => !grouped.has(id)).map(alone),
]
