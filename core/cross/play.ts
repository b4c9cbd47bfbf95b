// core/cross/play.ts: one way the parents came about, played through: the doubts that matter, and what each way of settling them gives.
import type { Sexing } from '../answer.ts'
import { sexHatch } from '../sexing/sexing.ts'
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
import { outcome, type Outcome } from './outcome.ts'
import { bredOn, genotypeOf, hangsOnPhase, parentsIn, type Mating, type Pair } from './pair.ts'
import { foundersOf, settle } from './pedigree.ts'
import { signature } from './signature.ts'
import { whyNot } from './why.ts'
import { wingChance } from './wing.ts'

export type Result = { readonly outcome: Outcome; readonly sexing: Sexing }

/** Wing feathers are worth a case of their own only where they may well be the sign. */
const wingWorth = 0.3

const pureBreed = ({ sire, dam }: Mating): string | undefined =>
  sire.breed !== undefined && sire.breed === dam.breed ? sire.breed : undefined

/**
 * Chicks of a cross-bred parent are many kinds anyway, and no kind makes a case, but for what white hides further back
 * and for how a named hybrid was made.
 */
export const manyKinds = (pair: Pair, founders: readonly Founder[]): boolean =>
  bredOn(pair) && pair.as === '' && !founders.some(({ hides }) => hides)

function judge(
  pair: Pair,
  mating: Mating,
  wing: boolean,
  colourTold: boolean,
  many: boolean,
): (settled: Settled) => Judged<Result> {
  const done = new Map<string, Judged<Result>>()
  return (settled) => {
    const key = [...settled].map(([id, { genotype, phase }]) => id + JSON.stringify([genotype, phase])).join(';')
    const found = done.get(key)
    if (found) return found
    const [sire, dam] = [settle(pair.sire, settled), settle(pair.dam, settled)]
    const out = outcome(sire, dam)
    const hatch = { M: out.M.kinds, F: out.F.kinds }
    const why = whyNot(genotypeOf(sire, 'M'), genotypeOf(dam, 'F'), hatch, colourTold)
    const sexing = sexHatch(hatch, pureBreed(mating), why, wing)
    const judged = {
      result: { outcome: out, sexing },
      signature: signature(out, sexing, many, hangsOnPhase(pair)),
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

/** What a keeper sees on a bird whose colour he did not tell makes no case, but for black or not, and silver or gold. */
const plainToSee = ({ loci }: Doubt, bird: Founder | undefined): boolean =>
  bird?.colourOpen === true && loci.some((locus) => ofColour.has(locus) && locus !== 'E' && locus !== 'S')

/** Of a cross-bred parent only what lies hidden further back is worth a case. */
function mayMatter(pair: Pair, doubt: Doubt, founders: readonly Founder[]): boolean {
  const bird = founders.find(({ id }) => id === doubt.founder)
  if (plainToSee(doubt, bird)) return false
  return parentsIn(pair).has(doubt.founder) || doubt.loci.includes('O') || bird?.hides === true
}

export type Played = {
  readonly told: { readonly wing: boolean; readonly colour: boolean }
  readonly cases: readonly Weighted<Result>[]
  readonly doubts: readonly Doubt[]
  readonly founders: readonly Founder[]
}

/** Where the egg is asked about, what it hangs on comes first; all else keeps its order. */
const shellsFirst = (doubts: readonly Doubt[]): readonly Doubt[] =>
  doubts.toSorted((a, b) => Number(b.loci.includes('O')) - Number(a.loci.includes('O')))

/**
 * One way the parents came about, played through: the doubts that matter, and the case for each way of settling them.
 *
 * @param shells the egg is asked about
 */
export function play(pair: Pair, mating: Mating, shells: boolean): Played {
  const founders = unique([...foundersOf(pair.sire), ...foundersOf(pair.dam)])
  const all = unique(founders.flatMap(({ doubts }) => doubts)).filter((doubt) => mayMatter(pair, doubt, founders))
  const wing = wingChance(pair.sire, pair.dam)
  const colourTold = founders.some(({ colourOpen }) => !colourOpen)
  const cases = (byWing: boolean): Played => {
    const judged = judge(pair, mating, byWing || wing === 'known', colourTold, manyKinds(pair, founders))
    const decisive = all.filter((doubt) => isDecisive(doubt, byWing, colourTold))
    const material = materialDoubts(decisive, judged)
    const doubts = (shells ? shellsFirst(material) : material).slice(0, mostDoubts(pair, founders))
    const ways = waysToSettle(doubts).map((way) => ({ ...way, ...judged(way.settled) }))
    return { cases: mergeCases(ways), doubts, founders, told: { wing: byWing || wing === 'known', colour: colourTold } }
  }
  const plain = cases(false)
  const sexed = plain.cases.some(({ result }) => result.sexing.verdict === 'yes')
  return sexed || wing === 'known' || wing < wingWorth ? plain : cases(true)
}
