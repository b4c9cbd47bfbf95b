// core/answers/carrier/rivals.ts: which of several cocks is the father, by what each would make of the chicks.
import type { CarrierAnswer } from '../../answer.ts'
import { rational, type Ratio, toNumber } from '../../engine/num.ts'
import type { Debated } from '../../flock/debated.ts'
import { members } from '../../flock/member.ts'
import { outcomeOf } from '../../flock/weigh.ts'
import type { Flock } from '../../question.ts'

/**
 * Odds of the cocks, taken as equally likely before the chicks; birds of whom nothing is told have each
 * number of copies that their look leaves open with equal chance, in every case alike.
 */
export function rivalOdds(
  debated: Debated,
  flock: Flock,
  of: string,
  rivals: readonly string[],
): CarrierAnswer['rivals'] {
  if (rivals.length === 0) return []
  const told = flock.broods[0]?.sire
  const candidates = [...new Set([told ?? of, ...rivals])]
  const evidence = candidates.map((sire) => evidenceFor(debated, flock, sire, candidates))
  const whole = evidence.reduce(rational.plus, rational.zero)
  if (rational.isZero(whole)) return []
  return candidates
    .map((sire, i) => ({ sire, odds: toNumber(rational.over(evidence[i]!, whole)) }))
    .toSorted((a, b) => b.odds - a.odds)
}

/** The chance of everything read if this cock is the sire of the broods of all the candidates. */
function evidenceFor(debated: Debated, flock: Flock, sire: string, candidates: readonly string[]): Ratio {
  const all = candidates.filter((name) => !flock.birds.some((bird) => bird.name === name))
  const birds = [...flock.birds, ...all.map((name) => ({ name, sex: 'M' as const }))]
  const broods = flock.broods.map((brood) => (candidates.includes(brood.sire) ? { ...brood, sire } : brood))
  const told = members({ birds, broods }, debated)
  const first = told.findIndex(({ name }) => name === sire)
  const open = new Map(told.map((_, i) => [i, 'either' as const]))
  return outcomeOf(debated, told, first, open)?.evidence ?? rational.zero
}
