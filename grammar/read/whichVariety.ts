// grammar/read/whichVariety.ts: a breed told without its colour: which varieties it may mean, and when that does not matter.
import { breedNamed, breeds } from '../../core/breeds.ts'
import { varietiesOf } from '../variety.ts'
import { aspectsOf, commonOf } from './common.ts'
import { crossOf, isShareOrShell, lavenderBreed, maleFirst, nameOf } from './crossOf.ts'
import type { AskBackQuestion } from '../../core/question.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Told } from './crossOf.ts'
import type { Pair } from './pairs.ts'

/** Most readings that are offered. */
const mostOptions = 5

/** A breed without its colour: one question for each variety it may mean, the usual one first. */
export function whichVariety(pair: Pair, reading: Reading): AskBackQuestion | undefined {
  const open = [pair.sire, pair.dam].filter(({ others }) => others.length > 0)
  const [first, second] = open
  if (!first) return undefined
  const choices = second
    ? bothOpen(pair)
    : [first.ref, ...first.others].map((ref): Told =>
        first === pair.sire ? { sire: ref, dam: pair.dam.ref } : { sire: pair.sire.ref, dam: ref },
      )
  const label = ({ sire, dam }: Told): string =>
    second ? `${nameOf(sire)} cock on ${nameOf(dam)} hen` : nameOf(first === pair.sire ? sire : dam)
  const cross = crossOf([pair], reading)
  return {
    kind: 'ask-back',
    missing: 'variety',
    about: [...new Set(open.map(({ saidOf }) => bareName(saidOf.parts)))].join(' and '),
    options: onceEach(choices)
      .slice(0, mostOptions)
      .map((told) => ({
        label: label(told),
        question: { ...cross, matings: [told], assumed: cross.assumed.filter(({ kind }) => kind !== 'variety') },
      })),
    birds: [pair.sire.ref, pair.dam.ref],
    ...commonOf(reading, [], maleFirst(pair)),
  }
}

const onceEach = (choices: readonly Told[]): readonly Told[] => [
  ...new Map(choices.map((one) => [`${nameOf(one.sire)} x ${nameOf(one.dam)}`, one])).values(),
]

const bareName = (parts: Bird['saidOf']['parts']): string =>
  parts.find(({ type }) => type === 'family')?.said ?? parts.map(({ said }) => said).join(' ')

/** Two open breeds: the usual pair, then each of the others on the usual one of the other side. */
function bothOpen({ sire, dam }: Pair): readonly Told[] {
  const family = dam.saidOf.parts.find((part) => part.type === 'family')
  const gold = family?.type === 'family' && sire.ref.breed === dam.ref.breed ? goldOf(family.family) : undefined
  const cross =
    gold !== undefined && gold !== sire.ref.breed
      ? [
          { sire: { ...sire.ref, breed: gold }, dam: dam.ref },
          { sire: sire.ref, dam: { ...dam.ref, breed: gold } },
        ]
      : []
  return [
    { sire: sire.ref, dam: dam.ref },
    ...cross,
    ...dam.others.slice(0, 2).map((other) => ({ sire: sire.ref, dam: other })),
    ...sire.others.slice(0, 2).map((other) => ({ sire: other, dam: dam.ref })),
  ]
}

/** The variety that sexes its chicks on a silver hen: gold, unbarred, and nothing that hides it. */
const goldOf = (family: string): string | undefined =>
  breeds.find((breed) => {
    const { S, E, I, c, B } = breed.genes
    const gold = S === undefined || (S.kind === 'fixed' && S.allele === 's+')
    const black = E?.kind === 'fixed' && E.allele === 'E'
    return breed.family === family && gold && !black && !I && !B && c?.kind !== 'fixed'
  })?.name

/** Asked only of what the daughters do, which all varieties of a breed do alike. */
const ofDaughters: ReadonlySet<string> = new Set([
  'eggs',
  'size',
  'temper',
  'broody',
  'hardiness',
  'feed',
  'egg-size',
  'vigour',
  'meat',
  'maturity',
  'comb',
  'shell',
  'welfare',
])

export const onlyOfDaughters = (reading: Reading): boolean => {
  const aspects = aspectsOf(reading)
  const shells = aspects.includes('shell') && aspects.every(isShareOrShell)
  return shells || (aspects.length > 0 && aspects.every((aspect) => ofDaughters.has(aspect)))
}

/** Wings and forms do not hang on the colour. */
export const isOfForm = (reading: Reading): boolean =>
  reading.has('wing') || (reading.tokens.some(({ type }) => type === 'trait') && !aspectsOf(reading).includes('sexing'))

/** An Olive Egger put to a Marans: bred on for the shell, which no colour of the Marans changes. */
export const isForShells = ({ sire, dam }: Pair, reading: Reading): boolean =>
  [sire, dam].some(({ ref }) => ref.breed === 'Olive Egger') &&
  aspectsOf(reading).every((aspect) => isShareOrShell(aspect) || aspect === 'chicks')

/** Who writes genes knows his bird. */
export const knowsGenes = ({ sire, dam }: Pair): boolean => [sire, dam].some(({ ref }) => ref.genotype !== undefined)

/** "Cornish x Rock": of no colour told, the white ones, of which the meat bird is bred. */
export function ofMeatBird(pair: Pair): Pair {
  const bare = [pair.sire, pair.dam].map(({ saidOf, ref }) =>
    saidOf.parts.some(({ type }) => type === 'family') && !saidOf.parts.some(({ type }) => type === 'colour')
      ? breedNamed(ref.breed ?? '')?.family
      : undefined,
  )
  if (!bare.includes('Cornish') || !bare.includes('Plymouth Rock')) return pair
  const white = (bird: Bird, family: string | undefined): Bird => ({
    ...bird,
    ref: { ...bird.ref, breed: varietiesOf(family ?? '', ['white']).names[0] ?? bird.ref.breed },
    others: [],
  })
  return { ...pair, sire: white(pair.sire, bare[0]), dam: white(pair.dam, bare[1]) }
}

/** One copy of lavender or chocolate is told. */
const isSplit = ({ ref: { genotype } }: Bird): boolean =>
  genotype?.['lav']?.join('/') === 'Lav+/lav' || genotype?.['choc']?.join('/') === 'Choc+/choc'

/** "split Orpington over lavender Orpington hens": a bird that hides lavender or chocolate, and of which no colour is told, is black. */
export function ofSplit({ sire, dam, by }: Pair): Pair {
  const black = (bird: Bird, other: Bird): Bird => {
    const family = bird.saidOf.parts.find((part) => part.type === 'family')
    const hides = (bird.saidOf.split && lavenderBreed(other) !== undefined) || isSplit(bird)
    const told = bird.saidOf.parts.some(({ type }) => type === 'colour')
    const name =
      family?.type === 'family' && hides && !told ? varietiesOf(family.family, ['black']).names[0] : undefined
    return name === undefined || !name.startsWith('Black')
      ? bird
      : { ...bird, ref: { ...bird.ref, breed: name }, others: [] }
  }
  return { sire: black(sire, dam), dam: black(dam, sire), by }
}

/** "Leghorn over Leghorn": of one breed and no colour told, so the usual one is not meant twice over. */
export function ofOneBreed({ sire, dam, by }: Pair): Pair {
  const bare = [sire, dam].map(({ saidOf }) =>
    saidOf.parts.every(({ type }) => ['family', 'cock', 'hen', 'my', 'number'].includes(type))
      ? saidOf.parts.find(({ type }) => type === 'family')
      : undefined,
  )
  const [one, other] = bare.map((part) => (part?.type === 'family' ? part.family : undefined))
  const members = breeds.filter(({ family }) => family === one)
  const autosexing = members.every(({ genes }) => genes['B']?.kind === 'fixed')
  if (one === undefined || one !== other || autosexing || sire.saidOf.carried.length + dam.saidOf.carried.length > 0)
    return { sire, dam, by }
  const open = (bird: Bird): Bird => ({
    ...bird,
    others: members
      .filter(({ name }) => name !== bird.ref.breed)
      .map(({ name }) => ({ ...bird.ref, breed: name }))
      .slice(0, 5),
  })
  return sire.others.length > 0 ? { sire, dam, by } : { sire: open(sire), dam: open(dam), by }
}
