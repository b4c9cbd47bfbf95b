// core/sexing/judge.ts: how well a set of signs parts the sexes, from what may be noted on a cockerel and on a pullet.
import type { Noted } from './reading.ts'

/** One kind of chick within a sex: its share of that sex, and what each sign would be noted as. */
export type Kind = { readonly share: number; readonly noted: readonly Noted[] }

export type Parting = {
  /** Share of all chicks put in the right pen when each is called by the likelier sex; an even call counts half. */
  readonly accuracy: number
  /** Share right among those called pullets, and among those called cockerels; null where none is called so. */
  readonly pulletsTrue: number | null
  readonly cockerelsTrue: number | null
  /** Share of chicks whose reading says anything about sex. */
  readonly readable: number
}

/** Chance of each joint reading for one sex. Signs are misread independently, given the chick. */
function jointReadings(kinds: readonly Kind[]): ReadonlyMap<string, number> {
  const joint = new Map<string, number>()
  for (const { share, noted } of kinds) {
    let rows: readonly (readonly [string, number])[] = [['', share]]
    for (const sign of noted)
      rows = rows.flatMap(([key, p]) =>
        Object.entries(sign).map(([shown, q]): readonly [string, number] => [`${key}|${shown}`, p * q]),
      )
    for (const [key, p] of rows) joint.set(key, (joint.get(key) ?? 0) + p)
  }
  return joint
}

/**
 * Parts a hatch of half cockerels, half pullets.
 *
 * @param cockerels kinds of cockerel, shares summing to 1
 * @param pullets kinds of pullet, shares summing to 1, same signs in the same order
 * @source Bayes' rule with even sexes: a reading is called for the sex that gives it oftener.
 */
export function partSexes(cockerels: readonly Kind[], pullets: readonly Kind[]): Parting {
  const m = jointReadings(cockerels)
  const f = jointReadings(pullets)
  let right = 0
  let readable = 0
  const called = { M: { all: 0, right: 0 }, F: { all: 0, right: 0 } }
  for (const key of new Set([...m.keys(), ...f.keys()])) {
    const [pm, pf] = [m.get(key) ?? 0, f.get(key) ?? 0]
    right += Math.max(pm, pf) / 2
    if (Math.abs(pm - pf) <= 1e-9) continue
    readable += (pm + pf) / 2
    const pen = pm > pf ? called.M : called.F
    pen.all += pm + pf
    pen.right += Math.max(pm, pf)
  }
  const share = (pen: { all: number; right: number }): number | null => (pen.all > 0 ? pen.right / pen.all : null)
  return { accuracy: right, pulletsTrue: share(called.F), cockerelsTrue: share(called.M), readable }
}
