// bot/render/sources.ts: who says so, for those who ask why or more. What rests on memory is said to, and cites nobody.
import { bullets, line } from './document.ts'
import type { Document } from './document.ts'
import type { Source } from '../../core/answer.ts'

const mostRead = 4

export function sourceBlocks(sources: readonly Source[]): Document {
  const read = [...new Set(sources.filter((s) => s.status === 'read').map((s) => s.ref))]
  const practice = sources.some((s) => s.status === 'common practice')
  const memory = sources.some((s) => s.status === 'from memory')
  return [
    ...(read.length > 0 ? [line('Published:'), bullets(read.slice(0, mostRead).map((ref) => [ref]))] : []),
    ...(practice ? [line('Part of this is common practice among keepers, with no published source.')] : []),
    ...(memory ? [line('Where I say “perhaps”, it is judgement from memory, not a published figure.')] : []),
  ]
}
