// bot/render/linked.ts: which linked traits go together in the chicks, and which go apart.
import type { Case } from '../../core/answer.ts'

/** 'Most chicks have silver and slow feathering both or neither.'; '' where nothing is linked. */
export const linkedWords = ({ together = [] }: Case): string =>
  together
    .slice(0, 2)
    .map(({ one, other, both }) =>
      both
        ? `Most chicks have ${one} and ${other} both, or neither.`
        : `Most chicks have either ${one} or ${other}; few have both, or neither.`,
    )
    .join(' ')
