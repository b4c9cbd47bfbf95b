// core/looks/words/down.ts: the down of a chick in plain words, made to stand before "down".
import type { Draft } from '../rule.ts'

const colours: Partial<Record<Draft['down'], string>> = {
  'pale yellow': 'pale yellow-white',
  white: 'white to smoky cream',
  'smoky white': 'smoky white to pale blue',
  'silver grey': 'silver-grey',
  'dark brown': 'dark brown',
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

/** 'black, pale-bellied'; 'brown, dark-striped'; 'pale yellow-white'. */
export function downWords({ down, downPattern, belly, extraWhite }: Draft): string {
  const white = extraWhite ? 'white on face, belly and wings' : belly === 'pale' ? 'pale-bellied' : ''
  return [colours[down] ?? down, patterns[downPattern], white].filter(Boolean).join(', ')
}
