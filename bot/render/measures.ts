// bot/render/measures.ts: weights and ranges in the keeper's units; both where he used none.
import { number, count } from './numbers.ts'
import type { Manner } from '../../core/question.ts'
import type { Span, Status } from '../../core/vocabulary.ts'

type Units = Manner['units']
const poundsPerKg = 2.204_62
const gramsPerOunce = 28.349_5

function both(units: Units, metric: string, imperial: string): string {
  if (units === 'metric') return metric
  return units === 'imperial' ? imperial : `${metric} (${imperial})`
}

/** '2.6 kg (5.7 lb)' */
export const kilograms = (kg: number, units: Units): string =>
  both(units, `${number(kg)} kg`, `${number(kg * poundsPerKg)} lb`)

/** '58 g (2 oz)' */
export const grams = (g: number, units: Units): string =>
  both(units, `${count(g)} g`, `${number(g / gramsPerOunce)} oz`)

/** A range of weights: '59 to 64 g (2.1 to 2.3 oz)'. */
export const gramsRange = ({ low, high }: Span, units: Units): string =>
  both(units, `${count(low)} to ${count(high)} g`, `${ounces(low)} to ${ounces(high)} oz`)
export const kilogramsRange = ({ low, high }: Span, units: Units): string =>
  both(
    units,
    `${number(low)} to ${number(high)} kg`,
    `${number(low * poundsPerKg)} to ${number(high * poundsPerKg)} lb`,
  )
const ounces = (g: number): string => number(g / gramsPerOunce)

const tidy = (n: number): number => (n >= 100 ? Math.round(n / 5) * 5 : n >= 20 ? Math.round(n) : Number(n.toFixed(1)))

/** '180 to 240', or one figure where both ends round to it. */
export function range(span: Span): string {
  const [low, high] = [number(tidy(span.low)), number(tidy(span.high))]
  return low === high ? low : `${low} to ${high}`
}

/** A figure as surely as it is known: from memory only the range, with a hedge word. */
export function estimate(span: Span, status: Status, unit: string): string {
  if (status === 'from memory') return `perhaps ${range(span)} ${unit}`
  return `about ${number(tidy(span.likely))} ${unit} (${range(span)})`
}
