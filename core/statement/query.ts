// core/statement/query.ts: what a flock statement asks.
import type { Genome } from '../engine/genome.ts'
import { askCarries, askGenotype, askPhase, askTrait, type Item } from '../engine/item.ts'
import type { Trait } from '../engine/trait.ts'
import type { Complain } from './fault.ts'
import { locusNumber } from './genome.ts'
import type { Statement } from './schema.ts'

/** Items asked of one bird, or whether each of the first so many birds carries an allele. */
export type Query =
  | { readonly kind: 'one'; readonly bird: number; readonly items: readonly Item[] }
  | { readonly kind: 'all'; readonly birds: number; readonly item: Item }

export function readQuery(
  { query, individuals }: Statement,
  genome: Genome,
  traits: readonly Trait[],
  complain: Complain,
): Query {
  if (query.kind === 'carries-all')
    return { kind: 'all', birds: individuals.length, item: carriesItem(query, genome, complain) }
  const bird = individuals.findIndex(({ id }) => id === query.of)
  if (bird < 0) complain(['query', 'of'], `no individual "${query.of}"`)
  return { kind: 'one', bird, items: itemsOf(query, genome, traits, complain) }
}

type Carries = { readonly locus: string; readonly allele: string }

function carriesItem({ locus, allele }: Carries, genome: Genome, complain: Complain): Item {
  const number = locusNumber(genome.loci, locus, ['query', 'locus'], complain)
  const at = genome.loci[number]!.alleles.indexOf(allele)
  if (at < 0) complain(['query', 'allele'], `"${allele}" is no allele of "${locus}"`)
  return askCarries(genome, number, Math.max(at, 0))
}

function itemsOf(
  query: Exclude<Statement['query'], { readonly kind: 'carries-all' }>,
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
      return [carriesItem(query, genome, complain)]
  }
}
