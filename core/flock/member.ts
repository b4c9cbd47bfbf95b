// core/flock/member.ts: the birds and chicks of a told flock as the debate sees them: parents, readings, copies possible.
import { breedNamed } from '../breeds.ts'
import { founder } from '../cross/founder.ts'
import { loci } from '../data/loci.ts'
import { nameOfBird } from '../cross/seen.ts'
import { rational } from '../engine/num.ts'
import type { Reading } from '../engine/trait.ts'
import { traitOf } from '../looks/traits.ts'
import type { BirdRef, Brood, Flock, FlockBird, Tally } from '../question.ts'
import type { Locus, Sex } from '../vocabulary.ts'
import { type Debated, mostCopies, readCarries, readCopies, readShows } from './debated.ts'
import { lookTells } from './lookWord.ts'

/** A bird by name, or the chicks of one tally. */
export type Member = {
  readonly name: string
  readonly sex: Sex | 'U'
  readonly sire: string | undefined
  readonly dam: string | undefined
  readonly readings: readonly Reading[]
  /** What the keeper called it: breed, genotype. */
  readonly bird: BirdRef | undefined
  /** Chicks of one tally stand together; birds by name alone. */
  readonly chicks: Tally | undefined
}

type Draft = { -readonly [K in keyof FlockBird]: FlockBird[K] }

/**
 * Every bird told of, the parents of cross-bred ones, and one member for each tally of chicks that says
 * something of the allele. The sex of a bird that stands as a parent follows from its part.
 */
export function members(flock: Flock, debated: Debated): readonly Member[] {
  const drafts = new Map<string, Draft>(flock.birds.map((bird) => [bird.name, { ...bird }]))
  const draft = (name: string, sex: Sex): void => {
    const known = drafts.get(name) ?? { name }
    drafts.set(name, { ...known, sex: known.sex ?? sex })
  }
  const broods = flock.broods.map(ofOneSire)
  for (const { sire, dam } of [...flock.birds, ...broods]) {
    if (sire !== undefined) draft(sire, 'M')
    if (dam !== undefined) draft(dam, 'F')
  }
  for (const bird of drafts.values())
    for (const parent of [...parentsWithin(bird), ...otherParent(bird)]) drafts.set(parent.name, parent)
  const birds = [...drafts.values()].map((bird) => memberOf(bird, debated))
  return [
    ...birds,
    ...broods.flatMap((brood) => brood.chicks.flatMap((tally, i) => chicksOf(brood, tally, i, debated))),
  ]
}

/** Chicks of one of several cocks tell of none of them: their sire is a bird of whom nothing is known. */
const ofOneSire = ({ rivals = [], ...brood }: Brood): Brood =>
  rivals.length === 0 ? brood : { ...brood, sire: `one of ${[brood.sire, ...rivals].join(', ')}` }

/** A bird told as a cross has parents of its own, unless the flock names them. */
function parentsWithin(bird: Draft): readonly FlockBird[] {
  const { cross } = bird.bird ?? {}
  if (cross === undefined || bird.sire !== undefined || bird.dam !== undefined) return []
  const parent = (ref: BirdRef, sex: Sex): FlockBird => ({
    name: ref.name ?? `the ${nameOfBird(ref)} ${sex === 'M' ? 'sire' : 'dam'} of ${bird.name}`,
    sex,
    bird: ref,
  })
  const both = [parent(cross.sire, 'M'), parent(cross.dam, 'F')]
  bird.sire = both[0]!.name
  bird.dam = both[1]!.name
  return both
}

/** Where one parent of a bird is named, the other is a bird of whom nothing is known. */
function otherParent(bird: Draft): readonly FlockBird[] {
  if ((bird.sire === undefined) === (bird.dam === undefined)) return []
  const name = `the unnamed ${bird.sire === undefined ? 'sire' : 'dam'} of ${bird.name}`
  const sex = bird.sire === undefined ? 'M' : 'F'
  bird.sire ??= name
  bird.dam ??= name
  return [{ name, sex }]
}

function memberOf(bird: FlockBird, debated: Debated): Member {
  const { name, sire, dam } = bird
  const { [debated.allele]: shows } = bird.shows ?? {}
  const { [debated.allele]: carries } = bird.carries ?? {}
  return {
    name,
    sex: bird.sex ?? 'U',
    sire,
    dam,
    bird: bird.bird,
    chicks: undefined,
    readings: [
      ...(shows === undefined ? [] : [readShows(debated, shows)]),
      ...(carries === undefined ? [] : [readCarries(debated, carries)]),
      ...genotypeReading(bird, debated),
      ...(shows === undefined && carries === undefined ? breedReading(bird, debated) : []),
      ...(shows === undefined && isOtherwise(bird, debated) ? [readShows(debated, false)] : []),
    ],
  }
}

/** Told to be black: not lavender, then. */
function isOtherwise({ shows = {} }: FlockBird, debated: Debated): boolean {
  const looks = Object.entries(shows).flatMap(([allele, yes]) =>
    yes ? [allele === 'E' ? 'black' : (traitOf(allele)?.shows ?? '')] : [],
  )
  return debated.acts === 'recessive' && looks.some((look) => look !== '' && lookTells(debated, look) === false)
}

function genotypeReading({ bird, sex }: FlockBird, debated: Debated): readonly Reading[] {
  const told = bird?.genotype?.[debated.locus]
  if (told === undefined) return []
  const copies = told.filter((allele) => allele === debated.allele).length
  const of = mostCopies(debated, sex ?? 'U')
  const open = of - told.length // alleles not told
  return [readCopies(told.join('/'), copies, copies + Math.max(open, 0))]
}

/**
 * What a told breed makes certain: that it shows the allele. What it may hide is no reading. Of a breed, and not of a
 * bird known by its look alone, all that its record does not list is as in the wild type.
 */
function breedReading({ bird, sex }: FlockBird, debated: Debated): readonly Reading[] {
  const breed = bird?.breed === undefined ? undefined : breedNamed(bird.breed)
  if (breed === undefined || bird?.genotype?.[debated.locus] !== undefined) return []
  const { known, doubts } = founder('', sex === 'F' ? 'F' : 'M', breed, bird?.line, {})
  const unlisted = breed.type !== 'described' && !doubts.some(({ loci }) => loci.includes(debated.locus))
  const pair = known[debated.locus] ?? (unlisted ? wildPair(debated, sex) : [])
  const copies = pair.filter((allele) => allele === debated.allele).length
  return copies === 0 ? [] : [readCopies(breed.name, copies, copies)]
}

function wildPair(debated: Debated, sex: Sex | undefined): readonly string[] {
  const { wild = '' } = (loci as Readonly<Record<string, Locus>>)[debated.locus] ?? {}
  return mostCopies(debated, sex ?? 'U') === 1 ? [wild] : [wild, wild]
}

type BroodOf = { readonly sire: string; readonly dam: string }

function chicksOf({ sire, dam }: BroodOf, tally: Tally, i: number, debated: Debated): readonly Member[] {
  const shows = tally.shows ?? (tally.look === undefined ? undefined : lookTells(debated, tally.look))
  if (shows === undefined || tally.count === 0) return []
  const name = `chicks ${i + 1} of ${sire} and ${dam}`
  return [
    { name, sex: tally.sex ?? 'U', sire, dam, bird: undefined, chicks: tally, readings: [readShows(debated, shows)] },
  ]
}

/** The numbers of copies that a bird's own readings leave open. */
export function copiesLeft(debated: Debated, { sex, readings }: Member): readonly number[] {
  const of = mostCopies(debated, sex)
  const code = (copies: number): number => (of === 1 ? 3 + copies : copies)
  const counts = of === 1 ? [0, 1] : [0, 1, 2]
  return counts.filter((copies) => readings.every(({ weight }) => !rational.isZero(weight('M', [code(copies)]))))
}
