// grammar/read/carrier.ts: does this bird carry it: a little flock made of the birds, parents and chicks that were told.
import { genesOf, breedNamed } from '../../core/breeds.ts'
import { loci, type LocusId } from '../../core/data/loci.ts'
import { traitsIn } from '../bird.ts'
import { varietiesOf } from '../variety.ts'
import { traits } from '../words/traits.ts'
import { commonOf, type Reader } from './common.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import { nameOf, isNewName } from '../flock/names.ts'
import { chicksCounted, isClear, saidOfAll, type Chicks } from './chicks.ts'
import { isOf, isOfKin, kinOf, ownDaughters, type Trait } from './carrierKin.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Brood, CarrierQuestion, FlockBird, Question, Tally } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'

const partName = (sex: Sex | undefined): string => (sex === 'F' ? 'the hen' : 'the cock')

/** "hatched from a green egg, does she carry blue": the shell is meant. */
const isOfEggs = ({ scene, words }: Reading): boolean =>
  scene.goals.some((goal) => goal.endsWith('-eggs')) || words.some((word) => /^eggs?$/u.test(word))

/** The trait in question: what a bird is said to carry, else what the chicks show, else what is spoken of. */
function traitOf(reading: Reading, birds: readonly Bird[]): Trait | undefined {
  const carried = birds.flatMap(({ saidOf }) => saidOf.carried.flatMap(({ what }) => traitsIn(what)))
  const spoken = reading.tokens.flatMap((token, i) =>
    reading.tokens[i - 1]?.type === 'carries' || token.type === 'trait' || token.type === 'gene'
      ? traitsIn([token])
      : [],
  )
  const counted = chicksCounted(reading.tokens)
    .flatMap(({ look }) => traitsIn(look))
    .filter((id) => traits[id]?.seen === false)
  const shown = reading.tokens.flatMap((token) =>
    token.type === 'colour' &&
    ['lavender', 'chocolate', 'white', 'mottled', 'frizzle', 'splash', 'mille fleur'].includes(token.colour)
      ? traitsIn([token])
      : [],
  )
  const named = [...carried, ...spoken, ...counted, ...shown][0]
  const id = named === 'blue' && isOfEggs(reading) ? 'blue egg' : named
  const trait = id === undefined ? undefined : traits[id]
  if (!trait) return undefined
  return id === 'recessive white' &&
    !reading.words.includes('recessive') &&
    birds.some((bird) => carriesDominantWhite(bird))
    ? { allele: 'I', locus: 'I' }
    : { allele: trait.allele, locus: trait.locus }
}

function carriesDominantWhite({ ref }: Bird): boolean {
  const breed = ref.breed === undefined ? undefined : breedNamed(ref.breed)
  const gene = breed && genesOf(breed)['I']
  return gene?.kind === 'fixed' && gene.allele === 'I'
}

/** Does a bird show it, by the words said of it? */
function shows({ saidOf, ref, sex }: Bird, { allele, locus }: Trait): boolean | undefined {
  if (locus === 'O' && sex === 'M') return undefined // a cock lays nothing that shows it
  const said = traitsIn(saidOf.parts.filter(({ type }) => type === 'colour' || type === 'trait'))
  if (said.some((id) => traits[id]?.allele === allele)) return true
  const breed = ref.breed === undefined ? undefined : breedNamed(ref.breed)
  const gene = breed && genesOf(breed)[locus]
  if (gene?.kind === 'fixed') return gene.allele === allele ? true : undefined
  const recessive = Object.values(traits).some((trait) => trait.allele === allele && !trait.seen)
  const coloured = saidOf.parts.some((part) => part.type === 'colour') || breed !== undefined
  return recessive && coloured && saidOf.carried.length === 0 ? false : undefined
}

export const flockBird = (bird: Bird, name: string, trait: Trait): FlockBird => {
  const own = shows(bird, trait)
  const told = bird.ref.genotype?.[trait.locus]
  return {
    name,
    ...(bird.sex ? { sex: bird.sex } : {}),
    ...(Object.keys(bird.ref).length > 0 ? { bird: bird.ref } : {}),
    ...(own === undefined || told ? {} : { shows: { [trait.allele]: own } }),
    ...(bird.saidOf.split && !told && own !== true ? { carries: { [trait.allele]: true } } : {}),
  }
}

/** Chicks counted, but for those of a relative. */
const ownChicks = ({ tokens }: Reading): readonly Chicks[] =>
  chicksCounted(tokens).filter(({ at }) => !isOfKin(tokens, at))

/** Chicks told, as showing the trait or clear of it; `unsaid`: chicks counted of which no look was told. */
function talliesOf(reading: Reading, trait: Trait): { readonly told: readonly Tally[]; readonly unsaid: number } {
  const counted = ownChicks(reading)
  const seen = counted.filter(({ look }) => look.length > 0)
  const total = counted.find(({ look, of }) => look.length === 0 && of === undefined)
  const told = seen.flatMap(({ count, of, sex, look, not }): readonly Tally[] => {
    const is = showsIt(look, trait, not)
    if (is === undefined) return []
    const own = sex ? { sex } : {}
    const rest = of === undefined || (!is && !not) ? [] : [{ count: of - count, ...own, shows: !is }]
    return [{ count, ...own, shows: is }, ...rest].filter((one) => one.count > 0)
  })
  if (!total) return { told, unsaid: 0 }
  const own = total.sex ? { sex: total.sex } : {}
  if (seen.length === 0) {
    const all = saidOfAll(reading.tokens)
    const is = all && (all.look.length === 0 ? false : showsIt(all.look, trait, all.not))
    return is === undefined
      ? { told, unsaid: total.count }
      : { told: [{ count: total.count, ...own, shows: is }], unsaid: 0 }
  }
  const left = total.count - told.reduce((sum, { count }) => sum + count, 0)
  const rest = told.every(({ shows: is }) => is) && left > 0 ? [{ count: left, ...own, shows: false }] : []
  return { told: [...told, ...rest], unsaid: 0 }
}

/** Undefined where these words say nothing of the trait: white covers colours, and "not black" may be anything. */
function showsIt(look: readonly Token[], trait: Trait, not: boolean): boolean | undefined {
  if (isOf(look, trait)) return !not
  if (trait.allele === 'lav' && look.some(({ word }) => /^gr[ea]ys?$/u.test(word))) return !not
  if (not) return undefined
  const white = look.some((token) => token.type === 'colour' && token.colour === 'white')
  return white && coveredByWhite.has(trait.locus) ? undefined : false
}
const coveredByWhite: ReadonlySet<string> = new Set(['lav', 'choc', 'B', 'mo', 'S', 'Bl', 'E', 'ig'])

type Token = Reading['tokens'][number]

/** Records of one bird made one. */
function joined(birds: readonly FlockBird[]): readonly FlockBird[] {
  const byName = new Map<string, FlockBird>()
  for (const bird of birds) byName.set(bird.name, { ...byName.get(bird.name), ...bird })
  return [...byName.values()]
}

const pronoun = /^(?:he|hes|him|his|she|shes|her)$/u
const herWord = /^(?:she|shes|her)$/u
const isParent = ({ saidOf }: Bird): boolean =>
  saidOf.parts.some((part) => ((part.type === 'cock' || part.type === 'hen') && part.parent) || part.type === 'kin')

/** "6 silver pullets": counted as chicks, no bird of the mating. */
function isChick({ saidOf }: Bird, { tokens }: Reading): boolean {
  const looks = new Set(chicksCounted(tokens).flatMap(({ look }) => look.map(({ at }) => at)))
  return (
    (saidOf.parts.some(({ type }) => type === 'number') || saidOf.parts.length <= 2) &&
    saidOf.parts.some(({ at }) => looks.has(at))
  )
}

/** "so he's clear", "is she clean": as good as "carries nothing". */
const isCleared = (token: Token, before: readonly Token[]): boolean =>
  isClear(token) &&
  /^(?:clear|clean)$/u.test(token.word) &&
  before
    .slice(-4)
    .some(
      ({ type, word }, i, all) =>
        pronoun.test(word) ||
        ((type === 'cock' || type === 'hen') &&
          (!word.endsWith('s') || all.slice(0, i).some(({ word: verb }) => verb.startsWith('are')))),
    )

/** Tokens looked through for that: a long message is mostly about something else. */
const mostLookedAt = 600

/** Where it is asked whether a bird carries something: in a question, else the last that is said of it. */
function askedAt(reading: Reading): number {
  const tokens = reading.tokens.slice(0, mostLookedAt)
  const found = tokens.flatMap((token, i) =>
    token.type === 'carries' || token.type === 'split' || isCleared(token, tokens.slice(Math.max(0, i - 4), i))
      ? [i]
      : [],
  )
  const asking = found.filter((i) => {
    const start = tokens.slice(0, i).findLastIndex(({ type }) => type === 'stop' || type === 'comma') + 1
    const end = tokens.find(({ type }, k) => k > i && type === 'stop')
    return end?.said.includes('?') === true || opensQuestion.test(tokens[start]?.word ?? '')
  })
  return (asking.length > 0 ? asking : found).at(-1) ?? -1
}
const opensQuestion =
  /^(?:is|are|does|do|can|could|has|would|might|may|what|whats|how|who|which|odds|chance|chances|so)\b/u

/** The bird of which that is asked, by the words before it in its sentence. */
function nearest(tokens: readonly Token[], at: number): Sex | undefined {
  const start = tokens.slice(0, Math.max(at, 0)).findLastIndex(({ type }) => type === 'stop') + 1
  const before = tokens.slice(Math.max(start, at - 7), Math.max(at, 0))
  const near = before.findLast(
    (token) => ((token.type === 'cock' || token.type === 'hen') && !token.parent) || pronoun.test(token.word),
  )
  if (!near) return undefined
  if (near.type === 'cock' || near.type === 'hen') return near.type === 'cock' ? 'M' : 'F'
  return herWord.test(near.word) ? 'F' : 'M'
}

/** The bird that is asked about: the one before the asking word, else the one called a carrier, else the one that does not show it. */
function subjectOf(reading: Reading, trait: Trait, pair: Mates | undefined): Sex {
  const birds = [...(pair ? [pair.sire, pair.dam] : []), ...reading.scene.birds].filter((bird) => !isParent(bird))
  const at = askedAt(reading)
  const isMate = reading.tokens[at + 1]?.type === 'hen' || reading.tokens[at + 1]?.type === 'cock' // "over a split hen"
  const near = isMate || isWho(reading.tokens[at - 1]) ? undefined : nearest(reading.tokens, at)
  if (near) return near
  const called = birds.find(
    (bird) =>
      bird.sex !== undefined && shows(bird, trait) !== true && (bird.saidOf.carried.length > 0 || bird.saidOf.split),
  )
  if (called?.sex && !isMate) return called.sex
  const pronouns = reading.words.filter((word) => pronoun.test(word))
  if (pronouns.length > 0) return herWord.test(pronouns.at(-1)!) ? 'F' : 'M'
  if (pair && shows(pair.sire, trait) === true && shows(pair.dam, trait) !== true) return 'F'
  const only = birds.find((bird) => bird.sex !== undefined)
  if (pair || !only) return 'M'
  return (only.sex === 'F') === (shows(only, trait) !== true) ? 'F' : 'M' // of one that shows it, its mate is asked about
}

/** "who carries it", "which one carries it". */
const isWho = (token: Token | undefined): boolean => /^(?:who|which|whos|one|either|both)$/u.test(token?.word ?? '')

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
  words.includes('both')

type Mates = { readonly sire: Bird; readonly dam: Bird }

/** "what fraction of the chicks carry it": the chicks of a mating are asked about, no bird. */
const isOfChicks = ({ tokens }: Reading, at: number): boolean =>
  tokens
    .slice(Math.max(0, at - 4), Math.max(0, at))
    .some(
      (token) => token.type === 'chick' || (token.type === 'kin' && (token.kin === 'daughter' || token.kin === 'son')),
    )

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

/** "my black cock Bert", "is Bert a carrier": the bird goes by its name. */
function named(reading: Reading, question: CarrierQuestion): CarrierQuestion {
  const { tokens } = reading
  const name = subjectName(reading)
  if (!name) return question
  const call = (of: string): string => (of === question.of ? nameOf(name, { birds: [], broods: [] }) : of)
  const { birds, broods } = question.flock
  const sexed =
    reading.words.some((word) => pronoun.test(word)) || tokens.some(({ type }) => type === 'cock' || type === 'hen')
  return {
    ...question,
    of: call(question.of),
    flock: {
      birds: birds.map(({ name: one, sire, dam, sex, ...bird }) => ({
        ...bird,
        name: call(one),
        ...(sex === undefined || (one === question.of && !sexed) ? {} : { sex }),
        ...(sire === undefined ? {} : { sire: call(sire) }),
        ...(dam === undefined ? {} : { dam: call(dam) }),
      })),
      broods: broods.map((brood) => ({ ...brood, sire: call(brood.sire), dam: call(brood.dam) })),
    },
  }
}
function subjectName(reading: Reading): Token | undefined {
  const { tokens } = reading
  const at = Math.max(askedAt(reading), 0)
  const start = tokens.slice(0, at).findLastIndex(({ type }) => type === 'stop') + 1
  return tokens.slice(start, at).findLast((token) => isNamed(token))
}
const isNamed = (token: Token): boolean =>
  (token.type === 'unknown' || token.type === 'name') && isNewName(token, { birds: [], broods: [] })

const traitIdOf = ({ allele, locus }: Trait): string =>
  Object.keys(traits).find((id) => traits[id]?.allele === allele && traits[id]?.locus === locus) ?? ''

function carrierOf(reading: Reading, trait: Trait, pair: Mates | undefined, chicks: readonly Tally[]): CarrierQuestion {
  const sex = subjectOf(reading, trait, pair)
  const of = partName(sex)
  const own = pair
    ? [flockBird(pair.sire, 'the cock', trait), flockBird(pair.dam, 'the hen', trait)]
    : loneBirds(reading, trait)
  const young = ownDaughters(reading)
  const bred = young && young.sex !== sex ? daughtersOf(of, young, chicks) : undefined
  const broods = bred?.broods ?? (chicks.length > 0 ? [{ sire: 'the cock', dam: 'the hen', chicks }] : [])
  const parents: readonly FlockBird[] =
    broods.length > 0 && !bred
      ? [
          { name: 'the cock', sex: 'M' },
          { name: 'the hen', sex: 'F' },
        ]
      : []
  const mates = bred ? [...own.filter(({ name }) => name === of), ...bred.birds] : own
  const kin = kinOf(reading, of, trait, broods.length > 0)
  const others = kin.length > 0 && !pair && broods.length === 0 ? mates.filter(({ name }) => name === of) : mates
  const birds = joined([{ name: of, sex }, ...parents, ...others, ...kin]).map((bird) =>
    bird.name === of ? unasked(bird) : bird,
  )
  return {
    kind: 'carrier',
    of,
    allele: trait.allele,
    locus: trait.locus,
    flock: { birds, broods },
    rivals: [],
    ...commonOf(
      reading,
      pair ? [pair.sire, pair.dam] : [],
      bred && young!.count === 0 && chicks.length > 0 ? [{ kind: 'daughters', count: bred.birds.length }] : [],
    ),
  }
}

/** That the bird carries it is the question, even where it is put as a fact. */
function unasked(bird: FlockBird): FlockBird {
  const { carries: _, ...rest } = bird
  return rest
}

/** Daughters of whom nobody said how many they are. */
const daughtersTaken = 3

/** His own daughters, each out of a hen of whom nothing is known, with the chicks shared out among them. */
function daughtersOf(
  of: string,
  young: { readonly sex: Sex; readonly count: number },
  chicks: readonly Tally[],
): { readonly birds: readonly FlockBird[]; readonly broods: readonly Brood[] } {
  const all = chicks.reduce((sum, { count }) => sum + count, 0)
  const many = Math.max(1, Math.min(young.count === 0 ? daughtersTaken : young.count, all || 1))
  const word = young.sex === 'F' ? 'daughter' : 'son'
  const names = Array.from({ length: many }, (_, i) => `${young.sex === 'F' ? 'his' : 'her'} ${word} ${i + 1}`)
  const part = young.sex === 'F' ? { sire: of } : { dam: of }
  return {
    birds: names.map((name) => ({ name, sex: young.sex, ...part })),
    broods: names.flatMap((name, i) => {
      const share = chicks
        .map((tally) => ({ ...tally, count: Math.floor(tally.count / many) + Number(i < tally.count % many) }))
        .filter(({ count }) => count > 0)
      const pair = young.sex === 'F' ? { sire: of, dam: name } : { sire: name, dam: of }
      return share.length > 0 ? [{ ...pair, chicks: share }] : []
    }),
  }
}

/** Birds told outside a mating: one for each sex. */
function loneBirds(reading: Reading, trait: Trait): readonly FlockBird[] {
  const { scene, words } = reading
  const mated = scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])
  const named = [...scene.birds, ...mated].filter((bird) => bird.named && !isParent(bird) && !isChick(bird, reading))
  const of = (sex: Sex): readonly FlockBird[] => {
    const bird = named.find((one) => one.sex === sex)
    return bird ? [flockBird(bird, partName(sex), trait)] : []
  }
  const both = words.includes('both') ? named.find(({ sex }) => sex === undefined) : undefined
  if (both) return (['M', 'F'] as const).map((sex) => ({ ...flockBird(both, partName(sex), trait), sex }))
  const lone = named.find(({ sex, saidOf }) => sex === undefined && saidOf.carried.length + Number(saidOf.split) === 0)
  const mates = [...of('M'), ...of('F')]
  return mates.length === 0 && lone ? [{ ...flockBird(lone, 'the cock', trait), sex: 'M' }] : mates
}
