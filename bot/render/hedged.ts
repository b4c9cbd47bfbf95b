// bot/render/hedged.ts: what may turn out otherwise than told: the doubts of the rules behind the commonest chicks.
import type { Case } from '../../core/answer.ts'
import { faint, line, type Block } from './document.ts'
import { capital } from './tame.ts'

/** More doubts than these are not read. */
const most = 3

/** One line, doubts of the commonest cockerel and pullet, each once; nothing where there are none. */
export function hedged({ cockerels, pullets }: Case): readonly Block[] {
  const doubts = new Set([cockerels[0], pullets[0]].flatMap((kind) => kind?.look.hedges ?? []))
  if (doubts.size === 0) return []
  return [line(faint(`${capital([...doubts].slice(0, most).join('; '))}.`))]
}
