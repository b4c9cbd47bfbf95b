// bot/render/picture/plan.ts: what the picture of an answer is: its drawing, its words, its file's name.
import type { Answer } from '../../../core/answer.ts'
import { captionOf } from './card/caption.ts'
import { cardOf } from './card/card.ts'
import { drawCard } from './card/draw.ts'
import type { Plan } from './card/frame.ts'
import type { Room } from './palette.ts'

/** Undefined where there is nothing to draw. Charts load the plotting library at their first use. */
export async function planOf(answer: Answer, room: Room): Promise<Plan | undefined> {
  switch (answer.kind) {
    case 'cross': {
      const card = cardOf(answer)
      return card && { ...drawCard(card, room), caption: captionOf(card), fileName: 'cross.png' }
    }
    case 'carrier': {
      const { hasOdds, oddsPlan } = await import('./chart/odds.ts')
      return hasOdds(answer) ? oddsPlan(answer, room) : undefined
    }
    case 'lines': {
      const { hasEggs, eggsByYearPlan } = await import('./chart/eggsByYear.ts')
      return hasEggs(answer) ? eggsByYearPlan(answer, room) : undefined
    }
    case 'hatch': {
      const { hasEnough, enoughPlan } = await import('./chart/enough.ts')
      return hasEnough(answer) ? enoughPlan(answer, room) : undefined
    }
    case 'ask-back': // what stands until the question back is answered
      return answer.provisional && planOf(answer.provisional, room)
    default:
      return undefined
  }
}
