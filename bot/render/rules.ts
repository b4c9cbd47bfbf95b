// bot/render/rules.ts: the rules behind the chicks of a mating, one a line, what rests on memory marked so.
import type { Crossed } from '../../core/answer.ts'
import { bullets, line, type Block } from './document.ts'

export function ruleBlocks({ rules }: Crossed): readonly Block[] {
  if (!rules) return []
  const doubt = (certainty: string): string =>
    certainty === 'doubtful' ? ' (The books disagree, or it is from memory.)' : ''
  return [line('What makes them look so:'), bullets(rules.map(({ says, certainty }) => [says + doubt(certainty)]))]
}
