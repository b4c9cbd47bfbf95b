// bot/render/assumed.ts: what was taken for granted, said in one line so that the keeper can put it right.
import { and } from './numbers.ts'
import { otherAssumptions } from './takenLines.ts'
import { quoted } from './tame.ts'
import type { Answer } from '../../core/answer.ts'

const mostSkipped = 4
type Told = Extract<Answer, { readonly assumed: unknown }>

const languageName = (code: string): string => {
  try {
    return new Intl.DisplayNames('en-GB', { type: 'language', fallback: 'none' }).of(code) ?? 'that language'
  } catch {
    return 'that language'
  }
}

/** Of "the bird named first is the cock: A on B" the birds are left out: the answer names them. */
const maleFirst = /^the bird named first is the cock: (.*) on (.*)$/
function shorter(words: string): readonly string[] {
  const [, sire, dam] = maleFirst.exec(words) ?? []
  if (sire === undefined) return [words]
  return sire === dam ? [] : ['the bird named first is the cock']
}

/** What the heading of a single cross says already: its birds and their lines. */
const headed = ({ assumptions }: Told): readonly string[] =>
  otherAssumptions(assumptions).filter((words) => !words.startsWith('this still is '))

export function assumedWords(answer: Told): readonly string[] {
  const single = answer.kind === 'cross' && answer.crosses.length === 1
  const taken = [...new Set((single ? headed(answer) : answer.assumptions).flatMap(shorter))]
  const skipped = answer.assumed.flatMap((a) => (a.kind === 'skipped' ? a.words : []))
  const foreign = answer.assumed.find((a) => a.kind === 'language')
  return [
    ...(taken.length > 0 ? [`I took it that ${taken.join('; ')}.`] : []),
    ...(skipped.length > 0 ? [`I passed over ${and(skipped.slice(0, mostSkipped).map((w) => quoted(w, 30)))}.`] : []),
    ...(foreign?.kind === 'language'
      ? [`I read ${languageName(foreign.code)} as far as I could; I answer in English.`]
      : []),
  ]
}
