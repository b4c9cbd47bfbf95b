// core/answers/carrier/mates.ts: what the chicks of a debated bird say of its mates, and what they would say if the mates carried it.
import { type Debated, mostCopies, readCopies } from '../../flock/debated.ts'
import { copiesLeft, type Member } from '../../flock/member.ts'
import { weigh } from '../../flock/weigh.ts'
import type { MateKind } from './matings.ts'
import { chanceWords, nameOf } from './verdict.ts'

/** Its mates, by place in the flock. */
function matesOf(flock: readonly Member[], { name }: Member): readonly number[] {
  const names = new Set(flock.flatMap(({ sire, dam }) => (sire === name ? [dam] : dam === name ? [sire] : [])))
  return flock.flatMap((member, i) => (names.has(member.name) ? [i] : []))
}

/** What the bird of the other sex is that was spoken of, where that is known; a mate before any other. */
export function mateAtHand(debated: Debated, flock: readonly Member[], bird: Member): MateKind | undefined {
  const mated = matesOf(flock, bird).map((mate) => flock[mate]!)
  const spokenOf = flock.filter(
    ({ sex, chicks, sire, dam }) => sex !== bird.sex && sex !== 'U' && !chicks && !sire && !dam,
  )
  const related = new Set([bird.sire, bird.dam])
  if (mated.some(({ sire, dam }) => sire === bird.name || dam === bird.name)) return 'other'
  for (const mate of [...mated, ...spokenOf.filter(({ name }) => !related.has(name))]) {
    const left = copiesLeft(debated, mate)
    if (left.length === 1 && left[0] === mostCopies(debated, mate.sex)) return 'shows'
    if (left.length > 0 && !left.includes(0)) return 'split'
  }
  return undefined
}

/** Mates not known to carry it that are then certain to carry it as well. */
export const alsoSure = (debated: Debated, flock: readonly Member[], bird: Member): readonly string[] =>
  matesOf(flock, bird)
    .map((mate) => flock[mate]!)
    .filter(({ readings }) => readings.every(({ id }) => id === 'shows false'))
    .filter(({ name }) => {
      const weighed = weigh(debated, flock, name)
      return weighed.kind === 'chance' && weighed.p.n === weighed.p.d
    })
    .map(nameOf)

/** What the same chicks would say if the mates carried it. */
export function ifMatesCarry(debated: Debated, flock: readonly Member[], bird: Member): string {
  const mates = matesOf(flock, bird)
  const carrying = mates.reduce(
    (told, mate) =>
      told.with(mate, { ...told[mate]!, readings: [...told[mate]!.readings, readCopies('a carrier', 1, 1)] }),
    flock,
  )
  const weighed = weigh(debated, carrying, bird.name)
  if (weighed.kind !== 'chance') return ''
  const one = mates.length === 1 ? nameOf(flock[mates[0]!]!) : 'each mate'
  return `If ${one} carries it too, they bring ${nameOf(bird)} from an even chance to ${chanceWords(weighed.p)}.`
}
