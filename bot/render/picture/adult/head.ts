// bot/render/picture/adult/head.ts: comb, wattles, face, beak, crest, muffs and tufts of a grown bird.
import type { Sex } from '../../../../core/vocabulary.ts'
import type { Look } from '../../../../core/looks/look.ts'
import { softShape } from '../downy.ts'
import type { Outline, Point } from '../curve.ts'
import { flesh, type FeatherTones } from '../palette.ts'
import { placed, svg, type Markup } from '../svg.ts'
import type { Shape } from './shape.ts'

type Flesh = { readonly comb: string; readonly edge: string; readonly face: string }
const red: Flesh = { comb: flesh.comb, edge: flesh.combEdge, face: flesh.face }
const dark: Flesh = { comb: flesh.darkComb, edge: flesh.eye, face: flesh.darkFace }

/** Everything on the head that is not its plumage; what stands behind the head first. */
export function headOf(look: Pick<Look, 'form' | 'skin'>, shape: Shape, tones: FeatherTones, sex: Sex): Markup {
  const { form } = look
  const tone = look.skin === 'dark' ? dark : red
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
    ${form.crest !== 'none' && puff(crest, [shape.head[0] - 3, shape.head[1] + 1], tones, form.crest === 'large' ? 1.25 : 0.8)}`
}

type CombKind = 'single' | 'rose' | 'pea' | 'walnut' | 'V' | 'cup' | 'none'
const kinds: readonly CombKind[] = ['walnut', 'rose', 'pea', 'V', 'cup', 'none', 'single']

/** The comb to draw for the core's word; an unknown word is drawn single, the commonest. */
export const combOf = (word: string): CombKind => kinds.find((kind) => word.includes(kind)) ?? 'single'

const shaped = (path: string, tone: Flesh, lines = ''): Markup => svg`
  <path d="${path}" fill="${tone.comb}" stroke="${tone.edge}" stroke-width="1.2"/>
  <path d="${lines}" fill="none" stroke="${tone.edge}" stroke-width="1"/>`

const combs: Readonly<Record<CombKind, (tone: Flesh) => Markup>> = {
  single: (tone) =>
    shaped(
      'M11 7C12 2 11.5 -4 10 -8C8 -5 7 -3 5.6 -2.4C5.6 -7 4.6 -11 3 -14C1 -10 0.4 -7 -0.6 -4.4C-1.6 -9 -3 -13 -5 -15.5C-5.8 -11 -6.2 -7 -7 -4C-9 -8 -10.6 -10.6 -13 -12.4C-12.6 -8 -12.4 -5 -12 -2C-14 -3.6 -16 -4.4 -18.6 -5C-17 1 -13 6 -8 7Z',
      tone,
    ),
  rose: (tone) =>
    shaped(
      'M11 6C13 1 10 -3.6 6.5 -3.4C5 -6 1.6 -6.2 0 -4.4C-2 -6.4 -5.4 -6 -6.4 -4C-10 -4.6 -14 -5.6 -20.5 -9.5C-18 -2 -13 4.6 -7 6.4Z',
      tone,
      'M6 0l0.1 0M1 -1.4l0.1 0M-4 -1l0.1 0M-8.6 -0.6l0.1 0M3.4 2.6l0.1 0M-1.6 2.4l0.1 0M8 3l0.1 0',
    ),
  pea: (tone) =>
    shaped(
      'M11 7C11.6 2 9 -1.4 6.6 -0.4C6.2 -3.8 2.4 -4 1.6 -1.2C0.4 -4 -3.4 -3.6 -3.6 -0.6C-6 -2.4 -8.6 0 -7.6 2.4C-9.4 3.4 -9 6 -8 7Z',
      tone,
      'M9 3.6C5 2 0 2 -6.4 4.2M6.4 -0.4l-0.4 2.4M1.6 -1.2l-0.2 2.6M-3.6 -0.6l0.4 2.6',
    ),
  walnut: (tone) =>
    shaped(
      'M12 6C13.4 -1 9 -6 4.4 -4.6C1.6 -7.6 -4.6 -7 -6 -3.4C-9.4 -2.4 -9 3.4 -7 6.4Z',
      tone,
      'M8 -1C6 1 6 3 8 4M3 -3C0.6 -0.6 1.4 2.4 3 3.6M-2.6 -3.6C-4.4 -1 -3.4 2 -2 3.4',
    ),
  V: (tone) =>
    shaped('M6 6C8 -1 8.6 -8 12.6 -16C4.4 -12 0 -4 -0.6 6ZM0.6 6C0 -4 -2 -10 -6 -15.6C-9 -8 -8.4 0 -5.6 6Z', tone),
  cup: (tone) =>
    shaped(
      'M10 7C13 2 13.6 -3 13 -9L8.4 -4L5.6 -11L1.6 -5L-2.4 -11.6L-5 -4.6L-10.4 -10L-11.4 -1C-10.6 3 -9 6 -7 7Z',
      tone,
      'M10 -1C4 1.4 -4 1.4 -9.6 -0.6',
    ),
  none: () => svg``,
}

function wattleSize({ comb, muffs }: Look['form'], sex: Sex): number {
  const small = ['pea', 'walnut', 'none', 'V'].includes(combOf(comb)) || muffs !== 'none'
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
