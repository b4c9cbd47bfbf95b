// core/answers/carrier/rivals.ts: which of several cocks is the father, by what each would make of the chicks.
import type { CarrierAnswer } from '../../answer.ts'
import { rational, type Ratio, toNumber } from '../../engine/num.ts'
import type { Debated } from '../../flock/debated.ts'
import { carriedName } from '../../flock/carriedName.ts'
import { copiesLeft, members } from '../../flock/member.ts'
import { outcomeOf, weigh } from '../../flock/weigh.ts'
import { chanceWords } from './verdict.ts'
import type { Brood, Flock, FlockBird } from '../../question.ts'

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
  const told = (flock.broods.find((brood) => brood.rivals !== undefined) ?? flock.broods[0])?.sire
  const candidates = [...new Set([told ?? of, ...rivals])]
  const evidence = candidates.map((sire) => evidenceFor(debated, flock, sire, candidates))
  const whole = evidence.reduce(rational.plus, rational.zero)
  if (rational.isZero(whole)) return []
  return candidates
    .map((sire, i) => ({
      sire,
      odds: toNumber(rational.over(evidence[i]!, whole)),
      why: whyOf(debated, flock, sire, candidates),
    }))
    .toSorted((a, b) => b.odds - a.odds)
}

/** The broods of which the sire is asked. */
const isDisputed = (flock: Flock, candidates: readonly string[]): ((brood: Brood) => boolean) =>
  flock.broods.some(({ rivals }) => rivals !== undefined)
    ? ({ rivals }) => rivals !== undefined
    : ({ sire }) => candidates.includes(sire)

/** Does this cock carry it, by all that was told but the chicks in question? */
function whyOf(debated: Debated, flock: Flock, sire: string, candidates: readonly string[]): string {
  const disputed = isDisputed(flock, candidates)
  const birds = [...flock.birds.filter(({ name }) => name !== sire), { ...birdNamed(flock, sire), sex: 'M' as const }]
  const told = members({ birds, broods: flock.broods.filter((brood) => !disputed(brood)) }, debated)
  const what = carriedName(debated.allele)
  const own = told.find(({ name }) => name === sire)!
  const left = copiesLeft(debated, own)
  if (left.length === 1 && left[0] === 2) return `${debated.shows} himself`
  const weighed = weigh(debated, told, sire)
  if (weighed.kind === 'conflict') return ''
  if (weighed.p.n === weighed.p.d) return `certain to carry ${what}`
  if (weighed.p.n === 0n && weighed.footing === 'told' && !left.includes(1)) return `free of ${what}`
  return weighed.footing === 'told' && weighed.p.n > 0n
    ? `${chanceWords(weighed.p)} that he carries ${what}, by his family and his other chicks`
    : `nothing told says whether he carries ${what}`
}
const birdNamed = (flock: Flock, name: string): FlockBird => flock.birds.find((bird) => bird.name === name) ?? { name }

/** The chance of everything read if this cock is the sire of the broods of all the candidates. */
function evidenceFor(debated: Debated, flock: Flock, sire: string, candidates: readonly string[]): Ratio {
  const all = candidates.filter((name) => !flock.birds.some((bird) => bird.name === name))
  const birds = [...flock.birds, ...all.map((name) => ({ name, sex: 'M' as const }))]
  const disputed = isDisputed(flock, candidates)
  const broods = flock.broods.map((brood): Brood => {
    const { sire: told, dam, chicks } = brood
    return { sire: disputed(brood) ? sire : told, dam, chicks }
  })
  const told = members({ birds, broods }, debated)
  const first = told.findIndex(({ name }) => name === sire)
  const open = new Map(told.map((_, i) => [i, 'either' as const]))
  return outcomeOf(debated, told, first, open)?.evidence ?? rational.zero
}
