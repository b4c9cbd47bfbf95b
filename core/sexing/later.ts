// core/sexing/later.ts: the sign that settles the sex of a chick after its first days, where feathers, shanks or combs tell.
import type { Sign } from '../answer.ts'
import type { Look } from '../looks/look.ts'
import type { Hatch, LookClass } from './hatch.ts'

/** True where no wording of one sex is found in the other. */
const parted = ({ M, F }: Hatch, word: (look: Look) => string): boolean => {
  const pullets = new Set(F.map(({ look }) => word(look)))
  return !M.some(({ look }) => pullets.has(word(look)))
}
const modal = (classes: readonly LookClass[], word: (look: Look) => string): string =>
  word(classes.toSorted((a, b) => b.share - a.share)[0]!.look)

const barred = ({ plumage }: Look): string =>
  plumage.barring === 'none' || plumage.white ? 'no bars in the wing feathers' : 'bars in the wing feathers'
/** Colour that shows in a black bird's hackle alone comes too late to be a sign; white feathers tell where they are silver. */
const silvered = ({ plumage }: Look): string =>
  plumage.red === 'none' || plumage.pattern === 'solid with leakage'
    ? 'nothing to read'
    : ['silver', 'white', 'brassy silver', 'cream', 'straw'].includes(plumage.red)
      ? 'white or silver in the new feathers'
      : 'red or gold in the new feathers'
const shank = (look: Look): string => (/slate|willow|dark/.test(look.shank) ? 'dark shanks' : 'light shanks')

const from = (sexes: Hatch, sign: Sign['sign'], window: string, word: (look: Look) => string): Sign => ({
  sign,
  window,
  cockerel: modal(sexes.M, word),
  pullet: modal(sexes.F, word),
  accuracy: null,
  basis: 'common practice, no source',
  status: 'common practice',
})

/** Best later sign: bars, then silver or gold feathers, then shanks, and else comb and saddle, which tell in every breed. */
export function laterSign(sexes: Hatch): Sign {
  if (parted(sexes, barred)) return from(sexes, 'plumage', 'from 3 to 5 weeks', barred)
  const grounds = [...sexes.M, ...sexes.F].map(({ look }) => silvered(look))
  if (!grounds.includes('nothing to read') && parted(sexes, silvered))
    return from(sexes, 'plumage', 'from 4 to 6 weeks', silvered)
  if (parted(sexes, shank)) return from(sexes, 'shank colour', 'from 8 to 12 weeks', shank)
  return {
    sign: 'plumage',
    window: 'from 6 to 12 weeks',
    cockerel: 'comb larger and redder, pointed saddle feathers by 3 months',
    pullet: 'comb small and pale, rounded saddle feathers',
    accuracy: null,
    basis: 'common practice, no source',
    status: 'common practice',
  }
}
