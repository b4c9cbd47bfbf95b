// grammar/flock/ask.ts: questions about birds by name: their matings, what they carry; lists, and what is to be forgotten.
import { traitsIn } from '../bird.ts'
import { aspectsOf, commonOf, isSolid } from '../read/common.ts'
import { isToldPair } from '../read/pairs.ts'
import { traits } from '../words/traits.ts'
import { isTold, nameOf } from './names.ts'
import type { Bird } from '../bird.ts'
import type { BirdRef, Flock, FlockBird, Question } from '../../core/question.ts'
import type { Reading } from '../reading.ts'

/** A named bird as a parent: what was told of it, and its own parents. */
export function refOf(flock: Flock, name: string, depth = 0): BirdRef {
  const bird = flock.birds.find((one) => one.name === name)
  if (!bird) return { name }
  const { sire, dam } = bird
  const known = bird.bird ?? {}
  const cross =
    known.breed === undefined && sire !== undefined && dam !== undefined && depth < 4
      ? { cross: { sire: refOf(flock, sire, depth + 1), dam: refOf(flock, dam, depth + 1) } }
      : {}
  return { ...known, ...genesTold(bird), ...cross, name }
}

/** What a bird shows or carries, as alleles. */
function genesTold({ bird, shows, carries, sex }: FlockBird): Pick<BirdRef, 'genotype'> {
  const told: Record<string, readonly string[]> = { ...bird?.genotype }
  for (const { allele, locus, seen } of Object.values(traits)) {
    if (carries?.[allele] === true) told[locus] ??= [allele]
    if (shows?.[allele] === true) told[locus] ??= seen || sex === 'F' ? [allele] : [allele, allele]
  }
  return Object.keys(told).length > 0 ? { genotype: told } : {}
}

function carrierOf(reading: Reading, flock: Flock, of: string): Question | undefined {
  const ids = reading.tokens.flatMap((token, i) =>
    reading.tokens[i - 1]?.type === 'carries' ||
    token.type === 'trait' ||
    token.type === 'colour' ||
    token.type === 'gene'
      ? traitsIn([token])
      : [],
  )
  const trait = traits[ids[0] ?? '']
  return (
    trait && { kind: 'carrier', of, allele: trait.allele, locus: trait.locus, flock, rivals: [], ...commonOf(reading) }
  )
}

/** "forget Bert", "drop Daisy". */
function forgetting(reading: Reading, flock: Flock, names: readonly string[]): Flock | undefined {
  const first = reading.words.slice(0, 3)
  if (names.length === 0 || !first.some((word) => /^(?:forget|drop|remove|delete)$/u.test(word))) return undefined
  return {
    birds: flock.birds
      .filter(({ name }) => !names.includes(name))
      .map(({ sire, dam, ...bird }) => ({
        ...bird,
        ...(sire === undefined || names.includes(sire) ? {} : { sire }),
        ...(dam === undefined || names.includes(dam) ? {} : { dam }),
      })),
    broods: flock.broods.filter(({ sire, dam }) => !names.includes(sire) && !names.includes(dam)),
  }
}

const flockFact = (reading: Reading, flock: Flock): Question => ({
  kind: 'fact',
  topic: 'flock',
  birds: [],
  flock,
  ...commonOf(reading),
})

export type FlockAsked = { readonly question: Question; readonly flock: Flock }

/** Questions in which birds of the flock are named, and orders about the flock itself. */
export function flockAsked(reading: Reading, flock: Flock): FlockAsked | undefined {
  if (reading.has('forget') && reading.words.length <= 8)
    return { question: { kind: 'decline', why: 'forgotten', ...commonOf(reading) }, flock: { birds: [], broods: [] } }
  if (reading.has('flockList') && reading.words.length <= 10) return { question: flockFact(reading, flock), flock }
  const names = [
    ...new Set(reading.tokens.filter((token) => isTold(token, flock)).map((token) => nameOf(token, flock))),
  ]
  const less = forgetting(reading, flock, names)
  if (less) return { question: flockFact(reading, less), flock: less }
  const [one, other] = names
  if (one === undefined || (other === undefined && isToldPair(reading))) return undefined
  const mate = other === undefined ? reading.scene.birds.find(isSolid) : undefined
  if (mate && reading.tokens.some(({ type }) => type === 'over' || type === 'under' || type === 'cross'))
    return { question: withMate(reading, flock, one, mate), flock }
  if (reading.has('carry')) {
    const question = carrierOf(reading, flock, one)
    if (question) return { question, flock }
  }
  if (other !== undefined) return { question: crossOf(reading, flock, one, other), flock }
  return {
    question: flockFact(reading, {
      birds: flock.birds.filter(({ name, sire, dam }) => name === one || sire === one || dam === one),
      broods: flock.broods.filter(({ sire, dam }) => sire === one || dam === one),
    }),
    flock,
  }
}

/** A named bird and one that is not. */
function withMate(reading: Reading, flock: Flock, name: string, mate: Bird): Question {
  const own = refOf(flock, name)
  const female = flock.birds.find((bird) => bird.name === name)?.sex === 'F' || mate.sex === 'M'
  const mating = female ? { sire: mate.ref, dam: own } : { sire: own, dam: mate.ref }
  return { kind: 'cross', matings: [mating], aspects: aspectsOf(reading), ...commonOf(reading, [mate]) }
}

function crossOf(reading: Reading, flock: Flock, one: string, other: string): Question {
  const sex = (name: string): string | undefined => flock.birds.find((bird) => bird.name === name)?.sex
  const [sire, dam] = sex(one) === 'F' || sex(other) === 'M' ? [other, one] : [one, other]
  return {
    kind: 'cross',
    matings: [{ sire: refOf(flock, sire), dam: refOf(flock, dam) }],
    aspects: aspectsOf(reading),
    ...commonOf(reading),
  }
}

export const flockAnswer = flockFact
