// bot/render/picture/pictured.ts: which kinds of answers have a picture. By itself, so that asking loads nothing that draws.
import type { Answer } from '../../../core/answer.ts'

/** Cheap to ask: nothing is drawn. */
export const mayHavePicture = (answer: Answer): boolean =>
  answer.kind === 'ask-back'
    ? answer.provisional !== undefined && mayHavePicture(answer.provisional)
    : ['cross', 'carrier', 'lines', 'hatch'].includes(answer.kind)
