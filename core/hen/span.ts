// core/hen/span.ts: arithmetic on ranges: doubts that are independent add as squares, not as sums.
import type { Span } from '../vocabulary.ts'

/** One cause of doubt: how far it may pull a figure down and how far up, in the figure's own unit. */
export type Doubt = { readonly down: number; readonly up: number }

/** A likely value and the independent causes of doubt about it, as one range. */
export const spanOf = (likely: number, doubts: readonly Doubt[]): Span => ({
  low: likely - Math.hypot(...doubts.map((d) => d.down)),
  likely,
  high: likely + Math.hypot(...doubts.map((d) => d.up)),
})

/** The doubt in a range, scaled by how much of it is passed on. */
export const doubtOf = (span: Span, scale = 1): Doubt =>
  scale < 0
    ? { down: -scale * (span.high - span.likely), up: -scale * (span.likely - span.low) }
    : { down: scale * (span.likely - span.low), up: scale * (span.high - span.likely) }

export const mapSpan = (span: Span, change: (x: number) => number): Span => ({
  low: change(span.low),
  likely: change(span.likely),
  high: change(span.high),
})

/** The range kept inside bounds; likely and the ends alike. */
export const boundedSpan = (span: Span, least: number, most: number): Span =>
  mapSpan(span, (x) => Math.min(most, Math.max(least, x)))

/** No narrower than `share` of the likely value on either side: no flock is known better than that. */
export const widenedSpan = (span: Span, share: number): Span => ({
  low: Math.min(span.low, span.likely * (1 - share)),
  likely: span.likely,
  high: Math.max(span.high, span.likely * (1 + share)),
})

/** Rounded to a step, so that a range never looks better known than it is. */
export const roundedSpan = (span: Span, step: number): Span => {
  const places = Math.max(0, -Math.floor(Math.log10(step)))
  return mapSpan(span, (x) => Number((Math.round(x / step) * step).toFixed(places)))
}

/**
 * A figure computed from several uncertain ones: each is moved to its ends alone, and the moves add as squares.
 * Good to first order; `figure` must rise or fall steadily in each argument.
 */
export function spanThrough(inputs: readonly Span[], figure: (values: readonly number[]) => number): Span {
  const middle = inputs.map((i) => i.likely)
  const likely = figure(middle)
  const doubts = inputs.map((input, at) => {
    const ends = [input.low, input.high].map((end) => figure(middle.with(at, end)) - likely)
    return { down: Math.max(0, ...ends.map((e) => -e)), up: Math.max(0, ...ends) }
  })
  return spanOf(likely, doubts)
}
