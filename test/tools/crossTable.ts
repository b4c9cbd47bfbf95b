// test/tools/crossTable.ts: sixty matings with all their chicks as one table, to be read through by a breeder's eye. Run: npm run cross-table [WORD].
import type { LookShare } from '../../core/answer.ts'
import { answerCross } from '../../core/answers/cross.ts'
import { matings, questionOf } from './crossTable/matings.ts'

const percent = (share: number | null): string => (share === null ? '-' : `${(100 * share).toFixed(0)}%`)

const kindLine =
  (sex: string) =>
  (kind: LookShare): string =>
    [
      `   ${sex} ${percent(kind.share).padStart(4)}`,
      `${kind.down} [${kind.headSpot}]`,
      kind.adult,
      kind.shank,
      kind.comb,
      kind.feathering,
      kind.form.join(', '),
    ].join(' | ')

function table(text: string): string {
  const answer = answerCross(questionOf(text))
  const cases = answer.crosses[0]!.cases.map(({ weight, given, howToTell, cockerels, pullets, sexing }) =>
    [
      `  ${percent(weight)} ${given}${howToTell && ` (${howToTell})`}`,
      ...cockerels.map(kindLine('M')),
      ...pullets.map(kindLine('F')),
      `   ${sexing.verdict} ${percent(sexing.accuracy)}: ${sexing.why}`,
      ...sexing.signs.map((s) => `     ${s.sign} ${percent(s.accuracy)}: M ${s.cockerel}; F ${s.pullet}`),
      ...(sexing.laterSign
        ? [`     later, ${sexing.laterSign.window}: M ${sexing.laterSign.cockerel}; F ${sexing.laterSign.pullet}`]
        : []),
      ...(sexing.reverse ? [`     the other way round: ${sexing.reverse.verdict}, ${sexing.reverse.says}`] : []),
    ].join('\n'),
  )
  return [
    `${text}\n  "${answer.summary}" (${answer.summary.length})`,
    ...answer.cautions.map((c) => `  ! ${c.text}`),
    ...cases,
  ].join('\n')
}

const wanted = process.argv[2]?.toLowerCase() ?? ''
const chosen = wanted.includes(' x ')
  ? [process.argv[2]!]
  : matings.filter((text) => text.toLowerCase().includes(wanted))
process.stdout.write(`${chosen.map(table).join('\n\n')}\n`)
