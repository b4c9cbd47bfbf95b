// grammar/read/carrier.ts: does this bird carry it: which messages ask it, of birds in general or of these with their chicks.
import { breedNamed, genesOf } from '../../core/breeds.ts'
import { loci, type LocusId } from '../../core/data/loci.ts'
import { traitsIn } from '../bird.ts'
import { varietiesOf } from '../variety.ts'
import { traits } from '../words/traits.ts'
import { commonOf, type Reader } from './common.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import { chicksCounted, type Chicks } from './chicks.ts'
import type { Trait } from './carrierKin.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Token } from '../token.ts'
import type { CarrierQuestion, Question, Tally } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'
import { carrierOf, named } from './carrierFlock.ts'
import { flockBird, isChick, isParent, ownChicks, shows, talliesOf, traitIdOf, traitOf } from './carrierShown.ts'
import { askedAt, isOfChicks, mostLookedAt, nearest, subjectName, type Mates } from './carrierSubject.ts'

/** A particular bird is meant, not hens or splits in general. */
const isParticular = ({ tokens, words, scene, has }: Reading, told: boolean, chicks: boolean): boolean =>
  told ||
  chicks ||
  scene.tallies.length > 0 ||
  (has('mine') && !has('claim')) ||
  words.some((word) => /^(?:he|hes|him|shes|she)$/u.test(word)) ||
  tokens.some(
    (token) =>
      token.type === 'kin' && (token.kin === 'grandfather' || token.kin === 'grandmother' || token.kin === 'sibling'),
  ) ||
  hasParentTold(tokens) ||
  words.includes('both')

/** "her mother was white": one parent of the bird; a dad and a mum are a mating. */
const hasParentTold = (tokens: readonly Token[]): boolean =>
  new Set(
    tokens.flatMap((token) => ((token.type === 'cock' || token.type === 'hen') && token.parent ? token.type : [])),
  ).size === 1

/** "Black Orp pair threw 1 lavender": both parents of one kind, and an odd chick. */
function pairOfOneKind(reading: Reading, counts: readonly Chicks[]): readonly Mates[] {
  const birds = reading.scene.birds.filter((bird) => bird.named && !isChick(bird, reading))
  const [only] = birds
  const paired = /\b(?:pair|both|two|2)\b/u.test(reading.words.slice(0, mostLookedAt).join(' '))
  if (!only || birds.length > 1 || only.sex !== undefined || !paired) return []
  const mates: Mates = { sire: { ...only, sex: 'M' }, dam: { ...only, sex: 'F' } }
  return isOddChick(counts, mates, true) ? [mates] : []
}

export const readCarrier: Reader = (reading): Question | undefined => {
  const counts = ownChicks(reading)
  const ownKind = isToldPair(reading) ? [] : pairOfOneKind(reading, counts)
  const pairs =
    ownKind.length > 0
      ? ownKind
      : pairsIn(reading).filter(({ sire, dam }) => ![sire, dam].some((bird) => isChick(bird, reading)))
  const told = isToldPair(reading) || ownKind.length > 0
  const birds = [...pairs.flatMap(({ sire, dam }) => [sire, dam]), ...reading.scene.birds]
  const at = askedAt(reading)
  const chicks = counts.length > 0
  const asksCarry =
    (reading.has('carry') ||
      at >= 0 ||
      (chicks && isCalledPure(reading)) ||
      (chicks && /\btest (?:mating|mate|cross|hatch|bred|breeding)/u.test(reading.words.join(' ')))) &&
    (reading.has('test', 'odds', 'father', 'outcome', 'question') ||
      chicks ||
      reading.asks ||
      reading.words.includes('who') ||
      reading.words.includes('whos'))
  const [first] = pairs
  const ofOneKind =
    first !== undefined && first.sire.ref.breed !== undefined && first.sire.ref.breed === first.dam.ref.breed
  const odd = ownKind.length > 0 || (told && isOddChick(counts, first, ofOneKind))
  if (!asksCarry && !odd && !(told && counts.some(({ not }) => not))) return undefined
  if (!isParticular(reading, told, chicks) && !subjectName(reading)) return undefined
  const trait = traitOf(reading, birds)
  if (!trait || traits[traitIdOf(trait)]?.seen === true) return undefined
  if (isOfTwoCopies(reading)) return undefined
  if (trait.locus === 'B' && birds.some(({ ref }) => /White/u.test(ref.breed ?? ''))) return undefined // white hides bars
  const young =
    told && counts.every(({ count }) => count === 1) ? youngCarries(reading, trait, pairs[0], at) : undefined
  if (young) return young
  const { told: tallies, unsaid } = talliesOf(reading, trait)
  const kin = pairs[0] !== undefined && [pairs[0].sire, pairs[0].dam].some(isParent)
  const mates = kin && !tallies.length ? undefined : pairs[0]
  const seen = tallies.some(({ count }) => count > 1) || (tallies.length > 0 && tallies[0]!.shows === true)
  if (
    told &&
    !seen &&
    !unsaid &&
    !reading.has('test', 'outcome') &&
    !(kin && nearest(reading.tokens, at) && !isOfChicks(reading, at))
  )
    return undefined
  const ask = (broods: readonly Tally[]): CarrierQuestion => named(reading, carrierOf(reading, trait, mates, broods))
  if (unsaid === 0 || tallies.length > 0 || !isHatched(reading)) return ask(tallies)
  return lookMissing(reading, trait, unsaid, ask)
}

/** "lav x black gave all black babies, who carries what", "Mottled x Black pullet: is she a carrier": of the young of a mating. */
function youngCarries(
  reading: Reading,
  trait: Trait,
  pair: Mates | undefined,
  at: number,
): CarrierQuestion | undefined {
  const text = reading.words.slice(0, mostLookedAt).join(' ')
  const { tokens } = reading
  const measured =
    /\b(?:how many|what (?:percent|percentage|share|fraction|proportion)|percent|percentage|fraction|odds)\b/u.test(
      text,
    )
  const whole =
    tokens.some(({ type }) => type === 'chick') &&
    /\b(?:who|what|which) (?:\w+ )?carr(?:y|ies)\b|\bcarr(?:y|ies) what\b/u.test(text)
  const pullet = /\b(?:pullets?|cockerels?|chicks?)\b.*\b(?:is|does|are|do) (?:she|he|they)\b/u.test(text)
  const bred =
    pair &&
    [pair.sire, pair.dam].some((bird) => bird.saidOf.parts.some(({ word }) => /^(?:pullet|cockerel)$/u.test(word)))
  const ofYoung = isOfChicks(reading, at) || whole || (pullet && bred === true)
  const known = pair && [pair.sire, pair.dam].map((bird) => shows(bird, trait))
  if (!pair || !ofYoung || measured || reading.manner.symbols || known?.includes(true) !== true) return undefined
  const onZ = loci[trait.locus as LocusId].on === 'Z'
  const sex: Sex | undefined = /\bshe\b|\bpullets?\b/u.test(text)
    ? 'F'
    : onZ || /\bcockerels?\b/u.test(text)
      ? 'M'
      : undefined
  const name = sex === 'F' ? 'the daughter' : sex === 'M' ? 'the son' : 'the chick'
  return {
    kind: 'carrier',
    of: name,
    allele: trait.allele,
    locus: trait.locus,
    flock: {
      birds: [
        flockBird({ ...pair.sire, sex: 'M' }, 'the cock', trait),
        flockBird({ ...pair.dam, sex: 'F' }, 'the hen', trait),
        { name, ...(sex ? { sex } : {}), sire: 'the cock', dam: 'the hen' },
      ],
      broods: [],
    },
    rivals: [],
    ...commonOf(reading, [pair.sire, pair.dam]),
  }
}

/** "Is he pure for it": of two copies, not of one. "Rooster pure black?" is of none. */
const isOfTwoCopies = (reading: Reading): boolean =>
  reading.tokens.some(({ type, word }) => type === 'pure' || word === 'pure') && !isCalledPure(reading)

/** "Pure black?": is it free of what its chicks show. */
const isCalledPure = ({ tokens }: Reading): boolean =>
  tokens.some(({ type, word }, i) => (type === 'pure' || word === 'pure') && tokens[i + 1]?.type === 'colour')

/** Chicks were counted and it is asked what they tell of a parent: whatever else is spoken of, that comes first. */
export const readCountedCarrier: Reader = (reading, context) => {
  const asked =
    reading.has('carry', 'test') ||
    isCalledPure(reading) ||
    reading.tokens.some(({ type }) => type === 'split' || type === 'carries')
  const looks = chicksCounted(reading.tokens).some(
    ({ count, of, look }) => look.length > 0 && (count > 1 || of !== undefined),
  )
  return asked && looks ? readCarrier(reading, context) : undefined
}

/** A chick that shows what neither parent shows: "black over black gave a chocolate pullet". */
function isOddChick(counts: readonly Chicks[], pair: Mates | undefined, named = false): boolean {
  const [found] = counts.filter(({ count, not }) => count > 0 && !not).flatMap(({ look }) => traitsIn(look))
  const trait = traits[found ?? '']
  if (!trait || !pair) return false
  const both = [pair.sire, pair.dam]
  if (trait.allele === 'c') return both.every(isBlack)
  if (trait.allele === 'r+') return both.every(isRoseCombed)
  if (!oddities.has(trait.allele)) return false
  return both.every(
    (bird) => (named || bird.saidOf.parts.some(({ type }) => type === 'colour')) && shows(bird, trait) === false,
  )
}

/** Black birds have no white chicks unless both carry it; chicks of many other matings hatch white or yellow. */
const isBlack = ({ saidOf, ref }: Bird): boolean =>
  saidOf.parts.some((part) => part.type === 'colour' && part.colour === 'black') ||
  ref.breed?.startsWith('Black ') === true

/** By its breed or by what is said of it. */
function isRoseCombed({ saidOf, ref }: Bird): boolean {
  const family = saidOf.parts.find((part) => part.type === 'family')
  const name = ref.breed ?? (family && varietiesOf(family.family, []).names[0])
  const breed = name === undefined ? undefined : breedNamed(name)
  const gene = breed && genesOf(breed)['R']
  if (traitsIn(saidOf.parts).includes('rose comb')) return true
  return gene?.kind === 'fixed' ? gene.allele === 'R' : gene?.kind === 'segregates' && (gene.freq['R'] ?? 0) > 1 / 2
}

const oddities: ReadonlySet<string> = new Set(['lav', 'choc', 'mo', 'h'])

/** Chicks that stand there, not chicks that are thought of. */
const isHatched = ({ words }: Reading): boolean =>
  !/\b(?:enough|need|needs|prove|proves|sure|test|if|would|will|how many)\b/u.test(words.join(' '))

/** "6 chicks so far": how many of them show it decides. */
function lookMissing(
  reading: Reading,
  trait: Trait,
  count: number,
  ask: (broods: readonly Tally[]) => CarrierQuestion,
): Question {
  const look = lookWords[trait.allele] ?? 'as the trait has it'
  return {
    kind: 'ask-back',
    missing: 'look',
    about: count === 1 ? 'the chick' : `the ${count} chicks`,
    options: [
      { label: `none of them ${look}`, question: ask([{ count, shows: false }]) },
      { label: `at least one ${look}`, question: ask([{ count: 1, shows: true }]) },
    ],
    birds: [],
    ...commonOf(reading),
  }
}

const lookWords: Readonly<Record<string, string>> = {
  lav: 'lavender',
  choc: 'chocolate',
  c: 'white',
  mo: 'mottled',
  's+': 'gold',
  h: 'silkie-feathered',
  'k+': 'fast-feathered',
  'b+': 'without bars',
  'r+': 'single-combed',
  'id+': 'dark-legged',
  w: 'yellow-legged',
  dw: 'dwarfed',
}
