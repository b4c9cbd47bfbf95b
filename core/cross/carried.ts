// core/cross/carried.ts: what chicks carry unseen: recessive genes that keepers ask after, by the share with one hidden copy.
import { traits } from '../looks/traits.ts'
import type { Genotype } from '../vocabulary.ts'

type Block = readonly { readonly genotype: Genotype; readonly p: number }[]
export type Carried = {
  readonly allele: string
  readonly name: string
  readonly cockerels: number // share of them with one copy
  readonly pullets: number
}

const asked = [
  ['lav', 'lavender'],
  ['choc', 'chocolate'],
  ['c', 'recessive white'],
  ['mo', 'mottling'],
  ['h', 'silkie feather'],
  ['dw', 'dwarfing'],
] as const
type Asked = (typeof asked)[number][0]

/** A hen with her one copy of a gene on the Z shows it, so she carries nothing unseen there. */
const oneCopy = (blocks: readonly Block[], allele: Asked): number => {
  const { locus } = traits[allele]
  const block = blocks.find((rows) => rows[0]?.genotype[locus] !== undefined) ?? []
  return block.reduce((sum, { genotype, p }) => {
    const pair = genotype[locus] ?? []
    return pair.length === 2 && pair.filter((one) => one === allele).length === 1 ? sum + p : sum
  }, 0)
}

/** @param M, F independent blocks of genotypes of each sex, shares summing to 1 in each */
export const carriedUnseen = (M: readonly Block[], F: readonly Block[]): readonly Carried[] =>
  asked
    .map(([allele, name]) => ({ allele, name, cockerels: oneCopy(M, allele), pullets: oneCopy(F, allele) }))
    .filter(({ cockerels, pullets }) => cockerels + pullets > 1e-9)
