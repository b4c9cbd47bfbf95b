// core/cross/mate.ts: one mating as the keeper names it -> its cases: chicks, sexing and daughters for each thing not known of the parents.
import { LRUCache } from 'lru-cache'
import type { Case, Crossed, Sexing } from '../answer.ts'
import type { BirdRef } from '../question.ts'
import { toCase } from './case.ts'
import { hangsOnPhase, pairs, type Mating, type Pair } from './pair.ts'
import { manyKinds, play, type Played } from './play.ts'
import { seenBird } from './seen.ts'
import { signature } from './signature.ts'

/** `shells`: the egg is asked about, so what it hangs on makes the cases first. */
export type Want = { readonly hen: boolean; readonly reverse: boolean; readonly shells?: boolean }

/** Most ways of making a named hybrid that are played through, and most cases that a keeper can use. */
const most = 4

type Row = {
  readonly pair: Pair
  readonly played: Played
  readonly at: number
  readonly weight: number
  readonly key: string
}

const rowsOf =
  (mating: Mating, shells: boolean) =>
  (pair: Pair): readonly Row[] => {
    const played = play(pair, mating, shells)
    return played.cases.map(({ weight, result }, at) => ({
      pair,
      played,
      at,
      weight: weight * pair.weight,
      key: signature(result.outcome, result.sexing, manyKinds(pair, played.founders), hangsOnPhase(pair)),
    }))
  }

/** Ways of making a named hybrid that give one and the same result are one case. */
function gather(mating: Mating, want: Want): readonly Case[] {
  const ways = pairs(mating)
    .toSorted((a, b) => b.weight - a.weight)
    .slice(0, most)
  const rows = ways.flatMap(rowsOf(mating, want.shells === true)).toSorted((a, b) => b.weight - a.weight)
  const merged = Object.values(Object.groupBy(rows, ({ key }) => key)).map((alike) => ({
    first: alike![0]!,
    weight: alike!.reduce((sum, { weight }) => sum + weight, 0),
  }))
  const kept = merged.toSorted((a, b) => b.weight - a.weight).slice(0, most)
  const total = kept.reduce((sum, { weight }) => sum + weight, 0)
  return kept.map(({ first, weight }) => ({
    ...worded(mating, first, kept.length === 1, want),
    weight: weight / total,
  }))
}

/** The only case needs no words; one that covers what no other does is `otherwise`. */
function worded(mating: Mating, { pair, played, at }: Row, only: boolean, want: Want): Case {
  const one = toCase(mating, played, at, only ? { ...pair, as: '' } : pair, want.hen)
  if (only) return { ...one, given: '' }
  return one.given === '' ? { ...one, given: 'otherwise' } : one
}

const usualVerdict = (cases: readonly Case[]): Sexing['verdict'] => cases[0]!.sexing.verdict

/** The other way round, where both birds are named by breed and it gives another verdict. */
function withReverse(mating: Mating, cases: readonly Case[]): readonly Case[] {
  const { sire, dam } = mating
  const named = [sire, dam].every(
    (bird) => bird.breed !== undefined && bird.genotype === undefined && bird.cross === undefined,
  )
  if (!named || sire.breed === dam.breed) return cases
  const other = crossOf({ sire: dam, dam: sire }, { hen: false, reverse: false })
  const verdict = usualVerdict(other.cases)
  if (other.cases.some(({ sexing }) => sexing.verdict !== verdict)) return cases
  return cases.map((one) =>
    one.sexing.verdict === verdict
      ? one
      : { ...one, sexing: { ...one.sexing, reverse: { verdict, says: other.cases[0]!.sexing.why } } },
  )
}

/** Matings asked about lately, bounded by the kinds of chick they hold (some 2 kB each). */
const remembered = new LRUCache<string, Crossed>({
  maxSize: 3000,
  sizeCalculation: ({ cases }) =>
    1 + cases.reduce((n, { cockerels, pullets }) => n + cockerels.length + pullets.length, 0),
})

function crossOf(mating: Mating, want: Want): Crossed {
  const key = JSON.stringify([mating, want])
  const found = remembered.get(key)
  if (found) return found
  const cases = gather(mating, want)
  const crossed = {
    sire: seenBird(mating.sire),
    dam: seenBird(mating.dam),
    cases: want.reverse ? withReverse(mating, cases) : cases,
  }
  remembered.set(key, crossed)
  return crossed
}

/**
 * What a mating gives.
 *
 * @param want leave out the daughters' profile or the reverse mating where nobody needs them: a search is quicker
 * @returns cases likeliest first, weights (belief about the parents) adding to 1; shares (chance among chicks) adding to 1 within each
 */
export const mate = (sire: BirdRef, dam: BirdRef, want: Want = { hen: true, reverse: true }): Crossed =>
  crossOf({ sire, dam }, want)
