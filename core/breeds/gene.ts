// core/breeds/gene.ts: what a variety carries at one locus, and what such a record must obey.
import * as z from 'zod'
import { loci } from '../data/loci.ts'
import type { Locus } from '../vocabulary.ts'

export const Status = z.enum(['read', 'common practice', 'from memory'])
const Confidence = z.enum(['high', 'medium', 'low'])
const known: Readonly<Record<string, Locus>> = loci
const Share = z.number().min(0).max(1)

const about = { confidence: Confidence, status: Status }
/**
 * What a variety carries at one locus.
 * - fixed: every bird has it in every copy (a hen her one copy at a Z locus);
 * - segregates: share of each allele in the variety; birds draw from it, within what they show (`shows`);
 * - genotype: the look itself fixes the pair, as blue is Bl/bl+; `hen` where a hen at a Z locus differs.
 */
export const GeneRecord = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('fixed'), allele: z.string(), ...about }),
  z.strictObject({ kind: z.literal('segregates'), freq: z.record(z.string(), Share).readonly(), ...about }),
  z.strictObject({
    kind: z.literal('genotype'),
    alleles: z.array(z.string()).length(2).readonly(),
    hen: z.array(z.string()).length(1).readonly().optional(),
    ...about,
  }),
])
export type GeneRecord = z.infer<typeof GeneRecord>
/** By locus id. A locus that is not listed is wild type. */
export type Genes = Readonly<Record<string, GeneRecord>>

/** Alleles that a record names. */
export const allelesIn = (gene: GeneRecord): readonly string[] =>
  gene.kind === 'fixed'
    ? [gene.allele]
    : gene.kind === 'segregates'
      ? Object.keys(gene.freq)
      : [...gene.alleles, ...(gene.hen ?? [])]

function geneFault(locus: string, gene: GeneRecord): string | undefined {
  const at = known[locus]
  if (!at) return `no locus ${locus}; known: ${Object.keys(known).join(', ')}`
  const stray = allelesIn(gene).find((allele) => !at.alleles.includes(allele))
  if (stray !== undefined) return `no allele ${stray} at ${locus}; known: ${at.alleles.join(', ')}`
  if (gene.kind === 'segregates') {
    const sum = Object.values(gene.freq).reduce((a, b) => a + b, 0)
    if (Math.abs(sum - 1) > 1e-9) return `shares add to ${sum}, want 1`
  }
  if (gene.kind === 'genotype' && gene.hen && at.on !== 'Z') return `${locus} is not on the Z: a hen has two copies`
  return undefined
}

export const Genes = z
  .record(z.string(), GeneRecord)
  .readonly()
  .superRefine((genes, context) => {
    for (const [locus, gene] of Object.entries(genes)) {
      const message = geneFault(locus, gene)
      if (message !== undefined) context.addIssue({ code: 'custom', path: [locus], message })
    }
  })
