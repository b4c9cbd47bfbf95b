// core/statement/schema.ts: the JSON of a flock statement, and the path and fault where it is not one.
import * as z from 'zod'
import { type Ratio, readRatio } from '../engine/num.ts'
import { type Fault, pathOf } from './fault.ts'

/** '3/7', '0.025' or a number: taken as the exact fraction its digits say. */
const Rational = z
  .union([z.string(), z.number()], 'want a fraction like "1/4" or a number')
  .transform((text, context): Ratio => {
    const read = readRatio(text)
    if (read !== undefined) return read
    context.issues.push({ code: 'custom', message: `"${text}" is no fraction; write "1/4" or 0.25`, input: text })
    return z.NEVER
  })
const Name = z.string().min(1, 'a name is missing')
const list = <T extends z.ZodType>(of: T) => z.array(of).readonly()
const some = <T extends z.ZodType>(of: T) => z.array(of).min(1, 'want at least one').readonly()

const Allele = z.string().regex(/^(?!-$)[^/|\s]+$/u, 'an allele is a word without "/" or "|", and not "-"')

/** Far more than any locus of the fowl is known to have. */
const mostAlleles = 100

const Locus = z.object({
  symbol: Name,
  on: z.enum(['A', 'Z'], 'want "A" (autosome) or "Z"'),
  alleles: some(Allele).refine(({ length }) => length <= mostAlleles, `want at most ${mostAlleles} alleles`),
  freqs: list(Rational).nullish(),
})
const Group = z.object({
  loci: some(Name),
  on: z.enum(['A', 'Z'], 'want "A" (autosome) or "Z"').nullish(),
  r: list(Rational).nullish(),
})
const Row = z.object({ sex: z.enum(['M', 'F', '*'], 'want "M", "F" or "*"'), g: list(z.string()), p: list(Rational) })
const Trait = z.object({ name: Name, loci: some(Name), states: some(Name), table: list(Row) })
const Dist = list(z.object({ dip: list(list(z.string())), p: Rational }))
const Individual = z.object({
  id: Name,
  sex: z.enum(['M', 'F', 'U'], 'want "M" (cock), "F" (hen) or "U" (not known)'),
  sire: Name.nullish(),
  dam: Name.nullish(),
  prior: list(z.object({ group: z.number().int(), dist: Dist })).nullish(),
  genotype: z.record(z.string(), z.string()).nullish(),
  phenotype: z.record(z.string(), z.string()).nullish(),
})
const Query = z.discriminatedUnion(
  'kind',
  [
    z.object({ kind: z.literal('phenotype'), of: Name, traits: some(Name) }),
    z.object({ kind: z.literal('genotype'), of: Name, locus: Name }),
    z.object({ kind: z.literal('genotypes'), of: Name, loci: some(Name) }),
    z.object({ kind: z.literal('carries'), of: Name, locus: Name, allele: z.string() }),
    z.object({ kind: z.literal('phase'), of: Name, group: z.number().int() }),
    z.object({ kind: z.literal('carries-all'), locus: Name, allele: z.string() }),
  ],
  'want "phenotype", "genotype", "genotypes", "carries", "phase" or "carries-all"',
)

/** Keys that are not named here are ignored. */
const Statement = z.object({
  loci: some(Locus),
  groups: list(Group).nullish(),
  traits: list(Trait).nullish(),
  individuals: some(Individual),
  query: Query,
})
export type Statement = z.infer<typeof Statement>

const shapes: Readonly<Record<string, string>> = {
  array: 'a list, [ ]',
  object: 'an object, { }',
  record: 'an object, { }',
  string: 'a text, " "',
  number: 'a number',
  int: 'a whole number',
}

/** Where a fault has no words of its own: what was wanted there. */
const wanted = ({
  code,
  expected,
  input,
}: {
  code: string
  expected?: unknown
  input?: unknown
}): string | undefined => {
  const shape = code === 'invalid_type' ? shapes[String(expected)] : undefined
  return shape && (input === undefined ? `missing; want ${shape}` : `want ${shape}`)
}

export function readStatement(json: unknown): { readonly statement: Statement } | { readonly fault: Fault } {
  const read = Statement.safeParse(json, { error: wanted })
  if (read.success) return { statement: read.data }
  const { path, message } = read.error.issues[0]!
  return { fault: { path: pathOf(path), says: message } }
}
