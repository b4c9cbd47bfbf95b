// bot/render/picture/adult/plumage.ts: the feathers of a grown bird, part by part, from the tail forward.
import type { Form } from '../../../../core/looks/look.ts'
import { closed } from '../curve.ts'
import { svg, type Markup } from '../svg.ts'
import type { Coat } from './coat.ts'
import { fringed } from './fringe.ts'
import { curlMarks, curls } from './oddFeathers.ts'
import type { Paint } from './paint.ts'
import { regions, type Region, type Shape } from './shape.ts'
import { fieldsOf, type Fields } from './shapes.ts'
import { texture } from './texture.ts'

/** Tail, body, wing and hackle of a bird with feathers that have webs. */
export function feathered(shape: Shape, coat: Coat, form: Form): Markup {
  const fields = fieldsOf.get(shape)!
  const [tail, ...rest] = regions.map((region) => part(shape, region, coat[region], fields))
  return svg`
    ${form.tail === 'tailed' && [tail, quills(shape.tailQuills, coat.tail), sickles(shape, coat.sickles, fields)]}
    ${form.feather !== 'normal' && curls(shape, coat, form.feather === 'frizzled' ? 1.2 : 1.6)}
    <path d="${closed(shape.body)}" fill="${coat.back.tones.web}" stroke="${coat.back.tones.edge}" stroke-width="1.5"/>
    ${rest}
    ${nearThigh(shape, coat.fluff, fields)}
    ${quills(shape.wingQuills, coat.bay)}
    ${form.feather !== 'normal' && curlMarks(fields, coat)}`
}

function part(shape: Shape, region: Region, { tones, wears }: Paint, fields: Fields): Markup | undefined {
  const outline = shape.parts[region]
  if (outline === undefined) return undefined
  const path = fringed(outline, shape.fringes[region] ?? [], shape.lie[region].from)
  return svg`<path d="${path}" fill="${tones.web}" stroke="${tones.edge}" stroke-width="${region === 'tail' ? 1.3 : 0.8}" stroke-opacity="${region === 'tail' ? 1 : 0.6}"/>
    ${wears.map((worn) => texture(worn.texture, fields[region], shape.lie[region], worn.colour, worn.opacity))}`
}

const sickles = (shape: Shape, { tones, wears }: Paint, fields: Fields): Markup => svg`
  ${shape.sickles.map((sickle, at) => [
    svg`<path d="${closed(sickle)}" fill="${tones.web}" stroke="${tones.edge}" stroke-width="1.2"/>`,
    wears.map((worn) => texture(worn.texture, fields.sickles[at] ?? [], shape.lie.tail, worn.colour, worn.opacity)),
  ])}`

const nearThigh = (shape: Shape, { tones, wears }: Paint, fields: Fields): Markup => svg`
  <path d="${closed(shape.thighs[1])}" fill="${tones.web}"/>
  ${wears.map((worn) => texture(worn.texture, fields.thigh, shape.lie.fluff, worn.colour, worn.opacity))}`

const quills = (path: string, { tones }: Paint): Markup =>
  svg`<path d="${path}" fill="none" stroke="${tones.line}" stroke-width="0.9" stroke-opacity="0.8"/>`
