// grammar/read/matedFact.ts: a rule asked about birds that are mated: an impure parent, kin, harm, an odd chick, who must have the mark.
import { breedNamed, genesOf } from '../../core/breeds.ts'
import { loci } from '../../core/data/loci.ts'
import { traitsIn } from '../bird.ts'
import { marks } from '../partTaken.ts'
import { traits } from '../words/traits.ts'
import { chicksCounted } from './chicks.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import { birdsIn, factOf } from './topic.ts'
import type { LocusId } from '../../core/data/loci.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'

/** Chicks counted with a look, and others counted without it: "6 white 6 not white", "5 barred and 4 plain". */
function countedBoth({ scene, tokens, words }: Reading): readonly string[] {
  const lacking = scene.tallies.filter(({ not, look }) => not && look.length > 0)
  const counted = tokens.filter(
    ({ type }, i) => (type === 'colour' || type === 'trait') && tokens[i - 1]?.type === 'number',
  )
  const both = traitsIn(chicksCounted(tokens).flatMap(({ look }) => look))
  if (both.includes('silver') && both.includes('gold')) return ['silver']
  const dark = chicksCounted(tokens).some(
    ({ look, not }) => !not && look.length > 0 && look.every(({ word }) => /^(?:black|red|brown|dark)$/u.test(word)),
  )
  if (dark && words.some((word) => /^(?:why|how|odd|wrong|weird|normal)$/u.test(word))) return ['recessive white'] // against a white parent
  if (halfAndHalf({ words }))
    return traitsIn(tokens.filter(({ type }, i) => type === 'colour' && tokens[i - 1]?.type === 'half'))
  const spots =
    /\b\d+ (?:\w+ )?(?:no|without|with no|with out|had no|have no|dont have|didnt have) (?:a )?(?:head )?(?:spots?|dots?|bars?|barring|stripes)\b/u
  if (spots.test(words.join(' '))) return ['barring']
  const rest = /\d+ (?:not|plain|without|smooth|normal|clean|solid|none|unbarred|feathered|arent|were not)\b/u.test(
    words.join(' '),
  )
  return traitsIn([...lacking.flatMap(({ look }) => look), ...(rest ? counted : [])])
}

/** "babies half white half red". */
const halfAndHalf = ({ words }: Pick<Reading, 'words'>): boolean =>
  /\bhalf (?:of them )?(?:\w+ )?\w+ (?:and |the )?(?:other )?half \w+/u.test(words.slice(0, 80).join(' '))

/** "White Leghorn x RIR: 6 white, 6 not": chicks without what a pure parent must give to all. */
export const readNotPure: Reader = (reading) => {
  if (!isToldPair(reading) && !pairsIn(reading).some(({ by }) => by === 'sex')) return undefined
  const dominants = countedBoth(reading).flatMap((id) =>
    id === 'recessive white' ? ['I'] : traits[id]?.seen === true ? [traits[id].allele] : [],
  )
  const pairs = pairsIn(reading)
  const isPure = ({ ref, saidOf }: Bird, sex: 'M' | 'F'): boolean => {
    const breed = ref.breed === undefined ? undefined : breedNamed(ref.breed)
    const fixed = breed ? Object.entries(genesOf(breed)) : []
    const gives = fixed.some(
      ([locus, gene]) =>
        gene.kind === 'fixed' && dominants.includes(gene.allele) && (sex === 'M' || loci[locus as LocusId].on !== 'Z'),
    )
    const asked = reading.words.some((word) => /^(?:pure|homozygous|clean)$/u.test(word))
    const shown = traitsIn(saidOf.parts.filter(({ type }) => type === 'colour' || type === 'trait' || type === 'breed'))
    const white = ref.breed === 'White bird' && dominants.includes('I') && halfAndHalf(reading)
    return (
      ref.genotype === undefined &&
      (white || gives || (asked && shown.some((id) => dominants.includes(traits[id]?.allele ?? ''))))
    )
  }
  return pairs.some(({ sire, dam }) => isPure(sire, 'M') || isPure(dam, 'F'))
    ? factOf(
        reading,
        'parent-not-pure',
        pairs.flatMap(({ sire, dam }) => [sire, dam]),
      )
    : undefined
}

/** What two birds of one trait do together, where no breed and so no picture is told. */
const ofTraits: Readonly<Record<string, string>> = {
  Rp: 'rumpless',
  Cr: 'crested-skull',
  Cp: 'short-leg-x-short-leg',
  Et: 'tufted-x-tufted',
  F: 'frizzle-x-frizzle',
}

/** "can you breed rumpless to rumpless", "crested x crested, is it true about the brains". */
export const readTraitsMated: Reader = (reading) => {
  const [pair, ...others] = pairsIn(reading)
  if (!pair || others.length > 0 || !isToldPair(reading)) return undefined
  const isBare = ({ ref }: Bird): boolean => ref.breed === undefined || ref.breed.endsWith(' bird')
  const lociOf = ({ saidOf }: Bird): readonly string[] =>
    traitsIn(saidOf.parts.filter(({ type }) => type === 'trait' || type === 'colour')).flatMap(
      (id) => traits[id]?.locus ?? [],
    )
  const [one, other] = [lociOf(pair.sire), lociOf(pair.dam)]
  const shared = one.find((locus) => other.includes(locus) && ofTraits[locus] !== undefined)
  const judged =
    reading.scene.aspects.includes('welfare') ||
    /\b(?:can|should|may|ok|true|bad|brains?|skulls?|holes?|wrong)\b/u.test(reading.words.join(' '))
  const counted = reading.scene.aspects.some((aspect) => aspect === 'shares' || aspect === 'chicks')
  return isBare(pair.sire) && isBare(pair.dam) && shared !== undefined && judged && !counted && !reading.manner.symbols
    ? factOf(reading, ofTraits[shared]!, [pair.sire, pair.dam])
    : undefined
}

/** "both my Japanese bantams have short legs, what is the risk": two of one kind, and harm is asked about. */
export const readBothHarmed: Reader = (reading) => {
  const { tokens, words, scene } = reading
  const both = /\b(?:both|pair|two of|a trio|each other|together)\b/u.test(words.slice(0, 80).join(' '))
  const told = traitsIn(tokens.filter(({ type }) => type === 'trait' || type === 'colour'))
  const locus = told.map((id) => traits[id]?.locus ?? '').find((one) => one in ofTraits)
  const kinds = new Map(birdsIn(reading).map((bird) => [bird.ref.breed, bird] as const))
  const [bird] = kinds.values()
  if (!both || locus === undefined || !bird || kinds.size > 1 || pairsIn(reading).length > 0) return undefined
  const { breed, line } = bird.ref
  const ref = { breed, ...(line === undefined ? {} : { line }) }
  return scene.aspects.includes('welfare') && !reading.has('carry')
    ? { ...factOf(reading, ofTraits[locus]!, [bird]), mating: { sire: ref, dam: ref } }
    : undefined
}

/** "will Sebright x Silkie be hen feathered": a trait that no picture of the chicks shows. */
export const readUnpictured: Reader = (reading) =>
  isToldPair(reading) &&
  traitsIn(reading.tokens.filter(({ type }) => type === 'trait')).some((id) => traits[id]?.locus === 'Hf')
    ? factOf(
        reading,
        'hen-feathering',
        pairsIn(reading).flatMap(({ sire, dam }) => [sire, dam]),
      )
    : undefined

const areKin = ({ tokens }: Reading): boolean =>
  tokens.some((token) => token.type === 'kin') &&
  tokens.filter((token) => token.type === 'kin' || ((token.type === 'cock' || token.type === 'hen') && token.parent))
    .length > 1

const threw = /^(?:gave|give|gives|threw|throws|throw|produced|produces|hatched|had|made|got|popped|dropped)$/u

/** "my White Silkie threw a black chick", "2 Blue Orps gave a black one": what of the breed's own colour that comes of. */
export const readOddChick: Reader = (reading) => {
  const { tokens } = reading
  const [bird, ...others] = birdsIn(reading)
  const breed = bird?.ref.breed === undefined ? undefined : breedNamed(bird.ref.breed)
  const at = tokens.findIndex(
    (token, i) => token.type === 'colour' && (tokens[i + 1]?.type === 'chick' || /\bones?\b/u.test(token.word)),
  )
  const chick = tokens[at]
  if (!bird || !breed || others.length > 0 || chick?.type !== 'colour') return undefined
  const isThrown = tokens.slice(Math.max(0, at - 5), at).some(({ word }) => threw.test(word))
  const own = breed.name.toLowerCase().split(' ')
  if (!isThrown || chick.at < bird.saidOf.at || own.includes(chick.colour) || isToldPair(reading)) return undefined
  const topic =
    own.includes('blue') || own.includes('splash')
      ? 'blue'
      : own.includes('white') && breed.family !== 'described'
        ? 'recessive-white'
        : ''
  return topic === '' || reading.has('carry') ? undefined : factOf(reading, topic, [bird])
}

/** "which parent has to be barred": the side on which the mark must stand. */
export const readWhichParent: Reader = (reading) => {
  const { words, tokens, scene } = reading
  const [named, ...others] = birdsIn(reading)
  const place =
    /\b(?:have|has|need|needs|got|supposed|ought) to be (?:the|a|on the) (?:hens?|roosters?|roo|cock|cockerel|male|female|mother|mum|mom|father|dad|sire|dam)\b/u
  if (named && others.length === 0 && scene.matings.length === 0 && place.test(words.join(' ')))
    return marks(named.ref) === true ? factOf(reading, 'mark-on-hen', [named]) : undefined
  const which =
    /\b(?:which|what|who|does|do|must|should|has|have|needs?)\b.*\b(?:parent|side|sex|one|mother|mum|mom|dam|father|dad|sire|hen|rooster|roo|cock)\b.*\b(?:has|have|needs?|must|should|got|be|carry|supposed)\b/u
  const [first] = traitsIn(tokens.filter(({ type }) => type === 'colour' || type === 'trait'))
  const isMark = first === 'barring' || first === 'silver' || first === 'gold'
  if (!isMark || !which.test(words.join(' ')) || scene.matings.length > 0 || birdsIn(reading).length > 0)
    return undefined
  return words.some((word) => /^(?:parent|side)$/u.test(word)) ? factOf(reading, 'mark-on-hen', []) : undefined
}

/** Crosses against pure breeds, in general. */
export const readVigour: Reader = (reading) =>
  birdsIn(reading).length === 0 &&
  reading.words.some((word) => /^(?:crosses|crossbreds|hybrids|crossbred|mutts)$/u.test(word)) &&
  (reading.asks || reading.has('question', 'claim')) &&
  !reading.has('offTopic', 'health')
    ? factOf(reading, 'heterosis', [])
    : undefined

/** Kin bred to kin, with no birds named. */
export const readKin: Reader = (reading) =>
  (reading.has('inbreeding') || areKin(reading)) && !isToldPair(reading) && !reading.has('carry', 'father')
    ? factOf(reading, 'inbreeding', birdsIn(reading))
    : undefined

/** Genes by which kin are harmed beyond being kin: of these the mating itself tells more. */
const harming = ['Cp', 'Et', 'Rp', 'F'] as const

/** "is it ok to put my roo on his daughters": whether kin may be mated, and nothing else. */
export const readKinMated: Reader = (reading) => {
  const { aspects, goals } = reading.scene
  const birds = birdsIn(reading)
  const hasHarming = birds.some(({ ref }) => {
    const breed = breedNamed(ref.breed ?? '')
    const genes: Readonly<Record<string, unknown>> = breed ? genesOf(breed) : {}
    return harming.some((locus) => genes[locus] !== undefined)
  })
  const only = aspects.length > 0 && aspects.every((aspect) => aspect === 'welfare') && goals.length === 0
  return only && reading.has('inbreeding') && !hasHarming && !reading.has('carry')
    ? factOf(reading, 'inbreeding', birds)
    : undefined
}
