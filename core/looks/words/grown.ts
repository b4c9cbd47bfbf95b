// core/looks/words/grown.ts: the plumage of a grown bird in plain words.
import type { Sex } from '../../vocabulary.ts'
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

/** What keepers call a clear body with dark hackle and tail. */
const columbians: Partial<Words<Draft['red']>> = {
  silver: 'light columbian',
  gold: 'buff columbian',
  buff: 'buff columbian',
}

const red = (d: Draft): string => reds[d.red]
/** Silver over gold shows as straw where it is only in hackle and saddle. */
const hackle = (d: Draft): string => (d.red === 'brassy silver' ? 'straw' : red(d))
const body = (d: Draft): string => bodies[d.red] ?? red(d)
const black = (d: Draft): string => blacks[d.black]
/** Dominant white has taken the black out and left the red. */
const whiteTurned = (d: Draft): boolean => d.black.startsWith('white')
const barred = ({ barring }: Draft): boolean => barring !== 'none'
const listed = (...parts: readonly string[]): string => parts.filter(Boolean).join(', ')
const named = (name: string | undefined): string => (name === undefined ? '' : ` (${name})`)

/** Silver and white parts cannot show white bars; there only the dark parts do. */
const palePlumage = (d: Draft): boolean => ['silver', 'brassy silver', 'white', 'none'].includes(d.red)
/** The black parts, with bars where there are any: 'black', 'barred', 'barred blue'. */
const dark = (d: Draft): string => (barred(d) ? (d.black === 'black' ? 'barred' : `barred ${black(d)}`) : black(d))
const bars = (d: Draft): string =>
  !barred(d) ? '' : d.barring === 'double dose' ? 'broadly barred with white' : 'barred with white'

function solid(d: Draft): string {
  if (d.black === 'splash') return barred(d) ? 'splash, the bars hard to see' : 'splash (pale with blue flecks)'
  if (d.paleBars) return d.barring === 'double dose' ? 'nearly white' : 'pale blue, softly barred'
  const plain = barred(d) ? `${d.barring === 'double dose' ? 'light ' : ''}${black(d)}-and-white barred` : black(d)
  return d.mottled ? `${plain} mottled with white` : plain
}

function leaking(sex: Sex, d: Draft): string {
  const where = sex === 'M' ? 'hackle, shoulder and saddle' : 'hackle'
  if (d.leak === 'trace') return `${solid(d)}, perhaps with a little ${hackle(d)} in the hackle`
  return `${solid(d)} with ${hackle(d)} in the ${where}`
}

function birchen(sex: Sex, d: Draft): string {
  const copper = ['gold', 'red', 'mahogany'].includes(d.red) ? 'copper' : hackle(d)
  const all = barred(d) ? `, ${bars(d)} all over` : ''
  if (sex === 'M')
    return `${black(d)} with ${copper} hackle, shoulder and saddle${d.base === 'E^R' ? '' : ', some in the breast'}${all}`
  if (d.base === 'E^R') return `${black(d)} with ${copper} hackle and edged breast${all}`
  return `dark, with ${copper} hackle and some stippling${all}`
}

function blackBreasted(d: Draft): string {
  const back = d.redShoulder ? `${hackle(d)} hackle, red shoulders` : `${hackle(d)} hackle and back`
  const rest = `${black(d)} breast and tail${whiteTurned(d) ? ' (pyle)' : ''}`
  return listed(
    back,
    d.darkened ? `striped with ${black(d)}` : '',
    rest,
    barred(d) ? `${bars(d)} all over (crele)` : '',
  )
}

function stippledHen(d: Draft): string {
  if (d.base === 'spotted') return `${red(d)}, spotted with ${black(d)} in rows`
  const back = whiteTurned(d) ? 'creamy white back' : `finely stippled ${stippled(d)}`
  return listed(`${back} with salmon breast and ${red(d)} hackle${whiteTurned(d) ? ' (pyle)' : ''}`, darker(d))
}

function partridgeHen(d: Draft): string {
  if (whiteTurned(d)) return `creamy white and ${red(d)} (pyle)`
  return listed(`stippled ${stippled(d)} all over with ${red(d)} hackle`, darker(d))
}

const stippled = (d: Draft): string => (d.red === 'silver' || d.red === 'cream' ? 'grey' : 'brown')
const darker = (d: Draft): string => (d.darkened ? 'darkened' : '')

function wheaten(d: Draft): string {
  if (d.red === 'salmon') return 'salmon brown back with cream breast'
  if (d.red === 'silver') return `creamy white with ${ends(d)}`
  return `wheat-coloured with cream breast, ${red(d)} hackle and ${dark(d)} tail`
}

const hens: Partial<Record<Draft['pattern'], (d: Draft) => string>> = {
  stippled: stippledHen,
  partridge: partridgeHen,
  wheaten,
}

/** A red body shows white bars itself; a white one shows bars on its dark parts alone. */
const barredBody = (d: Draft): string =>
  barred(d) && !palePlumage(d) ? `${body(d)} ${bars(d)}, with` : `${body(d)} with`
const ends = (d: Draft): string => (barred(d) ? `dark-barred hackle and tail` : `${black(d)} in hackle and tail`)
const marks = (d: Draft): string => (barred(d) ? 'some dark marks' : `some ${black(d)}`)
const laced = (d: Draft): string => `each feather laced with ${black(d)}`
const shared: Partial<Record<Draft['pattern'], (d: Draft) => string>> = {
  pencilled: (d) => `${red(d)} finely pencilled with ${black(d)}`,
  columbian: (d) => `${barredBody(d)} ${ends(d)}${named(columbians[d.red])}`,
  'black-tailed': (d) => `${barredBody(d)} a ${dark(d)} tail`,
  self: (d) => `${red(d)} all over`,
  belted: (d) => `${body(d)} body with solid ${black(d)} head, hackle and tail`,
  'smudged columbian': (d) => `${barredBody(d)} ${ends(d)} and ${marks(d)} on back and breast`,
  'single laced': (d) => (d.red === 'none' ? `${black(d)}, each feather edged darker` : `${red(d)}, ${laced(d)}`),
  'double laced': (d) => `${red(d)}, each feather double laced with ${black(d)}`,
  'partly laced': (d) => `${red(d)} with broken ${black(d)} lacing`,
  spangled: (d) => `${red(d)}, each feather tipped with a ${black(d)} spangle`,
  'autosomal barred': (d) => `${red(d)}, barred crosswise with ${black(d)}`,
}

/** Cocks that keep their own feathers show these patterns on the breast alone. */
const onCocks: Partial<Record<Draft['pattern'], (d: Draft) => string>> = {
  'single laced': (d) =>
    d.red === 'none'
      ? `${black(d)}, breast feathers edged darker`
      : `${red(d)}, hackle and saddle striped and breast laced with ${black(d)}`,
  'autosomal barred': (d) => `${red(d)} hackle and back, breast and body barred with ${black(d)}`,
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
const toldBars = (d: Draft): boolean => ['columbian', 'black-tailed', 'smudged columbian'].includes(d.pattern)

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
  const say = cock ?? hens[d.pattern] ?? shared[d.pattern]
  return listed(say?.(d) ?? d.pattern, after(d))
}
