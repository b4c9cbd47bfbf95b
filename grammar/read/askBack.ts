// grammar/read/askBack.ts: birds are spoken of, but one thing is missing: the question back that asks for it.
import { commonOf, isSolid, refsOf, type Reader } from './common.ts'
import { isToldPair } from './pairs.ts'
import type { Reading } from '../reading.ts'
import type { Bird } from '../bird.ts'
import type { AskBackQuestion, BirdRef } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'

const ask = (
  reading: Reading,
  missing: AskBackQuestion['missing'],
  birds: readonly Bird[],
  about?: string,
): AskBackQuestion => {
  const of = (sex: Sex): readonly BirdRef[] =>
    refsOf(birds.filter((bird) => bird.sex === sex && hasPart(bird, missing)))
  const [sire, dam] = [of('M'), of('F')]
  return {
    kind: 'ask-back',
    missing,
    ...(about === undefined || about === '' ? {} : { about }),
    options: [],
    birds: refsOf(birds.filter((bird) => bird.sex === undefined || !hasPart(bird, missing))),
    ...(sire.length > 0 ? { sire } : {}),
    ...(dam.length > 0 ? { dam } : {}),
    ...commonOf(reading),
  }
}
/** "mum Cuckoo Marans", "black roo with which other bird": its part is told, and it is not the bird that is looked at. */
const hasPart = ({ saidOf }: Bird, missing: AskBackQuestion['missing']): boolean =>
  missing === 'other-bird' || saidOf.parts.some((part) => (part.type === 'cock' || part.type === 'hen') && part.parent)

/** "the big red one and the speckled one": birds by their looks, and no breed. */
export const readLooksOnly: Reader = (reading) => {
  const { scene, tokens } = reading
  const isPointed = ({ saidOf }: Bird): boolean =>
    saidOf.parts.some(({ type, word }) => type === 'colour' && word.endsWith(' ones')) &&
    saidOf.parts.every(({ type }) => type === 'colour' || type === 'filler' || type === 'my')
  const birds = [...scene.birds, ...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])]
  const pointed = birds.filter(isPointed)
  const named = tokens.some(({ type }) => type === 'breed' || type === 'family' || type === 'gene')
  return pointed.length > 1 && pointed.length === birds.length && !named ? ask(reading, 'birds', pointed) : undefined
}

/** "the old hen with the young roo": one put to the other, and no bird named. */
export const readBareMating: Reader = (reading) => {
  const { scene, tokens } = reading
  const birds = scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])
  if (reading.has('inbreeding')) return undefined
  const bare = birds.length > 0 && [...birds, ...scene.birds].every(({ named, ref }) => !named && !ref.cross)
  const only = tokens.every(({ type }) =>
    ['filler', 'cock', 'hen', 'over', 'under', 'my', 'stop', 'cross'].includes(type),
  )
  const strange = tokens.filter(({ type }) => type === 'unknown').length
  const apart =
    birds.length === 0 &&
    strange > 0 &&
    strange <= 3 &&
    tokens.some(({ type }) => type === 'over' || type === 'under') &&
    (['M', 'F'] as const).every((sex) => scene.birds.some((bird) => bird.sex === sex)) &&
    scene.birds.every(({ named, ref }) => !named && !ref.cross) &&
    tokens.every(({ type }) =>
      ['filler', 'cock', 'hen', 'over', 'under', 'my', 'stop', 'cross', 'unknown'].includes(type),
    )
  return (bare && only) || apart ? ask(reading, 'birds', []) : undefined
}

/** A picture, or words that point at something unseen. */
export const readPhoto: Reader = (reading) =>
  reading.has('photo') && (reading.asks || reading.has('question'))
    ? ask(reading, 'look', reading.scene.birds.filter(isSolid))
    : undefined

/** A picture of a named bird, and "boy?", "cockerel or pullet": its age decides what to look at, not what is known of the breed. */
export const readPhotoSex: Reader = (reading, context) => {
  const sexes = reading.tokens.some((token) => (token.type === 'cock' || token.type === 'hen') && !token.many)
  const birds = refsOf(reading.scene.birds.filter(isSolid))
  if (!(sexes || reading.scene.aspects.includes('sexing')) || birds.length === 0 || isToldPair(reading))
    return undefined
  const photo = readPhoto(reading, context)
  const older = reading.words.some((word) => /^(?:weeks?|wks?|months?|mths?)$/u.test(word))
  return photo && older ? { kind: 'fact', topic: 'later-signs', birds, ...commonOf(reading) } : photo
}

/** "Rock hen": which of them, and what of each. */
const whichOne = (reading: Reading, bird: Bird): AskBackQuestion => ({
  ...ask(reading, 'variety', [bird], bird.saidOf.parts.find(({ type }) => type === 'family')?.said ?? bird.said),
  options: [bird.ref, ...bird.others].slice(0, 5).map((ref) => ({
    label: ref.breed ?? bird.said,
    question: { kind: 'fact' as const, topic: 'bird', birds: [ref], ...commonOf(reading) },
  })),
})

/** One bird and no other, or birds by their looks only. */
export const readMissing: Reader = (reading) => {
  const { scene, tokens } = reading
  const solid = scene.birds.filter(isSolid)
  const mated = scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams]).filter(isSolid)
  const birds = [...mated, ...solid]
  if (scene.wanted.some(({ firm }) => firm) && (reading.asks || reading.has('question')))
    return ask(reading, 'birds', birds)
  const [only, ...rest] = birds
  const mates = [...scene.birds, ...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])]
  if (
    only?.sex &&
    rest.length === 0 &&
    scene.matings.length > 0 &&
    mates.some(({ sex }) => sex !== undefined && sex !== only.sex)
  )
    return ask(reading, 'other-bird', birds, only.said) // "a Marans cock over my hens"
  const partBred = /\b(?:three[- ]quarters?|3\/4|75 ?%|quarter|1\/4)(?:[- ]bred)? /iu.exec(
    reading.text.slice(0, 200),
  )?.[0]
  if (only && rest.length === 0 && partBred) return ask(reading, 'other-bird', birds, partBred + only.said)
  const mateSought = only?.sex !== undefined || tokens.some(({ type }) => type === 'sexlink')
  if (only && rest.length === 0 && only.others.length > 0 && !mateSought) return whichOne(reading, only)
  if (birds.length === 1) return ask(reading, 'other-bird', birds, birds[0]!.said)
  if (birds.length > 1) return ask(reading, 'which-is-male', birds.slice(0, 6))
  const looks = tokens.filter(({ type }) => type === 'colour')
  const joins = tokens.some(({ type }) => type === 'over' || type === 'under' || type === 'cross' || type === 'sexlink')
  const chicks = tokens.some(({ type }) => type === 'chick' || type === 'cock' || type === 'hen')
  if (looks.length > 0 && (joins || chicks)) return ask(reading, 'birds', scene.birds)
  if (joins && chicks && (reading.asks || scene.matings.length > 0)) return ask(reading, 'birds', [])
  if (scene.matings.length > 0) return ask(reading, 'birds', [])
  return undefined
}

const vague =
  /^(?:this|that|these|those|it|its|them|they|one|ones|the|two|both|him|her|he|she|with|and|or|is|are|was|will|would|can|could|should|do|does|i|we|you|what|whats|which|who|how|about|work|works|chicks?|babies|offspring|good|ok|okay|best|better|get|put|use|be|a|an|to|on|of|then|so|for|please|any|cross|mix|my|our|bad|give|gives|me|us|do|have|make|makes|produce|together|breeding|breed|for|if|now|pair|birds?|when|worth|it|there|something|these|other|another|girls|boys|hens|roo)$/u

/** "will it work", "can I cross the two", "my rooster and my hens, what will I get". */
export const readVague: Reader = (reading) => {
  const { tokens, words, has } = reading
  if (has('offTopic', 'health', 'law')) return undefined
  const letters = words.filter((word) => /\p{L}/u.test(word))
  const pointing = letters.length > 0 && letters.length <= 8 && letters.every((word) => vague.test(word))
  const sexes = (['cock', 'hen'] as const).every((sex) => tokens.some(({ type }) => type === sex))
  const joined = sexes && (reading.asks || has('question'))
  const strange = tokens.some(({ type }) => type === 'unknown')
  const asked =
    tokens.length <= 6 &&
    !strange &&
    (reading.asks || has('question')) &&
    tokens.some(({ type }) => type === 'hen' || type === 'cock' || type === 'chick')
  return pointing || joined || asked ? ask(reading, 'birds', []) : undefined
}

const mates = /\b(?:put|keep|use|match|mate|pair|breed|cross|run|do|work|go|suit|good)\b/u
/** "is he a good match for her", "can I put him with them or not", "which of the two boys do I keep": of birds that nobody named. */
export const readPointing: Reader = (reading) => {
  const { tokens, words, has, scene } = reading
  const text = words.join(' ')
  if (
    words.length > 10 ||
    has('offTopic', 'health', 'law', 'photo') ||
    tokens.some(({ type }) => type === 'breed' || type === 'family' || type === 'gene')
  )
    return undefined
  const pointed = tokens.filter(
    ({ type, word }) =>
      type === 'cock' ||
      type === 'hen' ||
      type === 'colour' ||
      /^(?:he|she|him|her|them|they|one|ones|it|mine|that one|this one)$/u.test(word),
  )
  const asked =
    reading.asks ||
    has('question') ||
    /^(?:is|are|can|could|should|would|will|do|does|which|what|who|may|put|cross|mate|breed|run)\b/u.test(text)
  const strange = tokens.filter(({ type }) => type === 'unknown').length
  const mating =
    mates.test(text) &&
    (pointed.length > 1 || /\bwould (?:the|that|this) \w+ (?:one )?(?:do|work|suit)\b|\bwhich\b/u.test(text))
  return asked && mating && strange <= 1 && !scene.aspects.some((aspect) => aspect !== 'welfare')
    ? ask(reading, 'birds', [])
    : undefined
}

/** Readable, but with nothing in it to read: signs only, one letter, symbols, a word said over and over. */
export const readNoise: Reader = (reading) => {
  const letters = reading.text.replace(/[^\p{L}\p{N}]/gu, '')
  const words = new Set(reading.words.filter((word) => /[\p{L}\p{N}]/u.test(word)))
  const repeated = reading.words.filter((word) => /[\p{L}\p{N}]/u.test(word)).length > 6 && words.size <= 2
  const oneRun = words.size === 1 && letters.length > 24
  const code =
    /\b(?:select|insert|drop|delete|update)\b.+\b(?:from|into|table|where|set)\b|[{}<>;]{2,}|\$\{|\bfunction\b/iu.test(
      reading.text.slice(0, 2000),
    )
  const bare = reading.words.every((word) => word.replace(/[^\p{L}]/gu, '').length < 2)
  return letters.length < 3 || bare || repeated || oneRun || code ? ask(reading, 'birds', []) : undefined
}

/** Only words that point back, and nothing to point to. */
export const readContextMissing = (reading: Reading): AskBackQuestion => ask(reading, 'context', [])
