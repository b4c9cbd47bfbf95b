// core/cross/founder.ts: a bird that heads a pedigree: what is known of its genotype, and what is in doubt with how much belief.
import { genesOf, type Breed, type GeneRecord, type Genes } from '../breeds.ts'
import { loci } from '../data/loci.ts'
import type { Phase } from '../engine/mating.ts'
import type { ToldGenotype } from '../question.ts'
import type { Genotype, Locus, Sex } from '../vocabulary.ts'
import { phaseDoubts } from './phase.ts'
import { isLethal } from './blocks.ts'

/** One thing a bird may be at the loci of a doubt; p is belief about this bird, never chance among chicks. */
export type Choice = {
  readonly genotype: Genotype
  readonly p: number
  /** How linked alleles lie, by a locus of the group, where that is the doubt; and how to say it. */
  readonly phase?: Readonly<Record<string, Phase>>
  readonly words?: string
}
/** Choices likeliest first, p adding to 1. */
export type Doubt = {
  readonly id: string
  readonly founder: string
  readonly loci: readonly string[]
  readonly choices: readonly Choice[]
  /** How to find out, where the loci do not say it. */
  readonly tell?: string
}
export type Founder = {
  readonly id: string
  /** Breed name, '' where none is told. */
  readonly breed: string
  readonly sex: Sex
  readonly known: Genotype
  readonly doubts: readonly Doubt[]
  /** White outside: colour genes below are not seen. */
  readonly hides: boolean
  /** A bird named without its colour, so that its ground is anybody's guess. */
  readonly colourOpen: boolean
}

const book: Readonly<Record<string, Locus>> = loci
const onZ = (locus: string): boolean => book[locus]?.on === 'Z'
const copies = (locus: string, sex: Sex): number => (sex === 'F' && onZ(locus) ? 1 : 2)
const rank = (locus: string, allele: string): number => book[locus]!.alleles.indexOf(allele)
const dominantFirst = (locus: string, pair: readonly string[]): readonly string[] =>
  pair.toSorted((a, b) => rank(locus, a) - rank(locus, b))

/** Loci whose every genotype changes what a keeper calls the result; of all others a strain is taken as pure. */
const decisive = new Set(['E', 'S', 'B', 'I', 'c', 'Bl', 'lav', 'choc', 'mo', 'O', 'Fm', 'F', 'Na', 'Cp', 'Et'])
export const ofColour: ReadonlySet<string> = new Set(['E', 'S', 'B', 'I', 'c', 'Bl', 'lav', 'choc', 'mo'])
export const isDecisiveLocus = (locus: string): boolean => decisive.has(locus)

/**
 * Choices at one locus from allele shares in the breed. Where the strain is taken as uniform (a shade, or a
 * colour below white: a strain descends from few birds) it is pure for one allele or for another.
 * No living bird has two copies of a lethal.
 */
function choicesOf(locus: string, gene: GeneRecord, sex: Sex, uniform: boolean): readonly Choice[] {
  const one = (alleles: readonly string[]): Choice => ({ genotype: { [locus]: alleles }, p: 1 })
  if (gene.kind === 'fixed') return [one(copies(locus, sex) === 1 ? [gene.allele] : [gene.allele, gene.allele])]
  if (gene.kind === 'genotype')
    return [one(sex === 'F' && gene.hen ? gene.hen : gene.alleles.slice(0, copies(locus, sex)))]
  const shares = Object.entries(gene.freq).filter(([, p]) => p > 0)
  if (copies(locus, sex) === 1) return shares.map(([allele, p]) => ({ genotype: { [locus]: [allele] }, p }))
  if (uniform) return shares.map(([allele, p]) => ({ genotype: { [locus]: [allele, allele] }, p }))
  return shares.flatMap(([a, p], i) =>
    shares
      .slice(i)
      .filter(([b]) => a !== b || a === book[locus]!.wild || !isLethal(locus))
      .map(([b, q]) => ({ genotype: { [locus]: dominantFirst(locus, [a, b]) }, p: a === b ? p * q : 2 * p * q })),
  )
}

/** A told genotype. Where a cock's or an autosomal pair is told by one allele, the other is what the breed has. */
function toldChoices(locus: string, told: readonly string[], sex: Sex, listed: readonly Choice[]): readonly Choice[] {
  const n = copies(locus, sex)
  if (told.length >= n) return [{ genotype: { [locus]: dominantFirst(locus, told.slice(0, n)) }, p: 1 }]
  const carriers = listed.filter(({ genotype }) => genotype[locus]!.includes(told[0]!))
  if (carriers.length > 0) return scaled(carriers)
  return [{ genotype: { [locus]: dominantFirst(locus, [told[0]!, book[locus]!.wild]) }, p: 1 }]
}

function scaled(choices: readonly Choice[]): readonly Choice[] {
  const total = choices.reduce((sum, { p }) => sum + p, 0)
  return choices.map(({ genotype, p }) => ({ genotype, p: p / total })).toSorted((a, b) => b.p - a.p)
}

const recessive = (locus: string, allele: string): boolean => {
  const { alleles, wild } = book[locus]!
  return alleles.indexOf(allele) > alleles.indexOf(wild)
}
const locusOf = (allele: string): string => Object.keys(book).find((id) => book[id]!.alleles.includes(allele))!

/** True where a genotype shows an allele: one copy of a dominant, all copies of a recessive. */
const shows = (genotype: Genotype, allele: string): boolean => {
  const pair = genotype[locusOf(allele)]
  if (!pair) return false
  return recessive(locusOf(allele), allele) ? pair.every((carried) => carried === allele) : pair.includes(allele)
}

/** Genotypes at different loci put together. */
export const joined = (parts: readonly Genotype[]): Genotype => parts.reduce((all, part) => ({ ...all, ...part }), {})

const crossed = (blocks: readonly (readonly Choice[])[]): readonly Choice[] =>
  blocks.reduce<readonly Choice[]>(
    (rows, block) =>
      rows.flatMap((row) =>
        block.map(({ genotype, p }) => ({ genotype: { ...row.genotype, ...genotype }, p: row.p * p })),
      ),
    [{ genotype: {}, p: 1 }],
  )

/** Loci of one clause of what the breed must show are drawn together, so that a white bird is white. */
function bindShown(
  byLocus: Map<string, readonly Choice[]>,
  clauses: readonly (readonly string[])[],
): readonly (readonly Choice[])[] {
  const bound: (readonly Choice[])[] = []
  for (const clause of clauses) {
    const involved = [...new Set(clause.map(locusOf))].filter((locus) => byLocus.has(locus))
    const rows = crossed(involved.map((locus) => byLocus.get(locus)!))
    const fitting = rows.filter(({ genotype }) => clause.some((allele) => shows(genotype, allele)))
    for (const locus of involved) byLocus.delete(locus)
    bound.push(scaled(fitting.length > 0 ? fitting : rows))
  }
  return [...byLocus.values(), ...bound]
}

/** A coloured breed with the odd white allele: its birds are coloured, so the white ones are not drawn. */
const coloured = (choices: readonly Choice[]): readonly Choice[] => {
  const seen = choices.filter(({ genotype }) => !shows(genotype, 'c'))
  return seen.length > 0 && seen.length < choices.length ? scaled(seen) : choices
}

const black = ['Bl', 'lav', 'choc', 'mo', 'B', 'I^D']
/** Where genes alone are told, and one acts on black that nobody lists, a black ground is meant. */
export const impliesBlack = (told: ToldGenotype): boolean =>
  told['E'] === undefined &&
  told['S'] === undefined &&
  black.some((symbol) => symbol in told || told['I']?.includes(symbol))

/** Black all over: what lies in S is not seen, and a strain is taken to be of one kind. */
const blackBased = (gene: GeneRecord | undefined): boolean =>
  gene?.kind === 'fixed' ? gene.allele === 'E' : gene?.kind === 'segregates' && (gene.freq['E'] ?? 0) >= 0.8

/** Black or coloured is anybody's guess: dark and other grounds both have a share, and no ground a clear majority. */
const openGround = (gene: GeneRecord | undefined): boolean => {
  if (gene?.kind !== 'segregates' || Math.max(...Object.values(gene.freq)) > 0.6) return false
  const dark = (gene.freq['E'] ?? 0) + (gene.freq['E^R'] ?? 0)
  return dark > 0.1 && dark < 0.9
}

/** Of a bird told by its genes alone, nobody knows how fast it feathers. */
const notTold: Genes = {
  K: { kind: 'segregates', freq: { K: 0.5, 'k+': 0.5 }, confidence: 'low', status: 'from memory' },
}

/**
 * @param id names the bird, so that the same kind of bird in two places of a pedigree is one and the same
 * @param breed undefined for a bird of which only genes are told; its other loci are wild
 */
export function founder(
  id: string,
  sex: Sex,
  breed: Breed | undefined,
  line: string | undefined,
  told: ToldGenotype,
): Founder {
  const genes = breed ? genesOf(breed, line) : notTold
  const clauses = breed?.shows ?? []
  const hides = clauses.some((clause) => clause.some((allele) => allele === 'c' || allele === 'I'))
  const colourOpen = !hides && told['E'] === undefined && openGround(genes['E'])
  const byLocus = new Map<string, readonly Choice[]>()
  for (const locus of new Set([...Object.keys(genes), ...Object.keys(told)])) {
    const gene = genes[locus]
    const uniform =
      hides ||
      !isDecisiveLocus(locus) ||
      (colourOpen && ofColour.has(locus)) ||
      locus === 'E' ||
      (locus === 'S' && blackBased(genes['E']))
    const listed = gene ? scaled(choicesOf(locus, gene, sex, uniform)) : []
    const stated = told[locus]
    const choices = stated ? toldChoices(locus, stated, sex, listed) : listed
    byLocus.set(locus, hides ? choices : coloured(choices))
  }
  const blocks = bindShown(byLocus, clauses)
  const known = joined(blocks.filter((block) => block.length === 1).map((block) => block[0]!.genotype))
  const doubts = blocks
    .filter((block) => block.length > 1)
    .map((choices) => {
      const among = Object.keys(choices[0]!.genotype)
      return { id: `${id} ${among.join('+')}`, founder: id, loci: among, choices }
    })
  return {
    id,
    breed: breed?.name ?? '',
    sex,
    known,
    doubts: [...doubts, ...phaseDoubts(id, known)],
    hides,
    colourOpen,
  }
}
