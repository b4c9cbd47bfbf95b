// bot/render/picture/adult/comb.ts: combs of every kind, drawn from the crown up: forward is right, up is negative.
import { flesh } from '../palette.ts'
import { svg, type Markup } from '../svg.ts'

export type Flesh = { readonly comb: string; readonly edge: string; readonly face: string }
export const redFlesh: Flesh = { comb: flesh.comb, edge: flesh.combEdge, face: flesh.face }
export const darkFlesh: Flesh = { comb: flesh.darkComb, edge: flesh.eye, face: flesh.darkFace }

type CombKind = 'single' | 'rose' | 'pea' | 'walnut' | 'V' | 'Y' | 'cup' | 'none'

/** The comb to draw for the core's word: of 'pea or single' the first; an unknown word is drawn single, the commonest. */
export function combOf(word: string): CombKind {
  const named = /walnut|rose|pea|single|none|cup|\b[VY]\b/.exec(word)?.[0]
  return kinds.find((kind) => kind === named) ?? 'single'
}
const kinds: readonly CombKind[] = ['single', 'rose', 'pea', 'walnut', 'V', 'Y', 'cup', 'none']

const shaped = (path: string, tone: Flesh, lines = ''): Markup => svg`
  <path d="${path}" fill="${tone.comb}" stroke="${tone.edge}" stroke-width="1.2"/>
  <path d="${lines}" fill="none" stroke="${tone.edge}" stroke-width="1"/>`

export const combs: Readonly<Record<CombKind, (tone: Flesh) => Markup>> = {
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
  Y: (tone) =>
    shaped(
      'M11 7C12 2 11 -3 9.6 -6C8 -3 7 -1.6 5.6 -1C5.4 -5 4 -8 2.6 -10C1 -6 0 -2 -1 -1C-3 -6 -6 -10 -11 -13.5C-10 -8 -8 -3 -6.4 0C-10 -3 -14 -5 -19 -5.6C-15 0 -12 5 -8 7Z',
      tone,
    ),
  cup: (tone) =>
    shaped(
      'M10 7C13 2 13.6 -3 13 -9L8.4 -4L5.6 -11L1.6 -5L-2.4 -11.6L-5 -4.6L-10.4 -10L-11.4 -1C-10.6 3 -9 6 -7 7Z',
      tone,
      'M10 -1C4 1.4 -4 1.4 -9.6 -0.6',
    ),
  none: () => svg``,
}
