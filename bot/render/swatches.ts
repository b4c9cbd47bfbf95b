// bot/render/swatches.ts: the down colours of an answer as patches of colour, each with its words, for screens that have colour.
import { belief } from './numbers.ts'
import { downs } from './picture/palette.ts'
import type { Answer, Case, LookShare } from '../../core/answer.ts'
import type { Swatch } from '../transport.ts'

const mostCases = 3
const mostColours = 4

const colours = (looks: readonly LookShare[]): readonly string[] => [
  ...new Set(looks.slice(0, mostColours).map(({ look }) => downs[look.chick.colour].back)),
]

function rows(one: Case): readonly Swatch[] {
  const when = one.given ? `, if ${one.given} (${belief(one.weight)})` : ''
  const [cocks, hens] = [colours(one.cockerels), colours(one.pullets)]
  if (cocks.join() === hens.join()) return [{ colours: cocks, words: `chicks of both sexes${when}` }]
  return [
    { colours: cocks, words: `cockerel chicks${when}` },
    { colours: hens, words: `pullet chicks${when}` },
  ]
}

/** Of one cross, by sex and case; nothing for other answers. */
export function swatches(answer: Answer): readonly Swatch[] {
  if (answer.kind !== 'cross' || answer.crosses.length !== 1) return []
  return answer.crosses.flatMap(({ cases }) => cases.slice(0, mostCases).flatMap(rows))
}
