// grammar/read/fact.ts: one bird, gene, sign, rule or belief: the record of core/topics.ts that the words point to.
import { topicsIn } from '../../core/topics.ts'
import { breedNamed, genesOf } from '../../core/breeds.ts'
import { loci, type LocusId } from '../../core/data/loci.ts'
import { lociOfAllele } from '../../core/genotype.ts'
import { traitsIn } from '../bird.ts'
import { marks } from '../partTaken.ts'
import { traits } from '../words/traits.ts'
import { chicksCounted } from './chicks.ts'
import { aspectsOf, commonOf, isHybrid, isSolid, refsOf, type Reader } from './common.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { CrossQuestion, FactQuestion } from '../../core/question.ts'

/** A record is meant when its cues weigh this much; less will do where genes or a belief are plainly spoken of. */
const surely = 15
const perhaps = 8

/** Letters looked through for cues. */
const mostLetters = 1200

/** What of the bird is asked. "big" is a weight only where it is asked how big. */
function ofBird(reading: Reading): Pick<FactQuestion, 'aspects'> {
  const sized = reading.words.some((word) => /^(?:how|size|sizes|weigh|weighs|weight|weights|heavy|large)$/u.test(word))
  const aspects = aspectsOf(reading).filter((aspect) => aspect !== 'size' || sized)
  return aspects.length > 0 ? { aspects } : {}
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

const factOf = (reading: Reading, topic: string, birds: readonly Bird[], locus?: string): FactQuestion => ({
  kind: 'fact',
  topic,
  birds: refsOf(asksCarried(reading) ? birds.map(asNamed) : birds).slice(0, 6),
  ...matedIn(reading),
  ...(locus === undefined ? {} : { locus }),
  ...(topic === 'bird' ? ofBird(reading) : {}),
  ...commonOf(reading, birds),
})

const birdsIn = ({ scene }: Reading): readonly Bird[] =>
  [...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams]), ...scene.birds].filter(
    (bird) => isSolid(bird) && bird.ref.breed !== undefined,
  )

/** Spellings that the cues do not know. */
const plainly = (text: string): string =>
  text
    .replace(/\b(wing|feather|vent|dna|colou?r)[ -]sex\b(?!ing)/giu, '$1 sexing')
    .replace(/\bsex[ -]?(?:lynx|sinks?|linx|links?|lynks?)\b/giu, 'sex link')

/** The strongest topic; `least` is how much its cues must weigh. */
function topicOf(reading: Reading, least: number): string | undefined {
  const written = topicsIn(plainly(reading.text.slice(0, mostLetters)))[0]
  if (written && written.weight >= least) return written.id
  const mended = reading.corrections.length > 0 ? topicsIn(reading.words.slice(0, 200).join(' '))[0] : undefined
  return mended && mended.weight >= least ? mended.id : undefined
}

/** A belief or a rule is so plainly put that a goal named beside it, "for hens to lay", is no search. */
export const isPlainTopic = (reading: Reading, least = plainCue): boolean => topicOf(reading, least) !== undefined
const plainCue = 20

/** The locus of symbols or traits that are spoken of by themselves. */
function locusIn({ tokens, words }: Reading): string | undefined {
  const letter =
    words.length <= 8 &&
    words.some((word) => /^(?:vs|versus|mean|means|what|whats|gene|allele|locus|difference|and)$/u.test(word))
      ? tokens.find(({ said }) => /^[SsBbKkEePpRrWwFfh]$/u.test(said))
      : undefined
  if (letter) return lociOfAllele(letter.said)?.locus
  for (const token of tokens) {
    const written = token.type === 'gene' ? lociOfAllele(token.said.split('/')[0] ?? '') : symbol(token.said)
    if (written) return written.locus
    const [id] = token.type === 'trait' ? traitsIn([token]) : []
    if (id !== undefined) return traits[id]?.locus
  }
  return undefined
}
/** `Id`, `Co`, `Ml`: a symbol of a gene that is no word. */
const symbol = (said: string): ReturnType<typeof lociOfAllele> =>
  /^(?:Id|Co|Db|Ml|Pg|Mh|Bl|Fm|Na|Mb|Cr|Po|Et|Rp|Cp|Pti|lav|choc|eWh|ER|eb)$/u.test(said)
    ? lociOfAllele(said)
    : undefined

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

/** "BSL pen, 5 weeks, boy or girl": the chicks of a first cross are those of its usual parents. */
export const readFirstCross: Reader = (reading): CrossQuestion | undefined => {
  const [bird, ...others] = birdsIn(reading)
  const made = bird?.ref.breed === undefined ? undefined : breedNamed(bird.ref.breed)?.madeFrom?.[0]
  const coloured = reading.tokens.some(({ type }) => type === 'colour') // what a chick of that colour is, is a rule by itself
  const sexing = (reading.scene.aspects.includes('sexing') && !coloured) || reading.has('photo')
  if (
    !bird ||
    !made ||
    !sexing ||
    others.length > 0 ||
    isToldPair(reading) ||
    reading.scene.wanted.length > 0 ||
    bird.ref.cross ||
    reading.has('trueBreeding', 'define')
  )
    return undefined
  const hybrid = bird.ref.breed ?? ''
  return {
    kind: 'cross',
    matings: [{ sire: { breed: made.sire }, dam: { breed: made.dam } }],
    aspects: reading.has('photo') ? ['sexing', 'adults'] : ['sexing'],
    ...commonOf(reading, [], [{ kind: 'variety', said: hybrid, taken: `${made.sire} x ${made.dam}` }]),
  }
}

/** Genes, signs or beliefs are plainly spoken of. */
const isKnowledge = ({ has, scene, tokens }: Reading): boolean =>
  has('genetics', 'claim', 'define', 'carry', 'trueBreeding', 'inbreeding', 'vigour', 'earlobe', 'comb', 'wing') ||
  scene.aspects.some(
    (aspect) => aspect === 'sexing' || aspect === 'shell' || aspect === 'why' || aspect === 'welfare',
  ) ||
  tokens.some(({ type }) => type === 'gene' || type === 'trait')

/** "all my chicks are boys", "hatched 15 and only 3 pullets". */
const isLopsided = ({ tokens, words, has }: Reading): boolean => {
  const chicks = tokens.some(({ type }) => type === 'chick') || has('hatch')
  const sexes = tokens.some((token) => (token.type === 'cock' || token.type === 'hen') && token.many && !token.parent)
  return (
    chicks &&
    sexes &&
    tokens.every(({ type }) => type !== 'over' && type !== 'breed' && type !== 'family' && type !== 'colour') &&
    (words.includes('all') || (words.includes('only') && has('outcome'))) &&
    !has('set', 'shipped', 'define')
  )
}

/** "11 roos out of 14": luck, and nobody's doing. */
export const readSexLuck: Reader = (reading) => {
  const counted = reading.scene.tallies.some(
    ({ look }) => look.length > 0 && look.every(({ type }) => type === 'cock' || type === 'hen' || type === 'chick'),
  )
  const which = /\bwhich (?:one |ones )?(?:of |is |are )/u.test(reading.words.slice(0, 60).join(' ')) // "which of these 6 is the roo"
  return (reading.has('sexRatio') || counted || isLopsided(reading)) &&
    !which &&
    !reading.has('father', 'carry') &&
    !isToldPair(reading)
    ? factOf(reading, 'sex-ratio-luck', birdsIn(reading))
    : undefined
}

const areKin = ({ tokens }: Reading): boolean =>
  tokens.some((token) => token.type === 'kin') &&
  tokens.filter((token) => token.type === 'kin' || ((token.type === 'cock' || token.type === 'hen') && token.parent))
    .length > 1

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

/** "can a black hen carry blue": not on the Z, so that a hen may have it as well as a cock. */
export const readAutosomal: Reader = (reading) => {
  if (!reading.has('carry') || isToldPair(reading)) return undefined
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
    ? factOf(reading, 'blue-hidden', birdsIn(reading))
    : undefined
}

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

/** "RIR over barred hens, and 2 of the spotted ones turned out hens": why a sign failed. */
export const readMisread: Reader = (reading) => {
  const said =
    /\b(?:dot|dots|dotted|spot|spots|spotted|headspots?|marked|sexed)\b.*\b(?:turned (?:out|into)|ended up|became|grew (?:up )?(?:into|to be)|are now|is now|were really)\b(?: \w+){0,3} (?:hens?|pullets?|girls?|roos?|roosters?|cockerels?|boys?|cocks?)\b/u
  const asked = reading.asks || reading.words.some((word) => /^(?:how|why|wrong|possible)$/u.test(word))
  return asked && said.test(reading.words.join(' ')) ? factOf(reading, 'mis-sexed', birdsIn(reading)) : undefined
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

/** "is 50/50 boys and girls true": the share of each sex. */
export const readHalves: Reader = (reading) => {
  const halves = /\b(?:50 ?[/:-] ?50|fifty ?fifty|half (?:and|n|&) half|half boys|half girls)\b/iu.test(
    reading.text.slice(0, mostLetters),
  )
  const sexes =
    reading.tokens.some(({ type }) => type === 'cock' || type === 'hen') || reading.scene.aspects.includes('sexing')
  return halves && sexes && birdsIn(reading).length === 0 ? factOf(reading, 'hatch-rate-ratio', []) : undefined
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

/** Sexing in general: of barred chicks, by wings, by a spot, or by age. */
export const readSexing: Reader = (reading) => {
  const { scene, tokens, words } = reading
  const both = tokens.some(({ type }) => type === 'cock') && tokens.some(({ type }) => type === 'hen')
  const when = words.some((word) => /^(?:when|age|weeks?|wks?|old)$/u.test(word))
  if (both && when && !isToldPair(reading) && scene.aspects.length === 0)
    return factOf(reading, 'later-signs', birdsIn(reading))
  const combs =
    scene.aspects.includes('comb') && tokens.some(({ type }) => type === 'cock' || type === 'hen' || type === 'chick')
  if (combs && words.length >= 4 && !isToldPair(reading)) return factOf(reading, 'later-signs', birdsIn(reading))
  const sign = words.some((word) => /^(?:head|comb|stance|legs?|posture|shape|tail|wing|wings|beak|eyes?)$/u.test(word))
  const sexed = tokens.some(({ type }) => type === 'cock' || type === 'hen')
  if (sign && sexed && reading.has('claim') && birdsIn(reading).length === 0 && !isToldPair(reading))
    return factOf(reading, 'best-sexing-marks', [])
  if (!scene.aspects.includes('sexing') && !scene.goals.includes('sexable')) return undefined
  if (
    isToldPair(reading) ||
    words.length < 4 ||
    (!reading.has('wing') && words.some((word) => /^(?:it|them|that|these|those|this|he|she|him|her)$/u.test(word)))
  )
    return undefined
  if (!(reading.asks || reading.has('define', 'question', 'claim')) || scene.matings.length > 0) return undefined
  if (tokens.filter(({ type }) => type === 'sexlink').length > 1) return factOf(reading, 'sex-links-breed-true', [])
  const barred = tokens.some(
    (token) => token.type === 'colour' && (token.colour === 'barred' || token.colour === 'cuckoo'),
  )
  if (barred) return factOf(reading, 'barred-rock-spot', birdsIn(reading))
  if (reading.has('wing')) return factOf(reading, 'wing-any-chick', [])
  const subject = tokens.some(({ type }) => type === 'chick' || type === 'hen' || type === 'cock' || type === 'colour')
  return (subject || words.length >= 7) && !reading.has('photo', 'mine')
    ? factOf(reading, 'best-sexing-marks', birdsIn(reading))
    : undefined
}

/** What stands over what: "is silver dominant over gold", "is gold hiding under white". */
export const readHiding: Reader = (reading) => {
  const { tokens, words, scene } = reading
  if (
    [...scene.birds, ...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])].some((bird) =>
      bird.saidOf.parts.some(({ type }) => type === 'breed' || type === 'family' || type === 'cock'),
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

/** "the best coop paint": no word of fowl beside it. */
const isOtherBusiness = (reading: Reading): boolean =>
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

/** "silkie rooster good?": nothing is said of what for. */
const isVague = ({ tokens, scene }: Reading): boolean =>
  scene.aspects.length === 0 &&
  scene.goals.length === 0 &&
  tokens.every(
    ({ type, word }) =>
      ['breed', 'family', 'cock', 'hen', 'line', 'filler', 'stop', 'comma', 'my', 'is', 'forWhom', 'about'].includes(
        type,
      ) ||
      /^(?:good|ok|okay|best|nice|better|any|bad|idea|ideas|plan|move|choice|smart|wise|worth|worthwhile|useful|thoughts|opinions?|advice|suggestions?|yay|nay|yes|no)$/u.test(
        word,
      ),
  )

/** "Marans sexlinks?": a breed of many colours, and no word of the other bird. */
const isHalfACross = (reading: Reading): boolean =>
  reading.tokens.some(({ type }) => type === 'sexlink') &&
  birdsIn(reading).every(({ others }) => others.length > 0) &&
  reading.tokens.every(({ type }) =>
    ['family', 'sexlink', 'chick', 'cock', 'hen', 'filler', 'stop', 'my'].includes(type),
  )

/** "my roo and the speckled hen, chicks?": the young of two are asked for, and one of them is of no breed. */
const isBesideUnnamed = (reading: Reading): boolean => {
  const { scene, tokens } = reading
  const [only, ...others] = birdsIn(reading)
  return (
    only?.sex !== undefined &&
    others.length === 0 &&
    scene.birds.some(({ sex, named }) => !named && sex !== undefined && sex !== only.sex) &&
    tokens.some(({ type }) => type === 'and' || type === 'plus' || type === 'over') &&
    (tokens.some(({ type }) => type === 'chick') || scene.aspects.includes('chicks'))
  )
}

/** Something is asked of the bird itself, not of what to put it to, nor of "that". */
const isAboutBird = (reading: Reading, locus: string | undefined): boolean => {
  const { has, scene, tokens, words } = reading
  if (scene.aspects.includes('welfare') || (has('outcome') && tokens.some(({ type }) => type === 'colour'))) return true
  if (isVague(reading) || isHalfACross(reading) || isBesideUnnamed(reading)) return false
  if (
    tokens.some(({ type }) => type === 'cross' || type === 'over') &&
    !birdsIn(reading).some(isHybrid) &&
    locus === undefined &&
    !has('claim') &&
    scene.aspects.every((aspect) => aspect === 'chicks')
  )
    return false
  if (words.at(-1) === 'that' || (words.includes('that') && words.length <= 6)) return false
  return (
    locus !== undefined ||
    has('define', 'claim', 'genetics', 'carry', 'question') ||
    scene.aspects.length > 0 ||
    scene.goals.length > 0 ||
    reading.asks
  )
}

/** "by the spot like Barred Rocks": a breed named for a likeness. */
const isLikened = ({ saidOf }: Bird, { tokens }: Reading): boolean =>
  /^(?:like|as|same as)$/u.test(tokens.findLast(({ at }) => at < nameAt(saidOf))?.word ?? '')
const nameAt = ({ parts, at }: Bird['saidOf']): number =>
  parts.find(({ type }) => type === 'breed' || type === 'family')?.at ?? at

/** "can you sex Barnevelder chicks", "are Legbars autosexing": the breed mated to itself. */
export const readPureSexing: Reader = (reading): CrossQuestion | undefined => {
  const { scene, words } = reading
  const [bird, ...others] = birdsIn(reading).filter((one, at) => at === 0 || !isLikened(one, reading))
  const autosexing = words.some((word) => word.startsWith('autosex'))
  const young = /\b(?:hatch|hatched|hatching|shell|born|day old|day olds|dry)\b/u.test(words.join(' '))
  const older = words.some(
    (word) =>
      /^(?:weeks?|wks?|months?|age|when|comb|combs|crow|crowing|crows)$/u.test(word) && !(young && word === 'when'),
  )
  if (
    !bird ||
    others.length > 0 ||
    bird.sex !== undefined ||
    isHybrid(bird) ||
    bird.ref.cross !== undefined ||
    breedNamed(bird.ref.breed ?? '')?.family === 'described' ||
    !(scene.aspects.includes('sexing') || autosexing) ||
    older ||
    isToldPair(reading) ||
    scene.wanted.length > 0 ||
    reading.has('photo', 'claim', 'trueBreeding') ||
    !(reading.asks || reading.has('question'))
  )
    return undefined
  const { asWritten: _, ...ref } = bird.ref
  return {
    kind: 'cross',
    matings: [{ sire: ref, dam: ref }],
    aspects: ['sexing'],
    ...commonOf(reading, [bird]),
  }
}

/** The record of each form at the extended-black locus. */
const grounds: Readonly<Record<string, string>> = {
  E: 'extended-black',
  'E^R': 'birchen',
  'e^Wh': 'wheaten',
  'e+': 'wild-type',
  'e^b': 'partridge-brown',
}
/** "what is E^R": the one form that is asked about. */
function groundIn({ tokens }: Reading): string | undefined {
  const found = new Set(
    tokens.flatMap(({ said }) => {
      const allele = /^[Ee]/u.test(said) ? lociOfAllele(said.split('/')[0] ?? '') : undefined
      return allele?.locus === 'E' ? [allele.allele] : []
    }),
  )
  const [only, ...others] = found
  return only === undefined || others.length > 0 ? undefined : grounds[only]
}

/** "do New Hampshires carry gold": asked, and so not taken for told. */
const asksCarried = ({ words, tokens }: Reading): boolean =>
  /^(?:do|does|can|could|is|are|would|will)$/u.test(words[0] ?? '') && !tokens.some(({ type }) => type === 'gene')
const asNamed = (bird: Bird): Bird => {
  if (bird.saidOf.carried.length === 0) return bird
  const { genotype: _, ...ref } = bird.ref
  return { ...bird, ref }
}

/** "buff orp.. s+/s+ ?", "do White Wyandottes carry recessive white": one bird, and a gene of it. */
export const readBirdFact: Reader = (reading) => {
  const birds = birdsIn(reading)
  const locus = locusIn(reading)
  if (reading.words.some((word) => word.startsWith('autosex')) && birds.length > 0 && locus === undefined)
    return factOf(reading, 'autosexing', birds)
  if (birds.length > 0 && isAboutBird(reading, locus))
    return factOf(reading, 'bird', birds, locus ?? colourLocus(reading))
  if (birds.length > 0) return undefined
  const ground = groundIn(reading)
  if (ground !== undefined) return factOf(reading, ground, [], 'E')
  if (locus !== undefined) return factOf(reading, 'locus', [], locus)
  const described = reading.scene.birds.filter((bird) => bird.named && bird.ref.breed !== undefined)
  const spoken = colourLocus(reading)
  if (described.length === 0 || !isOfFowl(reading) || isOtherBusiness(reading)) return undefined
  return factOf(reading, spoken === undefined ? 'bird' : 'locus', described, spoken)
}

/** Fowl, or genes, are spoken of, and not just something red. */
const isOfFowl = ({ has, words, asks }: Reading): boolean =>
  has('genetics', 'carry') ||
  (has('define') && words.length <= 5) ||
  ((has('define', 'claim') || asks || has('question')) &&
    words.some((word) =>
      /^(?:breeds?|chickens?|hens?|roosters?|roos?|cocks?|pullets?|birds?|genes?|chicks?|feathers?|plumage|dominant|recessive)$/u.test(
        word,
      ),
    ))

/** "are Delawares barred": asked of the bird, not said of it. */
function askedOfBird({ tokens, words }: Reading): string | undefined {
  const isAsked = /^(?:is|are|does|do|would|isnt|arent|so)$/u.test(words[0] ?? '')
  const named = tokens.findIndex(({ type }) => type === 'breed' || type === 'family')
  const last = tokens.findLast(
    ({ type, word }) =>
      type !== 'stop' &&
      type !== 'filler' &&
      !/^(?:or|what|not|really|right|bird|birds|ones|breed|a|kind|type)$/u.test(word),
  )
  if (!isAsked || named < 0 || last?.type !== 'colour' || last.at < tokens[named]!.at) return undefined
  return traits[traitsIn([last])[0] ?? '']?.locus
}

/** "is a Buff Orpington silver or gold": a locus named by its colours. */
function colourLocus(reading: Reading): string | undefined {
  const { tokens } = reading
  const asked = askedOfBird(reading)
  if (asked !== undefined) return asked
  const pure = tokens.find((token, at) => token.type === 'colour' && tokens[at - 1]?.type === 'pure')
  const told = pure === undefined ? undefined : traits[traitsIn([pure])[0] ?? '']?.locus
  if (told !== undefined) return told
  const loose = tokens.filter(
    (token) =>
      token.type === 'colour' &&
      ['gold', 'silver', 'barred', 'lavender', 'chocolate', 'mottled', 'blue', 'frizzle', 'white'].includes(
        token.colour,
      ),
  )
  const said = traitsIn(loose)
  if (said.includes('silver') || said.includes('gold')) return 'S'
  const [only] = birdsIn(reading).length === 0 ? said : []
  return only === undefined ? undefined : traits[only]?.locus
}
