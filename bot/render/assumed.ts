// bot/render/assumed.ts: what the reading took for granted, said in one line so that the keeper can put it right.
import { and } from './numbers.ts'
import { quoted } from './tame.ts'
import type { Assumed } from '../../core/question.ts'

const languages = new Intl.DisplayNames('en-GB', { type: 'language' })
const mostSkipped = 4

/** One clause each; nothing for what needs no saying. */
function clause(assumed: Assumed): string {
  switch (assumed.kind) {
    case 'male-first':
      return `the first bird is the cock (${assumed.sire}), the second the hen (${assumed.dam})`
    case 'variety':
      return `${quoted(assumed.said)} is ${assumed.taken}`
    case 'spelling':
      return `${quoted(assumed.said)} is ${assumed.taken}`
    case 'context':
      return `you still mean ${assumed.restated}`
    case 'skipped':
    case 'language':
      return ''
  }
}

/** 'I took it that …', the words passed over, and the language of the reply. */
export function assumedWords(all: readonly Assumed[], alsoAssumed: readonly string[]): readonly string[] {
  const taken = [...new Set([...all.map(clause).filter(Boolean), ...alsoAssumed])]
  const skipped = all.flatMap((a) => (a.kind === 'skipped' ? a.words : []))
  const foreign = all.find((a) => a.kind === 'language')
  return [
    ...(taken.length > 0 ? [`I took it that ${and(taken)}.`] : []),
    ...(skipped.length > 0 ? [`I passed over ${and(skipped.slice(0, mostSkipped).map((w) => quoted(w, 30)))}.`] : []),
    ...(foreign?.kind === 'language'
      ? [`I read ${languages.of(foreign.code) ?? 'that'} as far as I could; I answer in English.`]
      : []),
  ]
}
