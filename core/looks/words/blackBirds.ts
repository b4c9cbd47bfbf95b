// core/looks/words/blackBirds.ts: black birds in words: solid, with colour in the hackle, birchen.
import type { Sex } from '../../vocabulary.ts'
import type { Draft } from '../rule.ts'
import { barred, bars, black, hackle, whiteTurned } from './parts.ts'

export function solid(d: Draft): string {
  if (d.black === 'splash') return barred(d) ? 'splash, the bars hard to see' : 'splash (pale with blue flecks)'
  if (d.paleBars) return d.barring === 'double dose' ? 'nearly white' : 'pale blue, softly barred'
  const plain = barred(d) ? `${d.barring === 'double dose' ? 'light ' : ''}${black(d)}-and-white barred` : black(d)
  return d.mottled ? `${plain} mottled with white` : plain
}

export function leaking(sex: Sex, d: Draft): string {
  const where = sex === 'M' ? 'hackle, shoulder and saddle' : 'hackle'
  if (d.leak === 'trace') return `${solid(d)}, perhaps with a little ${hackle(d)} in the hackle`
  return `${solid(d)} with ${hackle(d)} in the ${where}`
}

export function birchen(sex: Sex, d: Draft): string {
  const copper = ['gold', 'red', 'mahogany'].includes(d.red) ? 'copper' : hackle(d)
  const all = barred(d) ? `, ${bars(d)} all over` : ''
  if (sex === 'M')
    return `${black(d)} with ${copper} hackle, shoulder and saddle${d.base === 'E^R' ? '' : ', some in the breast'}${all}`
  if (d.base === 'E^R') return `${black(d)} with ${copper} hackle and edged breast${all}`
  return whiteTurned(d)
    ? `creamy white with ${copper} hackle${all}`
    : `dark, with ${copper} hackle and some stippling${all}`
}
