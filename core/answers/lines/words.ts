// core/answers/lines/words.ts: weights, money and names in the few sentences of the lines answer, in the keeper's own units.
import type { BirdRef, Manner } from '../../question.ts'

const poundsPerKg = 2.20462

const rounded = (x: number): string => (x < 10 ? x.toFixed(1) : Math.round(x).toString())

/** '2.1 kg', '4.6 lb', or both where the keeper used neither. */
export function kilos(kg: number, units: Manner['units']): string {
  const pounds = `${rounded(kg * poundsPerKg)} lb`
  if (units === 'metric') return `${rounded(kg)} kg`
  return units === 'imperial' ? pounds : `${rounded(kg)} kg (${pounds})`
}

const gramsPerOunce = 28.3495

/** Feed of a day: '150 g (5.3 oz)', '1.8 kg (4.0 lb)'. */
export function daily(grams: number, units: Manner['units']): string {
  if (grams >= 1000) return kilos(grams / 1000, units)
  const [metric, imperial] = [`${Math.round(grams / 10) * 10} g`, `${(grams / gramsPerOunce).toFixed(1)} oz`]
  if (units === 'metric') return metric
  return units === 'imperial' ? imperial : `${metric} (${imperial})`
}

/** In the keeper's currency; a bare number where he named none. */
export const money = (amount: number, { currency }: Manner): string =>
  `${amount < 0 ? '-' : ''}${currency ?? ''}${Math.abs(amount).toFixed(2)}`

/** 'production Rhode Island Red', 'heritage Rhode Island Red x Light Sussex'. */
export function nameOf(bird: BirdRef): string {
  if (bird.breed !== undefined) return bird.line === undefined ? bird.breed : `${bird.line} ${bird.breed}`
  if (bird.cross) return `${nameOf(bird.cross.sire)} x ${nameOf(bird.cross.dam)}`
  return bird.name ?? 'bird of unknown breed'
}

export const about = (n: number, step = 1): string => `about ${Math.round(n / step) * step}`
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
