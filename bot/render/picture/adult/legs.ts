// bot/render/picture/adult/legs.ts: thighs, shanks and feet of a grown bird.
import type { Look } from '../../../../core/looks/look.ts'
import { softShape } from '../downy.ts'
import { closed, type Outline, type Point } from '../curve.ts'
import { shankTone, type FeatherTones } from '../palette.ts'
import { placed, svg, type Markup } from '../svg.ts'
import type { Shape } from './shape.ts'

/** Both legs, the far one first; drawn under the body. */
export const legsOf = (look: Pick<Look, 'form' | 'shank'>, shape: Shape, tones: FeatherTones): Markup => svg`
  ${shape.hocks.map((hock, at) => [shank(hock, shape.ground, shankTone(look.shank), look.form), feathering(hock, look.form, tones), thigh(shape.thighs[at]!, tones)])}`

function shank([x, y]: Point, ground: number, colour: string, { toes }: Look['form']): Markup {
  const foot = ground - 3
  const fifth = toes === 'four' ? '' : `M${x} ${foot - 3}l-9 -4`
  return svg`<g fill="none" stroke="${colour}" stroke-width="4.4">
    <path d="M${x} ${y}L${x} ${foot - 1}"/>
    <path stroke-width="3.6" d="M${x} ${foot - 1}l-9 2M${x} ${foot - 1}Q${x + 7} ${foot - 1} ${x + 14} ${foot + 2}M${x} ${foot - 1}Q${x + 4} ${foot + 1} ${x + 6} ${foot + 4}${fifth}"/>
  </g>`
}

const thigh = (outline: Outline, tones: FeatherTones): Markup =>
  svg`<path d="${closed(outline)}" fill="${tones.web}" stroke="${tones.edge}" stroke-width="1.2"/>`

function feathering([x, y]: Point, { feet }: Look['form'], tones: FeatherTones): Markup | undefined {
  if (feet === 'clean') return undefined
  return placed(
    softShape(feet === 'feathered' ? fullBoot : lightBoot, { per: 5, length: 3, edge: 1 })(tones.web, tones.edge),
    x,
    y,
  )
}

const fullBoot: Outline = [
  [4, -2],
  [6, 6, 6, 10, 14, 16],
  [8, 20, -4, 20, -14, 19],
  [-10, 12, -8, 6, -5, -2],
  [-2, -4, 2, -4, 4, -2],
]
const lightBoot: Outline = [
  [3, -2],
  [3, 4, 2, 8, 3, 14],
  [0, 16, -4, 16, -9, 16],
  [-7, 10, -6, 4, -5, -2],
  [-2, -3, 1, -3, 3, -2],
]
