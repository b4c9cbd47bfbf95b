// bot/render/picture/chick/tinge.ts: gold or silver as it shows on down that is otherwise alike: in the face of dark down, as a warm breath on pale and grey down.
import { darkDowns, greyDowns, type Chick } from '../../../../core/looks/look.ts'
import type { Outline } from '../curve.ts'
import { downs } from '../palette.ts'

export type Tinge = { readonly at: 'face' | 'face and breast'; readonly tone: string; readonly strength: number }

const silverFace: Tinge = { at: 'face', tone: downs['silver grey'].light, strength: 1 }
const brownFace: Tinge = { at: 'face', tone: downs['golden brown'].back, strength: 1 }
const warm: Tinge = { at: 'face and breast', tone: downs.buff.light, strength: 0.5 }

/** What the words call silver-faced, brown-faced, gold-tinged or cream-tinged; undefined where nothing of it shows. */
export function tingeOf({ colour, ground }: Pick<Chick, 'colour' | 'ground'>): Tinge | undefined {
  if (ground === 'hidden') return undefined
  if (darkDowns.has(colour)) return ground === 'silver' ? silverFace : brownFace
  return ground === 'gold' && greyDowns.has(colour) ? warm : undefined
}

/** From the beak to behind the eye, and down to the throat. */
export const facePatch: Outline = [
  [104, 28],
  [97, 24, 84, 24, 80, 31],
  [77, 38, 80, 48, 88, 52],
  [94, 54, 104, 50, 106, 42],
  [107, 36, 106, 31, 104, 28],
]
