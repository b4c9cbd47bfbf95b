// bot/render/picture/card/kinds.ts: the looks of one sex, those that are drawn alike taken together, commonest first.
import type { LookShare } from '../../../../core/answer.ts'
import type { Sex } from '../../../../core/vocabulary.ts'
import type { Look } from '../../../../core/looks/look.ts'
import { share as shareWords } from '../../numbers.ts'
import type { Half, Shown } from './shown.ts'

/** So many kinds are drawn; the rest is counted in words. */
export type Most = { readonly chicks: number; readonly grown: number; readonly pairs: number }

/**
 * @param told false: nothing is told of the parents' colours, so only form is drawn
 * @param spotIsSign the head spot is told with the sign, and need not be told again
 */
export function half(sex: Sex, looks: readonly LookShare[], told: boolean, spotIsSign: boolean, most: Most): Half {
  const young = told ? downAndSpot : downOnly
  const chicks = alike(looks, told, seenChick, spotIsSign ? downOnly : young, () => '')
  const grown = alike(looks, told, seenGrown, ({ adult }) => adult, legs)
  const pairs = alike(looks, told, seenChick, young, ({ adult }) => (told ? `grown ${adult}` : ''))
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
export const chickKinds = (looks: readonly LookShare[], told: boolean): string =>
  JSON.stringify(
    alike(looks, told, seenChick, downAndSpot, () => '').map(({ look, share }) => [seenChick(look, told), share]),
  )

/** The kinds of grown bird of one sex in words, to compare the sexes by. */
export const grownKinds = (looks: readonly LookShare[], told: boolean): string =>
  JSON.stringify(
    alike(looks, told, seenGrown, ({ adult }) => adult, legs).map(({ words, lesser, share }) => [words, lesser, share]),
  )

type Drawn = (look: Look, told: boolean) => unknown

/** What of a look is drawn; the rest makes no other picture. */
const seenChick: Drawn = ({ chick: { colour, pattern, belly, extraWhite, headSpot, headSpotClear, skin } }, told) => {
  const spot = shows(headSpot, headSpotClear) && [headSpot, headSpotClear]
  return told ? [colour, pattern, belly, extraWhite, spot, skin] : [skin]
}
const seenGrown: Drawn = ({ plumage, form, shank, skin }, told) => [
  told && { ...plumage, words: '' },
  form,
  shank,
  skin,
]
const shows = (spot: Look['chick']['headSpot'], clear: Look['chick']['headSpotClear']): boolean =>
  spot !== 'none' && spot !== 'hidden' && clear !== 'no'

const downOnly = ({ down }: LookShare): string => down
const downAndSpot = ({ down, headSpot, look }: LookShare): string =>
  shows(look.chick.headSpot, look.chick.headSpotClear) ? `${down}; ${headSpot} on the head` : down

const legs = ({ comb, shank, form }: LookShare): string => [`${comb} comb`, `${shank} shanks`, ...form].join(', ')
const rarer = (left: number): string => (left <= 0 ? '' : left === 1 ? 'and one other look' : `and ${left} other looks`)

function alike(
  looks: readonly LookShare[],
  told: boolean,
  drawn: Drawn,
  words: (look: LookShare) => string,
  lesser: (look: LookShare) => string,
): readonly Shown[] {
  const kinds = new Map<string, { readonly first: LookShare; readonly share: number }>()
  for (const look of looks) {
    const key = JSON.stringify(drawn(look.look, told))
    const known = kinds.get(key)
    kinds.set(key, { first: known?.first ?? look, share: (known?.share ?? 0) + look.share })
  }
  const sorted = [...kinds.values()].toSorted((a, b) => b.share - a.share)
  return sorted.map(({ first, share }) => ({
    look: first.look,
    told,
    share: sorted.length === 1 ? '' : shareWords(share),
    words: words(first),
    lesser: lesser(first),
  }))
}
