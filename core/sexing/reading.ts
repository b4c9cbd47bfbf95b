// core/sexing/reading.ts: how each sign reads on a chick: which outcome it shows, and how often it is taken for another.
import { signs, type SignId } from '../data/signs.ts'
import type { Look } from '../looks/look.ts'
import { stripesRead } from './words.ts'

/** What a keeper may note down for one sign, each with its chance; chances sum to 1. */
export type Noted = Readonly<Record<string, number>>
const unreadable: Noted = { unreadable: 1 }

/** A reading taken for another `rate` of the time; where there is no other it is sure. */
const swap = (shown: string, others: readonly string[], rate: number): Noted =>
  others.length === 0
    ? { [shown]: 1 }
    : { [shown]: 1 - rate, ...Object.fromEntries(others.map((o) => [o, rate / others.length])) }

const nearShades: readonly (readonly string[])[] = [
  ['black', 'dark brown', 'chocolate', 'blue-grey'],
  ['blue-grey', 'lavender grey', 'mauve', 'grey-brown', 'silver grey'],
  ['white', 'pale yellow', 'cream', 'smoky white', 'khaki'],
  ['cream', 'buff', 'red-buff', 'golden brown'],
  ['brown', 'grey-brown', 'dark brown', 'golden brown', 'dun', 'chocolate'],
]
const near = (a: string, b: string): boolean => nearShades.some((shades) => shades.includes(a) && shades.includes(b))

/** The down as a sign: gold or silver where the hatch has both, else its colour. */
function downSays({ chick }: Look, all: readonly Look[]): string {
  const grounds = new Set(all.map((one) => one.chick.ground))
  return chick.ground === 'hidden' || grounds.size === 1 ? chick.colour : chick.ground
}

function downColour(look: Look, all: readonly Look[]): Noted {
  const shown = downSays(look, all)
  const others = [...new Set(all.map((one) => downSays(one, all)))].filter((o) => o !== shown)
  const rates = signs['down colour'].misread
  const flip = (other: string): number => {
    const pair = (shown === 'gold' && other === 'silver') || (shown === 'silver' && other === 'gold')
    if (!pair) return near(shown, other) ? rates.shade.rate : rates.colour.rate
    const clear = look.chick.groundClear
    return clear === 'no' ? 0.5 : rates[clear].rate
  }
  const noted: Record<string, number> = {}
  const rate = Math.max(0, ...others.map(flip))
  const likeliest = others.filter((other) => flip(other) === rate) // it is taken for what is most like it
  for (const other of likeliest) noted[other] = rate / likeliest.length
  noted[shown] = 1 - Object.values(noted).reduce((sum, p) => sum + p, 0)
  return noted
}

/** Whether the down of this chick would show a spot. */
export const showsSpot = ({ chick }: Look): boolean => chick.headSpotClear !== 'no' && chick.headSpot !== 'hidden'
const spotOf = ({ chick }: Look): Look['chick']['headSpot'] => (chick.headSpot === 'blurred' ? 'large' : chick.headSpot)

/** Where nothing shows a spot, none is noted, and one fancied as often as on faint down. */
function headSpot(look: Look, all: readonly Look[]): Noted {
  const { size, ...rates } = signs['head spot'].misread
  const missed = rates[look.chick.headSpotClear === 'no' ? 'faint' : look.chick.headSpotClear].rate
  const spots = new Set(all.filter(showsSpot).map(spotOf))
  const shown = showsSpot(look) ? spotOf(look) : 'none'
  const fancied = (['small', 'large'] as const).find((spot) => spots.has(spot))
  if (shown === 'none') return fancied === undefined ? { none: 1 } : { none: 1 - missed, [fancied]: missed }
  const noted: Record<string, number> = { [shown]: 1 }
  const move = (to: string, p: number): void => {
    noted[shown] = (noted[shown] ?? 0) - p
    noted[to] = (noted[to] ?? 0) + p
  }
  if (spots.has('small') && spots.has('large')) move(shown === 'large' ? 'small' : 'large', size.rate)
  if (shown === 'small' && (spots.has('none') || !all.every(showsSpot))) move('none', missed)
  return noted
}

function wing({ chick }: Look): Noted {
  return swap(chick.wing, [chick.wing === 'fast' ? 'slow' : 'fast'], signs['wing feathers'].misread.sure.rate)
}

function skin({ chick }: Look): Noted {
  const shown = chick.skin === 'dark' ? 'dark' : 'light'
  return swap(shown, [shown === 'dark' ? 'light' : 'dark'], signs['skin colour'].misread.sure.rate)
}

/** Washed-out down beside crisp stripes is plain to see, beside other marks less so, beside faint stripes hardly. */
function stripes({ chick }: Look, all: readonly Look[]): Noted {
  if (chick.pattern === 'plain') return unreadable
  const shown = chick.pattern === 'blurred stripes' ? 'blurred' : 'crisp'
  const { rate } = signs.stripes.misread[stripesRead(all)]
  return swap(shown, [shown === 'crisp' ? 'blurred' : 'crisp'], rate)
}

/** For each sign of a single chick: what would be noted. `all` are the looks of the whole hatch, which set what it can be taken for. */
export const readings: Readonly<Record<Exclude<SignId, 'marks'>, (look: Look, all: readonly Look[]) => Noted>> = {
  'down colour': downColour,
  'head spot': headSpot,
  'wing feathers': wing,
  'skin colour': skin,
  stripes,
}
