// bot/render/picture/adult/field.ts: where the feathers of a region lie: rows that bend around a point, kept inside the outline.
import { along, scatter, type Outline, type Point } from '../curve.ts'
import type { Lie } from './shape.ts'

/** One feather: its middle, the way its tip points (radians), its row, and a fixed chance value of its own. */
export type Feather = {
  readonly x: number
  readonly y: number
  readonly angle: number
  readonly row: number
  readonly chance: number
}

/** All feathers of a region whose tips stay inside it. */
export function feathers(outline: Outline, { from, long, wide }: Lie): readonly Feather[] {
  const corners = along(outline, 8).map(({ at }) => at)
  const [near, far] = reachOf(corners, from)
  const found: Feather[] = []
  for (let row = Math.ceil(near / long); row * long <= far; row += 1) {
    const radius = row * long
    const step = wide / radius
    const turns = Math.floor((2 * Math.PI) / step)
    for (let turn = 0; turn < turns; turn += 1) {
      const angle = (turn + (row % 2) / 2) * step
      const at: Point = [from[0] + Math.cos(angle) * radius, from[1] + Math.sin(angle) * radius]
      if (fits(at, angle, long, wide, corners))
        found.push({ x: at[0], y: at[1], angle, row, chance: scatter(scatter(row) * 997 + turn * 31.7) })
    }
  }
  return found
}

function reachOf(corners: readonly Point[], [x, y]: Point): readonly [number, number] {
  const reaches = corners.map(([cx, cy]) => Math.hypot(cx - x, cy - y))
  return [Math.min(...reaches), Math.max(...reaches)]
}

function fits([x, y]: Point, angle: number, long: number, wide: number, corners: readonly Point[]): boolean {
  const [along, across] = [long * 0.62, wide * 0.42]
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const probes: readonly Point[] = [
    [x + cos * along, y + sin * along],
    [x - sin * across, y + cos * across],
    [x + sin * across, y - cos * across],
  ]
  return probes.every((probe) => inside(probe, corners))
}

/** Whether a point lies inside a polygon: an odd number of sides crosses the line to its right. */
function inside([x, y]: Point, corners: readonly Point[]): boolean {
  let odd = false
  corners.forEach(([x1, y1], at) => {
    const [x0, y0] = corners[(at + corners.length - 1) % corners.length]!
    if (y1 > y !== y0 > y && x < ((x0 - x1) * (y - y1)) / (y0 - y1) + x1) odd = !odd
  })
  return odd
}
