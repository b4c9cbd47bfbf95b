// bot/render/carried.ts: what the chicks carry unseen, in one line.
import { line, strong } from './document.ts'
import type { Block } from './document.ts'
import { and, type Say } from './numbers.ts'
import type { Case } from '../../core/answer.ts'

type Carried = NonNullable<Case['carried']>[number]
const enough = 0.005

function who({ cockerels, pullets }: Carried, say: Say): string {
  if (Math.abs(cockerels - pullets) < 1e-6) return say(cockerels)
  if (pullets < enough) return `${say(cockerels)} of the cockerels`
  return `${say(cockerels)} of the cockerels and ${say(pullets)} of the pullets`
}

/** 'Unseen: half carry lavender; all carry recessive white and silkie feather.' */
export function carriedUnseen({ carried = [] }: Case, say: Say): readonly Block[] {
  const told = carried.filter(({ cockerels, pullets }) => Math.max(cockerels, pullets) > enough)
  const byShare = Map.groupBy(told, (one) => who(one, say))
  const clauses = [...byShare].map(([share, ones]) => `${share} carry ${and(ones.map(({ name }) => name))}`)
  return clauses.length === 0 ? [] : [line(strong('Unseen: '), `${clauses.join('; ')}.`)]
}
