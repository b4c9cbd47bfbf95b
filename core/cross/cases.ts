// core/cross/cases.ts: which doubts about the parents change the result, and the cases they make, each with its belief.
import { isDecisiveLocus, ofColour, type Choice, type Doubt } from './founder.ts'

export type Settled = ReadonlyMap<string, Choice>

/** A choice less likely than this makes no case of its own. */
const rare = 0.1
/** Most cases that a keeper can use. */
const mostCases = 4

/**
 * Modifiers and traits of form never make a case: they are told as a range. How linked genes lie in a bird always may. Feathering speed decides only where
 * nothing else tells the sexes, and colour only where a colour was named.
 */
export const isDecisive = ({ loci, choices }: Doubt, byWing: boolean, colourTold: boolean): boolean =>
  choices.some(({ phase }) => phase !== undefined) ||
  loci.some((locus) => (isDecisiveLocus(locus) && (colourTold || !ofColour.has(locus))) || (byWing && locus === 'K'))

export type Judged<T> = { readonly result: T; readonly signature: string; readonly verdict: string }
type Judge<T> = (settled: Settled) => Judged<T>
type Way = { readonly settled: Settled; readonly weight: number }
/** One case: its belief, its likeliest way, and every way that gives the same result. */
export type Weighted<T> = {
  readonly weight: number
  readonly settled: Settled
  readonly ways: readonly Settled[]
  readonly result: T
}

type Context = { readonly settled: Settled; readonly weight: number }

/** A change of verdict matters more to a keeper than one of colour. */
const verdictWorth = 4

/** Belief on choices that give another result than the likeliest one, in one context. */
function otherwise<T>(doubt: Doubt, { settled, weight }: Context, judge: Judge<T>): number {
  const usual = judge(settled)
  return doubt.choices
    .slice(1)
    .filter(({ p }) => p >= rare)
    .map((choice) => ({ p: choice.p, judged: judge(new Map([...settled, [doubt.id, choice]])) }))
    .filter(({ judged }) => judged.signature !== usual.signature)
    .reduce((sum, { p, judged }) => sum + weight * p * (judged.verdict === usual.verdict ? 1 : verdictWorth), 0)
}

/**
 * Doubts of which some choice that is not rare gives another result, those that matter most first.
 * A doubt may matter only once another is settled (silver shows only where no black covers it), so each is looked at
 * as things most likely are, and again in every other setting of the weightiest.
 */
export function materialDoubts<T>(doubts: readonly Doubt[], judge: Judge<T>): readonly Doubt[] {
  const usual: Context = { settled: new Map(), weight: 1 }
  const ranked = (contexts: readonly Context[]): readonly { readonly doubt: Doubt; readonly score: number }[] =>
    doubts
      .map((doubt) => ({
        doubt,
        score: contexts.reduce((sum, one) => sum + (one.settled.has(doubt.id) ? 0 : otherwise(doubt, one, judge)), 0),
      }))
      .filter(({ score }) => score > 0)
      .toSorted((a, b) => b.score - a.score)
  const [weightiest] = ranked([usual])
  if (!weightiest) return []
  const others = playedChoices(weightiest.doubt)
    .slice(1)
    .map((choice): Context => ({ settled: new Map([[weightiest.doubt.id, choice]]), weight: choice.p }))
  return ranked([usual, ...others]).map(({ doubt }) => doubt)
}

/** Choices of a doubt that are played through. */
export const playedChoices = ({ choices }: Doubt): readonly Choice[] =>
  choices.filter(({ p }, i) => i === 0 || p >= rare)

/** Every way of settling the doubts, rare choices left out and the belief in the rest made to add to 1. */
export function waysToSettle(doubts: readonly Doubt[]): readonly Way[] {
  let ways: readonly Way[] = [{ settled: new Map(), weight: 1 }]
  for (const doubt of doubts) {
    const kept = playedChoices(doubt)
    const total = kept.reduce((sum, { p }) => sum + p, 0)
    ways = ways.flatMap(({ settled, weight }) =>
      kept.map((choice) => ({
        settled: new Map([...settled, [doubt.id, choice]]),
        weight: (weight * choice.p) / total,
      })),
    )
  }
  return ways
}

/** Ways with one result made one case, likeliest first; what lies beyond the fourth is left out and the rest scaled. */
export function mergeCases<T>(ways: readonly (Judged<T> & Way)[]): readonly Weighted<T>[] {
  const merged = new Map<string, { weight: number; best: number; settled: Settled; ways: Settled[]; result: T }>()
  for (const { settled, weight, result, signature } of ways) {
    const found = merged.get(signature)
    if (!found) {
      merged.set(signature, { weight, best: weight, settled, ways: [settled], result })
      continue
    }
    found.weight += weight
    found.ways.push(settled)
    if (weight > found.best) Object.assign(found, { best: weight, settled, result })
  }
  const cases = [...merged.values()].toSorted((a, b) => b.weight - a.weight).slice(0, mostCases)
  const total = cases.reduce((sum, { weight }) => sum + weight, 0)
  return cases.map(({ weight, settled, ways: all, result }) => ({ weight: weight / total, settled, ways: all, result }))
}
