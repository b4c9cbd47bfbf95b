// core/cross/mate.ts: one mating as the keeper names it -> its cases: chicks, sexing and daughters for each thing not known of the parents.
import { LRUCache } from 'lru-cache'
import type { Case, Crossed, Sexing } from '../answer.ts'
import type { Parent } from '../engine/mating.ts'
import { expectHen } from '../hen/expect.ts'
import type { BirdRef } from '../question.ts'
import { sexHatch } from '../sexing/sexing.ts'
import type { Genotype, Sex } from '../vocabulary.ts'
import {
  isDecisive,
  materialDoubts,
  mergeCases,
  waysToSettle,
  type Judged,
  type Settled,
  type Weighted,
} from './cases.ts'
import { ofColour, type Doubt, type Founder } from './founder.ts'
import { givenWords, howToTell } from './given.ts'
import { outcome, type Outcome } from './outcome.ts'
import { foundersOf, groundFor, origins, settle, type Pedigree } from './pedigree.ts'
import { seenBird } from './seen.ts'
import { lookShares } from './share.ts'
import { signature } from './signature.ts'
import { whyNot } from './why.ts'
import { wingChance } from './wing.ts'

type Result = { readonly outcome: Outcome; readonly sexing: Sexing; readonly sire: Parent; readonly dam: Parent }
type Mating = { readonly sire: BirdRef; readonly dam: BirdRef }
type Pair = { readonly sire: Pedigree; readonly dam: Pedigree; readonly weight: number; readonly as: string }

const bredOn = ({ sire, dam }: Pair): boolean => sire.kind === 'bred' || dam.kind === 'bred'

/** Wing feathers are worth a case of their own only where they may well be the sign. */
const wingWorth = 0.3

/** A parent's own genotype; of a cross-bred one, that of its commonest kind. */
function genotypeOf(parent: Parent, sex: Sex): Genotype {
  if (!('cross' in parent)) return parent.genotype
  const [commonest] = outcome(parent.cross.sire, parent.cross.dam)[sex].kinds
  return { ...commonest?.genotypes[0], ...parent.genotype }
}

const pureBreed = ({ sire, dam }: Mating): string | undefined =>
  sire.breed !== undefined && sire.breed === dam.breed ? sire.breed : undefined

function judge(pair: Pair, mating: Mating, wing: boolean, colourTold: boolean): (settled: Settled) => Judged<Result> {
  const done = new Map<string, Judged<Result>>()
  return (settled) => {
    const key = [...settled].map(([id, { genotype }]) => id + JSON.stringify(genotype)).join(';')
    const found = done.get(key)
    if (found) return found
    const [sire, dam] = [settle(pair.sire, settled), settle(pair.dam, settled)]
    const out = outcome(sire, dam)
    const hatch = { M: out.M.kinds, F: out.F.kinds }
    const why = whyNot(genotypeOf(sire, 'M'), genotypeOf(dam, 'F'), hatch, colourTold)
    const sexing = sexHatch(hatch, pureBreed(mating), why, wing)
    const judged = {
      result: { outcome: out, sexing, sire, dam },
      signature: signature(out, sexing, bredOn(pair)),
      verdict: sexing.verdict,
    }
    done.set(key, judged)
    return judged
  }
}

const unique = <T extends { readonly id: string }>(items: readonly T[]): readonly T[] => [
  ...new Map(items.map((item) => [item.id, item])).values(),
]

/** Doubts played through against each other: fewer where a parent is cross-bred or of no told colour, and its chicks are many kinds anyway. */
const mostDoubts = (pair: Pair, founders: readonly Founder[]): number =>
  bredOn(pair) ? 1 : founders.some(({ colourOpen }) => colourOpen) ? 2 : 4

/** Ids of the founders that are mated themselves. */
const parentsIn = ({ sire, dam }: Pair): ReadonlySet<string> =>
  new Set([sire, dam].flatMap((one) => (one.kind === 'founder' ? [one.founder.id] : [])))

/** What a keeper sees on a bird whose colour he did not tell makes no case, but for black or not, and silver or gold. */
const plainToSee = ({ loci }: Doubt, bird: Founder | undefined): boolean =>
  bird?.colourOpen === true && loci.some((locus) => ofColour.has(locus) && locus !== 'E' && locus !== 'S')

/** Of a cross-bred parent only what lies hidden further back is worth a case. */
function mayMatter(pair: Pair, doubt: Doubt, founders: readonly Founder[]): boolean {
  const bird = founders.find(({ id }) => id === doubt.founder)
  if (plainToSee(doubt, bird)) return false
  return parentsIn(pair).has(doubt.founder) || doubt.loci.includes('O') || bird?.hides === true
}

/** Doubts played through against each other: fewer where a parent is cross-bred or of no told colour, and its chicks are many kinds anyway. */
const mostDoubts = (pair: Pair, founders: readonly Founder[]): number =>
  bredOn(pair) ? 1 : founders.some(({ colourOpen }) => colourOpen) ? 2 : 4

/** Ids of the founders that are mated themselves. */
const parentsIn = ({ sire, dam }: Pair): ReadonlySet<string> =>
  new Set([sire, dam].flatMap((one) => (one.kind === 'founder' ? [one.founder.id] : [])))

/** Of a cross-bred parent only what lies hidden further back is worth a case. */
const mayMatter = (pair: Pair, { founder, loci }: Doubt, founders: readonly Founder[]): boolean =>
  parentsIn(pair).has(founder) || loci.includes('O') || founders.some(({ id, hides }) => id === founder && hides)

type Played = {
  readonly told: { readonly wing: boolean; readonly colour: boolean }
  readonly cases: readonly Weighted<Result>[]
  readonly doubts: readonly Doubt[]
  readonly founders: readonly Founder[]
}

/** One way the parents came about, played through: the doubts that matter, and the case for each way of settling them. */
function play(pair: Pair, mating: Mating): Played {
  const founders = unique([...foundersOf(pair.sire), ...foundersOf(pair.dam)])
  const all = unique(founders.flatMap(({ doubts }) => doubts)).filter((doubt) => mayMatter(pair, doubt, founders))
  const wing = wingChance(pair.sire, pair.dam)
  const colourTold = founders.some(({ colourOpen }) => !colourOpen)
  const cases = (byWing: boolean): Played => {
    const judged = judge(pair, mating, byWing || wing === 'known', colourTold)
    const decisive = all.filter((doubt) => isDecisive(doubt, byWing, colourTold))
    const doubts = materialDoubts(decisive, judged, mostDoubts(pair, founders))
    const ways = waysToSettle(doubts).map((way) => ({ ...way, ...judged(way.settled) }))
    return { cases: mergeCases(ways), doubts, founders, told: { wing: byWing || wing === 'known', colour: colourTold } }
  }
  const plain = cases(false)
  const sexed = plain.cases.some(({ result }) => result.sexing.verdict === 'yes')
  return sexed || wing === 'known' || wing < wingWorth ? plain : cases(true)
}

/** Loci that set chicks apart: not one and the same pure wild type in all of them. */
function telling({ M, F }: Outcome): readonly string[] {
  const all = [...M.kinds, ...F.kinds].flatMap(({ genotypes }) => genotypes)
  const found = new Map<string, Set<string>>()
  for (const genotype of all)
    for (const [locus, pair] of Object.entries(genotype)) {
      const alleles = found.get(locus) ?? new Set()
      found.set(locus, alleles)
      for (const allele of pair) alleles.add(allele)
    }
  return [...found].filter(([, alleles]) => alleles.size > 1).map(([locus]) => locus)
}

const blueCopies = ['no', 'one copy', 'two copies'] as const

/** Shares of pullets by their copies of blue egg. */
function shellsOf({ F }: Outcome): readonly { readonly blue: (typeof blueCopies)[number]; readonly share: number }[] {
  const values = F.traits.find(({ trait }) => trait === 'shellBlue')?.values ?? []
  return blueCopies.flatMap((blue) =>
    values.filter(({ value }) => value === blue).map(({ share }) => ({ blue, share })),
  )
}

function toCase(mating: Mating, { cases, doubts, founders, told }: Played, at: number, pair: Pair, want: Want): Case {
  const { weight, ways, result } = cases[at]!
  const { outcome: out, sexing } = result
  const loci = telling(out)
  return {
    weight: weight * pair.weight,
    given: [pair.as && `bred from ${pair.as}`, givenWords(doubts, founders, ways, parentsIn(pair))]
      .filter(Boolean)
      .join(', and '),
    howToTell: cases.length > 1 ? howToTell(doubts, founders) : '',
    cockerels: lookShares(out.M, loci, told),
    pullets: lookShares(out.F, loci, told),
    diesInEgg: out.dies,
    traits: [
      ...out.M.traits.map((t) => ({ sex: 'M' as const, ...t })),
      ...out.F.traits.map((t) => ({ sex: 'F' as const, ...t })),
    ].filter(({ values }) => values.length > 1),
    leftOut: out.leftOut,
    colourKnown: told.colour,
    sexing,
    hen: want.hen ? expectHen(mating, shellsOf(out)) : null,
  }
}

export type Want = { readonly hen: boolean; readonly reverse: boolean }

/** Every way the two parents may have come about. Birds of one named hybrid are taken to be made alike. */
function pairs({ sire, dam }: Mating): readonly Pair[] {
  const ground = groundFor(sire, dam)
  const [sires, dams] = [origins(sire, 'M', ground), origins(dam, 'F', ground)]
  const alike = sire.breed !== undefined && sire.breed === dam.breed && sires.length > 1
  return sires.flatMap((s, at) =>
    (alike ? dams.slice(at, at + 1) : dams).map((d) => ({
      sire: s.pedigree,
      dam: d.pedigree,
      weight: alike ? s.weight : s.weight * d.weight,
      as: alike ? s.as : [s.as && `cock: ${s.as}`, d.as && `hens: ${d.as}`].filter(Boolean).join('; '),
    })),
  )
}

/** Ways of making a named hybrid that give one and the same result are one case. */
function gather(mating: Mating, want: Want): readonly Case[] {
  const played = pairs(mating)
    .toSorted((a, b) => b.weight - a.weight)
    .slice(0, 4)
    .map((pair) => ({ pair, played: play(pair, mating) }))
  const rows = played.flatMap(({ pair, played: p }) =>
    p.cases.map((weighted, at) => ({
      pair,
      p,
      at,
      weight: weighted.weight * pair.weight,
      key: signature(weighted.result.outcome, weighted.result.sexing, bredOn(pair)),
    })),
  )
  const merged = new Map<string, { rows: typeof rows; weight: number }>()
  for (const row of rows.toSorted((a, b) => b.weight - a.weight)) {
    const found = merged.get(row.key)
    if (found) {
      found.rows.push(row)
      found.weight += row.weight
    } else merged.set(row.key, { rows: [row], weight: row.weight })
  }
  const kept = [...merged.values()].toSorted((a, b) => b.weight - a.weight).slice(0, 4)
  const total = kept.reduce((sum, { weight }) => sum + weight, 0)
  return kept.map(({ rows: [first], weight }) => {
    const { pair, p, at } = first!
    const only = kept.length === 1
    const one = toCase(mating, p, at, only ? { ...pair, as: '' } : pair, want)
    const given = one.given === '' && !only ? 'otherwise' : one.given
    return { ...one, given: only ? '' : given, weight: weight / total }
  })
}

const usualVerdict = (cases: readonly Case[]): Sexing['verdict'] => cases[0]!.sexing.verdict

/** The other way round, where both birds are named by breed and it gives another verdict. */
function withReverse(mating: Mating, cases: readonly Case[]): readonly Case[] {
  const { sire, dam } = mating
  const named = [sire, dam].every(
    (bird) => bird.breed !== undefined && bird.genotype === undefined && bird.cross === undefined,
  )
  if (!named || sire.breed === dam.breed) return cases
  const other = crossOf({ sire: dam, dam: sire }, { hen: false, reverse: false })
  const verdict = usualVerdict(other.cases)
  return cases.map((one) =>
    one.sexing.verdict === verdict
      ? one
      : { ...one, sexing: { ...one.sexing, reverse: { verdict, says: other.cases[0]!.sexing.why } } },
  )
}

const remembered = new LRUCache<string, Crossed>({ max: 400 })

function crossOf(mating: Mating, want: Want): Crossed {
  const key = JSON.stringify([mating, want])
  const found = remembered.get(key)
  if (found) return found
  const cases = gather(mating, want)
  const crossed = {
    sire: seenBird(mating.sire),
    dam: seenBird(mating.dam),
    cases: want.reverse ? withReverse(mating, cases) : cases,
  }
  remembered.set(key, crossed)
  return crossed
}

/**
 * What a mating gives.
 *
 * @param want leave out the daughters' profile or the reverse mating where nobody needs them: a search is quicker
 * @returns cases likeliest first, weights (belief about the parents) adding to 1; shares (chance among chicks) adding to 1 within each
 */
export const mate = (sire: BirdRef, dam: BirdRef, want: Want = { hen: true, reverse: true }): Crossed =>
  crossOf({ sire, dam }, want)

/** Genotypes of both parents as they most likely are; of a cross-bred one, those of its commonest kind. */
export function parentGenotypes(sire: BirdRef, dam: BirdRef): { readonly sire: Genotype; readonly dam: Genotype } {
  const [likeliest] = pairs({ sire, dam }).toSorted((a, b) => b.weight - a.weight)
  return {
    sire: genotypeOf(settle(likeliest!.sire, new Map()), 'M'),
    dam: genotypeOf(settle(likeliest!.dam, new Map()), 'F'),
  }
}
