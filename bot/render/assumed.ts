// bot/render/assumed.ts: what was taken for granted, said in one line so that the keeper can put it right.
import { and } from './numbers.ts'
import { quoted } from './tame.ts'
import type { Assumed } from '../../core/question.ts'

const mostSkipped = 4

const languageName = (code: string): string => {
  try {
    return new Intl.DisplayNames('en-GB', { type: 'language', fallback: 'none' }).of(code) ?? 'that language'
  } catch {
    return 'that language'
  }
}

/**
 * @param assumptions of the answer, in words: what the reading and the core took for granted
 * @param assumed of the reading; only what passed unread and the language are told from it
 */
export function assumedWords(assumptions: readonly string[], assumed: readonly Assumed[]): readonly string[] {
  const skipped = assumed.flatMap((a) => (a.kind === 'skipped' ? a.words : []))
  const foreign = assumed.find((a) => a.kind === 'language')
  return [
    ...(assumptions.length > 0 ? [`I took it that ${[...new Set(assumptions)].join('; ')}.`] : []),
    ...(skipped.length > 0 ? [`I passed over ${and(skipped.slice(0, mostSkipped).map((w) => quoted(w, 30)))}.`] : []),
    ...(foreign?.kind === 'language'
      ? [`I read ${languageName(foreign.code)} as far as I could; I answer in English.`]
      : []),
  ]
}
