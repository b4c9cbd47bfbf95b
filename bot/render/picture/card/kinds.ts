// bot/render/picture/card/kinds.ts: the looks of one sex, those that are drawn alike taken together, commonest first.
import type { LookShare, Sexing } from '../../../../core/answer.ts'
import type { Sex } from '../../../../core/vocabulary.ts'
import type { Look } from '../../../../core/looks/look.ts'
import { share as shareWords } from '../../numbers.ts'
import { tingeOf } from '../chick/tinge.ts'
import type { Half, Shown } from './shown.ts'

/** So many kinds are drawn; the rest is counted in words. */
export type Most = { readonly chicks: number; readonly grown: number; readonly pairs: number }

/**
 * @param told false: nothing is told of the parents' colours, so only form is drawn
 * @param sign what tells the sexes apart: a head spot is told with it and need not be told again, wing feathers are drawn
 */
export function half(
  sex: Sex,
  looks: readonly LookShare[],
  told: boolean,
  sign: Sexing['signs'][number]['sign'] | undefined,
  most: Most,
): Half {
  const young = told ? downAndSpot : downOnly
  const wingRead = sign === 'wing feathers'
  const seen: Drawn = (look, known) => [seenChick(look, known), wingRead && look.chick.wing]
  const withWing = (shown: readonly Shown[]) => shown.map((one) => ({ ...one, wingRead }))
  const chicks = withWing(alike(looks, told, seen, sign === 'head spot' ? downOnly : young, () => []))
  const grown = alike(looks, told, seenGrown, ({ adult }) => adult, legs)
  const pairs = withWing(alike(looks, told, seen, young, ({ adult }) => (told ? [`grown ${adult}`] : [])))
  const drawn = grown.slice(0, most.grown)
  const allGrown = inAll(drawn)
  return {
    sex,
    chicks: chicks.slice(0, most.chicks),
    rarerChicks: rarer(chicks.length - most.chicks),
    grown: without(drawn, allGrown),
    allGrown,
    rarerGrown: rarer(grown.length - most.grown),
    pairs: pairs.slice(0, most.pairs),
    rarerPairs: rarer(Math.max(pairs.length, grown.length) - Math.min(pairs.length, most.pairs)),
  }
}

/** What is said of every one of them. */
const inAll = ([first, ...others]: readonly Shown[]): readonly string[] =>
  first ? first.lesser.filter((word) => others.every(({ lesser }) => lesser.includes(word))) : []
const without = (shown: readonly Shown[], said: readonly string[]): readonly Shown[] =>
  shown.map((one) => ({ ...one, lesser: one.lesser.filter((word) => !said.includes(word)) }))

/** What is true of all grown birds of both sexes is said once; what is left stays with each sex. */
export function saidOnce(
  cockerels: Half,
  pullets: Half,
): { readonly both: readonly string[]; readonly halves: readonly [Half, Half] } {
  const both = cockerels.allGrown.filter((word) => pullets.allGrown.includes(word))
  const left = (one: Half): Half => ({ ...one, allGrown: one.allGrown.filter((word) => !both.includes(word)) })
  return { both, halves: [left(cockerels), left(pullets)] }
}

/** The kinds of chick of one sex with their shares, to compare by. */
export const chickKinds = (looks: readonly LookShare[], told: boolean): string =>
  JSON.stringify(
    alike(looks, told, seenChick, downAndSpot, () => []).map(({ look, share }) => [seenChick(look, told), share]),
  )

/** The kinds of grown bird of one sex in words, to compare the sexes by. */
export const grownKinds = (looks: readonly LookShare[], told: boolean): string =>
  JSON.stringify(
    alike(looks, told, seenGrown, ({ adult }) => adult, legs).map(({ words, lesser, share }) => [words, lesser, share]),
  )

type Drawn = (look: Look, told: boolean) => unknown

/** What of a look is drawn; the rest makes no other picture. */
const seenChick: Drawn = ({ chick }, told) => {
  const { colour, pattern, belly, extraWhite, headSpot, headSpotClear, skin } = chick
  const spot = shows(headSpot, headSpotClear) && [headSpot, headSpotClear]
  return told ? [colour, pattern, belly, extraWhite, spot, skin, tingeOf(chick)] : [skin]
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

const legs = ({ comb, shank, form }: LookShare): readonly string[] => [`${comb} comb`, `${shank} shanks`, ...form]
const rarer = (left: number): string => (left <= 0 ? '' : left === 1 ? 'and one other look' : `and ${left} other looks`)

function alike(
  looks: readonly LookShare[],
  told: boolean,
  drawn: Drawn,
  words: (look: LookShare) => string,
  lesser: (look: LookShare) => readonly string[],
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
    wingRead: false,
    share: sorted.length === 1 ? '' : shareWords(share),
    words: words(first),
    lesser: lesser(first),
  }))
}
