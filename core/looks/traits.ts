// core/looks/traits.ts: the alleles that keepers argue over: what each shows, in how many copies, and what hides it.
import type { AlleleId, LocusId } from '../data/loci.ts'
import type { Sex } from '../vocabulary.ts'
import type { Look } from './look.ts'
import { masks, type MaskId } from './masks.ts'

export type AlleleTrait = {
  readonly locus: LocusId
  /** What a bird that shows it is, plain: 'lavender', 'barred', 'single-combed'. */
  readonly shows: string
  /** recessive: shows only pure; dominant: one copy shows as much; dose: one copy shows, two show more. */
  readonly acts: 'recessive' | 'dominant' | 'dose'
  /** Looks in which a bird does not tell whether it would show it. */
  readonly hiddenBy: readonly MaskId[]
  /** The dominant in whose place it stands, where keepers ask whether a bird is pure for that one. */
  readonly insteadOf?: AlleleId
  /** Of birds with one copy, the share that shows it, where some do not; two numbers where the works differ. */
  readonly penetrance?: { readonly low: number; readonly high: number; readonly source: string }
}

const everyColour: readonly MaskId[] = ['white']
const blackPart: readonly MaskId[] = ['white', 'no black']
const redPart: readonly MaskId[] = ['white', 'black', 'no red']
const form: readonly MaskId[] = []

export const traits = {
  lav: { locus: 'lav', shows: 'lavender', acts: 'recessive', hiddenBy: everyColour },
  choc: { locus: 'choc', shows: 'chocolate', acts: 'recessive', hiddenBy: blackPart },
  c: { locus: 'c', shows: 'white', acts: 'recessive', hiddenBy: everyColour },
  mo: { locus: 'mo', shows: 'mottled', acts: 'recessive', hiddenBy: everyColour },
  'mo^w': { locus: 'mo', shows: 'white', acts: 'recessive', hiddenBy: everyColour },
  's+': { locus: 'S', shows: 'gold', acts: 'recessive', hiddenBy: redPart },
  S: { locus: 'S', shows: 'silver', acts: 'dominant', hiddenBy: redPart },
  'b+': { locus: 'B', shows: 'unbarred', acts: 'recessive', hiddenBy: everyColour, insteadOf: 'B' },
  B: { locus: 'B', shows: 'barred', acts: 'dose', hiddenBy: everyColour },
  'k+': { locus: 'K', shows: 'fast-feathering', acts: 'recessive', hiddenBy: form },
  K: { locus: 'K', shows: 'slow-feathering', acts: 'dominant', hiddenBy: form },
  'id+': { locus: 'Id', shows: 'dark-shanked', acts: 'recessive', hiddenBy: form },
  Id: { locus: 'Id', shows: 'clear-shanked', acts: 'dominant', hiddenBy: form },
  dw: { locus: 'dw', shows: 'dwarfed', acts: 'recessive', hiddenBy: form },
  w: { locus: 'W', shows: 'yellow-skinned', acts: 'recessive', hiddenBy: ['dark shanks'] },
  h: { locus: 'h', shows: 'silkie-feathered', acts: 'recessive', hiddenBy: form },
  E: { locus: 'E', shows: 'black', acts: 'dominant', hiddenBy: everyColour },
  I: { locus: 'I', shows: 'white in place of black', acts: 'dose', hiddenBy: ['white'] },
  'I^D': { locus: 'I', shows: 'dun', acts: 'dose', hiddenBy: blackPart },
  Bl: { locus: 'Bl', shows: 'blue', acts: 'dose', hiddenBy: blackPart },
  Co: { locus: 'Co', shows: 'columbian', acts: 'dose', hiddenBy: ['white', 'black'] },
  Mh: { locus: 'Mh', shows: 'mahogany red', acts: 'dose', hiddenBy: redPart },
  ig: { locus: 'ig', shows: 'cream', acts: 'recessive', hiddenBy: redPart },
  O: { locus: 'O', shows: 'blue- or green-laying', acts: 'dose', hiddenBy: ['cock'] },
  'o+': { locus: 'O', shows: 'white- or brown-laying', acts: 'recessive', hiddenBy: ['cock'], insteadOf: 'O' },
  P: { locus: 'P', shows: 'pea-combed', acts: 'dose', hiddenBy: form },
  R: { locus: 'R', shows: 'rose-combed', acts: 'dominant', hiddenBy: form },
  'r+': { locus: 'R', shows: 'single-combed', acts: 'recessive', hiddenBy: form, insteadOf: 'R' },
  'p+': { locus: 'P', shows: 'single-combed', acts: 'recessive', hiddenBy: form, insteadOf: 'P' },
  'D^V': { locus: 'D', shows: 'horned in the comb', acts: 'dose', hiddenBy: ['rose or walnut comb'] },
  Cr: { locus: 'Cr', shows: 'crested', acts: 'dose', hiddenBy: form },
  'cr+': { locus: 'Cr', shows: 'plain-headed', acts: 'recessive', hiddenBy: form, insteadOf: 'Cr' },
  Mb: { locus: 'Mb', shows: 'muffed', acts: 'dose', hiddenBy: form },
  'mb+': { locus: 'Mb', shows: 'clean-faced', acts: 'recessive', hiddenBy: form, insteadOf: 'Mb' },
  F: { locus: 'F', shows: 'frizzled', acts: 'dose', hiddenBy: form },
  Na: { locus: 'Na', shows: 'naked-necked', acts: 'dose', hiddenBy: form },
  'f+': { locus: 'F', shows: 'smooth-feathered', acts: 'recessive', hiddenBy: form, insteadOf: 'F' },
  'na+': { locus: 'Na', shows: 'feather-necked', acts: 'recessive', hiddenBy: form, insteadOf: 'Na' },
  Cp: { locus: 'Cp', shows: 'short-legged', acts: 'dominant', hiddenBy: form },
  Fm: { locus: 'Fm', shows: 'dark-skinned', acts: 'dominant', hiddenBy: ['clear shanks'] },
  Hf: { locus: 'Hf', shows: 'hen-feathered', acts: 'dominant', hiddenBy: form },
  'Pti-1^B': { locus: 'Pti', shows: 'feather-legged', acts: 'dose', hiddenBy: form },
  'pti-1+': { locus: 'Pti', shows: 'clean-legged', acts: 'recessive', hiddenBy: form, insteadOf: 'Pti-1^B' },
  Et: {
    locus: 'Et',
    shows: 'tufted',
    acts: 'dominant',
    hiddenBy: form,
    penetrance: { low: 0.86, high: 0.96, source: 'Somes & Pabilonia 1981' },
  },
  Po: {
    locus: 'Po',
    shows: 'five-toed',
    acts: 'dominant',
    hiddenBy: form,
    penetrance: { low: 0.73, high: 0.96, source: 'Davenport 1909: half-Houdans 80 of 110, half-Silkies 132 of 138' },
  },
  Rp: {
    locus: 'Rp',
    shows: 'rumpless',
    acts: 'dominant',
    hiddenBy: form,
    penetrance: { low: 0, high: 1, source: 'Davenport 1909: a carrier cock gave no rumpless chick of 55' },
  },
} as const satisfies Partial<Record<AlleleId, AlleleTrait>>

/** The debated trait of an allele in catalogue form; undefined for alleles that nobody argues over. */
export const traitOf = (allele: string): AlleleTrait | undefined =>
  (traits as Readonly<Record<string, AlleleTrait>>)[allele]

/** The first look of this bird, if any, that keeps it from telling whether it shows the allele. */
export const maskOn = (trait: AlleleTrait, look: Look, sex: Sex): MaskId | undefined =>
  trait.hiddenBy.find((mask) => masks[mask].holds(look, sex))
