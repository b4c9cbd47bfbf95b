// bot/render/chicks.ts: what the chicks of one sex look like at hatch and grown, looks that read alike taken together.
import { mixture, type Group } from './mixture.ts'
import { and, share as shareWords } from './numbers.ts'
import type { Case, LookShare } from '../../core/answer.ts'

/** Too rare a form to name. */
const rare = 0.02

/** Groups looks by the words a keeper would use, commonest first. */
export function grouped(looks: readonly LookShare[], word: (look: LookShare) => string): readonly Group[] {
  const shares = new Map<string, number>()
  for (const look of looks) shares.set(word(look), (shares.get(word(look)) ?? 0) + look.share)
  return [...shares].map(([words, share]) => ({ words, share })).toSorted((a, b) => b.share - a.share)
}

const spot = ({ look }: LookShare): string => {
  const { headSpot, headSpotClear } = look.chick
  if (headSpot === 'none' || headSpot === 'hidden' || headSpotClear === 'no') return ''
  const faintly = headSpotClear === 'faint' ? ' (hard to see)' : ''
  return headSpot === 'blurred'
    ? ', with a blurred pale patch on the head'
    : `, with a ${headSpot} pale head spot${faintly}`
}

/** Down and head spot in one phrase. */
export const downWords = (look: LookShare): string => `${look.look.chick.words}${spot(look)}`

export const downs = (looks: readonly LookShare[]): string => mixture(grouped(looks, downWords))
export const adults = (looks: readonly LookShare[]): string => mixture(grouped(looks, (look) => look.adult))
export const combs = (looks: readonly LookShare[]): string => mixture(grouped(looks, (look) => look.comb))
export const shanks = (looks: readonly LookShare[]): string => mixture(grouped(looks, (look) => look.shank))

/** Crest, muffs, feathered feet and the like, with the share that shows each: 'muffs in all, a crest in half'. */
export function forms(one: Case): string {
  const looks = [...one.cockerels, ...one.pullets].map((look) => ({ ...look, share: look.share / 2 }))
  const shares = new Map<string, number>()
  for (const look of looks) for (const form of look.form) shares.set(form, (shares.get(form) ?? 0) + look.share)
  const some = [...shares].filter(([, share]) => share > rare).toSorted((a, b) => b[1] - a[1])
  return and(some.map(([form, share]) => `${form} in ${shareWords(share)}`))
}

/** The alleles behind the looks of one sex, for those who asked for symbols. */
export const symbols = (looks: readonly LookShare[]): string =>
  mixture(grouped(looks, (look) => look.alleles || 'as the parents'))
