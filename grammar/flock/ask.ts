// grammar/flock/ask.ts: questions about birds by name: their matings, what they carry; lists, and what is to be forgotten.
import { traitsIn } from '../bird.ts'
import { aspectsOf, commonOf, isSolid } from '../read/common.ts'
import { isToldPair } from '../read/pairs.ts'
import { traits } from '../words/traits.ts'
import { isTold, nameOf } from './names.ts'
import type { Bird } from '../bird.ts'
import { readingOf, type Reading } from '../reading.ts'
import { talliesIn } from './broods.ts'
import type { BirdRef, Brood, CarrierQuestion, Flock, FlockBird, Question } from '../../core/question.ts'
import type { Token } from '../token.ts'

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

/** The trait asked about: behind the asking word, else any that birds hide, else that of the question before, else that of the chicks told. */
function traitOf(reading: Reading, flock: Flock, last: Question | undefined): CarriedTrait | undefined {
  const { tokens } = reading
  const idsOf = (some: readonly Token[]): readonly string[] =>
    some.flatMap((token) => (['trait', 'colour', 'gene'].includes(token.type) ? traitsIn([token]) : []))
  const at = tokens.findIndex(({ type }) => type === 'carries' || type === 'split')
  const asked = at < 0 ? [] : idsOf(tokens.slice(at + 1))
  const hidden = idsOf(tokens).find((id) => traits[id]?.seen === false)
  const told = flock.broods.flatMap(({ chicks }) => chicks.flatMap(({ look }) => lookIds(look)))
  const id = asked[0] ?? hidden
  if (id !== undefined && traits[id]) return traits[id]
  if (last?.kind === 'carrier') return last
  const unseen = told.filter((one) => traits[one]?.seen === false)
  return traits[unseen.at(-1) ?? '']
}
type CarriedTrait = Pick<CarrierQuestion, 'allele' | 'locus'>

/** Traits that the words of a look name. */
const lookIds = (look: string | undefined): readonly string[] =>
  look === undefined || look === 'clear' ? [] : traitsIn(readingOf(look).tokens)

function carrierOf(reading: Reading, flock: Flock, of: string, last: Question | undefined): Question {
  const trait = traitOf(reading, flock, last)
  if (!trait) return { kind: 'ask-back', missing: 'trait', options: [], birds: [], ...commonOf(reading) }
  return { kind: 'carrier', of, allele: trait.allele, locus: trait.locus, flock, rivals: [], ...commonOf(reading) }
}

// --- who is the father ---

const fatherWord = /^(?:father|fathers|dad|dads|daddy|sire|fathered|sired|pa|paternity)$/u

/** "who is the father, Bert or Sid?": the chicks told last that may be theirs, or those of the message. */
function rivalsOf(reading: Reading, flock: Flock, names: readonly string[]): Question | undefined {
  const birdOf = (name: string): FlockBird | undefined => flock.birds.find((bird) => bird.name === name)
  const said = names.filter((name) => birdOf(name)?.sex !== 'F')
  const open = flock.broods.findLast(({ rivals }) => rivals !== undefined)
  const sires = said.length > 1 ? said : open ? [open.sire, ...(open.rivals ?? [])] : []
  const [first, ...rivals] = sires
  if (first === undefined || rivals.length === 0) return undefined
  const told = talliesIn(reading.tokens)
  const asked = told.length > 0 ? told : chickNamed(reading)
  const brood =
    asked.length > 0
      ? { sire: first, dam: names.find((name) => birdOf(name)?.sex === 'F') ?? open?.dam ?? 'the hen', chicks: asked }
      : (flock.broods.findLast((one) => one.rivals && sires.includes(one.sire)) ??
        flock.broods.findLast(({ sire }) => sires.includes(sire)))
  const ids = brood?.chicks.flatMap(({ look }) => lookIds(look)) ?? []
  const trait = traits[ids.find((id) => traits[id]?.seen === false) ?? '']
  if (!brood || (!trait && ids.length === 0))
    return { kind: 'ask-back', missing: 'look', about: 'the chicks', options: [], birds: [], ...commonOf(reading) }
  if (!trait) return parentsOf(reading, flock, sires, brood)
  const disputed = { ...brood, sire: first, rivals }
  const broods = [...flock.broods.filter((one) => one !== brood), disputed].map((one) =>
    one === disputed || one.rivals === undefined ? one : { ...one, rivals: one.rivals },
  )
  return {
    kind: 'carrier',
    of: first,
    allele: trait.allele,
    locus: trait.locus,
    flock: { birds: flock.birds, broods: onlyDisputed(broods, disputed) },
    rivals,
    ...commonOf(reading),
  }
}
/** Of chicks whose sire is open, only those asked about are weighed. */
const onlyDisputed = (broods: readonly Brood[], asked: Brood): readonly Brood[] =>
  broods.filter((one) => one === asked || one.rivals === undefined)

/** "the lavender chick": one, of that look. */
function chickNamed({ tokens }: Reading): readonly Brood['chicks'][number][] {
  const at = tokens.findIndex(
    ({ type }, i) => type === 'chick' && ['colour', 'trait'].includes(tokens[i - 1]?.type ?? ''),
  )
  return at < 0 ? [] : [{ count: 1, look: tokens[at - 1]!.word }]
}

/** A look that nobody hides: what each cock gives by breed and genes decides. */
function parentsOf(reading: Reading, flock: Flock, sires: readonly string[], { dam, chicks }: Brood): Question {
  const known = flock.birds.some(({ name }) => name === dam)
  return {
    kind: 'parents',
    chicks: chicks.filter(({ look }) => look !== undefined && look !== 'clear').map((tally) => ({ tally, form: [] })),
    sires: sires.map((name) => refOf(flock, name)),
    dams: known ? [refOf(flock, dam)] : [],
    ...commonOf(reading),
  }
}

/** "forget Bert", "drop Daisy". */
function forgetting(reading: Reading, flock: Flock, names: readonly string[]): Flock | undefined {
  const first = reading.words.slice(0, 4)
  if (names.length === 0 || !first.some((word) => /^(?:forget|drop|remove|delete|scrap|cancel|lose)$/u.test(word)))
    return undefined
  if (reading.words.some((word) => /^(?:broods?|chicks?|hatch|hatches|clutch|litter)$/u.test(word))) {
    const isMeant = ({ sire, dam, rivals = [] }: Brood): boolean =>
      names.every((name) => name === sire || name === dam || rivals.includes(name))
    return { birds: flock.birds, broods: flock.broods.filter((brood) => !isMeant(brood)) }
  }
  return {
    birds: flock.birds
      .filter(({ name }) => !names.includes(name))
      .map(({ sire, dam, ...bird }) => ({
        ...bird,
        ...(sire === undefined || names.includes(sire) ? {} : { sire }),
        ...(dam === undefined || names.includes(dam) ? {} : { dam }),
      })),
    broods: flock.broods.filter(
      ({ sire, dam, rivals = [] }) => ![sire, dam, ...rivals].some((name) => names.includes(name)),
    ),
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

/** "list", "my birds": the whole message. */
const bareList =
  /^(?:please )?(?:list|list (?:them|all|birds|flock|everything)|(?:show )?(?:all )?(?:my|the) (?:birds|flock)(?: so far)?|show (?:me )?(?:them|all|birds|list)|flock|flock list|birds)$/u

/** The bird that "he" or "she" points to: the one asked about before, else the last one told of. */
function pointedTo({ words, tokens }: Reading, flock: Flock, last: Question | undefined): string | undefined {
  const sex = words.some((word) => /^(?:he|hes|him|his)$/u.test(word))
    ? 'M'
    : words.some((word) => /^(?:she|shes|her)$/u.test(word))
      ? 'F'
      : undefined
  const own = tokens.some(({ type }) => type === 'cock' || type === 'hen' || type === 'breed' || type === 'family')
  if (sex === undefined || own || (last?.kind !== 'carrier' && last?.kind !== 'fact')) return undefined
  const fits = (name: string): boolean => (flock.birds.find((bird) => bird.name === name)?.sex ?? sex) === sex
  if (last.kind === 'carrier')
    return flock.birds.some(({ name }) => name === last.of) && fits(last.of) ? last.of : undefined
  return last.topic === 'flock' ? flock.birds.findLast(({ name }) => fits(name))?.name : undefined
}

/** Questions in which birds of the flock are named, and orders about the flock itself. */
export function flockAsked(reading: Reading, flock: Flock, last: Question | undefined): FlockAsked | undefined {
  if (reading.has('forget') && reading.words.length <= 8)
    return { question: { kind: 'decline', why: 'forgotten', ...commonOf(reading) }, flock: { birds: [], broods: [] } }
  const list = bareList.test(
    reading.text
      .toLowerCase()
      .replace(/[^a-z ]/gu, '')
      .trim(),
  )
  if (list || (reading.has('flockList') && reading.words.length <= 10))
    return { question: flockFact(reading, flock), flock }
  const names = [
    ...new Set(reading.tokens.filter((token) => isTold(token, flock)).map((token) => nameOf(token, flock))),
  ]
  const less = forgetting(reading, flock, names)
  if (less) return { question: flockFact(reading, less), flock: less }
  const question = flockQuestion(reading, flock, names, last)
  return question && { question, flock }
}

function flockQuestion(
  reading: Reading,
  flock: Flock,
  names: readonly string[],
  last: Question | undefined,
): Question | undefined {
  const father = reading.has('father') || reading.words.some((word) => fatherWord.test(word))
  if (father && flock.birds.length > 0 && (names.length !== 1 || flock.broods.some(({ rivals }) => rivals))) {
    const rivals = rivalsOf(reading, flock, names)
    if (rivals) return rivals
  }
  const [one, other] = names
  if (one === undefined) {
    const of = reading.has('carry') && flock.birds.length > 0 ? pointedTo(reading, flock, last) : undefined
    return of === undefined ? undefined : carrierOf(reading, flock, of, last)
  }
  if (other === undefined && isToldPair(reading)) return undefined
  const mate = other === undefined ? reading.scene.birds.find(isSolid) : undefined
  if (mate && reading.tokens.some(({ type }) => type === 'over' || type === 'under' || type === 'cross'))
    return withMate(reading, flock, one, mate)
  if (reading.has('carry')) return carrierOf(reading, flock, one, last)
  if (other === undefined && last?.kind === 'carrier' && reading.words.length <= 4)
    return carrierOf(reading, flock, one, last)
  if (other !== undefined) return crossOf(reading, flock, one, other)
  return flockFact(reading, {
    birds: flock.birds.filter(({ name, sire, dam }) => name === one || sire === one || dam === one),
    broods: flock.broods.filter(({ sire, dam, rivals = [] }) => [sire, dam, ...rivals].includes(one)),
  })
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
