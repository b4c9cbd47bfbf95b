// core/statement/genome.ts: the loci and linkage groups of a flock statement.
import { type GeneGroup, type GeneLocus, type Genome, isSingle, pairCode, singleCode } from '../engine/genome.ts'
import { type Ratio, ratio, rational, toNumber } from '../engine/num.ts'
import type { Sex } from '../vocabulary.ts'
import type { Complain } from './fault.ts'
import type { Statement } from './schema.ts'

/** A locus in no group has one of its own. */
export function readGenome(statement: Statement, complain: Complain): Genome {
  const loci = statement.loci.map((locus, i): GeneLocus => {
    const path = ['loci', i]
    if (statement.loci.findIndex(({ symbol }) => symbol === locus.symbol) < i)
      complain([...path, 'symbol'], `"${locus.symbol}" stands twice`)
    if (new Set(locus.alleles).size < locus.alleles.length) complain([...path, 'alleles'], 'an allele stands twice')
    if (locus.freqs && locus.freqs.length !== locus.alleles.length)
      complain([...path, 'freqs'], `want one frequency for each of ${locus.alleles.length} alleles`)
    else if (locus.freqs) checkChances(locus.freqs, [...path, 'freqs'], complain)
    return { id: locus.symbol, on: locus.on, alleles: locus.alleles, freqs: locus.freqs ?? undefined }
  })
  const told = (statement.groups ?? []).map((group, i) => readGroup(loci, group, ['groups', i], complain))
  const grouped = told.flatMap((group) => group.loci)
  grouped.forEach((locus, i) => {
    if (grouped.indexOf(locus) < i) complain(['groups'], `locus "${loci[locus]?.id}" stands in two places`)
  })
  const alone = loci.flatMap(({ on }, locus): GeneGroup[] =>
    grouped.includes(locus) ? [] : [{ on, loci: [locus], r: [] }],
  )
  return { loci, groups: [...told, ...alone] }
}

type Path = readonly (string | number)[]

function readGroup(
  loci: readonly GeneLocus[],
  group: NonNullable<Statement['groups']>[number],
  path: Path,
  complain: Complain,
): GeneGroup {
  const numbers = group.loci.map((symbol, i) => locusNumber(loci, symbol, [...path, 'loci', i], complain))
  const on = loci[numbers[0]!]!.on
  if (numbers.some((locus) => loci[locus]!.on !== (group.on ?? on)))
    complain(path, 'the loci of a group lie on one chromosome, and its "on" says which')
  const r = group.r ?? []
  if (r.length !== numbers.length - 1)
    complain([...path, 'r'], `want ${numbers.length - 1} fractions, one between each locus and the next`)
  r.forEach((fraction, i) => {
    if (fraction.n < 0n || fraction.n * 2n > fraction.d)
      complain([...path, 'r', i], 'a recombination fraction lies between 0 and 1/2')
  })
  return { on, loci: numbers, r }
}

export function locusNumber(loci: readonly GeneLocus[], symbol: string, path: Path, complain: Complain): number {
  const number = loci.findIndex(({ id }) => id === symbol)
  if (number < 0) complain(path, `no locus "${symbol}"; there are ${loci.map(({ id }) => id).join(', ')}`)
  return Math.max(number, 0)
}

export function checkChances(chances: readonly Ratio[], path: Path, complain: Complain): void {
  if (chances.some(({ n, d }) => n < 0n || n > d)) return complain(path, 'a chance lies between 0 and 1')
  const off = rational.minus(chances.reduce(rational.plus, rational.zero), ratio(1n))
  if (Math.abs(toNumber(off)) > 1e-9) complain(path, 'the chances must add to 1')
}

/** 'S/s' in either order, 'S/-' for the one copy of a hen. Undefined where it is no genotype of this sex. */
export function genotypeCode({ alleles, on }: GeneLocus, text: string, sex: Sex): number | undefined {
  const [first, second, ...more] = text.split('/').map((part) => part.trim())
  const [a, b] = [alleles.indexOf(first ?? ''), alleles.indexOf(second ?? '')]
  if (a < 0 || more.length > 0) return undefined
  if (isSingle(on, sex)) return second === '-' ? singleCode(a, alleles.length) : undefined
  return b < 0 ? undefined : pairCode(a, b)
}

/** How a genotype of this locus is written, for a fault. */
export const genotypeHint = ({ id, alleles, on }: GeneLocus, sex: Sex): string =>
  isSingle(on, sex)
    ? `a hen has one copy of "${id}": write "${alleles[0]}/-"`
    : `write two alleles out of ${alleles.join(', ')}: "${alleles[0]}/${alleles.at(-1)}"`
