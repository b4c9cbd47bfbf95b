// core/answers/parents/rule.ts: what rules a bird out, and what would rule out the likeliest parents.
import { nameOfBird } from '../../cross/seen.ts'
import type { BirdRef } from '../../question.ts'
import { type SeenChicks, shareOf, type Weighed } from './evidence.ts'
import { colourWords, formWanted, type Wanted } from './match.ts'

/** Why no mating of this bird gives such chicks; undefined where one does. */
export function whyNot(
  bird: BirdRef,
  part: 'sire' | 'dam',
  weighed: readonly Weighed[],
  chicks: readonly SeenChicks[],
): string | undefined {
  const own = weighed.filter(({ pair }) => pair[part] === bird)
  if (own.some(({ loose }) => loose)) return undefined
  const impossible = chicks.find((_, i) => own.every(({ shares }) => shares[i] === 0))
  if (impossible === undefined) return undefined
  const { wanted, sex } = impossible
  const his = part === 'sire' ? 'his' : 'hers'
  const never = wanted.find((want) => own.every(({ cases }) => shareOf(cases, [want], sex) === 0))
  return never
    ? `no chick of ${his} ${phrase(never)}`
    : `no chick of ${his} ${wanted.map(phrase).join(' and ')} at once`
}

/** 'is barred', 'has muffs', 'has a rose comb'. */
function phrase({ kind, word }: Wanted): string {
  if (kind === 'colour') return `is ${word}`
  return word.endsWith(' comb') ? `has a ${word}` : `has ${word}`
}

/** Looks that a keeper can see, to ask for in the next chicks. */
const asked: readonly (readonly [says: string, wanted: readonly Wanted[]])[] = [
  ['with a single comb', formWanted([], 'single')],
  ['with a rose comb', formWanted([], 'rose')],
  ['with a pea comb', formWanted([], 'pea')],
  ['with muffs', formWanted(['muffs'], undefined)],
  ['with a crest', formWanted(['crest'], undefined)],
  ['with feathered legs', formWanted(['feathered legs'], undefined)],
  ['that is barred', colourWords('barred')],
  ['that is black', colourWords('black')],
  ['that is blue', colourWords('blue')],
  ['that is white or yellow', colourWords('white')],
  ['that is striped', colourWords('striped')],
]

/** A look that the likeliest pair never gives and the next one often does; '' where there is none. */
export function rulesOut([first, second]: readonly Weighed[]): string {
  if (first === undefined) return ''
  const never = asked.filter(([, wanted]) => shareOf(first.cases, wanted, undefined) === 0)
  const often = ([, wanted]: (typeof asked)[number]): number => (second ? shareOf(second.cases, wanted, undefined) : 0)
  const [best] = never.toSorted((a, b) => often(b) - often(a))
  if (best === undefined || (second !== undefined && often(best) === 0)) return ''
  const pair = `${nameOfBird(first.pair.sire)} over ${nameOfBird(first.pair.dam)}`
  return `A chick ${best[0]} would rule out ${pair}.`
}
