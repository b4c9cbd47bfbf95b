// core/cross/given.ts: what sets a case apart, in words: what the cock or the hens are, and how to find out.
import { givens } from '../data/given.ts'
import type { Genotype } from '../vocabulary.ts'
import { playedChoices, type Settled } from './cases.ts'
import { ofColour, type Choice, type Doubt, type Founder } from './founder.ts'

const grounds: Readonly<Record<string, string>> = {
  'E^R': 'birchen',
  'e^Wh': 'wheaten',
  'e^b': 'partridge',
  'e+': 'wild-type',
  'e^y': 'wheaten',
}

/** Under white, E is told as black or not; where it can be seen, by the name of the ground. */
function groundWords(pair: readonly string[], hides: boolean): string {
  const blacks = pair.filter((allele) => allele === 'E').length
  if (blacks > 0) return blacks === pair.length ? 'pure for black' : 'carrying one copy of black'
  return hides ? 'not black' : `on a ${grounds[pair[0] ?? ''] ?? 'patterned'} ground`
}

function words(locus: string, pair: readonly string[], hides: boolean): string {
  if (locus === 'E') return groundWords(pair, hides)
  return givens[locus]?.says[pair.join('/')] ?? pair.join('/')
}

/** Which white it is, where both genes are in doubt together. */
function whiteWords(genotype: Genotype): string {
  const [dominant, white] = [genotype['I'] ?? [], genotype['c'] ?? []]
  const copies = dominant.filter((allele) => allele === 'I').length
  if (copies > 0) return copies === dominant.length ? 'pure for dominant white' : 'dominant white with one copy'
  return white.every((allele) => allele === 'c') ? 'recessive white' : 'not white'
}

const wordsOf = (genotype: Genotype, hides: boolean): string =>
  genotype['I'] && genotype['c']
    ? whiteWords(genotype)
    : Object.entries(genotype)
        .map(([locus, pair]) => words(locus, pair, hides))
        .join(' and ')

const hasBlack = ({ genotype }: Choice): boolean => genotype['E']?.includes('E') ?? false

/** Of a white bird 'not black' says enough where a case covers every ground but black; else the grounds are named. */
const blackOrNot = (doubt: Doubt, choices: readonly Choice[]): boolean => {
  const all = playedChoices(doubt)
  const others = (some: readonly Choice[]): number => some.filter((choice) => !hasBlack(choice)).length
  return all.some(hasBlack) && (others(choices) === 0 || others(choices) === others(all))
}

/** The settings of one doubt that a case covers; undefined where it covers all of them, and so says nothing. */
function covered(doubt: Doubt, ways: readonly Settled[]): readonly Choice[] | undefined {
  const chosen = new Set(ways.map((settled) => settled.get(doubt.id)!))
  return chosen.size === playedChoices(doubt).length ? undefined : [...chosen].toSorted((a, b) => b.p - a.p)
}

type Kind = 'white' | 'colour' | 'other'
function kindOf({ loci }: Doubt): Kind {
  if (loci.some((locus) => locus === 'I' || locus === 'c')) return 'white'
  return loci.some((locus) => ofColour.has(locus)) ? 'colour' : 'other'
}

const lateness = (words: string): number => Number(words.startsWith('not ')) + 2 * Number(words.startsWith('on a '))

const said = (doubts: readonly Doubt[], ways: readonly Settled[], hides: boolean): string =>
  doubts
    .map((doubt) => [doubt, covered(doubt, ways)] as const)
    .filter((pair): pair is readonly [Doubt, readonly Choice[]] => pair[1] !== undefined)
    .map(([doubt, choices]) =>
      [
        ...new Set(
          choices.map(({ genotype, words }) => words ?? wordsOf(genotype, hides && blackOrNot(doubt, choices))),
        ),
      ]
        .slice(0, 3)
        .join(' or '),
    )
    .toSorted((a, b) => lateness(a) - lateness(b)) // 'silver and not black', 'gold and on a wheaten ground', not the other way
    .join(' and ')

/**
 * @param parents ids of the founders that are themselves mated; the others stand further back
 */
/** 'the hens are silver under the white', 'the cock is pure for black'; '' where the case needs no words. */
export function givenWords(
  doubts: readonly Doubt[],
  founders: readonly Founder[],
  ways: readonly Settled[],
  parents: ReadonlySet<string>,
): string {
  const clauses = founders.map((bird) => {
    const of = (kind: Kind): string =>
      said(
        doubts.filter((doubt) => doubt.founder === bird.id && kindOf(doubt) === kind),
        ways,
        bird.hides,
      )
    const below = of('colour')
    const clause = [of('white'), below !== '' && bird.hides ? `${below} under the white` : below, of('other')]
      .filter(Boolean)
      .join(', ')
    const parent = bird.sex === 'M' ? 'the cock is' : 'the hens are'
    return clause === '' ? '' : `${parents.has(bird.id) ? parent : `the ${bird.breed} behind them is`} ${clause}`
  })
  return [...new Set(clauses.filter(Boolean))].join(', and ')
}

/** How to settle the weightiest doubt of those that set the cases apart: `cases` are the ways that each covers. */
export function howToTell(
  doubts: readonly Doubt[],
  founders: readonly Founder[],
  cases: readonly (readonly Settled[])[],
): string {
  const apart = doubts.filter((doubt) => cases.some((ways) => covered(doubt, ways) !== undefined))
  const told = apart.flatMap(({ founder, loci, tell }) => {
    if (tell !== undefined) return [tell]
    const sex = founders.find(({ id }) => id === founder)?.sex ?? 'F'
    return loci.map((locus) => givens[locus]?.tell[sex] ?? '')
  })
  return told.find(Boolean) ?? ''
}
