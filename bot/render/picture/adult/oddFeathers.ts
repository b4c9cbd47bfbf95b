// bot/render/picture/adult/oddFeathers.ts: feathers that are not as usual: silkie fluff, frizzled curls, a bare neck.
import type { Form, Look } from '../../../../core/looks/look.ts'
import { downy, softShape } from '../downy.ts'
import { along, closed, type Outline } from '../curve.ts'
import { flesh, type FeatherTones } from '../palette.ts'
import { round, svg, type Markup } from '../svg.ts'
import type { Coat } from './coat.ts'
import type { Shape } from './shape.ts'
import type { Fields } from './shapes.ts'
import { texture, type Texture } from './texture.ts'

/** A silkie has no webs to hold a pattern: fluff in the colour of each part; only what lies over all patterns shows through. */
export function silky(shape: Shape, coat: Coat, form: Form, fields: Fields): Markup {
  const tones = coat.back.tones
  const puff = (outline: Outline, { web, line }: FeatherTones, width: number) =>
    softShape(outline, { per: 9, length: 6, edge: width })(web, line)
  return svg`
    ${form.tail === 'tailed' && puff(silkyTail(shape), coat.tail.tones, 1.2)}
    ${puff(shape.body, tones, 1.5)}
    ${(['fluff', 'breast', 'bay', 'hackle', 'head'] as const).map((region) => puff(shape.parts[region], coat[region].tones, 0.7))}
    <path d="${downy(shape.thighs[1], 6, 4)}" fill="${coat.fluff.tones.web}"/>
    ${(['fluff', 'breast', 'bay', 'hackle'] as const).map((region) =>
      coat[region].wears
        .filter(({ texture }) => overFluff.includes(texture))
        .map((worn) => texture(worn.texture, fields[region], shape.lie[region], worn.colour, 0.75)),
    )}`
}
const overFluff: readonly Texture[] = ['barred', 'double barred', 'tipped', 'flecked', 'ticked']

const silkyTail = ({ body: [, , , , curve] }: Shape): Outline => {
  const [x, y] = [curve![4], curve![5]]
  return [
    [x + 6, y + 2],
    [x - 6, y - 22, x - 36, y - 20, x - 38, y + 6],
    [x - 38, y + 26, x - 24, y + 36, x - 8, y + 36],
    [x + 4, y + 26, x + 8, y + 14, x + 6, y + 2],
  ]
}

/** Feathers that turn up and back: hooks that stand off the outline. */
export function curls(shape: Shape, coat: Coat, size: number): Markup {
  const hooks = along(shape.body, size > 1.5 ? 4 : 5).map(({ at: [x, y], angle }) => {
    const away = angle - Math.PI / 2
    const reach = (far: number, aside: number) =>
      `${round(x + Math.cos(away) * far * size + Math.cos(angle) * aside)} ${round(y + Math.sin(away) * far * size + Math.sin(angle) * aside)}`
    return `M${reach(-2, -4)}C${reach(6, -4)} ${reach(9, 2)} ${reach(5, 6)}C${reach(6, 2)} ${reach(3, 2)} ${reach(-2, 4)}Z`
  })
  return svg`<path d="${hooks.join('')}" fill="${coat.back.tones.web}" stroke="${coat.back.tones.edge}" stroke-width="1.1"/>`
}

export const curlMarks = (fields: Fields, coat: Coat): Markup[] =>
  (['breast', 'fluff', 'back', 'hackle'] as const).map((region) =>
    texture('curled', fields[region], { from: [0, 0], long: 8, wide: 8 }, coat[region].tones.edge, 0.8),
  )

/** Skin of throat and neck; a bow-tie keeps a tuft at its foot. */
export const bareNeck = (shape: Shape, form: Form, tones: FeatherTones, skin: Look['skin']): Markup => {
  const foot = shape.bareNeck[2]
  return svg`<path d="${closed(shape.bareNeck)}" fill="${skin === 'dark' ? flesh.darkFace : flesh.bare}" stroke="${flesh.combEdge}" stroke-width="1"/>
    ${form.neck === 'bow-tie' && softShape(bowTie(foot![4] - 4, foot![5] - 8), { per: 5, length: 3, edge: 1 })(tones.web, tones.edge)}`
}
const bowTie = (x: number, y: number): Outline => [
  [x - 7, y - 4],
  [x - 2, y - 9, x + 5, y - 8, x + 7, y - 2],
  [x + 8, y + 5, x + 2, y + 9, x - 3, y + 7],
  [x - 9, y + 5, x - 9, y, x - 7, y - 4],
]
