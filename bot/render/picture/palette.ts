// bot/render/picture/palette.ts: every colour of the pictures, by the plain words of the looks. Light and dark rooms differ only in what surrounds the birds.
import type { Chick, Look, Plumage } from '../../../core/looks/look.ts'

export type Room = 'light' | 'dark'

/** What surrounds the birds. Signs and text never rest on these colours alone: each has its word beside it. */
export type RoomTones = {
  readonly paper: string
  readonly ink: string
  readonly soft: string // lesser text, still 4.5 to 1 on paper
  readonly line: string
  readonly stage: string // behind the chicks
  readonly yard: string // behind the grown birds
  readonly onStage: string // text on stage and yard
  readonly shadow: string
  readonly point: string // what points out the sign; no bird has this colour
  readonly onPoint: string
  readonly lens: string // inside of a lens
}

export const rooms: Readonly<Record<Room, RoomTones>> = {
  light: {
    paper: '#f5f0e4',
    ink: '#26221d',
    soft: '#655c4f',
    line: '#d2c8b2',
    stage: '#c3cec2',
    yard: '#d5dccb',
    onStage: '#26221d',
    shadow: '#9fac9f',
    point: '#3a45a0',
    onPoint: '#ffffff',
    lens: '#e3e8df',
  },
  dark: {
    paper: '#1d2022',
    ink: '#f2ede1',
    soft: '#b9b2a3',
    line: '#41474a',
    stage: '#66726f',
    yard: '#67726d',
    onStage: '#ffffff',
    shadow: '#4c5754',
    point: '#c3caff',
    onPoint: '#1b2050',
    lens: '#7b8784',
  },
}

/** Down: back, the light on it, its edge, the belly where it is paler, and the stripes where there are any. */
export type DownTones = {
  readonly back: string
  readonly light: string
  readonly edge: string
  readonly belly: string
  readonly stripe: string
}

const down = (back: string, light: string, edge: string, belly: string, stripe: string): DownTones => ({
  back,
  light,
  edge,
  belly,
  stripe,
})

export const downs: Readonly<Record<Chick['colour'], DownTones>> = {
  black: down('#35302f', '#4b4543', '#191615', '#ebe0b6', '#191615'),
  'blue-grey': down('#7b8894', '#919da8', '#414b55', '#e9e6da', '#4f5b66'),
  'smoky white': down('#d9dcdb', '#ebedec', '#8e9596', '#f5f4ee', '#a9b0b2'),
  'lavender grey': down('#b3b3c2', '#c6c6d3', '#777889', '#efedec', '#878899'),
  chocolate: down('#654436', '#7a5646', '#3a241b', '#e6d3ac', '#3a241b'),
  mauve: down('#a08c8a', '#b3a09e', '#6b5856', '#ece2da', '#6f5c5a'),
  dun: down('#93795c', '#a88d6f', '#5f4a34', '#eadfc2', '#5f4a34'),
  khaki: down('#c0ad8a', '#d0bf9f', '#857452', '#f1e8d2', '#8d7b58'),
  white: down('#fbf9f1', '#ffffff', '#aaa595', '#fffefa', '#cfc6a8'),
  'pale yellow': down('#f8ecae', '#fdf6cc', '#b4a158', '#fdf8da', '#cdb368'),
  cream: down('#f4e6bf', '#faf1d6', '#ad9866', '#fbf5e0', '#b99a60'),
  'silver grey': down('#cfcabb', '#dedace', '#86806f', '#efede4', '#4d4842'),
  'grey-brown': down('#a4937a', '#b6a68e', '#6a5b45', '#ddd2ba', '#473b2d'),
  brown: down('#9b6b3f', '#b17f50', '#5f3d20', '#dcbc8a', '#43291a'),
  'dark brown': down('#5f4128', '#745336', '#33210f', '#b08d60', '#26170b'),
  'golden brown': down('#c48d48', '#d5a25f', '#7f5522', '#ecd09a', '#54331a'),
  buff: down('#dfae62', '#ebc07c', '#98702b', '#f0d6a2', '#946230'),
  'red-buff': down('#c07b3c', '#d18f50', '#7c4817', '#e0b177', '#74401c'),
}

/** What nobody has told: neither light nor dark, like no bird. */
export const untoldDown = down('#a9ada8', '#b6bab5', '#747a75', '#a9ada8', '#747a75')

/** A grown bird's feather: the web, the line between one feather and the next, and the edge of the whole bird. */
export type FeatherTones = { readonly web: string; readonly line: string; readonly edge: string }
const feather = (web: string, line: string, edge: string): FeatherTones => ({ web, line, edge })

/** Black, or what a diluter makes of it. */
export const blacks: Readonly<Record<Exclude<Plumage['black'], 'none'>, FeatherTones>> = {
  black: feather('#2b2a2d', '#54585f', '#131214'),
  blue: feather('#76848f', '#4f5c67', '#434f59'),
  splash: feather('#e2e5e6', '#a9b2b7', '#8d979c'),
  lavender: feather('#b0b1c3', '#85869a', '#74758a'),
  'pale lavender': feather('#d3d3dd', '#a8a9b8', '#9495a6'),
  chocolate: feather('#5a3b2e', '#815d4b', '#332018'),
  mauve: feather('#998685', '#746160', '#655352'),
  dun: feather('#8a7057', '#634d39', '#564230'),
  khaki: feather('#b9a683', '#8f7d5b', '#80704e'),
  white: feather('#fbfaf5', '#c9c4b6', '#a8a292'),
  'white with dark flecks': feather('#f7f5ee', '#c6c1b3', '#a8a292'),
}

const salmonTones = feather('#d99a72', '#ab6c44', '#95592f')

/** Red, or what silver and the diluters of red make of it. */
export const reds: Readonly<Record<Exclude<Plumage['red'], 'none'>, FeatherTones>> = {
  red: feather('#a5522a', '#78381a', '#62290f'),
  mahogany: feather('#7c3420', '#541f10', '#43170a'),
  gold: feather('#cf8f3c', '#976523', '#825316'),
  buff: feather('#dcae67', '#ab8040', '#94702f'),
  straw: feather('#e6d3a0', '#b7a26b', '#a18d58'),
  cream: feather('#f0e5c8', '#c3b48b', '#a99a70'),
  'brassy silver': feather('#e3d7b4', '#b3a67b', '#9a8d63'),
  silver: feather('#f3f1ea', '#bdb9ab', '#989483'),
  white: feather('#fbfaf5', '#c9c4b6', '#a8a292'),
  salmon: salmonTones,
}

/** The flecks of splash, and of white that lets some black through. */
export const flecks = { splash: '#6d7a85', 'white with dark flecks': '#3c3a3c' } as const

export const wheat = feather('#d7a868', '#a87b40', '#8f6630')
export const untold = feather('#a9ada8', '#8f948f', '#747a75')
export const whiteTip = '#fdfcf7'

export const flesh = {
  comb: '#c8363a',
  combEdge: '#8f1f26',
  lobe: '#d2494a',
  horn: '#e0b45c',
  hornEdge: '#9a7426',
  darkHorn: '#54504c',
  eye: '#1a1614',
  iris: '#c9762c',
  face: '#cf4d4a',
  bare: '#d98a76',
  darkComb: '#6d2f3f',
  darkFace: '#4f3a44',
} as const

/** Legs of grown birds, by the core's words. */
const shanks: Readonly<Record<string, string>> = {
  yellow: '#e6b53a',
  'dusky yellow': '#b8943c',
  white: '#efd9c4',
  'pinkish white': '#efcfc0',
  'dusky white': '#c9b3a1',
  slate: '#6c7a8a',
  'dark slate': '#4c5763',
  'pale slate': '#9aa5b1',
  blue: '#6c7a8a',
  willow: '#8d9a4c',
  'dark willow': '#666f38',
  'pale willow': '#b3bc80',
  dark: '#4a4746',
  black: '#3b3838',
  horn: '#c9b487',
}

const shells: Readonly<Record<string, string>> = {
  white: '#fbf8f1',
  cream: '#f1e3c6',
  tinted: '#ecd9bd',
  'light brown': '#dcb68b',
  brown: '#bd855a',
  'dark brown': '#8a4f33',
  blue: '#a9cdc9',
  'blue-green': '#a3c2b0',
  green: '#9fb38b',
  olive: '#83835a',
}

/** The entry whose word comes first in what the core says, e.g. 'dark slate' in 'dark slate or dark willow'; of two at one place the longer. */
function named(table: Readonly<Record<string, string>>, said: string, otherwise: string): string {
  const found = Object.keys(table).filter((word) => said.includes(word))
  const [first] = found.toSorted((a, b) => said.indexOf(a) - said.indexOf(b) || b.length - a.length)
  return table[first ?? otherwise]!
}
/** Brown where the core's word is none that is known here. */
export const shellTone = (said: string): string => named(shells, said, 'brown')
/** The colour of horn where the core's word is none that is known here. */
export const shankTone = (said: string): string => named(shanks, said, 'horn')

/** Legs of a day-old chick: pigment of the shank comes later, so only pale, yellow or dark skin shows. */
export const hatchLegs = ({ chick, skin }: Look): string =>
  chick.skin === 'dark' ? '#57504f' : skin === 'yellow' ? '#e8b94a' : '#ecc3a6'

/** The band of each verdict and the text on it; the same in light and dark rooms. */
export const verdictTones = {
  yes: { band: '#28604a', ink: '#ffffff' },
  partly: { band: '#7d5a10', ink: '#ffffff' },
  no: { band: '#83403a', ink: '#ffffff' },
} as const
