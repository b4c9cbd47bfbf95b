// bot/render/picture/adult/coat.ts: which colour and which markings each part of the plumage has, from the look of a grown bird.
import type { Sex } from '../../../../core/vocabulary.ts'
import type { Plumage } from '../../../../core/looks/look.ts'
import { blacks, flecks, reds, untold, whiteTip, type FeatherTones } from '../palette.ts'
import { of, type Paint, type Part, type Worn } from './paint.ts'
import type { Tones } from './grounds.ts'
import { patterns } from './patterns.ts'

export type Coat = Readonly<Record<Part, Paint>>

const parted = (painted: (part: Part) => Paint): Coat => ({
  tail: painted('tail'),
  sickles: painted('sickles'),
  breast: painted('breast'),
  fluff: painted('fluff'),
  back: painted('back'),
  primaries: painted('primaries'),
  bay: painted('bay'),
  'wing bar': painted('wing bar'),
  shoulder: painted('shoulder'),
  saddle: painted('saddle'),
  hackle: painted('hackle'),
  head: painted('head'),
})

/** A bird of whose colour nothing is told. */
export const untoldCoat: Coat = parted(() => of(untold))

/** The coat of a grown bird: ground and pattern first, then barring, mottling and flecks over all of it. */
export function coatOf(plumage: Plumage, sex: Sex): Coat {
  const tones = tonesOf(plumage)
  const { rest, parts: own } = patterns[plumage.white ? 'white' : plumage.pattern](tones, sex)
  return parted((part) => over(own[part] ?? rest, plumage))
}

function tonesOf({ black, red }: Plumage): Tones {
  const ofBlack = black === 'none' ? undefined : blacks[black]
  const ofRed = red === 'none' ? (ofBlack ?? reds.gold) : reds[red]
  return {
    black: ofBlack ?? ofRed,
    red: ofRed,
    silver: red === 'silver' || red === 'white' || red === 'cream' || red === 'brassy silver',
  }
}

const over = (paint: Paint, { barring, mottled, black, white }: Plumage): Paint => ({
  tones: paint.tones,
  wears: [
    ...paint.wears,
    ...(barring === 'none' || white ? [] : [barsOn(paint.tones, barring)]),
    ...(mottled ? [{ texture: 'tipped', colour: whiteTip } as const] : []),
    ...(black === 'splash' && paint.tones === blacks.splash
      ? [{ texture: 'flecked', colour: flecks.splash } as const]
      : []),
    ...(black === 'white with dark flecks' && paint.tones === blacks[black]
      ? [{ texture: 'ticked', colour: flecks[black] } as const]
      : []),
  ],
})

const barsOn = (tones: FeatherTones, barring: 'single dose' | 'double dose'): Worn => ({
  texture: barring === 'single dose' ? 'barred' : 'double barred',
  colour: tones === blacks.black || tones === blacks.chocolate || tones === blacks.blue ? '#e7e6df' : '#fbf6e6',
})
