// grammar/read/topic.ts: the record of core/topics.ts that the words point to, and the question made of it.
import { topicNamed, topicsIn } from '../../core/topics.ts'
import { aspectsOf, commonOf, isSolid, refsOf } from './common.ts'
import { isForebear, pairsIn } from './pairs.ts'
import type { FactQuestion } from '../../core/question.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'

/** A record is meant when its cues weigh this much; less will do where genes or a belief are plainly spoken of. */
export const surely = 15

export const perhaps = 8

/** Letters looked through for cues. */
export const mostLetters = 1200

/** What of the bird is asked. "big" is a weight only where it is asked how big. */
function ofBird(reading: Reading): Pick<FactQuestion, 'aspects'> {
  const sized = reading.words.some((word) => /^(?:how|size|sizes|weigh|weighs|weight|weights|heavy|large)$/u.test(word))
  const aspects = aspectsOf(reading).filter((aspect) => aspect !== 'size' || sized)
  return aspects.length > 0 ? { aspects } : {}
}

/** Rules of two birds that show one and the same thing, by the colour word for it. */
const ofTwoAlike: Readonly<Record<string, string>> = {
  'frizzle-x-frizzle': 'frizzle',
  'tufted-x-tufted': 'tufted',
  'short-leg-x-short-leg': 'short legged',
}
/** "frizzle to frizzle, once?": the rule is about two such birds. */
function twoAlike({ scene }: Reading, topic: string): Pick<FactQuestion, 'mating'> {
  const colour = ofTwoAlike[topic]
  const bird = scene.birds.find(
    ({ ref, saidOf }) =>
      ref.breed !== undefined && saidOf.parts.some((part) => part.type === 'colour' && part.colour === colour),
  )
  return bird ? { mating: { sire: bird.ref, dam: bird.ref } } : {}
}

/** Who is put to whom, where one mating is told. */
function matedIn(reading: Reading): Pick<FactQuestion, 'mating'> {
  const [pair, ...others] = pairsIn(reading)
  const told =
    pair &&
    others.length === 0 &&
    pair.by !== 'nothing' &&
    pair.sire.ref.breed !== undefined &&
    pair.dam.ref.breed !== undefined
  return told ? { mating: { sire: pair.sire.ref, dam: pair.dam.ref } } : {}
}

export const factOf = (reading: Reading, topic: string, birds: readonly Bird[], locus?: string): FactQuestion => ({
  kind: 'fact',
  topic,
  birds: refsOf(asksCarried(reading) ? birds.map(asNamed) : birds).slice(0, 6),
  ...twoAlike(reading, topic),
  ...matedIn(reading),
  ...(locus === undefined ? {} : { locus }),
  ...(topic === 'bird' ? ofBird(reading) : {}),
  ...commonOf(reading, birds),
})

export const birdsIn = ({ scene }: Reading): readonly Bird[] =>
  [...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams]), ...scene.birds].filter(
    (bird) => isSolid(bird) && bird.ref.breed !== undefined && !isForebear(bird),
  )

/** Spellings that the cues do not know, and what is named only to be left out. */
const plainly = (text: string): string =>
  text
    .replace(/\b(wing|feather|vent|dna|colou?r)[ -]sex\b(?!ing)/giu, '$1 sexing')
    .replace(
      /\b(?:bar|besides|other than|except(?: for| by)?|apart from|without|short of) (?:the )?vent\b(?: sexing)?/giu,
      '',
    )
    .replace(/\bsex[ -]?(?:lynx|sinks?|linx|links?|lynks?)\b/giu, 'sex link')

/** The strongest topic; `least` is how much its cues must weigh. */
export function topicOf(reading: Reading, least: number): string | undefined {
  const written = topicsIn(plainly(reading.text.slice(0, mostLetters)))[0]
  if (written && written.weight >= least) return written.id
  const mended = reading.corrections.length > 0 ? topicsIn(reading.words.slice(0, 200).join(' '))[0] : undefined
  return mended && mended.weight >= least ? mended.id : undefined
}

/** A belief or a rule is so plainly put that a goal named beside it, "for hens to lay", is no search. */
export const isPlainTopic = (reading: Reading, least = plainCue): boolean => topicOf(reading, least) !== undefined

const plainCue = 20

/** Genes, signs or beliefs are plainly spoken of. */
const isKnowledge = ({ has, scene, tokens }: Reading): boolean =>
  has('genetics', 'claim', 'define', 'carry', 'trueBreeding', 'inbreeding', 'vigour', 'earlobe', 'comb', 'wing') ||
  scene.aspects.some(
    (aspect) => aspect === 'sexing' || aspect === 'shell' || aspect === 'why' || aspect === 'welfare',
  ) ||
  tokens.some(({ type }) => type === 'gene' || type === 'trait')

/** "the best coop paint": no word of fowl beside it. */
export const isOtherBusiness = (reading: Reading): boolean =>
  reading.has('offTopic') &&
  birdsIn(reading).length === 0 &&
  !reading.has('genetics', 'carry', 'hatch', 'claim') &&
  reading.tokens.every(({ type }) => !['cock', 'hen', 'chick', 'gene', 'trait', 'sexlink', 'goal'].includes(type)) &&
  !reading.scene.aspects.some((aspect) => aspect === 'eggs' || aspect === 'sexing' || aspect === 'shell')

/** A belief or a rule that the words plainly point to. */
export const readTopic: Reader = (reading) => {
  const topic = topicOf(reading, surely)
  return topic === undefined || isOtherBusiness(reading) ? undefined : factOf(reading, topic, birdsIn(reading))
}

const plainBelief = 26

/** A belief of which nearly every word is there: "can cold eggs make more roosters" is no search for a cold yard. */
export const readBelief: Reader = (reading) => {
  const { scene, tokens } = reading
  const id = topicOf(reading, plainBelief)
  const verdict = id === undefined ? undefined : topicNamed(id)?.verdict
  const isOther =
    scene.matings.length > 0 ||
    scene.wanted.some(({ firm }) => firm) ||
    scene.tallies.length > 0 ||
    pairsIn(reading).length > 0 ||
    tokens.some(({ type }) => ['number', 'kin', 'carries', 'split'].includes(type)) ||
    reading.has('father', 'photo', 'carry')
  return id !== undefined && (verdict === 'false' || verdict === 'true') && !isOther
    ? factOf(reading, id, birdsIn(reading))
    : undefined
}

/** Hearsay is answered as such, whatever else it is about. */
export const readHearsay: Reader = (reading, context) => {
  if (!reading.has('hearsay')) return undefined
  return (
    readTopic(reading, context) ??
    (reading.has('newCock') ? factOf(reading, 'stored-sperm', birdsIn(reading)) : undefined)
  )
}

/** The same where the words point less plainly, but knowledge is asked for. */
export const readFaintTopic: Reader = (reading) => {
  const topic = isKnowledge(reading) ? topicOf(reading, perhaps) : undefined
  return topic === undefined || isOtherBusiness(reading) ? undefined : factOf(reading, topic, birdsIn(reading))
}

/** "do New Hampshires carry gold": asked, and so not taken for told. */
const asksCarried = ({ words, tokens }: Reading): boolean =>
  /^(?:do|does|can|could|is|are|would|will)$/u.test(words[0] ?? '') && !tokens.some(({ type }) => type === 'gene')

const asNamed = (bird: Bird): Bird => {
  if (bird.saidOf.carried.length === 0) return bird
  const { genotype: _, ...ref } = bird.ref
  return { ...bird, ref }
}
