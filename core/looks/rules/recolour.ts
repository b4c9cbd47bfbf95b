// core/looks/rules/recolour.ts: what each diluter of black makes of each black, in feather and down.
import type { Draft, Patch } from '../rule.ts'

type Black = Draft['black']
type Down = Draft['down']
type Recolour = { readonly feather: Partial<Record<Black, Black>>; readonly down: Partial<Record<Down, Down>> }

export const blue: Recolour = {
  feather: { black: 'blue' },
  down: { black: 'blue-grey', 'dark brown': 'blue-grey' },
}
export const splash: Recolour = {
  feather: { black: 'splash' },
  down: { black: 'smoky white', 'dark brown': 'smoky white' },
}
export const chocolate: Recolour = {
  feather: { black: 'chocolate', blue: 'mauve' },
  down: { black: 'chocolate', 'dark brown': 'chocolate', 'blue-grey': 'mauve' },
}
export const dun: Recolour = {
  feather: { black: 'dun', chocolate: 'khaki', blue: 'khaki', mauve: 'khaki' },
  down: { black: 'dun', 'dark brown': 'dun', chocolate: 'khaki', 'blue-grey': 'khaki', mauve: 'khaki' },
}
export const khaki: Recolour = {
  feather: { black: 'khaki', chocolate: 'khaki', blue: 'khaki', mauve: 'khaki' },
  down: { black: 'khaki', 'dark brown': 'khaki', chocolate: 'khaki', 'blue-grey': 'khaki', mauve: 'khaki' },
}
export const lavender: Recolour = {
  feather: {
    black: 'lavender',
    blue: 'pale lavender',
    chocolate: 'pale lavender',
    mauve: 'pale lavender',
    dun: 'pale lavender',
    khaki: 'pale lavender',
  },
  down: {
    black: 'lavender grey',
    'dark brown': 'lavender grey',
    'blue-grey': 'lavender grey',
    chocolate: 'lavender grey',
    mauve: 'lavender grey',
    dun: 'lavender grey',
    khaki: 'lavender grey',
    brown: 'grey-brown',
    'golden brown': 'grey-brown',
    buff: 'cream',
    'red-buff': 'cream',
  },
}

export const recoloured = ({ black, down }: Draft, { feather, down: downs }: Recolour): Patch => ({
  black: feather[black] ?? black,
  down: downs[down] ?? down,
})
