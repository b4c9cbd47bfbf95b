// bot/render/picture/adult/fringe.ts: the edge of a region that ends in feather tips.
import { onCubic, type Cubic, type Outline, type Point } from '../curve.ts'
import { round } from '../svg.ts'
import type { Fringe } from './shape.ts'

/** The closed path of an outline whose fringed curves run out in tips that point away from `from`. */
export function fringed([start, ...curves]: Outline, fringes: readonly Fringe[], from: Point): string {
  let here: Point = start
  const steps = curves.map((curve, at) => {
    const begin = here
    here = [curve[4], curve[5]]
    const fringe = fringes.find((one) => one.curve === at + 1)
    return fringe === undefined ? `C${curve.map(round).join(' ')}` : tips(begin, curve, fringe, from)
  })
  return `M${start.map(round).join(' ')}${steps.join('')}Z`
}

function tips(begin: Point, curve: Cubic, { tips: count, long }: Fringe, from: Point): string {
  const base = Array.from({ length: count + 1 }, (_, step) => onCubic(begin, curve, step / count).at)
  return base
    .slice(1)
    .map((next, at) => {
      const last = base[at]!
      const tip = away(from, [(last[0] + next[0]) / 2, (last[1] + next[1]) / 2], long)
      return `Q${pair(away(from, last, long * 0.55))} ${pair(tip)}Q${pair(away(from, next, long * 0.55))} ${pair(next)}`
    })
    .join('')
}

function away([fx, fy]: Point, [x, y]: Point, by: number): Point {
  const far = Math.hypot(x - fx, y - fy)
  return [x + ((x - fx) / far) * by, y + ((y - fy) / far) * by]
}
const pair = ([x, y]: Point): string => `${round(x)} ${round(y)}`
