// bot/render/picture/adult/paint.ts: what one part of the plumage is painted with: its feather tones and what its feathers wear.
import type { FeatherTones } from '../palette.ts'
import type { Region } from './shape.ts'
import type { Texture } from './texture.ts'

export type Worn = { readonly texture: Texture; readonly colour: string; readonly opacity?: number }
export type Paint = { readonly tones: FeatherTones; readonly wears: readonly Worn[] }
export type Part = Region | 'sickles'
export type Parts = Partial<Readonly<Record<Part, Paint>>>

/** Plain feathers, each told from the next by a fine line; with whatever else they wear. */
export const of = (tones: FeatherTones, ...wears: readonly Worn[]): Paint => ({
  tones,
  wears: [{ texture: 'plain', colour: tones.line, opacity: 0.6 }, ...wears],
})
/** Feathers that wear only what is named. */
export const only = (tones: FeatherTones, ...wears: readonly Worn[]): Paint => ({ tones, wears })
/** Feathers marked in another colour; where there is no other, as in a blue laced with darker blue, in their own edge. */
export const marked = (texture: Texture, tones: FeatherTones, colour: FeatherTones): Paint =>
  only(tones, { texture, colour: colour === tones ? tones.edge : colour.web })
