// bot/render/picture/chick/outline.ts: the lines of a day-old chick, facing right, in a box of 120 by 120.
import type { Outline } from '../curve.ts'

export const chickBox = 120
/** Where the chick stands. */
export const chickGround = 115

export const body: Outline = [
  [100, 42],
  [101, 49, 98, 54, 94, 60],
  [100, 71, 97, 86, 84, 94],
  [70, 102, 44, 103, 29, 94],
  [18, 87, 12, 77, 12, 65],
  [22, 62, 37, 60, 45, 53],
  [52, 47, 49, 38, 53, 29],
  [58, 17, 68, 11, 79, 11],
  [93, 12, 102, 24, 101, 36],
  [101, 38, 100, 40, 100, 42],
]

/** Throat, breast and belly: what is pale on black down. */
export const belly: Outline = [
  [106, 40],
  [96, 44, 88, 48, 85, 55],
  [82, 64, 84, 74, 74, 81],
  [62, 89, 44, 88, 30, 83],
  [22, 80, 14, 84, 10, 90],
  [24, 116, 74, 112, 94, 98],
  [112, 82, 108, 56, 106, 40],
]

/** Where light falls: on the crown and along the back. */
export const light: Outline = [
  [22, 64],
  [36, 62, 48, 57, 53, 49],
  [57, 41, 53, 35, 58, 27],
  [62, 19, 70, 15, 79, 15],
  [71, 20, 66, 27, 65, 36],
  [64, 48, 58, 56, 46, 62],
  [38, 66, 30, 66, 22, 64],
]

/** Where it does not: under the belly. */
export const shade: Outline = [
  [97, 72],
  [96, 84, 82, 93, 62, 94],
  [42, 95, 26, 88, 16, 76],
  [18, 100, 40, 108, 62, 106],
  [86, 104, 104, 90, 97, 72],
]

export const wing: Outline = [
  [71, 72],
  [66, 63, 49, 63, 38, 72],
  [32, 77, 26, 81, 20, 84],
  [27, 90, 47, 95, 61, 89],
  [70, 85, 74, 79, 71, 72],
]

/** Where each sign is looked for, with the reach of a ring about it; a sign without a place is the whole chick. */
export type SignPlace = { readonly x: number; readonly y: number; readonly reach: number }
export const signPlace: Readonly<Record<string, SignPlace | undefined>> = {
  'head spot': { x: 68, y: 22, reach: 15 },
  'wing feathers': { x: 31, y: 85, reach: 23 },
  'skin colour': { x: 91, y: 37, reach: 15 },
  stripes: { x: 40, y: 58, reach: 21 },
  marks: { x: 66, y: 26, reach: 19 },
}
