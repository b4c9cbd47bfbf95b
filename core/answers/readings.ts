// core/answers/readings.ts: what an answer comes to, so that two readings of a message can be held against each other.
import type { Answer, Case, LookShare } from '../answer.ts'

const kinds = (all: readonly LookShare[]): string =>
  all
    .slice(0, 2)
    .map(({ look }) => `${look.chick.colour}/${look.plumage.pattern}/${look.plumage.black}/${look.plumage.barring}`)
    .join('+')

const caseReading = ({ sexing, cockerels, pullets, hen }: Case): string =>
  [
    sexing.verdict,
    sexing.signs[0]?.sign,
    kinds(cockerels),
    kinds(pullets),
    hen?.shell[0]?.colour,
    Math.round((hen?.eggsFirstYear.likely ?? 0) / 40),
  ].join(',')

/** Equal for two answers that tell a keeper the same. */
export function readingOf(answer: Answer): string {
  switch (answer.kind) {
    case 'cross':
      return answer.crosses.map(({ cases }) => cases.map(caseReading).join(';')).join('|')
    case 'partners':
      return answer.best.map(({ bird }) => bird.breed).join()
    case 'hatch':
      return [answer.eggsToSet, answer.pulletsExpected, answer.says.join()].join()
    case 'error':
      return answer.message
    default:
      return 'summary' in answer ? answer.summary : answer.kind
  }
}
