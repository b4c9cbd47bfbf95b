// core/answers/fact/flock.ts: the birds and broods a keeper has told of so far, one line each.
import { nameOfBird } from '../../cross/seen.ts'
import { carriedName } from '../../flock/carriedName.ts'
import { traitOf } from '../../looks/traits.ts'
import type { Brood, Flock, FlockBird, Tally } from '../../question.ts'

const sexWords = { M: 'cock', F: 'hen' } as const

const shown = (allele: string): string => (allele === 'E' ? 'black' : (traitOf(allele)?.shows ?? allele))

function birdLine(bird: FlockBird): string {
  const kind = bird.bird ? nameOfBird({ ...bird.bird, name: undefined }) : ''
  const parents = [bird.sire && `out of the cock ${bird.sire}`, bird.dam && `out of the hen ${bird.dam}`].filter(
    Boolean,
  )
  const readings = [
    ...Object.entries(bird.shows ?? {}).map(([allele, yes]) =>
      yes ? `shows ${shown(allele)}` : `does not show ${shown(allele)}`,
    ),
    ...Object.entries(bird.carries ?? {}).map(([allele, yes]) =>
      yes ? `carries ${carriedName(allele)}` : `is free of ${carriedName(allele)}`,
    ),
  ]
  const what = [kind === 'a bird not named' ? '' : kind, bird.sex ? sexWords[bird.sex] : ''].filter(Boolean).join(' ')
  return `${bird.name}: ${[what, ...parents, ...readings].filter(Boolean).join(', ') || 'nothing told'}.`
}

const tallyWords = ({ count, sex, look, shows }: Tally): string =>
  [
    count,
    look ?? (shows === undefined ? '' : shows ? 'that show it' : 'clear'),
    sex === 'M' ? 'males' : sex === 'F' ? 'females' : '',
  ]
    .filter((word) => word !== '')
    .join(' ')

const broodLine = ({ sire, dam, chicks }: Brood): string =>
  `Chicks of ${sire} and ${dam}: ${chicks.map(tallyWords).join(', ')}.`

/** Empty where nothing was told. */
export const flockLines = ({ birds, broods }: Flock): readonly string[] => [
  ...birds.map(birdLine),
  ...broods.map(broodLine),
]

const several = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`
export const flockCount = ({ birds, broods }: Flock): string =>
  `${several(birds.length, 'bird')} and ${several(broods.length, 'brood')}`
