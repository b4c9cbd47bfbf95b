// core/statement/traits.ts: the traits of a flock statement: tables of the chance of each state by genotype.
import { type GeneLocus, type Genome, isSingle, pairCount, singleCode } from '../engine/genome.ts'
import type { Ratio } from '../engine/num.ts'
import type { Trait } from '../engine/trait.ts'
import type { Sex } from '../vocabulary.ts'
import type { Complain } from './fault.ts'
import { checkChances, genotypeCode, genotypeHint, locusNumber } from './genome.ts'
import { genotypeName } from '../engine/item.ts'
import type { Statement } from './schema.ts'

type Told = NonNullable<Statement['traits']>[number]
type Path = readonly (string | number)[]

export function readTraits(statement: Statement, genome: Genome, complain: Complain): readonly Trait[] {
  const traits = statement.traits ?? []
  return traits.map((trait, i) => {
    const path = ['traits', i]
    if (traits.findIndex(({ name }) => name === trait.name) < i)
      complain([...path, 'name'], `"${trait.name}" stands twice`)
    if (new Set(trait.states).size < trait.states.length) complain([...path, 'states'], 'a state stands twice')
    return readTrait(genome, trait, usedOn(statement, trait.name), path, complain)
  })
}

/** The sexes of the birds on which a trait is read or asked. */
const usedOn = ({ individuals, query }: Statement, trait: string): ReadonlySet<Sex> =>
  new Set(
    individuals
      .filter(
        ({ id, phenotype }) =>
          phenotype?.[trait] !== undefined ||
          (query.kind === 'phenotype' && query.of === id && query.traits.includes(trait)),
      )
      .flatMap(({ sex }): readonly Sex[] => (sex === 'U' ? ['M', 'F'] : [sex])),
  )

function readTrait(genome: Genome, trait: Told, used: ReadonlySet<Sex>, path: Path, complain: Complain): Trait {
  const numbers = trait.loci.map((symbol, i) => locusNumber(genome.loci, symbol, [...path, 'loci', i], complain))
  if (new Set(numbers).size < numbers.length) complain([...path, 'loci'], 'a locus stands twice')
  const loci = numbers.map((number) => genome.loci[number]!)
  const rows = new Map<string, readonly Ratio[]>()
  const readRows = (of: (sex: Sex | '*') => boolean): void => {
    const before = new Set(rows.keys()) // a row for one sex goes before one for both
    trait.table.forEach((row, i) => {
      if (!of(row.sex)) return
      const at = [...path, 'table', i]
      const keys = keysOf(loci, row.sex, row.g)
      if (keys.length === 0) complain([...at, 'g'], whyNoRow(loci, row.sex, row.g))
      if (row.p.length !== trait.states.length)
        complain([...at, 'p'], `want ${trait.states.length} chances, one for each state`)
      else checkChances(row.p, [...at, 'p'], complain)
      for (const key of keys.filter((key) => !before.has(key))) {
        if (rows.has(key)) complain(at, 'this genotype has a row already')
        rows.set(key, row.p)
      }
    })
  }
  readRows((sex) => sex !== '*')
  readRows((sex) => sex === '*')
  const needed = (['M', 'F'] as const).filter(
    (sex) => used.has(sex) || [...rows.keys()].some((key) => key.startsWith(sex)),
  )
  checkWhole(loci, needed, rows, [...path, 'table'], complain)
  const nothing = trait.states.map(() => ({ n: 0n, d: 1n }))
  return {
    id: trait.name,
    loci: numbers,
    states: trait.states,
    given: (sex, codes) => rows.get(keyOf(sex, codes)) ?? nothing,
  }
}

const keyOf = (sex: Sex, codes: readonly number[]): string => sex + codes.join()

/** The rows that a line of the table fills: one, or for "*" one of each sex for which the genotypes can be read. */
function keysOf(loci: readonly GeneLocus[], sex: Sex | '*', genotypes: readonly string[]): readonly string[] {
  if (genotypes.length !== loci.length) return []
  return (sex === '*' ? (['M', 'F'] as const) : [sex]).flatMap((s) => {
    const codes = loci.map((locus, i) => genotypeCode(locus, genotypes[i]!, s))
    return codes.every((code) => code !== undefined) ? [keyOf(s, codes)] : []
  })
}

function whyNoRow(loci: readonly GeneLocus[], sex: Sex | '*', genotypes: readonly string[]): string {
  if (genotypes.length !== loci.length) return `want ${loci.length} genotypes, one for each locus of the trait`
  const s = sex === 'F' ? 'F' : 'M'
  const i = loci.findIndex((locus, at) => genotypeCode(locus, genotypes[at]!, s) === undefined)
  return `"${genotypes[i]}" cannot be: ${genotypeHint(loci[i]!, s)}`
}

/** Every genotype of a sex needs a row: a chance nobody told is not zero. */
function checkWhole(
  loci: readonly GeneLocus[],
  sexes: readonly Sex[],
  rows: ReadonlyMap<string, unknown>,
  path: Path,
  complain: Complain,
): void {
  for (const sex of sexes) {
    for (const codes of everyGenotype(loci, sex)) {
      if (rows.has(keyOf(sex, codes))) continue
      const names = codes.map((code, i) => genotypeName(loci[i]!, code)).join(', ')
      return complain(path, `no row for ${sex === 'M' ? 'a cock' : 'a hen'} of ${names}`)
    }
  }
}

/** One by one: of a trait of many loci the first that is missing is met long before the last. */
function* everyGenotype(loci: readonly GeneLocus[], sex: Sex): Generator<readonly number[]> {
  const [first, ...others] = loci
  if (first === undefined) return yield []
  const kinds = first.alleles.length
  const single = isSingle(first.on, sex)
  for (let code = 0; code < (single ? kinds : pairCount(kinds)); code += 1)
    for (const rest of everyGenotype(others, sex)) yield [single ? singleCode(code, kinds) : code, ...rest]
}
