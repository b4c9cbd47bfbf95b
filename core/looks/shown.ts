// core/looks/shown.ts: things a keeper may count among chicks: what each is called, and whether a look has it. Data.
import type { AlleleId } from '../data/loci.ts'
import type { Look } from './look.ts'

/** A trait of form, read from its value in `Look.form`, or of the skin: of these the shares also stand by themselves. */
type OfForm = {
  readonly words: string
  /** The recessive behind it, which chicks may carry unseen. */
  readonly allele?: AlleleId
  readonly trait: 'comb' | 'crest' | 'muffs' | 'feet' | 'feather' | 'neck' | 'toes' | 'tail' | 'legs' | 'tufts' | 'skin'
  readonly holds: (value: string) => boolean
}
/** A colour or pattern, read from the whole look. */
type OfColour = {
  readonly words: string
  readonly allele?: AlleleId
  readonly holds: (look: Look) => boolean
}
export type Shown = OfForm | OfColour

const not =
  (value: string) =>
  (seen: string): boolean =>
    seen !== value
const has =
  (value: string) =>
  (seen: string): boolean =>
    seen.includes(value)
const black =
  (...tints: readonly string[]) =>
  ({ plumage }: Look): boolean =>
    !plumage.white && tints.includes(plumage.black)
const red =
  (...tints: readonly string[]) =>
  ({ plumage }: Look): boolean =>
    !plumage.white && tints.includes(plumage.red)
const pattern =
  (...patterns: readonly string[]) =>
  ({ plumage }: Look): boolean =>
    !plumage.white && patterns.includes(plumage.pattern)

/** White all over, white where black would be, or white with black points: a keeper calls all three white. */
const isWhite = ({ plumage }: Look): boolean =>
  plumage.white ||
  plumage.black.startsWith('white') ||
  (['silver', 'brassy silver', 'white'].includes(plumage.red) &&
    ['columbian', 'self', 'black-tailed'].includes(plumage.pattern))

export const shown = {
  'silkie feather': {
    words: 'silkie-feathered',
    allele: 'h',
    trait: 'feather',
    holds: (value: string) => value === 'silkie',
  },
  frizzle: { words: 'frizzled', trait: 'feather', holds: has('frizzled') },
  smooth: { words: 'smooth-feathered', trait: 'feather', holds: (value: string) => value === 'normal' },
  'naked neck': { words: 'naked or bow-tie necked', trait: 'neck', holds: not('feathered') },
  crest: { words: 'crested', trait: 'crest', holds: not('none') },
  muffs: { words: 'muffed and bearded', trait: 'muffs', holds: not('none') },
  'feathered legs': { words: 'feather-legged', trait: 'feet', holds: not('clean') },
  'five toes': { words: 'five-toed', trait: 'toes', holds: has('five') },
  rumpless: { words: 'rumpless', trait: 'tail', holds: has('rumpless') },
  tailed: { words: 'tailed', trait: 'tail', holds: (value: string) => value === 'tailed' },
  'short legs': { words: 'short-legged', trait: 'legs', holds: (value: string) => value === 'short' },
  dwarf: { words: 'dwarf', trait: 'legs', holds: (value: string) => value === 'dwarf' },
  tufts: { words: 'tufted', trait: 'tufts', holds: has('tufted') },
  'single comb': { words: 'single-combed', trait: 'comb', holds: (value: string) => value === 'single' },
  'rose comb': { words: 'rose-combed', trait: 'comb', holds: has('rose') },
  'pea comb': { words: 'pea-combed', trait: 'comb', holds: has('pea') },
  'dark skin': { words: 'dark-skinned', trait: 'skin', holds: (value: string) => value === 'dark' },
  'hen feathering': { words: 'hen-feathered', holds: ({ form }: Look) => form.henFeathered },
  barred: { words: 'barred', holds: ({ plumage }: Look) => !plumage.white && plumage.barring !== 'none' },
  mottled: { words: 'mottled', allele: 'mo', holds: ({ plumage }: Look) => !plumage.white && plumage.mottled },
  white: { words: 'white', allele: 'c', holds: isWhite },
  black: { words: 'black', holds: (look: Look) => black('black')(look) && look.plumage.pattern.startsWith('solid') },
  blue: { words: 'blue', holds: black('blue') },
  splash: { words: 'splash', holds: black('splash') },
  lavender: { words: 'lavender', allele: 'lav', holds: black('lavender', 'pale lavender') },
  chocolate: { words: 'chocolate', allele: 'choc', holds: black('chocolate') },
  mauve: { words: 'mauve', holds: black('mauve') },
  dun: { words: 'dun', holds: black('dun') },
  khaki: { words: 'khaki', holds: black('khaki') },
  silver: { words: 'silver', holds: red('silver', 'brassy silver', 'white') },
  gold: { words: 'gold', allele: 's+', holds: red('gold', 'red', 'mahogany', 'buff') },
  laced: { words: 'laced', holds: pattern('single laced', 'double laced') },
  pencilled: { words: 'pencilled', holds: pattern('pencilled') },
  columbian: { words: 'columbian', holds: pattern('columbian') },
} as const satisfies Readonly<Record<string, Shown>>

/** 'split': what they carry unseen. */
export type ShownId = keyof typeof shown | 'split'
export const shownIds = [
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- its keys are these and no others
  ...(Object.keys(shown) as (keyof typeof shown)[]),
  'split',
] as const satisfies readonly ShownId[]
export const shownOf = (id: keyof typeof shown): Shown => shown[id]
