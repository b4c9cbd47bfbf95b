// bot/render/picture/chick/draw.ts: a day-old chick drawn from its look: body, markings, wing, legs and face.
import type { Chick } from '../../../../core/looks/look.ts'
import { closed } from '../curve.ts'
import { downs, flesh, rooms, untoldDown, type DownTones, type Room } from '../palette.ts'
import { round, svg, type Markup } from '../svg.ts'
import { downy, softShape } from '../downy.ts'
import { markings } from './markings.ts'
import { belly, body as outline, chickGround, light, shade, wing } from './outline.ts'

export type ChickSeen = {
  readonly room: Room
  readonly id: string // unlike any other in the same picture
  readonly shank: string
  readonly wingRead?: boolean // the wing feathers are shown: they tell the sexes apart
}

/** A chick in a box of 120 by 120, facing right. */
export const chick = (look: Chick, seen: ChickSeen): Markup => body(look, seen, downs[look.colour])

/** A chick of whose down nothing is told. */
export const chickUntold = ({ skin, ...look }: Chick, seen: ChickSeen): Markup =>
  body({ ...look, ...bareDown, skin }, seen, untoldDown)
const bareDown = { pattern: 'plain', belly: 'same', extraWhite: false, headSpot: 'none', ground: 'hidden' } as const

function body(look: Chick, { shank, room, id, wingRead = false }: ChickSeen, tones: DownTones): Markup {
  return svg`<g stroke-linejoin="round" stroke-linecap="round">
    <ellipse cx="60" cy="${chickGround}" rx="38" ry="4" fill="${rooms[room].shadow}"/>
    ${legs(shank)}
    <clipPath id="${id}"><path d="${bodyDown}"/></clipPath>
    <path d="${bodyEdge}" fill="${tones.edge}"/><path d="${bodyDown}" fill="${tones.back}"/>
    <g clip-path="url(#${id})">
      <path d="${closed(light)}" fill="${tones.light}"/>
      ${look.belly === 'same' && svg`<path d="${closed(shade)}" fill="${tones.edge}" fill-opacity="0.22"/>`}
      ${look.belly === 'pale' && svg`<path d="${bellyDown}" fill="${tones.belly}"/>`}
      ${markings(look, tones)}
    </g>
    ${wingRead && wingFeathers[look.wing]}
    ${wingOf(look, tones)}
    ${fluff(tones)}
    ${face(look, tones.light)}
  </g>`
}

const legs = (shank: string): Markup => svg`
  <g fill="none" stroke="${shank}" stroke-width="4.2">
    <path d="M50 96L47 110M47 110L36 113.5M47 110L56 114M47 110L46 115.5"/>
    <path d="M68 96L69 110M69 110L58 113.5M69 110L81 113.5M69 110L70 115.5"/>
  </g>`

/** The first wing feathers, fanned out behind the wing: primaries, and over them the coverts; slow ones are no longer. */
const quills = (long: number, cover: number): Markup => {
  const fan = (length: number, from: number, by: number): string =>
    Array.from({ length: 6 }, (_, at) => {
      const turn = ((from + at * by) * Math.PI) / 180
      return `M46 80L${round(46 - Math.cos(turn) * length)} ${round(80 + Math.sin(turn) * length)}`
    }).join('')
  const drawn = (d: string, fill: string, width: number): Markup =>
    svg`<path d="${d}" fill="none" stroke="#4d4334" stroke-width="${width + 1.6}"/><path d="${d}" fill="none" stroke="${fill}" stroke-width="${width}"/>`
  return svg`${drawn(fan(long, 4, 13), '#faf6e6', 3.2)}${drawn(fan(cover, 9, 13), '#d9c48c', 2.6)}`
}
const wingFeathers: Readonly<Record<Chick['wing'], Markup>> = { fast: quills(42, 27), slow: quills(29, 30) }

function wingOf(look: Chick, tones: DownTones): Markup {
  const pale = look.extraWhite || look.belly === 'pale'
  return svg`${wingDown(tones.back, tones.edge)}
    ${pale && svg`<path d="M24 84.5L37 78M28 87.5L40 82M34 90L44 86" stroke="${look.extraWhite ? '#fdfcf7' : tones.belly}" stroke-width="3.6"/>`}`
}

const face = (look: Chick, ring: string): Markup => svg`
  ${look.skin !== 'light' && svg`<ellipse cx="91" cy="36.5" rx="9" ry="8" fill="${flesh.darkFace}" fill-opacity="${look.skin === 'dark' ? 1 : 0.5}"/>`}
  <path d="M99.5 35.5Q106 36 111.5 41.5Q107 46.5 99.5 45.5Z" fill="${look.skin === 'dark' ? flesh.darkHorn : flesh.horn}" stroke="${look.skin === 'dark' ? flesh.eye : flesh.hornEdge}" stroke-width="1.1"/>
  <path d="M100 41L109.5 41.8" stroke="${flesh.hornEdge}" stroke-width="0.9"/>
  <circle cx="88.5" cy="35" r="5" fill="${flesh.eye}" stroke="${ring}" stroke-width="1.1"/><circle cx="90.2" cy="33.2" r="1.5" fill="#ffffff"/>`

const bodyEdge = downy(outline, 9, 2.6, 0.75)
const bodyDown = downy(outline, 9, 2.6, -0.75)
const bellyDown = downy(belly, 7, 3)
const wingDown = softShape(wing, { per: 5, length: 1.8, edge: 1.2 })

const fluff = (tones: DownTones): Markup => svg`
  <path d="M66 50l-4 4M70 56l-4 3M82 62l-4 4M88 72l-4 4M86 80l-4 3M78 88l-5 2M62 94l-6 1M46 94l-5-1M26 68l-5 2M36 64l-5 2M62 44l-3 4M74 52l-3 3"
    stroke="${tones.edge}" stroke-width="1" fill="none" stroke-opacity="0.5"/>`
