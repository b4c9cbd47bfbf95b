// core/hen/shell.ts: shell colours of the daughters, with shares: brown as a graded trait, under it blue or white.
import normalCdf from '@stdlib/stats-base-dists-normal-cdf'
import { brown, leastShare, onBlue, onWhite, type Band } from '../data/hen/shell.ts'
import { lineMean, type Crossbred } from './crossbred.ts'
import type { Gamete } from './genome.ts'

export type BlueShare = { readonly blue: 'no' | 'one copy' | 'two copies'; readonly share: number }
type ColourShare = { readonly colour: string; readonly share: number }
type Scores = { readonly mean: number; readonly deviation: number; readonly share: number }

const isWhite = (score: number): boolean => score < brown.whiteBelow

/** Mean brown score by share of genes, less what crossing with a white-egged line costs. */
export function brownScore(bird: Crossbred): number {
  const mean = lineMean(bird, (stock) => stock.brownScore)
  const crossedToWhite = bird.meetings
    .filter((pair) => isWhite(pair.one.brownScore) !== isWhite(pair.other.brownScore))
    .reduce((sum, pair) => sum + pair.crossed, 0)
  return Math.max(0, mean - brown.lossWhenCrossedToWhite * crossedToWhite)
}

/** Share of the daughters whose Z comes from a line that is thought to hold brown back. */
const paleZShare = (bird: Crossbred): number =>
  bird.stocks.reduce((sum, stock, at) => sum + (stock.paleZ ? bird.zs[at]! : 0), 0)

/** Variance that a gamete brings by being mixed of lines: none from a pure bird, half an F2's from each of two F1. */
function mixing(gamete: Gamete, bird: Crossbred): number {
  const { stocks } = bird
  const share = (at: number): number => gamete.get(stocks[at]!.id) ?? 0
  return stocks.reduce((sum, one, i) => {
    const pairs = stocks
      .slice(i + 1)
      .map((other, k) => share(i) * share(i + 1 + k) * (one.brownScore - other.brownScore) ** 2)
    return sum + pairs.reduce((s, p) => s + p, 0) / (4 * brown.genes)
  }, 0)
}

function scoresOf(bird: Crossbred): readonly Scores[] {
  const base = brownScore(bird)
  const pale = paleZShare(bird)
  const mixed = mixing(bird.genome.fromSire, bird) + mixing(bird.genome.fromDam, bird)
  const group = (mean: number, share: number): Scores => ({
    mean,
    deviation: Math.hypot(brown.spread * Math.min(1, 0.3 + mean / 4), Math.sqrt(mixed)),
    share,
  })
  return [group(base * brown.leftByPaleZ, pale), group(base, 1 - pale)].filter((g) => g.share > 0)
}

const banded = ({ mean, deviation, share }: Scores, bands: readonly Band[], of: number): readonly ColourShare[] =>
  bands.map((band, at) => {
    const below = at === 0 ? 0 : normalCdf(bands[at - 1]!.upTo, mean, deviation)
    return { colour: band.colour, share: of * share * (normalCdf(band.upTo, mean, deviation) - below) }
  })

/** Bands too thin to be promised give their share to the fullest neighbour within the same row of bands. */
function thinned(row: readonly ColourShare[], whole: number): readonly ColourShare[] {
  const kept = row.filter((c) => c.share >= leastShare * whole)
  const lost = whole - kept.reduce((sum, c) => sum + c.share, 0)
  return kept.map((c) => ({ colour: c.colour, share: c.share + (lost * c.share) / (whole - lost) }))
}

function added(rows: readonly (readonly ColourShare[])[]): readonly ColourShare[] {
  const shares = new Map<string, number>()
  for (const { colour, share } of rows.flat()) shares.set(colour, (shares.get(colour) ?? 0) + share)
  return [...shares].map(([colour, share]) => ({ colour, share }))
}

/**
 * Shell colours among the daughters, commonest first, shares adding to 1.
 *
 * @param blue how many copies of blue they have, by share; from the looks of the pullets
 */
export function shellOf(bird: Crossbred, blue: readonly BlueShare[]): readonly ColourShare[] {
  const whole = blue.reduce((sum, b) => sum + b.share, 0)
  const shares = whole > 0 ? blue.map((b) => ({ ...b, share: b.share / whole })) : [{ blue: 'no' as const, share: 1 }]
  const scores = scoresOf(bird)
  const rows = [onWhite, onBlue].map((bands) => {
    const of = shares.reduce((sum, b) => sum + ((b.blue === 'no') === (bands === onWhite) ? b.share : 0), 0)
    return of > 0 ? thinned(added(scores.map((s) => banded(s, bands, of))), of) : []
  })
  return added(rows).toSorted((a, b) => b.share - a.share)
}
