// core/answers/parents/tell.ts: where nothing is told of the chick: the looks that one candidate gives to most of its chicks and the others never do.
import { nameOfBird } from '../../cross/seen.ts'
import type { BirdRef } from '../../question.ts'
import { shareOf, type Weighed } from './evidence.ts'
import { colourWords, formWanted, type Wanted } from './match.ts'

/** In plain words, the surest first: form before colour. */
const looks: readonly (readonly [says: string, wanted: readonly Wanted[]])[] = [
  ['muffs', formWanted(['muffs'], undefined)],
  ['a crest', formWanted(['crest'], undefined)],
  ['five toes', formWanted(['five toes'], undefined)],
  ['feathered legs', formWanted(['feathered legs'], undefined)],
  ['a pea comb', formWanted([], 'pea')],
  ['a rose comb', formWanted([], 'rose')],
  ['a walnut comb', formWanted([], 'walnut')],
  ['a bare neck', formWanted(['naked neck'], undefined)],
  ['bars', colourWords('barred')],
  ['white or silver plumage', colourWords('white')],
  ['black plumage', colourWords('black')],
  ['blue plumage', colourWords('blue')],
]

const often = 0.4
const never = 0.01
/** Signs told of one bird. */
const mostSigns = 3

/** 'Muffs or a pea comb would speak for Wheaten Ameraucana as father; feathered legs for …'; '' where nothing tells them apart. */
export function tellApart(birds: readonly BirdRef[], part: 'sire' | 'dam', weighed: readonly Weighed[]): string {
  const shareFor = (bird: BirdRef, wanted: readonly Wanted[], pick: (...shares: number[]) => number): number =>
    pick(...weighed.filter(({ pair }) => pair[part] === bird).map(({ cases }) => shareOf(cases, wanted, undefined)))
  const signs = birds.flatMap((bird) => {
    const own = looks
      .filter(
        ([, wanted]) =>
          shareFor(bird, wanted, Math.min) >= often &&
          birds.every((other) => other === bird || shareFor(other, wanted, Math.max) <= never),
      )
      .map(([says]) => says)
      .slice(0, mostSigns)
    return own.length > 0 ? [[own.join(' or '), nameOfBird(bird)] as const] : []
  })
  const role = part === 'sire' ? 'father' : 'mother'
  const told = signs.map(([own, name], at) =>
    at === 0 ? `${own} would speak for ${name} as ${role}` : `${own} for ${name}`,
  )
  return told.length === 0 ? '' : `${told.join('; ').replace(/^./u, (letter) => letter.toUpperCase())}.`
}
