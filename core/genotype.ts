// core/genotype.ts: genotypes as keepers write them, read into loci and alleles, and printed in one normal form.
import { loci, locusIds, type LocusId } from './data/loci.ts'
import { alleleNamed, contrasted, type NamedAllele } from './genotype/allele.ts'
import { halves, isWChromosome, tellsNothing, tidy } from './genotype/halves.ts'
import type { FaultQuestion, ToldGenotype } from './question.ts'
import type { Genotype, Result, Sex } from './vocabulary.ts'

export type GenotypeFault = Exclude<FaultQuestion['fault'], { kind: 'too-long' }>
export type ToldPair = { readonly locus: LocusId; readonly alleles: readonly string[] /* one or two */ }

const fault = (fault: GenotypeFault): { readonly ok: false; readonly fault: GenotypeFault } => ({ ok: false, fault })
const rank = (locus: LocusId, allele: string) => (loci[locus].alleles as readonly string[]).indexOf(allele)

/** The locus of an allele, written in any way that is read, with the allele in its catalogue form. */
export const lociOfAllele = (written: string): NamedAllele | undefined => alleleNamed(tidy(written))

/** True where `one` stands before `other` in the order of dominance of their locus. */
export const dominates = (locus: LocusId, one: string, other: string): boolean => rank(locus, one) < rank(locus, other)

/** Alleles of one locus in catalogue form, dominant first. */
export const inOrder = (locus: LocusId, alleles: readonly string[]): readonly string[] =>
  [...alleles].sort((one, other) => rank(locus, one) - rank(locus, other))

/** The sex that a told genotype gives away: two alleles at a Z locus are a cock's. One allele may be a hen's, or half told. */
export const sexTold = (told: ToldGenotype): Sex | undefined =>
  locusIds.some((id) => loci[id].on === 'Z' && told[id]?.length === 2) ? 'M' : undefined

/** True where the word has a W chromosome written in it (`B/W`), so that the bird is a hen. */
export function hasWChromosome(word: string): boolean {
  const [one = '', other = ''] = halves(tidy(word)) ?? []
  return isWChromosome(one, other) || isWChromosome(other, one)
}

function unknown(written: string, near?: NamedAllele): { readonly ok: false; readonly fault: GenotypeFault } {
  if (!near) return fault({ kind: 'unknown-allele', written, known: [] })
  return fault({ kind: 'unknown-allele', written, locus: near.locus, known: [...loci[near.locus].alleles] })
}

function pairOf(word: string, written: readonly string[]): Result<ToldPair, GenotypeFault> {
  const told = written.filter((half, i) => !tellsNothing(half) && !isWChromosome(half, written[1 - i] ?? ''))
  const read: readonly (NamedAllele | undefined)[] = contrasted(told[0] ?? '', told[1] ?? '') ?? told.map(alleleNamed)
  const first = read.find((allele) => allele !== undefined)
  const missing = told[read.indexOf(undefined)]
  if (missing !== undefined || !first) return unknown(missing ?? word, first)
  const stranger = read.findIndex((allele) => allele?.locus !== first.locus)
  if (stranger >= 0)
    return fault({
      kind: 'allele-of-another-locus',
      written: word,
      belongsTo: read[stranger]!.locus,
      with: first.locus,
    })
  if (written.length > 2) return fault({ kind: 'too-many-alleles', written: word, locus: first.locus })
  const alleles = inOrder(
    first.locus,
    read.flatMap((named) => named?.allele ?? []),
  )
  return { ok: true, value: { locus: first.locus, alleles } }
}

function forSex(word: string, pair: ToldPair, sex: Sex | undefined): Result<ToldPair, GenotypeFault> {
  if (loci[pair.locus].on === 'A' || sex === undefined) return { ok: true, value: pair }
  if (sex === 'M' && hasWChromosome(word))
    return fault({
      kind: 'malformed',
      detail: `${word} has a W chromosome, so it is a hen; a cock has two alleles there`,
    })
  if (sex === 'M' || pair.alleles.length === 1) return { ok: true, value: pair }
  const write = [...new Set(pair.alleles)].map((allele) => `${allele}/-`).join(' or ')
  return fault({ kind: 'hen-has-one', written: word, locus: pair.locus, write })
}

/**
 * One word such as `S/s+`, `Ss`, `e^b/eWh`, `S/-` or `B/W` (the W chromosome of a hen).
 *
 * @param sex told elsewhere, if at all: a hen has one allele at a Z locus
 * @returns one allele where only one is told or there
 * @fault malformed when the word is no genotype at all
 */
export function readPair(word: string, sex?: Sex): Result<ToldPair, GenotypeFault> {
  const text = tidy(word).replace(/[,;:!]+$/u, '')
  const written = halves(text)
  if (!written) return fault({ kind: 'malformed', detail: text })
  const pair = pairOf(text, written)
  return pair.ok ? forSex(text, pair.value, sex) : pair
}

/**
 * A whole genotype: `s+/s+ b+/b+ e^Wh/e^Wh`, with blanks, commas or semicolons between the loci.
 *
 * @fault the first word that cannot be; too-many-alleles also when one locus is told twice over
 */
export function readGenotype(text: string, sex?: Sex): Result<ToldGenotype, GenotypeFault> {
  const told: Record<string, readonly string[]> = {}
  for (const word of tidy(text)
    .split(/[\s,;]+/u)
    .filter(Boolean)) {
    const pair = readPair(word, sex)
    if (!pair.ok) return pair
    const { locus, alleles } = pair.value
    const before = told[locus]
    if (before && before.join('/') !== alleles.join('/'))
      return fault({ kind: 'too-many-alleles', written: `${before.join('/')} ${alleles.join('/')}`, locus })
    told[locus] = alleles
  }
  return Object.keys(told).length > 0 ? { ok: true, value: told } : fault({ kind: 'malformed', detail: text })
}

/** Whether a genotype read before its sex was known fits that sex. */
export function fitsSex(told: ToldGenotype, sex: Sex): Result<ToldGenotype, GenotypeFault> {
  return readGenotype(formatGenotype(told), sex)
}

/** Normal form: loci in the order of the catalogue, dominant allele first, a lone allele and a hen's Z as `S/-`. */
export function formatGenotype(genotype: Genotype | ToldGenotype, sex?: Sex): string {
  const pair = (id: LocusId) => {
    const [one, other] = inOrder(id, genotype[id] ?? [])
    const hemizygous = sex === 'F' && loci[id].on === 'Z'
    return one === undefined ? [] : [`${one}/${hemizygous ? '-' : (other ?? '-')}`]
  }
  return locusIds.flatMap(pair).join(' ')
}
