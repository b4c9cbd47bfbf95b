// core/looks/words/wildBirds.ts: birds on wild-type, brown and wheaten grounds in words: the cock alike on all, the hen not.
import type { Draft } from '../rule.ts'
import { barred, bars, black, ends, hackle, listed, red, whiteTurned } from './parts.ts'

export function blackBreasted(d: Draft): string {
  const back = d.redShoulder ? `${hackle(d)} hackle, red shoulders` : `${hackle(d)} hackle and back`
  const rest = `${black(d)} breast and tail${whiteTurned(d) ? ' (pyle)' : ''}`
  const striped = d.darkened ? `striped with ${black(d)}` : ''
  if (barred(d) && whiteTurned(d)) return listed(back, bars(d), striped, rest)
  return listed(back, striped, rest, barred(d) ? `${bars(d)} all over (crele)` : '')
}

export function stippledHen(d: Draft): string {
  if (d.base === 'spotted') return `${red(d)}, spotted with ${black(d)} in rows`
  const back = whiteTurned(d) ? 'creamy white back' : `finely stippled ${stippled(d)}`
  return listed(`${back} with salmon breast and ${red(d)} hackle${whiteTurned(d) ? ' (pyle)' : ''}`, darker(d))
}

export function partridgeHen(d: Draft): string {
  if (whiteTurned(d)) return `creamy white and ${red(d)} (pyle)`
  return listed(`stippled ${stippled(d)} all over with ${red(d)} hackle`, darker(d))
}

/** Brown or grey, and what a diluter of black makes of it. */
function stippled({ black: tint, red: tone }: Draft): string {
  if (tint.endsWith('lavender')) return 'pale grey'
  const plain = tone === 'silver' || tone === 'cream' ? 'grey' : 'brown'
  if (tint === 'blue') return `bluish ${plain}`
  return tint === 'splash' ? `pale ${plain}` : plain
}
const darker = (d: Draft): string => (d.darkened ? 'darkened' : '')

export function wheatenHen(d: Draft): string {
  if (d.red === 'salmon') return 'salmon brown back with cream breast'
  if (d.red === 'silver') return `creamy white with ${ends(d)}`
  return `wheat-coloured with cream breast, ${red(d)} hackle and ${black(d)} tail`
}
