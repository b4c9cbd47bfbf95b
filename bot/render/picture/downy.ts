// bot/render/picture/downy.ts: the softness of down: an outline broken into small tufts.
import { along, scatter, through, type Outline, type Point } from './curve.ts'
import { svg, type Markup } from './svg.ts'

/**
 * A closed path along `outline` with `per` tufts on each curve, at most `length` long, lying towards the tail; `grown`
 * outwards by so much. The outline may run either way round.
 */
export function downy(outline: Outline, per: number, length: number, grown = 0): string {
  const steps = along(outline, per)
  const out = clockwise(steps.map(({ at }) => at)) ? 1 : -1
  const tufts = steps.flatMap(({ at: [x, y], angle }, seed): Point[] => {
    const reach = length * (0.4 + 0.6 * scatter(seed))
    const [outX, outY] = [Math.sin(angle) * out, -Math.cos(angle) * out]
    const [baseX, baseY] = [x + outX * grown, y + outY * grown]
    return [
      [baseX, baseY],
      [baseX + outX * reach - reach * 0.7, baseY + outY * reach + reach * 0.25],
    ]
  })
  return `${through(tufts)}Z`
}

/** By the sign of the area, y running down. */
const clockwise = (corners: readonly Point[]): boolean =>
  corners.reduce((sum, [x, y], at) => {
    const [nextX, nextY] = corners[(at + 1) % corners.length]!
    return sum + x * nextY - nextX * y
  }, 0) > 0

export type Softness = { readonly per: number; readonly length: number; readonly edge: number /* width of the edge */ }

/** A soft shape with an edge, as two filled shapes: a stroke around so many tufts takes three times as long to draw. */
export function softShape(outline: Outline, { per, length, edge }: Softness): (fill: string, edge: string) => Markup {
  const outer = downy(outline, per, length, edge / 2)
  const inner = downy(outline, per, length, -edge / 2)
  return (fill, edge) => svg`<path d="${outer}" fill="${edge}"/><path d="${inner}" fill="${fill}"/>`
}
