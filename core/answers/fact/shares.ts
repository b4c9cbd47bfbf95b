// core/answers/fact/shares.ts: shares of alleles in a breed, and what keeps a colour from sight: what the sentences are made from.
import { genesOf, type Breed, type GeneRecord } from '../../breeds.ts'
import { loci } from '../../data/loci.ts'
import type { Locus } from '../../vocabulary.ts'

const known: Readonly<Record<string, Locus>> = loci
export const nameOf = (locus: string): string => known[locus]?.name ?? locus
export const wildOf = (locus: string): string => known[locus]?.wild ?? ''

/** Shares of the alleles of a record, commonest first. */
export function sharesIn(gene: GeneRecord): readonly (readonly [allele: string, share: number])[] {
  if (gene.kind === 'fixed') return [[gene.allele, 1]]
  if (gene.kind === 'segregates')
    return Object.entries(gene.freq)
      .filter(([, share]) => share > 0)
      .toSorted((a, b) => b[1] - a[1])
  return [...new Set(gene.alleles)].map((allele) => [allele, gene.alleles.filter((one) => one === allele).length / 2])
}

export const share = (gene: GeneRecord | undefined, allele: string): number =>
  gene ? (sharesIn(gene).find(([one]) => one === allele)?.[1] ?? 0) : 0

/** The colours that keep gold and silver from sight. */
export function cover(breed: Breed, line: string | undefined): 'black' | 'white' | undefined {
  if (breed.shows?.some((any) => any.includes('c') || any.includes('I'))) return 'white'
  return share(genesOf(breed, line)['E'], 'E') > 0.5 ? 'black' : undefined
}

/** 'a, b and c'. */
export const andList = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
