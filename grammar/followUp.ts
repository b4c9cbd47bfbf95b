// grammar/followUp.ts: a short message applied to the question before: the other way round, another line, another bird, "eggs?".
import { birdOf } from './bird.ts'
import { askedAgain } from './follow/asked.ts'
import { changed, corrected, lineChanged, reversed } from './follow/birds.ts'
import { crossAgain, lasting, restated } from './follow/cross.ts'
import { mateSought, matesOffered, offersMates, othersSought } from './follow/mates.ts'
import { nextGeneration, youngMated } from './follow/young.ts'
import { hatchAgain, hatchOfCross, linesAgain, moneyOf } from './follow/money.ts'
import { aspectsOf, commonOf, goalsOf, isSolid, numberBefore } from './read/common.ts'
import { isToldPair, pairsIn } from './read/pairs.ts'
import { familyOf } from './variety.ts'
import type { AskBackQuestion, BirdRef, CrossQuestion, Question } from '../core/question.ts'
import type { Bird } from './bird.ts'
import type { Context } from './context.ts'
import type { Mating } from './follow/cross.ts'
import type { Reading } from './reading.ts'

/** The question that a follow-up is applied to: of a question back, its likeliest reading. */
export function baseOf(last: Question | undefined): Question | undefined {
  if (last?.kind !== 'ask-back') return last
  return last.options[0]?.question ?? last
}

function onCross(base: CrossQuestion, reading: Reading, context: Context): Question | undefined {
  return (
    hatchOfCross(base, reading, context) ??
    moneyOf(
      base.matings.map((cross) => ({ cross })),
      base,
      reading,
    ) ??
    mateSought(base, reading) ??
    corrected(base, reading) ??
    nextGeneration(base, reading) ??
    lineChanged(base, reading) ??
    changed(base, reading) ??
    reversed(base, reading) ??
    askedAgain(base, reading)
  )
}

function onOthers(base: Question, reading: Reading, context: Context): Question | undefined {
  const goals = goalsOf(reading)
  const birds = reading.scene.birds.filter(isSolid)
  switch (base.kind) {
    case 'partners': {
      const others = othersSought(base, reading)
      if (others) return others
      const about = reading.scene.changes
        .filter(({ how }) => how === 'about')
        .flatMap(({ birds: group }) => group.map((said) => birdOf(said)))
        .filter((bird) => isSolid(bird) && (bird.sex === undefined || bird.sex === base.wanted))
      if (birds.length === 0 && about.length > 0 && base.for.length > 0) return matesOffered(about, base, reading)
      if (birds.length > 0 && offersMates(birds, base, reading)) return matesOffered(birds, base, reading)
      if (birds.length > 0)
        return {
          ...base,
          for: birds.map(({ ref }) => ref),
          ...(birds[0]?.sex ? { wanted: birds[0].sex === 'M' ? 'F' : 'M' } : {}),
          ...(goals.length > 0 ? { goals } : {}),
        }
      return goals.length > 0 ? { ...base, goals } : undefined
    }
    case 'hatch':
      return hatchAgain(base, reading, context)
    case 'lines':
      return linesAgain(base, reading)
    case 'carrier':
      return moreChicks(base, reading)
    case 'parents':
      return birds.length > 0
        ? {
            ...base,
            sires: birds.filter(({ sex }) => sex !== 'F').map(({ ref }) => ref),
            dams: birds.some(({ sex }) => sex === 'F')
              ? birds.filter(({ sex }) => sex === 'F').map(({ ref }) => ref)
              : base.dams,
          }
        : undefined
    case 'fact':
      if (base.topic === 'bird' && birds.length === 0 && !base.mating) {
        const money = moneyOf(base.birds, base, reading)
        if (money) return money
      }
      return reading.scene.aspects.some((aspect) => aspect === 'why' || aspect === 'more') ||
        reading.has('plain', 'sure')
        ? base
        : undefined
    default:
      return undefined
  }
}

/** "and 5 more, all black": added to the brood; "now its 9": all of them so far. */
function moreChicks(base: Extract<Question, { kind: 'carrier' }>, reading: Reading): Question | undefined {
  const count = numberBefore(
    reading,
    ({ type, word }) => type === 'chick' || type === 'colour' || word === 'more' || word === 'other',
    3,
  )
  const [brood] = base.flock.broods
  if (count === undefined) return undefined
  const shows = reading.tokens.some(
    (token) => token.type === 'colour' && base.allele.toLowerCase().startsWith(token.colour.slice(0, 3)),
  )
  const sire = brood?.sire ?? 'the cock'
  const dam = brood?.dam ?? 'the hen'
  const before = brood?.chicks ?? []
  const total =
    reading.words.some((word) => /^(?:now|total|altogether|all|far)$/u.test(word)) && !reading.words.includes('more')
  const kept = total ? before.filter((told) => told.shows !== shows) : before
  const chicks = [...kept, { count: Math.round(count), shows }]
  return { ...base, flock: { ...base.flock, broods: [{ sire, dam, chicks }, ...base.flock.broods.slice(1)] } }
}

/** The bird that was asked for, put to the one that was told. */
function completed(last: AskBackQuestion, reading: Reading): Question | undefined {
  const bare = last.missing === 'variety' && last.options.every(({ question }) => question.kind === 'fact')
  if (last.missing !== 'other-bird' && last.missing !== 'birds' && !bare) return undefined
  const known = last.birds[0] ?? last.sire?.[0] ?? last.dam?.[0]
  const bird = reading.scene.birds.find(isSolid)
  if (!known || !bird) return undefined
  const parted = last.sire?.includes(known) ? 'F' : last.dam?.includes(known) ? 'M' : undefined
  const sex = bird.sex ?? parted ?? (/\b(?:roo|rooster|cock|cockerel)\b/iu.test(known.asWritten ?? '') ? 'F' : 'M')
  const mating: Mating = sex === 'M' ? { sire: bird.ref, dam: known } : { sire: known, dam: bird.ref }
  return {
    kind: 'cross',
    matings: [mating],
    aspects: aspectsOf(reading),
    ...commonOf(reading, [bird], [restated(mating)]),
  }
}

/** "and Sussex on the gold laced": breeds whose colour was told before, the other way about or with another. */
function ofSameBirds(base: Question | undefined, reading: Reading): CrossQuestion | undefined {
  const pairs = pairsIn(reading)
  if (base?.kind !== 'cross' || pairs.length !== 1 || !isToldPair(reading)) return undefined
  const known = base.matings.flatMap(({ sire, dam }) => [sire, dam])
  const [{ sire, dam, by }] = pairs as readonly [(typeof pairs)[number]]
  const open = [sire, dam].filter(({ others }) => others.length > 0 || isBare(sire) || isBare(dam))
  const before = (bird: Bird): BirdRef | undefined =>
    isBare(bird) ? known.find(({ breed }) => familyOf(breed ?? '') === familyOf(bird.ref.breed ?? '')) : undefined
  if (by === 'nothing' || open.length === 0 || (!before(sire) && !before(dam))) return undefined
  const matings = [{ sire: before(sire) ?? sire.ref, dam: before(dam) ?? dam.ref }]
  return crossAgain(base, matings, [...lasting(base), ...aspectsOf(reading)], reading)
}

/** A breed word without a colour. */
const isBare = ({ saidOf, ref }: Bird): boolean =>
  ref.breed !== undefined &&
  saidOf.parts.some(({ type }) => type === 'family') &&
  !saidOf.parts.some(({ type }) => type === 'colour')

/** A message that stands by itself is no follow-up. */
function standsAlone(reading: Reading): boolean {
  const { scene } = reading
  if (isToldPair(reading) || pairsIn(reading).some(({ by }) => by === 'sex')) return scene.changes.length === 0
  if (scene.wanted.some(({ firm, for: birds }) => firm && birds.length > 0)) return true
  const hearsay =
    reading.has('claim') &&
    reading.tokens.some(({ type }) => type === 'carries' || type === 'split') &&
    pronounless(reading)
  return hearsay || reading.words.length > 24
}

/** "my friend says hens can be split": no bird that was spoken of is meant. */
const pronounless = ({ words }: Reading): boolean =>
  !words.some((word) => /^(?:he|she|they|him|her|them|these|those|it|his|their|hes|shes|theyre)$/u.test(word))

/** Short enough to lean on what was said, and with something in it that does. */
export function followUp(context: Context, reading: Reading): Question | undefined {
  const { last } = context
  if (!last || last.kind === 'silent' || last.kind === 'error' || last.kind === 'decline') return undefined
  const young = youngMated(baseOf(last), reading) ?? ofSameBirds(baseOf(last), reading)
  if (young) return young
  if (standsAlone(reading)) return undefined
  if (last.kind === 'ask-back') {
    const complete = completed(last, reading)
    if (complete) return complete
  }
  const base = baseOf(last)
  if (!base) return undefined
  return base.kind === 'cross' ? onCross(base, reading, context) : onOthers(base, reading, context)
}
