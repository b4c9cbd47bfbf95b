// bot/render/picture/plan.ts: which answers have a picture, and what it is: its drawing, its words, its file's name.
import type { Answer } from '../../../core/answer.ts'
import { captionOf } from './card/caption.ts'
import { cardOf } from './card/card.ts'
import { drawCard } from './card/draw.ts'
import type { Room } from './palette.ts'

/** A picture before it is pixels. Width and height in units; `caption` says all that the drawing says. */
export type Plan = {
  readonly markup: string
  readonly width: number
  readonly height: number
  readonly caption: string
  readonly fileName: string
}

/** Cheap to ask: nothing is drawn. */
export const hasPicture = (answer: Answer): boolean => answer.kind === 'cross' && answer.crosses.length > 0

export function planOf(answer: Answer, room: Room): Plan | undefined {
  if (answer.kind !== 'cross') return undefined
  const card = cardOf(answer)
  return card && { ...drawCard(card, room), caption: captionOf(card), fileName: 'cross.png' }
}
