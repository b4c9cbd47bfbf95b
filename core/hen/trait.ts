// core/hen/trait.ts: one formula for every cross: what a trait comes to in a bird of known make-up of lines.
import type { Span } from '../vocabulary.ts'
import { unequalWeights, type CrossingParameters } from '../data/hen/crossing.ts'
import { lineShares, type Crossbred, type Meeting } from './crossbred.ts'
import { isWide } from './distance.ts'
import { doubtOf, spanOf, widenedSpan, type Doubt } from './span.ts'
import type { Stock } from './stock.ts'

const unequal = (values: readonly number[]): boolean => Math.max(...values) > unequalWeights.ratio * Math.min(...values)

/** The mean of the lines by their shares; on the scale of ratios where that is asked for and they are very unequal. */
function additive(shares: readonly number[], values: readonly number[], byRatio: boolean): number {
  if (byRatio && unequal(values)) return Math.exp(shares.reduce((sum, s, i) => sum + s * Math.log(values[i]!), 0))
  return shares.reduce((sum, s, i) => sum + s * values[i]!, 0)
}

const isClosed = (stock: Stock): boolean => stock.purpose === 'exhibition'

function gain(pair: Meeting, p: CrossingParameters): { readonly likely: number; readonly doubt: Doubt } {
  const h = (isClosed(pair.one) || isClosed(pair.other)) && p.heterosisFromClosed ? p.heterosisFromClosed : p.heterosis
  const scale = pair.crossed * pair.distance
  const doubts = isWide(pair.one) || isWide(pair.other) ? 2 : 1
  return { likely: scale * h.likely, doubt: doubtOf(h, scale * doubts) }
}

/**
 * A trait of a cross-bred bird: line means by share of genes, plus heterosis by share of crossed loci, times distance.
 * F1, F2, back-cross and three-way cross are the same formula with other shares.
 *
 * @param of the trait of one line bred pure, in its own unit
 * @returns range in the same unit; doubts of lines, of heterosis and of the mother's own effect add as squares
 * @source Dickerson 1969, Anim. Breed. Abstr. 37:191-202; Dickerson 1973, Proc. Anim. Breed. Genet. Symp.: from memory.
 *         What a cross-bred dam gives beyond a pure one (maternal heterosis): no figure for laying was found in print, so none.
 *         Losses from breaking up line combinations in F2 and later are not known and left out.
 */
export function crossbredTrait(
  bird: Crossbred,
  p: CrossingParameters,
  of: (stock: Stock) => Span,
  scale: 'plain' | 'ratio' = 'plain',
): Span {
  const spans = bird.stocks.map((stock) => widenedSpan(of(stock), p.strainDoubt))
  const shares = lineShares(bird, p.onZ)
  const means = spans.map((s) => s.likely)
  const mean = additive(shares, means, scale === 'ratio')
  const gains = bird.meetings.map((pair) => ({ ...gain(pair, p), mid: gainBase(pair, bird, means, mean, scale) }))
  const likely = mean + gains.reduce((sum, g) => sum + g.likely * g.mid, 0)
  return capped(
    spanOf(likely, [
      ...spans.map((span, i) => doubtOf(span, shares[i])),
      ...gains.map((g) => ({ down: g.doubt.down * g.mid, up: g.doubt.up * g.mid })),
      ...bird.meetings.map((pair) => shortfall(pair, p, of)),
      ...(bird.meetings.length > 0 ? [doubtOf(p.maternal, mean)] : []),
    ]),
    spans.filter((_, i) => shares[i]! > 0),
    p.cap,
  )
}

/** Of what sets a better line above a poorer one, part may not reach the cross: a doubt downwards only. */
const shortfall = (pair: Meeting, p: CrossingParameters, of: (stock: Stock) => Span): Doubt => ({
  down: (p.shortfall ?? 0) * pair.crossed * Math.abs(of(pair.one).likely - of(pair.other).likely),
  up: 0,
})

/** Heterosis of a pair is a share of the mean of that pair; on the ratio scale, of the bird's own mean. */
function gainBase(
  pair: Meeting,
  bird: Crossbred,
  means: readonly number[],
  mean: number,
  scale: 'plain' | 'ratio',
): number {
  if (scale === 'ratio') return mean
  return (means[bird.stocks.indexOf(pair.one)]! + means[bird.stocks.indexOf(pair.other)]!) / 2
}

function capped(span: Span, lines: readonly Span[], cap: number | undefined): Span {
  if (cap === undefined) return span
  const limit = (end: keyof Span): number => Math.min(span[end], (1 + cap) * Math.max(...lines.map((l) => l[end])))
  return { low: limit('low'), likely: limit('likely'), high: limit('high') }
}
