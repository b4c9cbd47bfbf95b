// core/statement/query.ts: what a flock statement asks.
import type { Genome } from '../engine/genome.ts'
import { askCarries, askGenotype, askPhase, askTrait, type Item } from '../engine/item.ts'
import type { Bird } from '../engine/pedigree.ts'
import type { Trait } from '../engine/trait.ts'
import type { Complain } from './fault.ts'
import { locusNumber } from './genome.ts'
import type { Statement } from './schema.ts'

/** Items asked of one bird, or, without a bird, one item asked of all. */
export type Query = { readonly bird: number | undefined; readonly items: readonly Item[] }

export function readQuery(
  { query }: Statement,
  genome: Genome,
  traits: readonly Trait[],
  birds: readonly Bird[],
  complain: Complain,
): Query {
  const bird = query.kind === 'carries-all' ? undefined : birds.findIndex(({ id }) => id === query.of)
  if (bird === -1) complain(['query', 'of'], `no individual "${query.kind === 'carries-all' ? '' : query.of}"`)
  return { bird, items: itemsOf(query, genome, traits, complain) }
}

function itemsOf(
  query: Statement['query'],
  genome: Genome,
  traits: readonly Trait[],
  complain: Complain,
): readonly Item[] {
  const locus = (symbol: string, ...path: (string | number)[]): number =>
    locusNumber(genome.loci, symbol, ['query', ...path], complain)
  switch (query.kind) {
    case 'phenotype':
      return query.traits.flatMap((name, i) => {
        const trait = traits.find(({ id }) => id === name)
        return trait ? [askTrait(genome, trait)] : (complain(['query', 'traits', i], `no trait "${name}"`) ?? [])
      })
    case 'genotype':
      return [askGenotype(genome, locus(query.locus, 'locus'))]
    case 'genotypes':
      return query.loci.map((symbol, i) => askGenotype(genome, locus(symbol, 'loci', i)))
    case 'phase':
      if (genome.groups[query.group] !== undefined) return [askPhase(genome, query.group)]
      complain(['query', 'group'], `no group ${query.group}; there are ${genome.groups.length}, counted from 0`)
      return []
    case 'carries':
    case 'carries-all': {
      const number = locus(query.locus, 'locus')
      const allele = genome.loci[number]!.alleles.indexOf(query.allele)
      if (allele < 0) complain(['query', 'allele'], `"${query.allele}" is no allele of "${query.locus}"`)
      return [askCarries(genome, number, Math.max(allele, 0))]
    }
  }
}
