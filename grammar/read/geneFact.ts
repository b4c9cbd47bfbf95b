// grammar/read/geneFact.ts: what carries, hides or stands over what, and the colour of shells: asked of genes and not of one bird.
import { breedNamed } from '../../core/breeds.ts'
import { loci } from '../../core/data/loci.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import { birdsIn, factOf, perhaps, surely, topicOf } from './topic.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'
import type { FactQuestion } from '../../core/question.ts'

/** "blue and olive in the box, which breeds": shells of two colours or more, to be sold together. */
const isBoxOfColours = ({ words, scene, tokens }: Reading): boolean => {
  const shells = tokens.filter(
    (token) =>
      (token.type === 'goal' && token.goal.endsWith('-eggs')) ||
      (token.type === 'colour' && /^(?:blue|green|olive|brown|white|chocolate)$/u.test(token.word)),
  )
  return (
    new Set(shells.map(({ word }) => word)).size > 1 &&
    words.some((word) =>
      /^(?:box|boxes|carton|cartons|rainbow|assortment|stall|stand|mix|mixed|variety|dozen)$/u.test(word),
    ) &&
    (scene.aspects.includes('eggs') || scene.goals.length > 0) &&
    scene.matings.length === 0
  )
}

/** "color basket: which 2 roosters": shells of many colours, with no birds to begin from. */
export const readBasket: Reader = (reading) =>
  (reading.words.some((word) => /^baskets?$/u.test(word)) || isBoxOfColours(reading)) && birdsIn(reading).length === 0
    ? factOf(reading, 'egg-basket', [])
    : undefined

/** Shell colours, and nothing else that a record is kept of. */
export const readShell: Reader = (reading) => {
  const { scene, tokens } = reading
  if (scene.aspects.includes('shell') && tokens.some(({ type }) => type === 'cock') && birdsIn(reading).length === 0)
    return factOf(reading, 'cock-gives-egg-colour', [])
  const shell =
    scene.goals.some((goal) => goal.endsWith('-eggs')) ||
    scene.aspects.some((aspect) => aspect === 'shell' || aspect === 'eggs')
  if (!shell || !reading.has('define', 'question', 'claim') || isToldPair(reading)) return undefined
  const colour = tokens.find((token) => token.type === 'colour')
  const blue =
    scene.goals.some((goal) => /^(?:blue|green|olive)/u.test(goal)) ||
    (colour?.type === 'colour' && colour.colour === 'blue')
  const brown =
    scene.goals.some((goal) => /^(?:brown|dark)/u.test(goal)) ||
    (colour?.type === 'colour' && colour.colour === 'brown')
  return blue || brown ? factOf(reading, blue ? 'blue-egg-gene' : 'brown-egg', birdsIn(reading)) : undefined
}

/** Birds of both sexes are named. */
const isMixed = (reading: Reading): boolean => pairsIn(reading).some(({ by }) => by === 'sex')

/** "is my blue roo carrying black": the other half of blue. */
const isBlackInBlue = ({ tokens }: Reading): boolean =>
  tokens.some((token, i) => token.type === 'colour' && token.colour === 'black' && tokens[i - 1]?.type === 'carries') &&
  tokens.some((token) => token.type === 'colour' && (token.colour === 'blue' || token.colour === 'splash'))

/** "my BCM hen ..., can a black bird carry splash": the bird that is named, and no mate of a black one. */
function ofNamed(told: FactQuestion): FactQuestion {
  const { mating: _, ...fact } = told
  const named = fact.birds.filter(({ breed }) => breed !== undefined && !breed.endsWith(' bird'))
  return named.length > 0 ? { ...fact, birds: named } : told
}

/** Blue shows on black feathers alone: a buff, red or white bird may have it unseen. */
const hasBlack = (reading: Reading): boolean => {
  const birds = birdsIn(reading)
  const colour = ({ ref }: Bird): string => breedNamed(ref.breed ?? '')?.colour ?? ref.breed ?? ''
  return birds.length === 0 || birds.some((bird) => !/\b(?:white|buff|red|pyle)\b/iu.test(colour(bird)))
}

/** "can a black hen carry blue": not on the Z, so that a hen may have it as well as a cock. */
export const readAutosomal: Reader = (reading) => {
  const isCarrying = reading.has('carry') || reading.tokens.some(({ type }) => type === 'carries')
  if (!isCarrying || isToldPair(reading)) return undefined
  const carried = reading.tokens.flatMap((token, i) =>
    reading.tokens[i - 1]?.type === 'carries' ? traitsIn([token]) : [],
  )
  const trait = traits[carried[0] ?? '']
  const splash = reading.tokens.some(
    (token, i) => token.type === 'colour' && token.colour === 'splash' && reading.tokens[i - 1]?.type === 'carries',
  )
  if (isBlackInBlue(reading) && !splash) return factOf(reading, 'locus', birdsIn(reading), 'Bl')
  const isBlue = trait?.allele === 'Bl' || splash
  return isBlue && (reading.asks || reading.has('define', 'claim', 'question'))
    ? ofNamed(factOf(reading, hasBlack(reading) ? 'blue-hidden' : 'blue-unseen', birdsIn(reading)))
    : undefined
}

/** "what hens so my lavenders dont have bad feathers": the fault that goes with lavender. */
export const readLavenderFeather: Reader = (reading) => {
  const { words } = reading
  const lavender = [...birdsIn(reading), ...reading.scene.birds].some(({ ref }) => /Lavender/u.test(ref.breed ?? ''))
  const feather = words.some((word) => /^(?:feathers?|feathering|tails?)$/u.test(word))
  const fault = words.some((word) =>
    /^(?:bad|better|poor|shred\w*|fray\w*|brittle|ratty|ragged|scruffy|fix|fixed|improve|improved|quality)$/u.test(
      word,
    ),
  )
  return lavender && feather && fault && !isToldPair(reading)
    ? factOf(reading, 'lavender-feather', birdsIn(reading))
    : undefined
}

/** Splits and carriers in general: what shows them, who can be one, how to test. */
export const readCarrying: Reader = (reading) => {
  const { has, tokens, words } = reading
  if (!has('carry') || isToldPair(reading)) return undefined
  const carried = tokens.flatMap((token, i) => (tokens[i - 1]?.type === 'carries' ? traitsIn([token]) : []))
  const trait = traits[carried[0] ?? '']
  const onZ = trait !== undefined && loci[trait.locus].on === 'Z'
  if (onZ && tokens.some(({ type }) => type === 'hen')) return factOf(reading, 'hens-not-split', birdsIn(reading))
  if (words.some((word) => /^(?:see|look|looks|tell|visible|visual|visibly|sign|signs|show|spot)$/u.test(word)))
    return factOf(reading, 'splits-look-different', birdsIn(reading))
  if (has('test')) return factOf(reading, 'test-mating', birdsIn(reading))
  return trait && (has('define', 'claim', 'question') || reading.asks) && !isMixed(reading)
    ? factOf(reading, 'locus', birdsIn(reading), trait.locus)
    : undefined
}

/** What stands over what: "is silver dominant over gold", "is gold hiding under white". */
export const readHiding: Reader = (reading) => {
  const { tokens, words, scene } = reading
  if (
    [...scene.birds, ...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])].some((bird) =>
      bird.saidOf.parts.some(({ type }) => ['breed', 'family', 'cock', 'hen'].includes(type)),
    )
  )
    return undefined
  const said = (pattern: RegExp): boolean => words.some((word) => pattern.test(word))
  const colours = tokens.filter(({ type }) => type === 'colour')
  if (
    said(/^(?:hid|hide|hides|hiding|hidden|mask|masks|masked|masking|underneath|under)$/u) &&
    said(/^(?:hid|hide|hides|hiding|hidden|mask|masks|masked|masking)$/u) &&
    colours.length > 1
  )
    return factOf(
      reading,
      topicOf(reading, perhaps) ?? (traitsIn(colours).includes('barring') ? 'what-hides-barring' : 'what-hides-silver'),
      [],
    )
  if (
    said(/^(?:dominant|recessive|epistatic|hemizygous|homozygous|heterozygous)$/u) &&
    !tokens.some(({ type }) => type === 'gene')
  ) {
    const trait = traits[traitsIn(colours)[0] ?? '']
    const topic = topicOf(reading, surely) ?? (trait === undefined ? topicOf(reading, perhaps) : undefined)
    if (topic !== undefined) return factOf(reading, topic, birdsIn(reading))
    if (trait) return factOf(reading, 'locus', [], trait.locus)
    return said(/^hemizygous$/u) ? factOf(reading, 'hens-not-split', []) : undefined
  }
  return undefined
}

const asksLethal = /\b(?:lethals?|deadly|kills?|killer|fatal|dies?|deaths?)\b/u
const asksOnZ = /\b(?:sex[ -]?link(?:ed)?|autosomal|on the z|z linked)\b/u

/** "is lavender sex linked", "does naked neck kill the chicks if doubled": asked of one gene, and of no mating. */
export const readGeneAsked: Reader = (reading) => {
  const { tokens, words, scene } = reading
  const breeds = birdsIn(reading).filter(({ ref }) => !/ bird$|^(?:Naked Neck|Frizzle)$/u.test(ref.breed ?? ''))
  const isWithin = words.includes('in') // "sex linked in Orpingtons"
  if ((breeds.length > 0 && !isWithin) || isToldPair(reading) || scene.matings.length > 0 || words.length > 12)
    return undefined
  const [id, ...others] = traitsIn(
    tokens.filter(({ type }) => type === 'colour' || type === 'trait' || (type === 'breed' && !isWithin)),
  )
  const trait = traits[id ?? '']
  if (trait === undefined || others.length > 0) return undefined
  const said = words.join(' ')
  const features = [
    ...(asksLethal.test(said) ? (['lethal'] as const) : []),
    ...(asksOnZ.test(said) ? (['sex-linked'] as const) : []),
  ]
  const asked = /^(?:is|are|does|do|can|will|so)\b/u.test(said)
  return features.length > 0 && asked && !/\bchicks?\b.*\bsex/u.test(said)
    ? { ...factOf(reading, 'locus', breeds, trait.locus), features }
    : undefined
}
