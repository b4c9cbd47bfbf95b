// bot/render/picture/card/lens.ts: the sign seen close: head from above, back, spread wing, face or leg, in a ring.
import type { Chick } from '../../../../core/looks/look.ts'
import { softShape } from '../downy.ts'
import type { Outline } from '../curve.ts'
import { downs, flesh, rooms, untoldDown, type DownTones, type Room } from '../palette.ts'
import { svg, type Markup } from '../svg.ts'
import { signPlace, type SignPlace } from '../chick/outline.ts'
import { tingeOf } from '../chick/tinge.ts'
import type { SignShown } from './card.ts'
import type { Shown } from './shown.ts'

/** Where on the chick the sign is looked for; undefined where that is the whole chick. */
export const placeOf = (sign: SignShown['name'], shown: Pick<Shown, 'look'> | undefined): SignPlace | undefined =>
  signPlace[sign === 'down colour' && shown && facePaints(shown.look.chick) ? 'skin colour' : sign]

/** Dark down is alike on the back; the face tells. */
const facePaints = (chick: Chick): boolean => tingeOf(chick)?.at === 'face'

/** A close view 52 across, its middle at 0, 0. */
export const lensReach = 26

export function lens(
  sign: SignShown['name'],
  { look, told }: Pick<Shown, 'look' | 'told'>,
  room: Room,
  id: string,
): Markup {
  const { point, lens: inside } = rooms[room]
  const view = sign === 'down colour' && told && facePaints(look.chick) ? facedown : (views[sign] ?? fromAbove)
  return svg`<g stroke-linecap="round" stroke-linejoin="round">
    <clipPath id="${id}"><circle r="${lensReach - 1}"/></clipPath>
    <circle r="${lensReach - 1}" fill="${inside}"/>
    <g clip-path="url(#${id})">${view(look.chick, told ? downs[look.chick.colour] : untoldDown, point)}</g>
    <circle r="${lensReach - 1}" fill="none" stroke="${point}" stroke-width="2.6"/>
  </g>`
}

type View = (chick: Chick, tones: DownTones, point: string) => Markup

const round = (rx: number, ry: number): Outline => [
  [-rx, 0],
  [-rx, -ry * 0.55, -rx * 0.55, -ry, 0, -ry],
  [rx * 0.55, -ry, rx, -ry * 0.55, rx, 0],
  [rx, ry * 0.55, rx * 0.55, ry, 0, ry],
  [-rx * 0.55, ry, -rx, ry * 0.55, -rx, 0],
]
const blob = (rx: number, ry: number, x: number, y: number, fill: string, edge: string, tuft = 2): Markup => svg`
  <g transform="translate(${x} ${y})">${softShape(round(rx, ry), { per: 9, length: tuft, edge: 1.2 })(fill, edge)}</g>`

const beakAbove = (y: number): Markup => svg`
  <path d="M-4.4 ${y + 6}Q-2 ${y} 0 ${y - 3}Q2 ${y} 4.4 ${y + 6}Z" fill="${flesh.horn}" stroke="${flesh.hornEdge}" stroke-width="1"/>`
const eyesAbove = (x: number, y: number, size: number, ring: string): Markup => svg`
  <circle cx="${-x}" cy="${y}" r="${size}" fill="${flesh.eye}" stroke="${ring}" stroke-width="0.9"/>
  <circle cx="${x}" cy="${y}" r="${size}" fill="${flesh.eye}" stroke="${ring}" stroke-width="0.9"/>`

/** The head from above, beak up: where a barred chick has its spot. */
const headTop: View = (chick, tones, point) => svg`
  ${blob(23, 20, 0, 30, tones.back, tones.edge)}
  ${beakAbove(-19)}
  ${blob(15.5, 16, 0, 1, tones.back, tones.edge)}
  <path d="M-8 -8Q0 -14 8 -8" fill="none" stroke="${tones.light}" stroke-width="3"/>
  ${eyesAbove(13, -6, 2.8, tones.light)}
  ${spotFromAbove(chick, point)}`

function spotFromAbove({ headSpot, headSpotClear }: Chick, point: string): Markup {
  if (headSpotClear === 'no') return noSpot(point)
  if (headSpot === 'small') return blob(4.6, 4.8, 0, 5, spotTone, spotTone, 1.4)
  if (headSpot === 'large') return blob(9.5, 9, 0, 5, spotTone, spotTone, 2.4)
  if (headSpot === 'blurred') return svg`<g opacity="0.55">${blob(10, 9.5, 0, 5, spotTone, spotTone, 3.6)}</g>`
  return noSpot(point)
}
const noSpot = (point: string): Markup =>
  svg`<circle cx="0" cy="4.5" r="7" fill="none" stroke="${point}" stroke-width="2" stroke-dasharray="3.2 3.4"/>`
const spotTone = '#fbf3d3'

/** The whole chick from above, beak up: down colour and stripes. */
const fromAbove: View = (chick, tones) => svg`
  ${blob(4.5, 9, -13.5, 9, tones.back, tones.edge)}${blob(4.5, 9, 13.5, 9, tones.back, tones.edge)}
  ${blob(13.5, 15, 0, 9, tones.back, tones.edge)}
  ${stripesFromAbove(chick.pattern, tones)}
  ${beakAbove(-21)}
  ${blob(9.6, 9.4, 0, -9, tones.back, tones.edge)}
  ${headStripe(chick.pattern, tones)}
  ${eyesAbove(7.8, -12.5, 1.7, tones.light)}`

function stripesFromAbove(pattern: Chick['pattern'], tones: DownTones): Markup | undefined {
  if (pattern === 'plain') return undefined
  const { opacity, dashes } = stripeLook[pattern]
  return svg`<g stroke-opacity="${opacity}" stroke-dasharray="${dashes}" fill="none" stroke-linecap="butt">
    <path d="M-5 -4C-7 4 -6.4 14 -4.4 22M5 -4C7 4 6.4 14 4.4 22" stroke="${tones.belly}" stroke-width="3.2"/>
    <path d="M0 -5L0 23" stroke="${tones.stripe}" stroke-width="6.4"/>
    <path d="M-9.4 2C-10.4 8 -10 13 -8.4 18M9.4 2C10.4 8 10 13 8.4 18" stroke="${tones.stripe}" stroke-width="2.2"/></g>`
}

function headStripe(pattern: Chick['pattern'], tones: DownTones): Markup | undefined {
  if (pattern === 'plain') return undefined
  const { opacity, dashes } = stripeLook[pattern]
  return svg`<path d="M0 -17.5L0 -0.5" stroke="${tones.stripe}" stroke-width="6" stroke-opacity="${opacity}" stroke-dasharray="${dashes}" fill="none"/>`
}

const stripeLook: Readonly<
  Record<Exclude<Chick['pattern'], 'plain'>, { readonly opacity: number; readonly dashes: string }>
> = {
  striped: { opacity: 1, dashes: 'none' },
  'blurred stripes': { opacity: 0.3, dashes: 'none' },
  'broken stripes': { opacity: 0.9, dashes: '7 5' },
  'faint stripes': { opacity: 0.4, dashes: 'none' },
  marbled: { opacity: 0.95, dashes: '4 5 8 3' },
  smudged: { opacity: 0.3, dashes: '12 6' },
}

/** The spread wing: primaries and the coverts over them, long and short by turns, or all of one length. */
const wing: View = ({ wing }, tones) => {
  const quills = Array.from({ length: 7 }, (_, at) => {
    const turn = -64 + at * 15
    const long = wing === 'fast' ? 41 : 31
    const cover = wing === 'fast' ? 20 : 31
    return svg`<g transform="rotate(${turn} -17 17)">
      ${quill(-17, 17, long, 3.6, '#faf6e6')}
      <g transform="rotate(7 -17 17)">${quill(-17, 17, cover, 3, '#d9c48c')}</g></g>`
  })
  return svg`${quills}${blob(11, 9, -19, 19, tones.back, tones.edge)}`
}
const quill = (x: number, y: number, long: number, width: number, fill: string): Markup =>
  svg`<path d="M${x} ${y}l${long} 0" stroke="#4d4334" stroke-width="${width + 1.6}"/><path d="M${x} ${y}l${long} 0" stroke="${fill}" stroke-width="${width}"/>`

const face: View = ({ skin }, tones) => svg`
  ${blob(24, 23, -5, 2, tones.back, tones.edge)}
  <path d="M12 0Q22 2 25 8Q20 14 12 12Z" fill="${skin === 'dark' ? flesh.darkHorn : flesh.horn}" stroke="${flesh.eye}" stroke-width="1"/>
  <ellipse cx="2" cy="0" rx="11" ry="9.5" fill="${faces[skin]}"/>
  <circle cx="2" cy="-1" r="5" fill="${flesh.eye}"/><circle cx="3.8" cy="-2.8" r="1.6" fill="#ffffff"/>`
/** The face of dark down that shows gold or silver. */
const facedown: View = (chick, tones) => svg`
  ${blob(24, 23, -5, 2, tones.back, tones.edge)}
  ${blob(15, 15, 3, 2, tingeOf(chick)?.tone ?? tones.back, tingeOf(chick)?.tone ?? tones.back)}
  <path d="M12 0Q22 2 25 8Q20 14 12 12Z" fill="${flesh.horn}" stroke="${flesh.hornEdge}" stroke-width="1"/>
  <circle cx="2" cy="-1" r="5" fill="${flesh.eye}"/><circle cx="3.8" cy="-2.8" r="1.6" fill="#ffffff"/>`
const faces = { light: '#f0c9b0', tinged: '#a58a86', dark: flesh.darkFace } as const

const views: Partial<Readonly<Record<SignShown['name'], View>>> = {
  'head spot': headTop,
  'wing feathers': wing,
  'skin colour': face,
}
