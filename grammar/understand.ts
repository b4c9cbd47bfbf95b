// grammar/understand.ts: the door: a message and what was said before go in, a question and what to remember come out.
import { choose } from './choice.ts'
import { flockAnswer, flockAsked } from './flock/ask.ts'
import { flockTold } from './flock/tell.ts'
import { followUp } from './followUp.ts'
import { normalise } from './normalise.ts'
import { phaseTold, withPhase } from './phase.ts'
import { readingOf, type Reading } from './reading.ts'
import {
  readBareMating,
  readContextMissing,
  readLooksOnly,
  readMissing,
  readNoise,
  readPhoto,
  readPhotoSex,
  readPointing,
  readVague,
} from './read/askBack.ts'
import { readCarrier, readCountedCarrier } from './read/carrier.ts'
import { readCanHide } from './read/canHide.ts'
import { readChickCarries } from './read/chickCarries.ts'
import { readCounted } from './read/counted.ts'
import { readPurity } from './read/purity.ts'
import { readCross } from './read/cross.ts'
import { readSecondGeneration } from './read/secondGeneration.ts'
import { readAdvert, readCourtesy, readIllnessLast, readIllnessOrLaw, readOffTopic } from './read/decline.ts'
import { readPhotoBird } from './read/photoFact.ts'
import { readBirdFact } from './read/birdFact.ts'
import { readFeature } from './read/featureFact.ts'
import {
  readAutosomal,
  readBasket,
  readCarrying,
  readGeneAsked,
  readHiding,
  readLavenderFeather,
  readShell,
} from './read/geneFact.ts'
import {
  readBothHarmed,
  readKin,
  readKinMated,
  readNotPure,
  readOddChick,
  readTraitsMated,
  readUnpictured,
  readVigour,
  readWhichParent,
} from './read/matedFact.ts'
import { readHalves, readFirstCross, readMisread, readPureSexing, readSexing, readSexLuck } from './read/sexingFact.ts'
import { readBelief, readFaintTopic, readHearsay, readTopic } from './read/topic.ts'
import { readHatch } from './read/hatch.ts'
import { readLines } from './read/lines.ts'
import { readBestBreed, readStrategy, readWishes } from './read/wishes.ts'
import { readKeptYoung } from './read/keptYoung.ts'
import { readLinked } from './read/linked.ts'
import { isToldPair, pairsIn } from './read/pairs.ts'
import { readParents } from './read/parents.ts'
import { readPartners } from './read/partners.ts'
import { readWhichSire } from './read/whichSire.ts'
import { readSplitPair } from './read/splitPair.ts'
import { readSexLinkCock, readSexLinkHens } from './read/sexLinkCock.ts'
import type { Context } from './context.ts'
import type { Reader } from './read/common.ts'
import type { Question } from '../core/question.ts'

export type { Context } from './context.ts'

const silent: Question = { kind: 'silent' }

const isMated = (reading: Reading): boolean =>
  isToldPair(reading) || pairsIn(reading).some(({ by }) => by === 'sex') || isJoined(reading)
/** "Barred Rock and Welsummer, sexable?": no word tells the sexes, but a mating is asked about. */
const isJoined = (reading: Reading): boolean =>
  pairsIn(reading).some(({ by }) => by === 'nothing') &&
  reading.tokens.some(({ type }) => type === 'and' || type === 'plus') &&
  reading.scene.aspects.some((aspect) => aspect === 'sexing' || aspect === 'chicks')

/** Where no mating is told, a plain belief or rule comes first; where one is, it is answered. */
const readTopicUnlessMated: Reader = (reading, context) =>
  isMated(reading) && !asksLeave(reading) ? undefined : readTopic(reading, context)
/** "can I breed two tufted Araucanas": whether it may be done, of one kind of bird. */
const asksLeave = (reading: Reading): boolean =>
  /^(?:can|may|should|is it|ok|okay) /u.test(reading.words.join(' ')) &&
  !reading.tokens.some(({ type }) => type === 'over') &&
  pairsIn(reading).every(({ sire, dam }) => sire.said === dam.said)

const readNoiseUnlessMated: Reader = (reading, context) => (isMated(reading) ? undefined : readNoise(reading, context))
const readHearsayUnlessMated: Reader = (reading, context) =>
  isMated(reading) || (reading.has('carry') && reading.has('test')) ? undefined : readHearsay(reading, context)
/** That one breed sexes itself is answered of that breed, not of autosexing in general. */
const readFaintTopicOrBreed: Reader = (reading, context) => {
  const topic = readFaintTopic(reading, context)
  const general = topic?.kind === 'fact' && topic.topic === 'autosexing' && reading.has('claim')
  return (general ? readPureSexing(reading, context) : undefined) ?? topic
}

/** A follow-up with nothing before it. */
const readDangling: Reader = (reading) => (isDangling(reading) ? readContextMissing(reading) : undefined)
const isDangling = (reading: Reading): boolean => {
  const { scene, has, words, tokens } = reading
  const text = words.join(' ')
  const pointing =
    /\b(?:it|that|they|them|those)\b.*\b(?:too|also|as well|then|though|tho|again)$/u.test(text) &&
    tokens.some(({ type }) => type === 'hen' || type === 'cock' || type === 'kin' || type === 'chick')
  const leaning = scene.changes.length > 0 || pointing || has('sure', 'plain', 'nextGeneration')
  const strange = tokens.filter(({ type }) => type === 'unknown').length
  const owned = tokens.some(({ type }) => type === 'my') && tokens.some(({ type }) => type === 'hen' || type === 'cock')
  const others =
    words.some((word) => /^(?:your|yall|anyone|everyone|anybody|everybody|folks|guys)$/u.test(word)) ||
    /\bdo (?:you|u|ya)\b/u.test(words.join(' '))
  const opens = /^(?:and |so |but |ok )?(?:do|does|is|are|can|will|would|could)\b/u.test(text)
  const asking = reading.asks || (pointing && opens) || has('question') || scene.changes.length > 0
  return (
    !others &&
    asking &&
    words.length <= (leaning ? 14 : 7) &&
    scene.matings.length === 0 &&
    (leaning || (scene.aspects.length > 0 && strange <= 1 && !owned)) &&
    !scene.birds.some((bird) => bird.ref.breed !== undefined) &&
    !has('offTopic', 'health', 'law')
  )
}

/** A mate that is plainly sought, for birds that are named, is not taken for talk of meat or money. */
const readFirmPartners: Reader = (reading, context) =>
  !(isToldPair(reading) && reading.scene.wanted.every(({ sex }) => sex === undefined)) &&
  (isFirm(reading) || isCockSought(reading)) &&
  !reading.has('father', 'carry', 'howManyHens')
    ? readPartners(reading, context)
    : undefined
const isFirm = ({ scene }: Reading): boolean =>
  scene.wanted.some(({ firm, for: birds }) => firm && birds.some(({ named }) => named))
/** "need a rooster": one male is sought outright, for hens that are named. */
const isCockSought = ({ scene, tokens }: Reading): boolean =>
  scene.wanted.some(({ sex }) => sex === 'M') &&
  scene.birds.some((bird) => bird.named && bird.ref.breed !== undefined && bird.sex !== 'M') &&
  !scene.birds.some((bird) => bird.named && bird.sex === 'M') &&
  tokens.some((token) => token.type === 'cock' && !token.many && !token.parent)

/** In order: the first that claims the message has it. */
/** A genotype that cannot be is told before anything else. */
const readFault: Reader = ({ scene }) => {
  const birds = [...scene.birds, ...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])]
  const fault = birds.map((bird) => bird.fault).find((found) => found !== undefined)
  return fault && { kind: 'error', fault }
}

/** Two breeds side by side, but a rule is asked about. */
const readTopicOfPair: Reader = (reading, context) =>
  pairsIn(reading).every(({ by }) => by === 'nothing') && reading.has('trueBreeding', 'define', 'inbreeding')
    ? readFaintTopic(reading, context)
    : undefined

const readers: readonly Reader[] = [
  readFault,
  readChickCarries,
  readSplitPair,
  readCountedCarrier,
  readCanHide,
  readNoiseUnlessMated,
  readBareMating,
  readPhotoBird,
  readWhichSire,
  readIllnessOrLaw,
  readHearsayUnlessMated,
  readGeneAsked,
  readBelief,
  readHatch,
  readKeptYoung,
  readHalves,
  readSexLuck,
  readMisread,
  readLavenderFeather,
  readSexLinkCock,
  readSexLinkHens,
  readFirmPartners,
  readBasket,
  readLines,
  readPurity,
  readNotPure,
  readUnpictured,
  readTraitsMated,
  readBothHarmed,
  readWhichParent,
  readCarrier,
  readParents,
  readPartners,
  readHiding,
  readBestBreed,
  readFirstCross,
  readAutosomal,
  readOddChick,
  readCounted,
  readSecondGeneration,
  readFeature,
  readTopicUnlessMated,
  readCarrying,
  readTopicOfPair,
  readLooksOnly,
  readKinMated,
  readCross,
  readStrategy,
  readFaintTopicOrBreed,
  readKin,
  readPureSexing,
  readPhotoSex,
  readBirdFact,
  readShell,
  readSexing,
  readVigour,
  readWishes,
  readDangling,
  readPhoto,
  readAdvert,
  readMissing,
  readVague,
  readPointing,
  readIllnessLast,
  readOffTopic,
]

function questionOf(reading: Reading, context: Context): Question {
  const told =
    choose(reading, context.pending) ??
    readCourtesy(reading, context) ??
    readLinked(reading, context) ??
    followUp(context, reading)
  if (told) return told
  for (const read of readers) {
    const question = read(reading, context)
    if (question) return question
  }
  return silent
}

/** What the next message may lean on. Thanks and chatter in between change nothing. */
function remembered(context: Context, question: Question): Context {
  if (question.kind === 'silent' || question.kind === 'decline' || question.kind === 'error') return context
  const { pending: _, ...rest } = context
  return question.kind === 'ask-back' && question.options.length > 0
    ? { ...rest, last: question, pending: question.options }
    : { ...rest, last: question }
}

/**
 * What a message asks.
 *
 * @param text at most 64 KB; beyond that the question is an `error`
 * @returns the question, and the context for the next message of the same keeper
 */
export function understand(text: string, context: Context): { readonly question: Question; readonly context: Context } {
  if (!context.addressed && !context.listen) return { question: silent, context }
  const clean = normalise(text)
  if (!clean.ok) return { question: { kind: 'error', fault: clean.fault }, context }
  const { text: plain, phase } = phaseTold(clean.value)
  const reading = readingOf(plain)
  const told = flockTold(reading, context.flock)
  if (told) {
    const { flock } = told
    const asked = told.asked === '' ? undefined : flockAsked(readingOf(told.asked), flock, flockAnswer(reading, flock))
    const question = asked?.question ?? flockAnswer(reading, flock)
    return { question, context: { ...remembered(context, question), flock: asked?.flock ?? flock } }
  }
  const asked = flockAsked(reading, context.flock, context.last)
  if (asked)
    return { question: asked.question, context: { ...remembered(context, asked.question), flock: asked.flock } }
  const question = withPhase(questionOf(reading, context), phase)
  return { question, context: remembered(context, question) }
}
