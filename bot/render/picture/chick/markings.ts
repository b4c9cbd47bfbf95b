// bot/render/picture/chick/markings.ts: what stands on a chick's down: stripes, head spot, extra white. Drawn inside the body.
import type { Chick } from '../../../../core/looks/look.ts'
import { open, type Outline } from '../curve.ts'
import type { DownTones } from '../palette.ts'
import { svg, type Markup } from '../svg.ts'
import { downy } from '../downy.ts'
import { facePatch, tingeOf } from './tinge.ts'

/** The middle of the back stripe, from forehead to tail; the pale line beside it; the line through the eye; the flank. */
const back: Outline = [
  [97, 15],
  [84, 9, 66, 13, 59, 26],
  [54, 36, 58, 45, 50, 53],
  [40, 62, 24, 65, 8, 66],
]
const beside: Outline = [
  [97, 24],
  [85, 19, 74, 22, 68, 31],
  [63, 40, 67, 50, 59, 60],
  [49, 71, 30, 74, 10, 75],
]
const eye: Outline = [
  [99, 34],
  [90, 32, 80, 36, 74, 43],
  [70, 48, 69, 53, 68, 60],
]
const flank: Outline = [
  [66, 64],
  [52, 77, 30, 82, 10, 83],
]

export const markings = (look: Chick, tones: DownTones): Markup => svg`
  ${stripes[look.pattern](tones)}
  ${tinge(look)}
  ${look.extraWhite && extraWhite}
  ${spot(look)}`

const line = (along: Outline, colour: string, width: number, opacity = 1, dashes = 'none'): Markup => svg`
  <path d="${open(along)}" fill="none" stroke="${colour}" stroke-width="${width}" stroke-opacity="${opacity}" stroke-dasharray="${dashes}" stroke-linecap="butt"/>`

const stripes: Readonly<Record<Chick['pattern'], (tones: DownTones) => Markup>> = {
  plain: () => svg``,
  striped: (tones) => svg`
    ${line(beside, tones.belly, 7)}${line(back, tones.stripe, 13)}
    ${line(flank, tones.stripe, 5)}${line(eye, tones.stripe, 4.6)}`,
  'blurred stripes': (tones) => svg`
    ${line(back, tones.light, 26)}${line(beside, tones.belly, 10, 0.55)}
    ${line(back, tones.stripe, 15, 0.22)}${line(back, tones.stripe, 8, 0.24)}${line(flank, tones.stripe, 6, 0.2)}`,
  'broken stripes': (tones) => svg`
    ${line(beside, tones.belly, 6, 0.55)}
    <path d="${blotches.map((one) => downy(one, 5, 3)).join('')}" fill="${tones.stripe}"/>
    <path d="${flecks.map((one) => downy(one, 4, 2)).join('')}" fill="${tones.stripe}" fill-opacity="0.85"/>`,
  'faint stripes': (tones) => svg`
    ${line(back, tones.stripe, 9, 0.45)}${line(flank, tones.stripe, 3, 0.35)}`,
  marbled: (tones) => svg`
    ${line(back, tones.stripe, 20, 0.35)}
    <path d="${[...blotches, ...flecks].map((one) => downy(one, 5, 3)).join('')}" fill="${tones.stripe}"/>
    <path d="${palePatches.map((one) => downy(one, 5, 2)).join('')}" fill="${tones.belly}" fill-opacity="0.85"/>`,
  smudged: (tones) => svg`
    <path d="${downy(smudgeOnBack, 8, 5)}" fill="${tones.stripe}" fill-opacity="0.42"/>
    <path d="${downy(smudgeOnHead, 8, 5)}" fill="${tones.stripe}" fill-opacity="0.42"/>`,
}

/** Uneven dark patches where a striped chick has its back stripe, and smaller ones where it has the others. */
const blotches: readonly Outline[] = [
  patch(84, 13, 12, 6, 0.1),
  patch(62, 24, 7, 9, 0.6),
  patch(55, 42, 7, 8, 0.5),
  patch(38, 57, 11, 6, -0.5),
  patch(18, 65, 9, 5, -0.2),
]
const flecks: readonly Outline[] = [
  patch(77, 41, 6, 2.6, -0.8),
  patch(67, 58, 5, 3, 0.9),
  patch(92, 33, 4, 2.2, 0.2),
  patch(20, 81, 8, 3, 0),
  patch(80, 70, 4, 6, 0.5),
  patch(92, 80, 3, 5, 0.2),
  patch(60, 93, 7, 3, 0),
]
const palePatches: readonly Outline[] = [
  patch(71, 30, 3, 7, 0.3),
  patch(54, 51, 5, 3, -0.7),
  patch(28, 63, 6, 2.6, -0.3),
  patch(88, 62, 3, 7, 0.2),
  patch(72, 68, 3, 5, 0.6),
  patch(46, 70, 7, 2.6, -0.4),
]

/** A lump of the given half width and half height, turned by `lean` radians. */
function patch(x: number, y: number, rx: number, ry: number, lean: number): Outline {
  const at = (u: number, v: number): readonly [number, number] => [
    x + u * rx * Math.cos(lean) - v * ry * Math.sin(lean),
    y + u * rx * Math.sin(lean) + v * ry * Math.cos(lean),
  ]
  return [
    at(-1, 0),
    [...at(-0.9, -0.9), ...at(-0.2, -1.1), ...at(0.2, -0.7)],
    [...at(0.6, -1), ...at(1.1, -0.4), ...at(1, 0.1)],
    [...at(0.9, 0.9), ...at(0.1, 0.7), ...at(-0.2, 1)],
    [...at(-0.8, 1), ...at(-1.1, 0.5), ...at(-1, 0)],
  ]
}

const smudgeOnBack: Outline = [
  [12, 62],
  [26, 56, 46, 48, 56, 48],
  [62, 56, 52, 70, 38, 72],
  [26, 74, 14, 74, 12, 62],
]
const smudgeOnHead: Outline = [
  [58, 24],
  [62, 12, 78, 8, 88, 16],
  [84, 28, 66, 36, 58, 24],
]

const whiteBreast: Outline = [
  [104, 46],
  [97, 47, 90, 52, 89, 62],
  [89, 72, 92, 76, 84, 86],
  [92, 96, 108, 82, 106, 58],
  [106, 54, 105, 50, 104, 46],
]
const whiteFace: Outline = [
  [104, 26],
  [97, 24, 91, 27, 92, 31],
  [95, 37, 92, 44, 86, 48],
  [92, 52, 104, 48, 106, 40],
  [107, 34, 106, 30, 104, 26],
]
const extraWhite = svg`<g fill="#fdfcf7"><path d="${downy(whiteBreast, 6, 3)}"/><path d="${downy(whiteFace, 6, 2)}"/></g>`

function tinge(look: Chick): Markup | undefined {
  const shown = tingeOf(look)
  return (
    shown &&
    svg`<g fill="${shown.tone}" fill-opacity="${shown.strength}"><path d="${downy(facePatch, 6, 3)}"/>
    ${shown.at === 'face and breast' && svg`<path d="${downy(whiteBreast, 6, 3)}"/>`}</g>`
  )
}

const smallSpot: Outline = [
  [62, 25],
  [62, 20, 67, 17, 72, 18],
  [76, 19, 76, 23, 72, 26],
  [68, 29, 63, 29, 62, 25],
]
const largeSpot: Outline = [
  [56, 32],
  [53, 22, 63, 12, 76, 13],
  [86, 14, 85, 22, 78, 25],
  [72, 28, 74, 35, 66, 38],
  [60, 40, 57, 38, 56, 32],
]

function spot({ headSpot, headSpotClear }: Chick): Markup | undefined {
  if (headSpot === 'none' || headSpot === 'hidden' || headSpotClear === 'no') return undefined
  const strength = headSpotClear === 'clear' ? 1 : 0.6
  const outline = headSpot === 'small' ? smallSpot : largeSpot
  return svg`<g fill="${spotTone}">
    <path d="${downy(outline, 6, headSpot === 'blurred' ? 4 : 1.6)}" fill-opacity="${headSpot === 'blurred' ? 0.5 * strength : strength}"/>
    ${headSpot === 'large' && svg`<path d="M55 42l6-5M52 49l7-5M82 15l6 1M60 46l4-5" stroke="${spotTone}" stroke-width="2.2" stroke-opacity="${strength}"/>`}
  </g>`
}
const spotTone = '#fbf3d3'
