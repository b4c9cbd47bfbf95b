// bot/render/picture/adult/texture.ts: what each feather of a region wears: lacing, bars, pencilling, spangles, stripes, tips, flecks.
import { round, svg, type Markup } from '../svg.ts'
import type { Feather } from './field.ts'
import type { Lie } from './shape.ts'

export type Texture =
  | 'plain'
  | 'laced'
  | 'double laced'
  | 'partly laced'
  | 'pencilled'
  | 'spangled'
  | 'barred'
  | 'double barred'
  | 'cross-barred'
  | 'stippled'
  | 'striped'
  | 'edged'
  | 'leaking'
  | 'tipped'
  | 'flecked'
  | 'ticked'
  | 'patched'
  | 'curled'

type Wear = {
  readonly of?: (feather: Feather) => boolean // which feathers wear it; all when absent
  readonly path: (place: Place, lie: Lie) => string
  readonly stroke: number // width of the line; 0 = filled
}
/** From along and across a feather, its middle at 0, 0, to the picture. */
type Place = (along: number, across: number) => string

/** One path for all feathers of a region. */
export function texture(kind: Texture, feathers: readonly Feather[], lie: Lie, colour: string, opacity = 1): Markup {
  const d = pathOf(kind, feathers, lie)
  const { stroke } = wears[kind]
  return stroke === 0
    ? svg`<path d="${d}" fill="${colour}" fill-opacity="${opacity}"/>`
    : svg`<path d="${d}" fill="none" stroke="${colour}" stroke-width="${stroke}" stroke-linecap="round" stroke-opacity="${opacity}"/>`
}

/** Paths already made: the same feathers always lie the same way. */
const made = new WeakMap<readonly Feather[], Map<Texture, string>>()

function pathOf(kind: Texture, feathers: readonly Feather[], lie: Lie): string {
  const known = made.get(feathers) ?? new Map<Texture, string>()
  made.set(feathers, known)
  const { of, path } = wears[kind]
  const d =
    known.get(kind) ??
    (of === undefined ? feathers : feathers.filter(of)).map((feather) => path(placeOn(feather), lie)).join('')
  known.set(kind, d)
  return d
}

function placeOn({ x, y, angle }: Feather): Place {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  return (along, across) => `${round(x + cos * along - sin * across)} ${round(y + sin * along + cos * across)}`
}

/** The rounded end of a feather, `size` of its full one. */
const rim = (at: Place, { long, wide }: Lie, size = 1): string => {
  const [l, w] = [long * size, wide * size]
  return `M${at(-0.25 * l, -0.5 * w)}C${at(0.3 * l, -0.55 * w)} ${at(0.6 * l, -0.3 * w)} ${at(0.6 * l, 0)}C${at(0.6 * l, 0.3 * w)} ${at(0.3 * l, 0.55 * w)} ${at(-0.25 * l, 0.5 * w)}`
}
const bar = (at: Place, { wide }: Lie, along: number): string =>
  `M${at(along, -0.56 * wide)}Q${at(along + 0.9, 0)} ${at(along, 0.56 * wide)}`
const drop = (at: Place, { long, wide }: Lie, from: number, to: number, half: number): string =>
  `M${at(from * long, 0)}C${at(from * long, half * wide)} ${at(to * long * 0.7, half * wide)} ${at(to * long, 0)}C${at(to * long * 0.7, -half * wide)} ${at(from * long, -half * wide)} ${at(from * long, 0)}Z`
const curl = (at: Place, { wide }: Lie): string =>
  `M${at(3, -0.3 * wide)}C${at(-3, -0.4 * wide)} ${at(-4, 0.3 * wide)} ${at(1, 0.34 * wide)}`
const dot = (at: Place, { wide }: Lie, along: number, across: number, half: number): string =>
  `M${at(along - half, across * wide)}L${at(along + half, across * wide)}`

const wears: Readonly<Record<Texture, Wear>> = {
  plain: { of: ({ chance }) => chance < 0.55, path: (at, lie) => rim(at, lie), stroke: 0.9 },
  laced: { path: (at, lie) => rim(at, lie), stroke: 2.3 },
  'double laced': { path: (at, lie) => rim(at, lie) + rim(at, lie, 0.45), stroke: 1.5 },
  'partly laced': { of: ({ chance }) => chance < 0.5, path: (at, lie) => rim(at, lie), stroke: 2.1 },
  pencilled: { path: (at, lie) => rim(at, lie) + rim(at, lie, 0.62) + rim(at, lie, 0.24), stroke: 0.95 },
  spangled: { path: (at, lie) => drop(at, lie, 0.02, 0.72, 0.42), stroke: 0 },
  barred: { path: (at, lie) => bar(at, lie, 0), stroke: 2.3 },
  'double barred': { path: (at, lie) => bar(at, lie, 0), stroke: 4.2 },
  'cross-barred': { path: (at, lie) => bar(at, lie, lie.long * -0.25) + bar(at, lie, lie.long * 0.25), stroke: 1.7 },
  stippled: {
    path: (at, lie) =>
      dot(at, lie, -2, -0.3, 0.5) +
      dot(at, lie, 0.4, 0.25, 0.6) +
      dot(at, lie, 2.6, -0.1, 0.5) +
      dot(at, lie, -1, 0.45, 0.4),
    stroke: 1.1,
  },
  striped: { path: (at, lie) => drop(at, lie, -0.6, 0.5, 0.36), stroke: 0 },
  edged: { path: (at, lie) => rim(at, lie), stroke: 1.3 },
  leaking: { of: ({ chance }) => chance < 0.6, path: (at, lie) => rim(at, lie, 0.9), stroke: 1.4 },
  tipped: { of: ({ chance }) => chance < 0.45, path: (at, lie) => drop(at, lie, 0.05, 0.75, 0.4), stroke: 0 },
  flecked: { of: ({ chance }) => chance > 0.72, path: (at, lie) => drop(at, lie, -0.3, 0.4, 0.42), stroke: 0 },
  ticked: { of: ({ chance }) => chance > 0.9, path: (at, lie) => drop(at, lie, -0.1, 0.4, 0.3), stroke: 0 },
  curled: { of: ({ chance }) => chance > 0.4, path: curl, stroke: 1.1 },
  patched: { of: ({ chance }) => chance > 0.45, path: (at, lie) => drop(at, lie, -0.7, 0.9, 0.7), stroke: 0 },
}
