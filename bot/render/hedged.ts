// bot/render/hedged.ts: what may turn out otherwise than told: the doubts of the rules behind the commonest chicks.
import type { Case } from '../../core/answer.ts'
import { faint, line, type Block } from './document.ts'
import { capital } from './tame.ts'

/** One line, doubts of the commonest cockerel and pullet, each once, what bears on sexing first; nothing where there are none. */
export function hedged({ cockerels, pullets }: Case, most: number): readonly Block[] {
  const doubts = [...new Set([cockerels[0], pullets[0]].flatMap((kind) => kind?.look.hedges ?? []))]
  const atHatch = (words: string): boolean => /spot|down|stripes|shank/.test(words)
  const first = doubts.toSorted((a, b) => Number(atHatch(b)) - Number(atHatch(a))).slice(0, most)
  return first.length === 0 ? [] : [line(faint(`${capital(first.join('; '))}.`))]
}
