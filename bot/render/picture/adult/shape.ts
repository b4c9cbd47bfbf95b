// bot/render/picture/adult/shape.ts: what a grown bird's outline consists of. Types and words only.
import type { Outline, Point } from '../curve.ts'

/** Parts of the plumage that keepers name, in the order in which they are drawn. */
export const regions = [
  'tail',
  'breast',
  'fluff',
  'back',
  'primaries',
  'bay',
  'wing bar',
  'shoulder',
  'saddle',
  'hackle',
  'head',
] as const
export type Region = (typeof regions)[number]

/** How feathers lie in a region: they point away from `from`, in rows `long` apart, `wide` apart in the row. */
export type Lie = { readonly from: Point; readonly long: number; readonly wide: number }

/** A curve of a region's outline, counted from 1, that ends in feather tips instead of a line. */
export type Fringe = { readonly curve: number; readonly tips: number; readonly long: number }

export type Shape = {
  readonly width: number
  readonly height: number
  readonly ground: number // y of the ground
  readonly body: Outline // the whole bird without tail, comb and legs
  readonly parts: Readonly<Record<Exclude<Region, 'saddle'>, Outline>> & { readonly saddle?: Outline | undefined }
  readonly lie: Readonly<Record<Region, Lie>>
  readonly thighs: readonly [Outline, Outline] // far one first
  readonly bareNeck: Outline // where hackle and throat have no feathers
  readonly sickles: readonly Outline[] // empty in hens
  readonly fringes: Readonly<Partial<Record<Region, readonly Fringe[]>>>
  readonly tailQuills: string // lines between the big feathers
  readonly wingQuills: string
  readonly head: Point // middle of the crown, where the comb sits
  readonly eye: Point
  readonly hocks: readonly [Point, Point] // where the bare legs begin, far one first
  readonly combScale: number
}
