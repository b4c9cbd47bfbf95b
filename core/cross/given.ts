// core/cross/given.ts: what sets a case apart, in words: what the cock or the hens are, and how to find out.
import { givens } from '../data/given.ts'
import type { Genotype } from '../vocabulary.ts'
import { playedChoices, type Settled } from './cases.ts'
import type { Choice, Doubt, Founder } from './founder.ts'

/** E is told in three words: pure for black, one copy of it, or none. */
function groundWords(pair: readonly string[]): string {
  const blacks = pair.filter((allele) => allele === 'E').length
  if (blacks === pair.length) return 'pure for black'
  if (blacks > 0) return 'carrying one copy of black'
  return pair.includes('E^R') ? 'birchen below' : 'not black below'
}

function words(locus: string, pair: readonly string[]): string {
  if (locus === 'E') return groundWords(pair)
  return givens[locus]?.says[pair.join('/')] ?? pair.join('/')
}

const wordsOf = (genotype: Genotype): string =>
  Object.entries(genotype)
    .map(([locus, pair]) => words(locus, pair))
    .join(' and ')

/** The settings of one doubt that a case covers; undefined where it covers all of them, and so says nothing. */
function covered(doubt: Doubt, ways: readonly Settled[]): readonly Choice[] | undefined {
  const chosen = new Set(ways.map((settled) => settled.get(doubt.id)!))
  return chosen.size === playedChoices(doubt).length ? undefined : [...chosen].toSorted((a, b) => b.p - a.p)
}

/** 'the hens are silver under the white', 'the cock is pure for black'; '' where the case needs no words. */
export function givenWords(doubts: readonly Doubt[], founders: readonly Founder[], ways: readonly Settled[]): string {
  const clauses = founders.map((bird) => {
    const said = doubts
      .filter(({ founder }) => founder === bird.id)
      .map((doubt) => covered(doubt, ways))
      .filter((choices) => choices !== undefined)
      .map((choices) => [...new Set(choices.map(({ genotype }) => wordsOf(genotype)))].slice(0, 3).join(' or '))
    if (said.length === 0) return ''
    const under = bird.hides && !/white/.test(said.join()) ? ' under the white' : ''
    return `${bird.sex === 'M' ? 'the cock is' : 'the hens are'} ${said.join(', ')}${under}`
  })
  return [...new Set(clauses.filter(Boolean))].join(', and ')
}

/** How to settle the weightiest doubt. */
export function howToTell(doubts: readonly Doubt[], founders: readonly Founder[]): string {
  const told = doubts.flatMap(({ founder, loci }) => {
    const sex = founders.find(({ id }) => id === founder)?.sex ?? 'F'
    return loci.map((locus) => givens[locus]?.tell[sex] ?? '')
  })
  return told.find(Boolean) ?? ''
}
