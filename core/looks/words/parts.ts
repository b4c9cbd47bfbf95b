// core/looks/words/parts.ts: the parts of a grown bird in plain words: its red, its black, its bars.
import type { Draft } from '../rule.ts'

type Words<Key extends string> = Readonly<Record<Key, string>>

const reds: Words<Draft['red']> = {
  none: '',
  red: 'red',
  mahogany: 'deep red',
  gold: 'gold',
  buff: 'buff',
  straw: 'straw',
  cream: 'cream',
  'brassy silver': 'brassy silver',
  silver: 'silver',
  white: 'white',
  salmon: 'salmon',
}

/** Body colour where it covers the bird: silver is seen as white. */
const bodies: Partial<Words<Draft['red']>> = {
  gold: 'golden buff',
  silver: 'white',
  'brassy silver': 'brassy white',
  straw: 'pale straw',
}

const blacks: Words<Draft['black']> = {
  none: 'black',
  black: 'black',
  blue: 'blue',
  splash: 'pale blue splash',
  lavender: 'lavender',
  'pale lavender': 'pale lavender',
  chocolate: 'chocolate',
  mauve: 'mauve',
  dun: 'dun',
  khaki: 'khaki',
  white: 'white',
  'white with dark flecks': 'white',
}

export const red = (d: Draft): string => reds[d.red]
/** Silver over gold shows as straw where it is only in hackle and saddle. */
export const hackle = (d: Draft): string => (d.red === 'brassy silver' ? 'straw' : red(d))
export const body = (d: Draft): string => bodies[d.red] ?? red(d)
export const black = (d: Draft): string => blacks[d.black]
/** Dominant white has taken the black out and left the red. */
export const whiteTurned = (d: Draft): boolean => d.black.startsWith('white')
export const barred = ({ barring }: Draft): boolean => barring !== 'none'
export const listed = (...parts: readonly string[]): string => parts.filter(Boolean).join(', ')

/** Silver and white parts cannot show white bars; there only the dark parts do. */
const palePlumage = (d: Draft): boolean => ['silver', 'brassy silver', 'white', 'none'].includes(d.red)
/** White bars do not show where dominant white has made the dark parts white. */
export const darkBars = (d: Draft): boolean => barred(d) && !whiteTurned(d)
/** The black parts, with bars where there are any: 'black', 'barred', 'barred blue'. */
export const dark = (d: Draft): string =>
  darkBars(d) ? (d.black === 'black' ? 'barred' : `barred ${black(d)}`) : black(d)
export const bars = (d: Draft): string =>
  !barred(d) ? '' : d.barring === 'double dose' ? 'broadly barred with white' : 'barred with white'

/** A red body shows white bars itself; a white one shows bars on its dark parts alone. */
export const barredBody = (d: Draft): string =>
  barred(d) && !palePlumage(d) ? `${body(d)} ${bars(d)}, with` : `${body(d)} with`
export const ends = (d: Draft): string =>
  darkBars(d) ? 'dark-barred hackle and tail' : `${black(d)} in hackle and tail`
