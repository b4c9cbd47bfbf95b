// bot/render/chicks.ts: what the chicks of one sex look like at hatch and grown, looks that read alike taken together.
import { mixture, type Group, type Telling } from './mixture.ts'
import { share, type Say } from './numbers.ts'
import type { Case, LookShare } from '../../core/answer.ts'
import type { Look } from '../../core/looks/look.ts'

/** Too rare a form to name. */
const rare = 0.02
/** The usual reply: shares as keepers say them. */
export const usualTelling: Telling = { say: share, most: 4 }

type Word = (look: LookShare) => string

/** Groups looks by the words a keeper would use, commonest first. */
export function grouped(looks: readonly LookShare[], word: Word): readonly Group[] {
  const shares = new Map<string, number>()
  for (const look of looks) shares.set(word(look), (shares.get(word(look)) ?? 0) + look.share)
  return [...shares].map(([words, share]) => ({ words, share })).toSorted((a, b) => b.share - a.share)
}

/** In fine words where that makes few kinds, else in broad ones. */
function told(looks: readonly LookShare[], fine: Word, broad: Word, telling: Telling): string {
  const groups = grouped(looks, fine)
  return mixture(groups.length > telling.most ? grouped(looks, broad) : groups, telling)
}

const spot = ({ look }: LookShare): string => {
  const { headSpot, headSpotClear } = look.chick
  if (headSpot === 'none' || headSpot === 'hidden' || headSpotClear === 'no') return ''
  const faintly = headSpotClear === 'faint' ? ' (hard to see)' : ''
  return headSpot === 'blurred'
    ? ', with a blurred pale patch on the head'
    : `, with a ${headSpot} pale head spot${faintly}`
}

/** Where many kinds hatch: the colour of the body, and bars. */
function broadly({ plumage }: Look): string {
  const darkOver = ['solid', 'solid with leakage', 'birchen'].includes(plumage.pattern)
  const colour = plumage.white ? 'white' : darkOver || plumage.red === 'none' ? plumage.black : plumage.red
  return plumage.barring === 'none' || plumage.white ? colour : `${colour}, barred`
}

/** Where the parents' colours are not told, the answer's own words say so in place of a colour. */
const untold = ({ down, look }: LookShare): boolean => down !== look.chick.words

/** Down and head spot in one phrase. */
export const downs = (looks: readonly LookShare[], telling: Telling): string =>
  told(
    looks,
    (one) => (untold(one) ? one.down : one.look.chick.words + spot(one)),
    (one) => (untold(one) ? one.down : one.look.chick.colour + spot(one)),
    telling,
  )
export const adults = (looks: readonly LookShare[], telling: Telling): string =>
  told(
    looks,
    (one) => one.adult,
    (one) => (untold(one) ? one.adult : broadly(one.look)),
    telling,
  )
export const combs = (looks: readonly LookShare[], telling: Telling): string =>
  mixture(
    grouped(looks, (one) => one.comb),
    telling,
  )
export const shanks = (looks: readonly LookShare[], telling: Telling): string =>
  mixture(
    grouped(looks, (one) => one.shank),
    telling,
  )
/** Crest, muffs, feathered feet and the like, by the share of all chicks: 'all: muffs and beard; half: small crest'. */
export function forms(one: Case, say: Say): string {
  const shares = new Map<string, number>()
  for (const { form, share } of [...one.cockerels, ...one.pullets])
    for (const word of form) shares.set(word, (shares.get(word) ?? 0) + share / 2)
  const byShare = new Map<string, readonly string[]>()
  for (const [word, share] of [...shares].toSorted((a, b) => b[1] - a[1]))
    if (share > rare) byShare.set(say(share), [...(byShare.get(say(share)) ?? []), word])
  return [...byShare].map(([share, words]) => `${share}: ${words.join(', ')}`).join('; ')
}
