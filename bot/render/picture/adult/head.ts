// bot/render/picture/adult/head.ts: comb, wattles, face, beak, crest, muffs and tufts of a grown bird.
import type { Sex } from '../../../../core/vocabulary.ts'
import type { Look } from '../../../../core/looks/look.ts'
import { softShape } from '../downy.ts'
import type { Outline, Point } from '../curve.ts'
import { flesh, type FeatherTones } from '../palette.ts'
import { placed, svg, type Markup } from '../svg.ts'
import { combOf, combs, darkFlesh, redFlesh, type Flesh } from './comb.ts'
import type { Shape } from './shape.ts'

/** Everything on the head that is not its plumage; what stands behind the head first. */
export function headOf(look: Pick<Look, 'form' | 'skin'>, shape: Shape, tones: FeatherTones, sex: Sex): Markup {
  const { form } = look
  const tone = look.skin === 'dark' ? darkFlesh : redFlesh
  const [x, y] = shape.eye
  return svg`
    ${placed(combs[combOf(form.comb)](tone), shape.head[0], shape.head[1], shape.combScale)}
    ${wattles(shape.eye, tone, wattleSize(form, sex))}
    <path d="M${x + 5} ${y - 3.5}Q${x + 12} ${y - 2} ${x + 17} ${y + 5}Q${x + 10} ${y + 7} ${x + 4} ${y + 6}Z" fill="${look.skin === 'dark' ? flesh.darkHorn : flesh.horn}" stroke="${flesh.hornEdge}" stroke-width="1"/>
    <path d="M${x + 7} ${y + 2.6}L${x + 14.5} ${y + 4.4}" stroke="${flesh.hornEdge}" stroke-width="0.9"/>
    <ellipse cx="${x}" cy="${y + 1}" rx="7.4" ry="6.4" fill="${tone.face}"/>
    <ellipse cx="${x - 6.5}" cy="${y + 7}" rx="2.7" ry="${sex === 'M' ? 4.4 : 3.2}" fill="${tone.comb}" stroke="${tone.edge}" stroke-width="0.8"/>
    <circle cx="${x}" cy="${y}" r="3.3" fill="${flesh.iris}"/><circle cx="${x}" cy="${y}" r="1.8" fill="${flesh.eye}"/>
    <circle cx="${x + 0.9}" cy="${y - 0.9}" r="0.7" fill="#ffffff"/>
    ${form.muffs !== 'none' && puff(muff, [x - 2, y + 9], tones, form.muffs === 'full' ? 1 : 0.75)}
    ${form.tufts !== 'none' && puff(tuft, [x - 9, y + 3], tones, 1)}
    ${form.crest !== 'none' && puff(crest, [shape.head[0] - 4, shape.head[1] - (form.crest === 'large' ? 2 : 0)], tones, form.crest === 'large' ? 1.1 : 0.8)}`
}

const smallWattled: readonly string[] = ['pea', 'walnut', 'none', 'V']
function wattleSize({ comb, muffs }: Look['form'], sex: Sex): number {
  const small = smallWattled.includes(combOf(comb)) || muffs !== 'none'
  return (sex === 'M' ? 1.5 : 0.85) * (small ? 0.6 : 1)
}

const wattles = ([x, y]: Point, tone: Flesh, size: number): Markup =>
  placed(
    svg`<path d="M-3 0C-5 4 -4.4 11 -0.6 12C3 12.4 4.6 7 4 1Z" fill="${tone.comb}" stroke="${tone.edge}" stroke-width="${1 / size}"/>`,
    x + 6,
    y + 5,
    size,
  )

const puff = (outline: Outline, [x, y]: Point, tones: FeatherTones, size: number): Markup =>
  placed(
    svg`${softShape(outline, { per: 6, length: 3, edge: 1 })(tones.web, tones.edge)}
      <g transform="scale(0.6)">${softShape(outline, { per: 5, length: 2, edge: 0.9 })(tones.web, tones.line)}</g>`,
    x,
    y,
    size,
  )

const crest: Outline = [
  [9, 6],
  [14, -2, 12, -14, 1, -17],
  [-10, -20, -21, -13, -22, -3],
  [-23, 6, -16, 13, -9, 10],
  [-3, 6, 3, 8, 9, 6],
]
const muff: Outline = [
  [12, -3],
  [14, 4, 10, 11, 3, 11],
  [-5, 11, -10, 5, -9, -2],
  [-6, -6, 6, -5, 12, -3],
]
const tuft: Outline = [
  [4, -4],
  [0, -4, -10, -10, -16, -8],
  [-14, -4, -14, 2, -10, 6],
  [-4, 6, 2, 4, 4, -4],
]
