// core/genotype/halves.ts: one word of a genotype, cut into the alleles that were written in it.
import { loci } from '../data/loci.ts'
import { alleleNamed } from './allele.ts'

/** What a keeper writes where a second allele is not known, or not there. */
const nothing = new Set(['', '-', '_', '.', '?', '0'])
export const tellsNothing = (half: string) => nothing.has(half)

/** Superscripts, odd dashes and slashes, brackets and stops around a word, in plain form. */
export const tidy = (text: string) =>
  text
    .normalize('NFKC')
    .replaceAll(/[\u2010-\u2015\u2212]/gu, '-')
    .replaceAll(/[\u2044\u2215|]/gu, '/')
    .replaceAll(/[{}()[\]"'\u2018\u2019\u201C\u201D`*]/gu, '')
    .replaceAll(/\s*\/\s*/gu, '/')
    .trim()

/** True for the W of a hen's sex chromosomes: it stands where a second allele of a Z locus would. */
export function isWChromosome(half: string, partner: string): boolean {
  const other = alleleNamed(partner)
  return half === 'W' && other !== undefined && loci[other.locus].on === 'Z'
}

/** `Ss`, `ebeb`, `Blbl`, `S-`: two symbols of one locus written together, both in the right case. */
function joined(word: string): readonly string[] | undefined {
  if (word.length < 2 || word.length > 12) return undefined
  for (let cut = 1; cut < word.length; cut += 1) {
    const [left, right] = [word.slice(0, cut), word.slice(cut)]
    const one = alleleNamed(left)
    if (one === undefined || one.allele[0] !== left[0]) continue
    if (right === '-' || isWChromosome(right, left)) return [left, right]
    const other = alleleNamed(right)
    if (other?.locus === one.locus && other.allele[0] === right[0]) return [left, right]
  }
  return undefined
}

/** The written alleles of one word: two for `S/s+`, three for `S/s+/s+`; undefined for a word that is no genotype. */
export function halves(word: string): readonly string[] | undefined {
  return word.includes('/') ? word.split('/') : joined(word)
}
