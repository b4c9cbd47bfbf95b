// core/cross/signature.ts: what a keeper would call the same result: families of looks, not their fine shades.
import type { Look } from '../looks/look.ts'
import type { Outcome } from './outcome.ts'
import type { Sexing } from '../answer.ts'

const darkDown = ['black', 'dark brown']
const downFamily = ({ chick }: Look): string =>
  chick.ground !== 'hidden' && chick.groundClear !== 'no'
    ? chick.ground
    : darkDown.includes(chick.colour)
      ? 'dark'
      : chick.colour

const blackBased = ['solid', 'solid with leakage', 'birchen', 'mixed', 'spangled', 'autosomal barred']
const plumageFamily = ({ plumage }: Look): string => {
  if (plumage.white) return 'white'
  if (!blackBased.includes(plumage.pattern)) return 'patterned'
  return plumage.black + (plumage.barring === 'none' ? '' : ' barred')
}

const special = ({ form }: Look): string => [form.feather, form.neck, form.legs, form.tufts, form.tail].join(',')

/** Where the sexes are told apart by the down, shades of the grown plumage do not make another result. */
function family(outcome: Outcome, sex: 'M' | 'F', told: boolean): string {
  const shares = new Map<string, number>()
  for (const { share, look } of outcome[sex].kinds) {
    const key = [downFamily(look), told ? '' : plumageFamily(look), look.plumage.mottled, special(look)].join('/')
    shares.set(key, (shares.get(key) ?? 0) + share)
  }
  return [...shares]
    .map(([key, share]) => `${key}=${share.toFixed(1)}`)
    .toSorted()
    .join(' ')
}

/** Two outcomes of one signature are one case to a keeper. */
export function signature(outcome: Outcome, { verdict, signs }: Sexing): string {
  const told = verdict === 'yes' && signs[0]?.sign === 'down colour'
  return [verdict, family(outcome, 'M', told), family(outcome, 'F', told), outcome.dies.toFixed(1)].join(' | ')
}
