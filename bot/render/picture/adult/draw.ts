// bot/render/picture/adult/draw.ts: a grown hen or cock drawn from its look.
import type { Sex } from '../../../../core/vocabulary.ts'
import type { Look } from '../../../../core/looks/look.ts'
import { rooms, type Room } from '../palette.ts'
import { svg, type Markup } from '../svg.ts'
import { coatOf, untoldCoat, type Coat } from './coat.ts'
import { headOf } from './head.ts'
import { legsOf } from './legs.ts'
import { bareNeck, silky } from './oddFeathers.ts'
import { feathered } from './plumage.ts'
import { fieldsOf, henFeatheredCock, shapes } from './shapes.ts'

type Seen = Pick<Look, 'plumage' | 'form' | 'shank' | 'skin'>

/** A grown bird in the box of its shape, facing right. */
export const grown = (look: Seen, sex: Sex, room: Room): Markup =>
  bird(look, sex, room, coatOf(look.plumage, look.form.henFeathered ? 'F' : sex))

/** A grown bird of whose colour nothing is told: form only. */
export const grownUntold = (look: Seen, sex: Sex, room: Room): Markup => bird(look, sex, room, untoldCoat)

function bird(look: Seen, sex: Sex, room: Room, coat: Coat): Markup {
  const { form } = look
  const shape = form.henFeathered && sex === 'M' ? henFeatheredCock : shapes[sex]
  const short = form.legs === 'short' ? 8 : 0
  const size = form.legs === 'dwarf' ? 0.86 : 1
  return svg`<g stroke-linejoin="round" stroke-linecap="round">
    <ellipse cx="${shape.width * 0.55}" cy="${shape.ground}" rx="${shape.width * 0.33 * size}" ry="4.5" fill="${rooms[room].shadow}"/>
    <g transform="translate(${(1 - size) * shape.width * 0.55} ${(1 - size) * shape.ground}) scale(${size})">
      <g transform="translate(0 ${short})">
        ${legsOf(look, { ...shape, ground: shape.ground - short }, coat.fluff.tones)}
        ${form.feather === 'silkie' ? silky(shape, coat, form, fieldsOf.get(shape)!) : feathered(shape, coat, form)}
        ${form.neck !== 'feathered' && bareNeck(shape, form, coat.breast.tones, look.skin)}
        ${headOf(look, shape, coat.head.tones, sex)}
      </g>
    </g>
  </g>`
}
