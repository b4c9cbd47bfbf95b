// core/looks/words/grown.ts: the plumage of a grown bird in plain words.
import type { Sex } from '../../vocabulary.ts'
import type { Draft } from '../rule.ts'
import { birchen, leaking, solid } from './blackBirds.ts'
import { bars, listed } from './parts.ts'
import { onCocks, patterned } from './patterned.ts'
import { blackBreasted, partridgeHen, stippledHen, wheatenHen } from './wildBirds.ts'

const hens: Partial<Record<Draft['pattern'], (d: Draft) => string>> = {
  stippled: stippledHen,
  partridge: partridgeHen,
  wheaten: wheatenHen,
}

function white(d: Draft): string {
  const flecked = d.black === 'white with dark flecks' ? ' with a few dark flecks' : ''
  return d.red === 'brassy silver'
    ? `white with a brassy cast${flecked && ' and a few dark flecks'}`
    : `white${flecked}`
}

/** What keepers call white tips on a red bird. */
function tipped(d: Draft): string {
  if (!d.mottled) return ''
  if (d.black.endsWith('lavender')) return 'white-tipped (porcelain)'
  return d.restrained === 'fully' && d.red === 'gold' ? 'white-tipped (mille fleur)' : 'white-tipped (speckled)'
}

/** Patterns whose own words have told the bars. */
const toldBars = ({ pattern, red }: Draft): boolean =>
  ['columbian', 'black-tailed', 'smudged columbian'].includes(pattern) || (pattern === 'wheaten' && red === 'silver')

/** What is said of the whole bird after its pattern. */
const after = (d: Draft): string => listed(toldBars(d) ? '' : bars(d), tipped(d))

/** 'black with gold in the hackle'; 'white with black in hackle and tail'; 'red, each feather laced with blue'. */
export function grownWords(sex: Sex, d: Draft): string {
  if (d.white) return white(d)
  if (d.pattern === 'solid') return solid(d)
  if (d.pattern === 'solid with leakage') return leaking(sex, d)
  const tips = d.mottled ? 'white-tipped' : ''
  if (d.pattern === 'birchen') return listed(birchen(sex, d), tips)
  if (d.pattern === 'black-breasted') return listed(blackBreasted(d), tips)
  const cock = sex === 'M' && !d.henFeathered ? onCocks[d.pattern] : undefined
  const say = cock ?? hens[d.pattern] ?? patterned[d.pattern]
  return listed(say?.(d) ?? d.pattern, after(d))
}
