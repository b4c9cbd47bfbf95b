// core/answers/fact/flock.ts: the birds and broods a keeper has told of so far, one line each.
import { nameOfBird } from '../../cross/seen.ts'
import { carriedName } from '../../flock/carriedName.ts'
import { traitOf } from '../../looks/traits.ts'
import type { Brood, Flock, FlockBird, Tally } from '../../question.ts'

const sexWords = { M: 'cock', F: 'hen' } as const

const shown = (allele: string): string => (allele === 'E' ? 'black' : (traitOf(allele)?.shows ?? allele))

/** 'out of Daisy by Sid', 'out of the hen Daisy', 'by Sid'. */
function parentWords({ sire, dam }: FlockBird): string {
  if (sire !== undefined && dam !== undefined) return `out of ${dam} by ${sire}`
  return dam !== undefined ? `out of the hen ${dam}` : sire !== undefined ? `by the cock ${sire}` : ''
}

const capital = (text: string): string => text.replace(/^./u, (first) => first.toUpperCase())

function birdLine(bird: FlockBird): string {
  const kind = bird.bird ? nameOfBird({ ...bird.bird, name: undefined }) : ''
  const looks = Object.entries(bird.shows ?? {})
  const readings = [
    ...looks.flatMap(([allele, yes]) => (yes ? [] : [`not ${shown(allele)}`])),
    ...Object.entries(bird.carries ?? {}).map(([allele, yes]) =>
      yes ? `carries ${carriedName(allele)}` : `is free of ${carriedName(allele)}`,
    ),
  ]
  const shows = looks.flatMap(([allele, yes]) => (yes ? [shown(allele)] : []))
  const sex = bird.sex ? sexWords[bird.sex] : shows.length > 0 && kind === '' ? 'bird' : ''
  const what = [...shows, kind === 'a bird not named' ? '' : kind, sex].filter(Boolean).join(' ')
  return capital(
    `${bird.name}: ${[what, parentWords(bird), ...readings].filter(Boolean).join(', ') || 'nothing told'}.`,
  )
}

const tallyWords = ({ count, sex, look, shows }: Tally): string =>
  [
    count,
    look ?? (shows === undefined ? '' : shows ? 'that show it' : 'clear'),
    sex === 'M' ? 'males' : sex === 'F' ? 'females' : '',
  ]
    .filter((word) => word !== '')
    .join(' ')

const broodLine = ({ sire, dam, chicks, rivals = [] }: Brood): string =>
  `Chicks of ${[sire, ...rivals].join(' or ')} and ${dam}: ${chicks.map(tallyWords).join(', ')}.`

/** Empty where nothing was told. */
export const flockLines = ({ birds, broods }: Flock): readonly string[] => [
  ...birds.map(birdLine),
  ...broods.map(broodLine),
]

const several = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`
export const flockCount = ({ birds, broods }: Flock): string =>
  `${several(birds.length, 'bird')} and ${several(broods.length, 'brood')}`
