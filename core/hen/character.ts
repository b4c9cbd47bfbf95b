// core/hen/character.ts: temper, cold and heat of the daughters in words. No trial measured these by cross: means of lines, hedged.
import { lineMean, type Crossbred } from './crossbred.ts'

const tempers = [
  { below: 0.5, words: 'very calm' },
  { below: 1.25, words: 'calm' },
  { below: 1.75, words: 'fairly calm, alert' },
  { below: 2.4, words: 'active' },
  { below: 3.2, words: 'flighty' },
  { below: Infinity, words: 'wild and flighty' },
] as const

/** Temper of the daughters, e.g. 'calm; some sharp cocks in the sire’s line'. */
export function temperWords(bird: Crossbred): string {
  const flight = lineMean(bird, (stock) => stock.calm)
  const words = tempers.find((t) => flight < t.below)!.words
  return sharpness(bird) >= 0.5 ? `${words}, some assertive` : words
}

/** Share of its genes from lines that are called assertive. */
export const sharpness = (bird: Crossbred): number => lineMean(bird, (stock) => (stock.sharp ? 1 : 0))

/** 0 very calm to 4 wild, by share of lines. */
export const flightiness = (bird: Crossbred): number => lineMean(bird, (stock) => stock.calm)

const grade = (score: number): 'poor' | 'fair' | 'good' => (score < 0.67 ? 'poor' : score < 1.34 ? 'fair' : 'good')

/** How they stand frost and heat: 'good', 'fair' or 'poor', with what the comb adds where both lines agree on it. */
export function hardinessOf(bird: Crossbred): { readonly cold: string; readonly heat: string } {
  const cold = grade(lineMean(bird, (stock) => stock.cold))
  const heat = grade(lineMean(bird, (stock) => stock.heat))
  const large = lineMean(bird, (stock) =>
    stock.comb.startsWith('single, large') || (stock.type === 'light' && stock.comb.startsWith('single')) ? 1 : 0,
  )
  return { cold: large >= 0.5 ? `${cold}, large combs nip in frost` : cold, heat }
}

/** Cold and heat as numbers, 0 poor to 2 good. */
export const coldScore = (bird: Crossbred): number => lineMean(bird, (stock) => stock.cold)
export const heatScore = (bird: Crossbred): number => lineMean(bird, (stock) => stock.heat)
