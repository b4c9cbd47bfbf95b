// core/flock/carriedName.ts: what a carrier carries, in a word: 'lavender', 'recessive white', 'slow feathering'.
import { traitOf } from '../looks/traits.ts'

/** What a carrier carries, where the word for a bird that shows it will not do. */
const carried: Readonly<Record<string, string>> = {
  c: 'recessive white',
  'mo^w': 'a recessive white',
  mo: 'mottling',
  B: 'barring',
  'b+': 'unbarred',
  'k+': 'fast feathering',
  K: 'slow feathering',
  'id+': 'dark shanks',
  Id: 'clear shanks',
  dw: 'dwarfing',
  w: 'yellow skin',
  h: 'silkie feather',
  I: 'dominant white',
  O: 'blue shell',
  P: 'pea comb',
  R: 'rose comb',
  'r+': 'the lack of a rose comb',
  'p+': 'the lack of a pea comb',
  Cr: 'crest',
  Mb: 'muffs',
  F: 'frizzle',
  Na: 'naked neck',
  Cp: 'creeper',
  Fm: 'dark skin',
  Hf: 'hen feathering',
  'Pti-1^B': 'feathered legs',
  Et: 'ear tufts',
  Po: 'the fifth toe',
  Rp: 'rumplessness',
  Ml: 'the melanotic gene',
  Pg: 'the pattern gene',
  Cha: 'charcoal',
}

export const carriedName = (allele: string): string => carried[allele] ?? traitOf(allele)?.shows ?? allele
