// grammar/geneText.ts: is a word with a slash or a plus a genotype, or 'w/ RIR', or a name and a plus.
import { lociOfAllele, readPair } from '../core/genotype.ts'
import type { Raw } from './tokens.ts'
import type { Word } from './word.ts'

const notGenes = /^(?:w\/o|b\/c|y\/n|i\/o|a\/c|s\/he|n\/a|w\/c|p\/o|o\/w)$/iu

/** Does a slash or a plus make this a genotype, right or wrong? Among other genotypes, one known half will do. */
function isGenotype(text: string, among: boolean): boolean {
  if (notGenes.test(text)) return false
  const halves = text.split('/')
  const known = halves.map((half) => lociOfAllele(half)?.locus).filter((locus) => locus !== undefined)
  if (!text.includes('/')) return known.length > 0 || readPair(text).ok
  if (readPair(text).ok || (known.length === halves.length && new Set(known).size === 1)) return true
  const marked = /[+^-]/u.test(text) || /^([a-z])\/\1$/iu.test(text) || text.endsWith('/W')
  return (
    (marked || among) &&
    (known.length > 0 || (marked && halves.every((half) => half.replace(/[+^-]/gu, '').length <= 2)))
  )
}

/** `w/ RIR`, `b/c`, `y/n` look like genotypes and are none; `RIR+` is a name and a plus. */
export function plainly(raw: Raw, among: boolean): readonly Raw[] {
  if (raw.type !== 'gene' || isGenotype(raw.text, among)) return [raw]
  return [...raw.text.matchAll(/[A-Za-z\d]+|\+|\/|[^A-Za-z\d+/]/gu)].map((part): Raw => ({
    type: /^[A-Za-z\d]/u.test(part[0]) ? 'word' : part[0] === '+' ? 'plus' : part[0] === '/' ? 'slash' : 'sign',
    text: part[0],
    at: raw.at + part.index,
  }))
}

/** `Ss`, `Bb`: no name is written so. */
export const isMixedPair = (text: string): boolean =>
  /^[A-Z][a-z]$/u.test(text) && text[0]!.toLowerCase() === text[1] && readPair(text).ok

/** `BB` among other genotypes. */
export const isDouble = (text: string): boolean => /^(?:BB|bb|SS|ss|KK|kk|OO|oo|PP|pp|RR|rr|II|ii|CC|cc)$/u.test(text)

/** `S hen`: one symbol right before a sex word. */
export const isLoneAllele = (words: readonly Word[], at: number): boolean =>
  /^(?:[SsBbKkOIEP]|Id|id|Bl|Co|lav|choc)$/u.test(words[at]!.raw.text) &&
  !['lav', 'choc'].includes(words[at]!.raw.text) &&
  /^(?:hens?|cocks?|pullets?|females?|males?|roos?|roosters?|cockerels?)$/u.test(words[at + 1]?.word ?? '')

/** `Ss`, `Bb`, `Kk`, `blbl`, `EE`-like doubles only where the cases differ, or where a locus of two letters is doubled. */
export const isJoinedGene = (text: string): boolean =>
  text.length <= 10 &&
  (/^([A-Z])[a-z]$/u.test(text)
    ? text[0]!.toLowerCase() === text[1]
    : /^([A-Za-z]{2,4})\1$/iu.test(text) || /^[BbKks]W$/u.test(text)) &&
  readPair(text).ok
