// core/looks/words/down.ts: the down of a chick in plain words, made to stand before "down".
import { darkDowns, greyDowns } from '../look.ts'
import type { Draft } from '../rule.ts'

const colours: Partial<Record<Draft['down'], string>> = {
  'pale yellow': 'pale yellow-white',
  white: 'white to smoky cream',
  'smoky white': 'smoky white to pale blue',
  'silver grey': 'silver-grey',
  'golden brown': 'golden-brown',
  'lavender grey': 'pale lavender-grey',
}

const patterns: Readonly<Record<Draft['downPattern'], string>> = {
  plain: '',
  striped: 'dark-striped',
  'blurred stripes': 'pale and blurred',
  'broken stripes': 'brokenly striped',
  'faint stripes': 'faintly striped',
  marbled: 'marbled',
  smudged: 'dark-smudged',
}

function tinge({ down, tone, red }: Draft): string {
  if (tone === 'hidden') return ''
  if (darkDowns.has(down)) return tone === 'silver' ? 'silver-faced' : 'brown-faced'
  if (tone === 'silver' || !greyDowns.has(down)) return ''
  return red === 'cream' ? 'cream-tinged' : 'gold-tinged'
}

/** 'black, pale-bellied'; 'brown, dark-striped'; 'pale yellow-white'. */
export function downWords(draft: Draft): string {
  const { down, downPattern, belly, extraWhite } = draft
  const white = extraWhite ? 'white on face, belly and wings' : belly === 'pale' ? 'pale-bellied' : ''
  return [colours[down] ?? down, patterns[downPattern], white, tinge(draft)].filter(Boolean).join(', ')
}
