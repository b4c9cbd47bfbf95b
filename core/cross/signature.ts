// core/cross/signature.ts: what a keeper would call the same result: families of looks, not their fine shades.
import type { Sexing } from '../answer.ts'
import type { Look } from '../looks/look.ts'
import type { Sex } from '../vocabulary.ts'
import type { Outcome } from './outcome.ts'
import { linkedLooks } from './phase.ts'

const darkDown = ['black', 'dark brown']
/** @param read whether gold and silver are what the chick is judged by, so that it counts how clear they are */
const downFamily = ({ chick }: Look, read: boolean): string => {
  if (chick.ground !== 'hidden' && !(read && chick.groundClear === 'no')) return chick.ground
  return darkDown.includes(chick.colour) ? 'dark' : chick.colour
}

const blackBased = ['solid', 'solid with leakage', 'birchen', 'mixed', 'spangled', 'autosomal barred']
const plumageFamily = ({ plumage }: Look): string => {
  if (!blackBased.includes(plumage.pattern)) return 'patterned'
  return plumage.black + (plumage.barring === 'none' ? '' : ' barred')
}

const special = ({ form, plumage }: Look): string =>
  [form.feather, form.neck, form.legs, form.tufts, form.tail, plumage.mottled].join(',')

/** Beside a sign that is no colour, gold or silver on dark down is no result of its own. */
const besideASign = (look: Look): string => (darkDown.includes(look.chick.colour) ? 'dark' : downFamily(look, false))

/**
 * What of the colour makes another result. Where the down tells the sexes apart, it is what is read in it; where the
 * wings do, nothing: any colour may have either wing.
 */
function colourOf(look: Look, sign: string | undefined): string {
  if (sign === 'wing feathers') return ''
  if (sign === 'down colour') return downFamily(look, true)
  if (look.plumage.white) return 'white'
  return `${sign === undefined ? downFamily(look, false) : besideASign(look)}/${plumageFamily(look)}`
}

function family(outcome: Outcome, sex: Sex, sign: string | undefined): string {
  const shares = new Map<string, number>()
  for (const { share, look } of outcome[sex].kinds) {
    const key = `${colourOf(look, sign)}/${special(look)}`
    shares.set(key, (shares.get(key) ?? 0) + share)
  }
  const rounded = [...shares].map(([key, share]) => `${key}=${share.toFixed(1)}`)
  return rounded.toSorted().join(' ')
}

const eggs = ({ F }: Outcome): string =>
  (F.traits.find(({ trait }) => trait === 'shellBlue')?.values ?? [])
    .map(({ value, share }) => `${value} ${share.toFixed(1)}`)
    .join()

/** An egg shell is no look of a chick, but which chicks will lay blue may be seen by their combs. */
const togetherWords = ({ one, other, both }: Outcome['together'][number]): string => `${one} ${other} ${both}`

/**
 * Two outcomes of one signature are one case to a keeper.
 *
 * @param phase it is in doubt how linked genes lie in a parent: kinds of chick are then told apart by what is linked
 * @param many the chicks are many kinds anyway, and where they cannot be sexed no kind makes a case
 */
export function signature(outcome: Outcome, { verdict, signs }: Sexing, many: boolean, phase: boolean): string {
  const sign = verdict === 'yes' ? signs[0]?.sign : undefined
  const looks = many && verdict === 'no' ? [] : [family(outcome, 'M', sign), family(outcome, 'F', sign)]
  const linked = phase ? [linkedLooks(outcome), ...outcome.together.map(togetherWords)].join() : ''
  return [verdict, sign, ...looks, eggs(outcome), outcome.dies.toFixed(1), linked].join(' | ')
}
