// bot/render/picture/downy.ts: the softness of down: an outline broken into small tufts.
import { along, scatter, through, type Outline, type Point } from './curve.ts'
import { svg, type Markup } from './svg.ts'

/**
 * A closed path along `outline` (clockwise) with `per` tufts on each curve, at most `length` long, lying towards the
 * tail; `grown` outwards by so much.
 */
export function downy(outline: Outline, per: number, length: number, grown = 0): string {
  const tufts = along(outline, per).flatMap(({ at: [x, y], angle }, seed): Point[] => {
    const reach = length * (0.4 + 0.6 * scatter(seed))
    const [outX, outY] = [Math.sin(angle), -Math.cos(angle)]
    const [baseX, baseY] = [x + outX * grown, y + outY * grown]
    return [
      [baseX, baseY],
      [baseX + outX * reach - reach * 0.7, baseY + outY * reach + reach * 0.25],
    ]
  })
  return `${through(tufts)}Z`
}

export type Softness = { readonly per: number; readonly length: number; readonly edge: number /* width of the edge */ }

/** A soft shape with an edge, as two filled shapes: a stroke around so many tufts takes three times as long to draw. */
export function softShape(outline: Outline, { per, length, edge }: Softness): (fill: string, edge: string) => Markup {
  const outer = downy(outline, per, length, edge / 2)
  const inner = downy(outline, per, length, -edge / 2)
  return (fill, edge) => svg`<path d="${outer}" fill="${edge}"/><path d="${inner}" fill="${fill}"/>`
}
