// core/flock/lookWord.ts: does a chick described by a word show the debated allele, not show it, or not tell?
import type { Debated } from './debated.ts'

/** Other words that keepers use of a bird that shows a trait. */
const alsoSaid: Readonly<Record<string, readonly string[]>> = {
  white: ['yellow', 'cream'],
  'white in place of black': ['white', 'yellow'],
  lavender: ['lav', 'grey', 'gray'],
  blue: ['splash', 'grey', 'gray'],
  barred: ['cuckoo'],
  gold: ['red', 'buff', 'ginger'],
  chocolate: ['choc'],
  mottled: ['spotted', 'spangled'],
  'silkie-feathered': ['silkie'],
  'naked-necked': ['bow', 'naked'],
  'feather-legged': ['booted'],
}

const form = /comb|crest|muff|beard|tuft|toe|leg|frizz|silkie|neck|rump|feather|skin|shank|dwarf|horn/u

const plain = (words: string): string => words.toLowerCase().replaceAll('-', ' ')

/** @returns undefined where the word says nothing of this allele */
export function lookTells({ shows, hiddenBy }: Debated, look: string): boolean | undefined {
  const said = plain(look.trim())
  const words = said.split(/\s+/u)
  if (said.includes(plain(shows)) || words.some((word) => alsoSaid[shows]?.includes(word))) return true
  const part = form.exec(said)?.[0]
  if (part !== undefined || form.test(shows)) return part !== undefined && shows.includes(part) ? false : undefined
  return words.some((word) => hiddenBy.some((mask) => mask === word)) ? undefined : false
}
