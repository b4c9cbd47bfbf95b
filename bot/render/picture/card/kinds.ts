// bot/render/picture/card/kinds.ts: the looks of one sex, those that are drawn alike taken together, commonest first.
import type { LookShare } from '../../../../core/answer.ts'
import type { Sex } from '../../../../core/vocabulary.ts'
import type { Look } from '../../../../core/looks/look.ts'
import { share as shareWords } from '../../numbers.ts'
import type { Half, Shown } from './card.ts'

/** So many kinds are drawn; the rest is counted in words. */
export type Most = { readonly chicks: number; readonly grown: number; readonly pairs: number }

export function half(sex: Sex, looks: readonly LookShare[], spotIsSign: boolean, most: Most): Half {
  const young = (look: LookShare): string => (spotIsSign ? look.down : downAndSpot(look))
  const chicks = alike(
    looks,
    ({ chick }) => seenChick(chick),
    young,
    () => '',
  )
  const grown = alike(looks, seenGrown, ({ adult }) => adult, legs)
  const pairs = alike(
    looks,
    ({ chick }) => seenChick(chick),
    young,
    ({ adult }) => adult,
  )
  return {
    sex,
    chicks: chicks.slice(0, most.chicks),
    rarerChicks: rarer(chicks.length - most.chicks),
    grown: grown.slice(0, most.grown),
    rarerGrown: rarer(grown.length - most.grown),
    pairs: pairs.slice(0, most.pairs),
    rarerPairs: rarer(Math.max(pairs.length, grown.length) - Math.min(pairs.length, most.pairs)),
  }
}

/** The kinds of chick of one sex with their shares, to compare by. */
export const chickKinds = (looks: readonly LookShare[]): string =>
  JSON.stringify(
    alike(
      looks,
      ({ chick }) => seenChick(chick),
      downAndSpot,
      () => '',
    ).map(({ look, share }) => [seenChick(look.chick), share]),
  )

/** The kinds of grown bird of one sex in words, to compare the sexes by. */
export const grownKinds = (looks: readonly LookShare[]): string =>
  JSON.stringify(
    alike(looks, seenGrown, ({ adult }) => adult, legs).map(({ words, lesser, share }) => [words, lesser, share]),
  )

/** What of a look is drawn; the rest makes no other picture. */
const seenChick = ({ colour, pattern, belly, extraWhite, headSpot, headSpotClear, skin }: Look['chick']) => [
  colour,
  pattern,
  belly,
  extraWhite,
  headSpot === 'hidden' ? 'none' : headSpot,
  headSpotClear === 'clear',
  skin,
]
const seenGrown = ({ plumage, form, shank, skin }: Look) => [{ ...plumage, words: '' }, form, shank, skin]

const downAndSpot = ({ down, headSpot, look }: LookShare): string =>
  look.chick.headSpot === 'none' || look.chick.headSpot === 'hidden' ? down : `${down}; ${headSpot} on the head`

const legs = ({ comb, shank, form }: LookShare): string => [`${comb} comb`, `${shank} shanks`, ...form].join(', ')
const rarer = (left: number): string => (left <= 0 ? '' : left === 1 ? 'and one other look' : `and ${left} other looks`)

function alike(
  looks: readonly LookShare[],
  drawn: (look: Look) => unknown,
  words: (look: LookShare) => string,
  lesser: (look: LookShare) => string,
): readonly Shown[] {
  const kinds = new Map<string, { readonly first: LookShare; readonly share: number }>()
  for (const look of looks) {
    const key = JSON.stringify(drawn(look.look))
    const known = kinds.get(key)
    kinds.set(key, { first: known?.first ?? look, share: (known?.share ?? 0) + look.share })
  }
  const sorted = [...kinds.values()].toSorted((a, b) => b.share - a.share)
  return sorted.map(({ first, share }) => ({
    look: first.look,
    share: sorted.length === 1 ? '' : shareWords(share),
    words: words(first),
    lesser: lesser(first),
  }))
}
