// core/breeds.ts: the catalogue: every bird by name, its lines, what it carries. Read and checked once, at the start.
import * as z from 'zod'
import { breedFiles } from './data/breedFiles.ts'
import { lineKinds, type LineKind } from './data/lineKinds.ts'
import nameRows from './data/names.json' with { type: 'json' }
import { faultsBetween, plain, readBreeds, type RowFault } from './breeds/read.ts'
import type { GeneRecord, Genes } from './breeds/gene.ts'
import type { Breed, Line } from './breeds/record.ts'

export type { Breed, GeneRecord, Genes, Line }

function checked(): readonly Breed[] {
  const faults: RowFault[] = []
  const all = Object.entries(breedFiles).flatMap(([file, rows]) => {
    const read = readBreeds(file, rows)
    if (!read.ok) faults.push(...read.fault)
    return read.ok ? read.value : []
  })
  faults.push(...faultsBetween(all))
  if (faults.length > 0)
    throw new Error(`the catalogue does not hold:\n${faults.map((f) => `${f.where}: ${f.why}`).join('\n')}`)
  return all
}

/** Every bird, grouped as the files are. */
export const breeds: readonly Breed[] = checked()

const byWord: ReadonlyMap<string, Breed> = new Map(
  breeds.flatMap((breed) =>
    [breed.name, ...breed.alsoCalled, ...breed.misspelt].map((word) => [plain(word), breed] as const),
  ),
)

/** The one bird of that name, alias or known misspelling; case, accents and hyphens do not count. */
export const breedNamed = (name: string): Breed | undefined => byWord.get(plain(name))

/** Words that name several birds: the varieties of a breed, or an abbreviation with two meanings. */
export const BareName = z
  .strictObject({
    words: z.array(z.string()).min(1).readonly(),
    family: z.string().optional(), // all varieties of this breed
    means: z.array(z.string()).readonly().optional(), // or these birds
    usual: z.string().optional(), // taken where the others would answer the same; absent = ask
  })
  .refine((row) => (row.family === undefined) !== (row.means === undefined), 'want family or means, one of them')
export type BareName = z.infer<typeof BareName>
export const bareNames: readonly BareName[] = z.array(BareName).parse(nameRows)

const bareByWord: ReadonlyMap<string, BareName> = new Map(
  bareNames.flatMap((row) => row.words.map((word) => [plain(word), row] as const)),
)

/** What a bare word may mean, and the usual meaning where there is one; undefined for a word that is not bare. */
export function varietiesOf(
  bareName: string,
): { readonly varieties: readonly Breed[]; readonly usual?: Breed } | undefined {
  const row = bareByWord.get(plain(bareName))
  if (!row) return undefined
  const varieties = breeds.filter((breed) => (row.means ? row.means.includes(breed.name) : breed.family === row.family))
  const usual = row.usual === undefined ? undefined : breedNamed(row.usual)
  return usual ? { varieties, usual } : { varieties }
}

const isKind = (word: string): word is LineKind => word in lineKinds

/** The kind of line that a keeper's word means ('feed store' -> 'hatchery'). */
export const lineKindOf = (word: string): LineKind | undefined => {
  const sought = plain(word)
  const found = Object.entries(lineKinds).find(
    ([id, { words }]) => id === sought || words.some((w) => plain(w) === sought),
  )
  return found && isKind(found[0]) ? found[0] : undefined
}

const bearsWord = (line: Line, word: string): boolean =>
  line.id === word ||
  line.covers.some((kind) => kind === word) ||
  line.alsoCalled.some((also) => plain(also) === plain(word))

/**
 * The line of a breed that a line id or a keeper's word means; where the breed has no such line, the nearest one.
 * Undefined when no line is told, or when the breed has none: then the figures of the breed stand.
 */
export function lineOf(breed: Breed, told?: string): Line | undefined {
  if (told === undefined) return undefined
  const own = breed.lines.find((line) => line.id === told) ?? breed.lines.find((line) => bearsWord(line, told))
  if (own) return own
  const kind = lineKindOf(told)
  const near: readonly string[] = kind ? lineKinds[kind].nearest : []
  const id = near.find((word) => breed.lines.some((line) => bearsWord(line, word)))
  return id === undefined ? undefined : breed.lines.find((line) => bearsWord(line, id))
}

/** Where a variety says nothing of feathering speed, nobody knows it. All other unlisted loci are wild type. */
const unlisted: Genes = {
  K: { kind: 'segregates', freq: { K: 0.5, 'k+': 0.5 }, confidence: 'low', status: 'from memory' },
}

const genes: ReadonlyMap<string, Genes> = new Map(
  breeds.flatMap((breed) => [
    [breed.name, { ...unlisted, ...breed.genes }] as const,
    ...breed.lines.map((line) => [`${breed.name}/${line.id}`, { ...unlisted, ...breed.genes, ...line.genes }] as const),
  ]),
)

/** What the variety carries, locus by locus, with what its line changes. `line` as in `lineOf`. */
export function genesOf(breed: Breed, line?: string): Genes {
  const own = lineOf(breed, line)
  const listed = byWord.get(plain(breed.name)) === breed
  const known = listed ? genes.get(own ? `${breed.name}/${own.id}` : breed.name) : undefined
  return known ?? { ...unlisted, ...breed.genes, ...own?.genes }
}
