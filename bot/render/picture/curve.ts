// bot/render/picture/curve.ts: smooth outlines as data: a start and cubic curves, their path and points along them.
import { round } from './svg.ts'

export type Point = readonly [x: number, y: number]
export type Cubic = readonly [x1: number, y1: number, x2: number, y2: number, x: number, y: number]
/** A start point and curves, each beginning where the one before ended. */
export type Outline = readonly [start: Point, ...curves: readonly Cubic[]]

/** The path of a closed outline. */
export const closed = (outline: Outline): string => `${open(outline)}Z`

/** The path of an open line. */
export const open = ([start, ...curves]: Outline): string =>
  `M${start.map(round).join(' ')}${curves.map((curve) => `C${curve.map(round).join(' ')}`).join('')}`

/** A straight-sided path through points. */
export const through = (points: readonly Point[]): string =>
  points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('')

/** Points along an outline, `per` on each curve, with the way the line runs there as an angle in radians. */
export function along([start, ...curves]: Outline, per: number): readonly { at: Point; angle: number }[] {
  let from: Point = start
  return curves.flatMap((curve) => {
    const here = from
    from = [curve[4], curve[5]]
    return Array.from({ length: per }, (_, step) => onCubic(here, curve, step / per))
  })
}

/** The point at `t` of one cubic, 0 <= t <= 1, and its direction. */
export function onCubic([x0, y0]: Point, [x1, y1, x2, y2, x3, y3]: Cubic, t: number): { at: Point; angle: number } {
  const u = 1 - t
  const mix = (a: number, b: number, c: number, d: number) =>
    u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d
  const slope = (a: number, b: number, c: number, d: number) => u * u * (b - a) + 2 * u * t * (c - b) + t * t * (d - c)
  return {
    at: [mix(x0, x1, x2, x3), mix(y0, y1, y2, y3)],
    angle: Math.atan2(slope(y0, y1, y2, y3), slope(x0, x1, x2, x3)),
  }
}

/** The same outline elsewhere. */
export const moved = ([[x, y], ...curves]: Outline, dx: number, dy: number): Outline => [
  [x + dx, y + dy],
  ...curves.map(([a, b, c, d, e, f]): Cubic => [a + dx, b + dy, c + dx, d + dy, e + dx, f + dy]),
]

/** A fixed scatter between 0 and 1: the same `seed` always gives the same value, so a picture can be cached by content. */
export const scatter = (seed: number): number => {
  const wave = Math.sin(seed * 127.1 + 311.7) * 43758.5453
  return wave - Math.floor(wave)
}
