// bot/render/picture/adult/shapes.ts: the outlines by sex, and where every feather of each lies, worked out once.
import type { Sex } from '../../../../core/vocabulary.ts'
import { moved } from '../curve.ts'
import { cock } from './cock.ts'
import { feathers, type Feather } from './field.ts'
import { hen } from './hen.ts'
import type { Region, Shape } from './shape.ts'

export const shapes: Readonly<Record<Sex, Shape>> = { M: cock, F: hen }

/** A cock without sickles and saddle hackles: he carries a hen's tail. */
export const henFeatheredCock: Shape = {
  ...cock,
  parts: { ...cock.parts, saddle: undefined, tail: moved(hen.parts.tail, 18, 9) },
  sickles: [],
}

export type Fields = Readonly<Record<Region | 'thigh', readonly Feather[]>> & {
  readonly sickles: readonly (readonly Feather[])[]
}

function laidOut(shape: Shape): Fields {
  const field = (region: Region) => {
    const outline = shape.parts[region]
    return outline === undefined ? [] : feathers(outline, shape.lie[region])
  }
  return {
    tail: field('tail'),
    breast: field('breast'),
    fluff: field('fluff'),
    back: field('back'),
    primaries: field('primaries'),
    bay: field('bay'),
    'wing bar': field('wing bar'),
    shoulder: field('shoulder'),
    saddle: field('saddle'),
    hackle: field('hackle'),
    head: field('head'),
    thigh: feathers(shape.thighs[1], shape.lie.fluff),
    sickles: shape.sickles.map((sickle) => feathers(sickle, shape.lie.tail)),
  }
}
export const fieldsOf: ReadonlyMap<Shape, Fields> = new Map(
  [cock, henFeatheredCock, hen].map((shape) => [shape, laidOut(shape)]),
)
