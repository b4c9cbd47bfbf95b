// core/hen/growth.ts: what a growing bird weighs and has eaten at an age, from what it will weigh grown.
import { growing } from '../data/hen/growing.ts'
import type { Span } from '../vocabulary.ts'

type Point = (typeof growing.byWeek)[number]

/** Straight lines between the weeks of the table. */
function along(week: number, of: (point: Point) => number): number {
  const table: readonly Point[] = growing.byWeek
  const after = table.findIndex((point) => point.week >= week)
  if (after <= 0) return of(after === 0 ? table[0]! : table.at(-1)!)
  const [a, b] = [table[after - 1]!, table[after]!]
  return of(a) + ((of(b) - of(a)) * (week - a.week)) / (b.week - a.week)
}

const lastWeek = growing.byWeek.at(-1)!.week

/**
 * Live weight, kg. Larger birds take longer to grow: time goes with weight^0.25.
 *
 * @source Taylor 1965, Anim. Prod. 7:203-220, scaling of growth by mature size: from memory
 */
export const weightAt = (week: number, grownKg: number): number =>
  grownKg * along(week * (growing.grownKg / grownKg) ** 0.25, (point) => point.share)

/** Feed eaten from hatch to this age, kg; birds of other size eat by weight^0.75. */
export function feedToAge(week: number, grownKg: number): Span {
  const heavy = along(week, (point) => point.feedKg) + Math.max(0, week - lastWeek) * growing.feedKgPerWeekLater
  const likely = heavy * (grownKg / growing.grownKg) ** 0.75
  return { low: likely * (1 - growing.doubt), likely, high: likely * (1 + growing.doubt) }
}

/** Feed for one kilogram of growth between two ages. */
export const feedPerKgGain = (from: number, to: number, grownKg: number): number =>
  (feedToAge(to, grownKg).likely - feedToAge(from, grownKg).likely) / (weightAt(to, grownKg) - weightAt(from, grownKg))
