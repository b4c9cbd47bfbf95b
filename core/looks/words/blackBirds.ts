// core/looks/words/blackBirds.ts: black birds in words: solid, with colour in the hackle, birchen.
import type { Sex } from '../../vocabulary.ts'
import type { Draft } from '../rule.ts'
import { barred, bars, black, hackle, listed, whiteTurned } from './parts.ts'

/** The black all over, in its colour and with its bars. */
function ground(d: Draft): string {
  if (d.black === 'splash') return barred(d) ? 'splash, the bars hard to see' : 'splash (pale with blue flecks)'
  if (d.paleBars) return d.barring === 'double dose' ? 'nearly white' : 'pale blue, softly barred'
  return barred(d) ? `${d.barring === 'double dose' ? 'light ' : ''}${black(d)}-and-white barred` : black(d)
}

const mottled = (d: Draft): string => (d.mottled && d.black !== 'splash' ? 'mottled with white' : '')

export const solid = (d: Draft): string => [ground(d), mottled(d)].filter(Boolean).join(' ')

export function leaking(sex: Sex, d: Draft): string {
  const where = sex === 'M' ? 'hackle, shoulder and saddle' : 'hackle'
  const leak =
    d.leak === 'trace' ? `, perhaps with a little ${hackle(d)} in the hackle` : ` with ${hackle(d)} in the ${where}`
  return listed(`${ground(d)}${leak}`, mottled(d))
}

export function birchen(sex: Sex, d: Draft): string {
  const copper = ['gold', 'red', 'mahogany'].includes(d.red) ? 'copper' : hackle(d)
  const all = barred(d) ? `, ${bars(d)} all over` : ''
  if (sex === 'M')
    return `${black(d)} with ${copper} hackle, shoulder and saddle${d.base === 'E^R' ? '' : ', some in the breast'}${all}`
  if (d.base === 'E^R') return `${black(d)} with ${copper} hackle and edged breast${all}`
  if (whiteTurned(d)) return `creamy white with ${copper} hackle${all}`
  const dark = d.black === 'black' ? 'dark' : `mostly ${black(d)}`
  return `${dark}, with ${copper} hackle and some stippling${all}`
}
