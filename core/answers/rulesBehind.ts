// core/answers/rulesBehind.ts: the rules of looks behind the likeliest chicks of a mating, for "why?".
import type { Crossed } from '../answer.ts'
import { colourRules, maskingRules, whyRules } from '../looks/rules.ts'

/** Form explains itself; colour does not, nor does dark skin. */
const worthTelling = new Set([
  ...[...maskingRules, ...colourRules].map(({ id }) => id),
  'dark skin',
  'dark skin held back',
])

/** The mating with the rules that made its commonest cockerel and its commonest pullet, each once, in their order. */
export function withRules(crossed: Crossed): Crossed {
  const [likeliest] = crossed.cases
  const looks = [likeliest?.cockerels[0]?.look, likeliest?.pullets[0]?.look]
  const ids = new Set(looks.flatMap((look) => look?.rules ?? []).filter((id) => worthTelling.has(id)))
  const rules = whyRules([...ids]).map(({ says, certainty }) => ({ says, certainty }))
  return rules.length > 0 ? { ...crossed, rules } : crossed
}
