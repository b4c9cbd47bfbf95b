// grammar/read/birdFact.ts: one bird that is named, or one gene: what is known of it.
import { lociOfAllele } from '../../core/genotype.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { isHybrid } from './common.ts'
import { birdsIn, factOf, isOtherBusiness } from './topic.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'

/** The locus of symbols or traits that are spoken of by themselves. */
function locusIn({ tokens, words }: Reading): string | undefined {
  const letter =
    words.length <= 8 &&
    words.some((word) => /^(?:vs|versus|mean|means|what|whats|gene|allele|locus|difference|and)$/u.test(word))
      ? tokens.find(({ said }) => /^[SsBbKkEePpRrWwFfh]$/u.test(said))
      : undefined
  if (letter) return lociOfAllele(letter.said)?.locus
  const isGene = words.some((word) => /^(?:gene|genes|allele|locus)$/u.test(word))
  for (const token of tokens) {
    const isSymbol = token.type === 'gene' || (isGene && token.type === 'unknown')
    const written = isSymbol ? lociOfAllele(token.said.split('/')[0] ?? '') : symbol(token.said)
    if (written) return written.locus
    const [id] = token.type === 'trait' ? traitsIn([token]) : []
    if (id !== undefined) return traits[id]?.locus
  }
  return undefined
}

/** `Id`, `Co`, `Ml`: a symbol of a gene that is no word. */
const symbol = (said: string): ReturnType<typeof lociOfAllele> =>
  /^(?:Id|Co|Db|Di|Cha|Ml|Pg|Mh|Bl|Fm|Na|Mb|Cr|Po|Et|Rp|Cp|Pti|lav|choc|eWh|ER|eb)$/u.test(said)
    ? lociOfAllele(said)
    : undefined

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

/** "would he do for the Pekins", "the speckly hen with big red": for one that nobody named. */
const pointsAtNobody = (reading: Reading): boolean => {
  const { tokens, scene } = reading
  const named = tokens.findIndex(({ type }) => type === 'breed' || type === 'family')
  const front = named < 0 ? [] : tokens.slice(0, named)
  const pointed =
    front.some(({ word }) => /^(?:he|him|that one|this one)$/u.test(word)) &&
    front.some(({ type }) => ['forWhom', 'over', 'under'].includes(type))
  const byLooks =
    named < 0 &&
    tokens.some(({ type }) => type === 'over' || type === 'under') &&
    scene.birds.filter((bird) => bird.ref.breed !== undefined).length > 1
  return (pointed && !scene.birds.some(({ sex }) => sex === 'M')) || byLooks
}

/** Something is asked of the bird itself, not of what to put it to, nor of "that". */
const isAboutBird = (reading: Reading, locus: string | undefined): boolean => {
  const { has, scene, tokens, words } = reading
  if (scene.aspects.includes('welfare') || (has('outcome') && tokens.some(({ type }) => type === 'colour'))) return true
  if (isVague(reading) || isHalfACross(reading) || isBesideUnnamed(reading) || pointsAtNobody(reading)) return false
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

/** "buff orp.. s+/s+ ?", "do White Wyandottes carry recessive white": one bird, and a gene of it. */
export const readBirdFact: Reader = (reading) => {
  const birds = birdsIn(reading)
  const locus = locusIn(reading)
  if (reading.words.some((word) => word.startsWith('autosex')) && birds.length > 0 && locus === undefined)
    return factOf(reading, 'autosexing', birds)
  const isChoice = /\b(?:gold or silver|silver or gold)\b/u.test(reading.words.slice(0, 60).join(' '))
  if (birds.length > 0 && isAboutBird(reading, locus ?? (isChoice ? 'S' : undefined)))
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
      /^(?:breeds?|chickens?|hens?|roosters?|roos?|cocks?|pullets?|birds?|genes?|chicks?|feathers?|plumage|dominant|recessive|splash|lavender|cuckoo|birchen|wheaten|mottled|spangled|laced|pencilled|columbian|frizzle|mauve)$/u.test(
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
