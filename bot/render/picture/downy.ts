// bot/render/picture/downy.ts: the softness of down: an outline broken into small tufts.
import { along, scatter, through, type Outline, type Point } from './curve.ts'

/** A closed path along `outline` (clockwise) with `per` tufts on each curve, at most `length` long, lying towards the tail. */
export function downy(outline: Outline, per: number, length: number): string {
  const tufts = along(outline, per).flatMap(({ at: [x, y], angle }, seed): Point[] => {
    const reach = length * (0.4 + 0.6 * scatter(seed))
    const away = angle - Math.PI / 2
    return [
      [x, y],
      [x + Math.cos(away) * reach - reach * 0.7, y + Math.sin(away) * reach + reach * 0.25],
    ]
  })
  return `${through(tufts)}Z`
}
