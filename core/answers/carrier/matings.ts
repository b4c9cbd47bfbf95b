// core/answers/carrier/matings.ts: which matings would settle whether a bird carries an allele, and with how many chicks.
import type { CarrierAnswer } from '../../answer.ts'
import { toNumber } from '../../engine/num.ts'
import type { Debated } from '../../flock/debated.ts'
import { article, pronouns } from '../../flock/names.ts'
import { type Chicks, chicksForDoubt, chicksForPower, type TestState } from '../../testMating.ts'
import type { Sex } from '../../vocabulary.ts'

/** What a mate is to be: it shows the allele, is known to carry it, or is related. */
export type MateKind = 'shows' | 'split' | 'other'
type Mating = { readonly mating: string; readonly clear: number; readonly kind: MateKind }

/** Matings by what they are with, and the chance that one chick of a carrier is clear. Most telling first. */
function matingsOf({ on, acts, shows, penetrance }: Debated, sex: Sex | 'U'): readonly Mating[] {
  const { mate, his } = pronouns(sex)
  if (acts !== 'recessive')
    return [{ mating: `with any ${mate} free of it`, clear: 1 - toNumber(penetrance) / 2, kind: 'other' }]
  if (on === 'Z')
    return [
      { mating: `with any ${mate}, counting daughters only`, clear: 1 / 2, kind: 'other' },
      { mating: `with ${article(shows)} ${shows} ${mate}, counting every chick`, clear: 1 / 2, kind: 'shows' },
    ]
  const young = sex === 'F' ? 'sons' : 'daughters'
  return [
    { mating: `with ${article(shows)} ${shows} ${mate}`, clear: 1 / 2, kind: 'shows' },
    { mating: `with a ${mate} known to carry it`, clear: 3 / 4, kind: 'split' },
    { mating: `with ${his} own ${young} out of ${mate}s free of it, one chick from each`, clear: 7 / 8, kind: 'other' },
  ]
}

/**
 * @param now chance that it carries the allele, as things stand
 * @param atHand what the mate is that the keeper spoke of: that mating stands first
 * @param soFar how much likelier what was seen of its chicks is from a carrier than from a bird free of it
 */
export function moreChicks(
  debated: Debated,
  sex: Sex | 'U',
  now: number,
  soFar: number,
  atHand: MateKind | undefined,
): CarrierAnswer['moreChicks'] {
  const matings = matingsOf(debated, sex).toSorted((a, b) => Number(b.kind === atHand) - Number(a.kind === atHand))
  return matings.map(({ mating, clear }) => {
    const states: readonly TestState[] = [
      { weight: now, carrier: true, clear },
      { weight: 1 - now, carrier: false, clear: 1 },
    ]
    return {
      mating,
      for95: countOf(chicksForPower(states, 0.05, soFar)),
      for99: countOf(chicksForPower(states, 0.01, soFar)),
      to5: countOf(chicksForDoubt(states, 0.05)),
      to1: countOf(chicksForDoubt(states, 0.01)),
      clear,
    }
  })
}

/** The most telling mating, for a bird of whom nothing is known. */
export const testOf = (debated: Debated, sex: Sex | 'U'): CarrierAnswer['moreChicks'][number] | undefined =>
  moreChicks(debated, sex, 1 / 2, 1, undefined)[0]

const countOf = (chicks: Chicks): number | null => (chicks.kind === 'enough' ? chicks.n : null)
