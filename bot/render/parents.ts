// bot/render/parents.ts: which of the birds can be the parents of what hatched.
import { matingName, birdName } from './birds.ts'
import { bullets, line, numbered, strong } from './document.ts'
import { inHundred } from './numbers.ts'
import { wants, type Asked } from './asked.ts'
import { capital } from './tame.ts'
import type { Document } from './document.ts'
import type { ParentsAnswer } from '../../core/answer.ts'

const usualPairs = 4

export function parentsBlocks(answer: ParentsAnswer, asked: Asked): Document {
  const full = wants(asked, 'why', 'more')
  const pairs = answer.candidates.slice(0, full ? 12 : usualPairs)
  const out = answer.ruledOut.slice(0, full ? 12 : 3)
  return [
    line(strong(capital(answer.summary))),
    ...(pairs.length > 0
      ? [numbered(pairs.map((c) => [strong(matingName(c.sire, c.dam)), `: ${inHundred(c.odds)}. ${c.why}`]))]
      : []),
    ...(out.length > 0 ? [line('Ruled out:'), bullets(out.map((r) => [`${birdName(r.bird)}: ${r.by}`]))] : []),
    ...(answer.ruledOutBy ? [line(answer.ruledOutBy)] : []),
  ]
}
