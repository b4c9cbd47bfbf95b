// grammar/read/cross.ts: a cross question from the matings of the message, or a question back where a bird is in doubt.
import { breedNamed, breeds } from '../../core/breeds.ts'
import { varietiesOf } from '../variety.ts'
import { asksWay, aspectsOf, commonOf, isHybrid, type Reader } from './common.ts'
import { inEachLine } from './lineChoice.ts'
import { isToldPair, pairsIn, type Pair } from './pairs.ts'
import { outOfIn, shownAsked } from './shownAsked.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { AskBackQuestion, Assumed, BirdRef, CrossQuestion, Question } from '../../core/question.ts'
import type { Colour } from '../words/colours.ts'

type Told = { readonly sire: BirdRef; readonly dam: BirdRef }

const nameOf = (ref: BirdRef): string => ref.breed ?? ref.asWritten ?? 'the bird'

/** Order of the words alone told who is the male. */
const maleFirst = ({ sire, dam, by }: Pair): readonly Assumed[] =>
  by === 'order' && JSON.stringify(sire.ref) !== JSON.stringify(dam.ref)
    ? [{ kind: 'male-first', sire: nameOf(sire.ref), dam: nameOf(dam.ref) }]
    : []

/** Both ways round are asked about: "backwards better?", "isn't the same as the other way". */
const bothWays = ({ scene, words, tokens }: Reading): boolean =>
  scene.aspects.includes('reverse') &&
  (tokens.some(({ type, word }, at) => type === 'aspect' && otherWay.test(word) && tokens[at - 1]?.word !== 'not') ||
    words.some((word) => ['both', 'each', 'either', 'vice', 'versus', 'vs', 'or', 'reciprocal'].includes(word)) ||
    /\b(?:if|should|can|could|would|does|do|will|but) (?:i |you |we |it |the |u )?(?:just )?(?:swap|switch|flip|reverse|turn|other way)/u.test(
      words.join(' '),
    ))
const otherWay =
  /^(?:backwards|back to front|(?:the )?other way.*|wrong way.*|reverse cross|reciprocal|(?:swap|roles|switch).* (?:sexes|roles|reversed))$/u

/** "his daughters": bred from the cock they are put to. */
function ownDaughters({ sire, dam }: Pair, reading: Reading): BirdRef {
  const kin = dam.saidOf.parts.some((part) => part.type === 'kin' && part.kin === 'daughter')
  const own = dam.saidOf.parts.some(({ type }) => type === 'his' || type === 'my' || type === 'their')
  if (!kin || !own || dam.ref.breed !== undefined || dam.ref.cross) return dam.ref
  const other = reading.scene.birds.find((bird) => bird.sex === 'F' && bird.ref.breed !== undefined)
  return other ? { ...dam.ref, cross: { sire: sire.ref, dam: other.ref } } : { ...sire.ref, asWritten: dam.said }
}

/** "lav x split": split to what the other bird shows. */
function splitTo(one: Bird, other: Bird): BirdRef {
  if (!one.saidOf.split || one.ref.genotype) return one.ref
  const colour = other.saidOf.parts.find((part) => part.type === 'colour')
  const shown: Colour | undefined = colour?.type === 'colour' ? colour.colour : undefined
  const pairs: Partial<Record<Colour, BirdRef['genotype']>> = {
    lavender: { lav: ['Lav+', 'lav'] },
    chocolate: { choc: ['Choc+', 'choc'] },
    white: { c: ['C+', 'c'] },
    mottled: { mo: ['Mo+', 'mo'] },
  }
  const written = other.ref.genotype
  const recessive = Object.entries(written ?? {}).find(
    ([, alleles]) => alleles.length === 2 && alleles[0] === alleles[1] && !alleles[0]!.endsWith('+'),
  )
  const genotype =
    shown && pairs[shown]
      ? pairs[shown]
      : recessive
        ? { [recessive[0]]: [`${recessive[0][0]!.toUpperCase()}${recessive[0].slice(1)}+`, recessive[1][0]!] }
        : lavenderBreed(other)
  return genotype ? { ...one.ref, genotype } : one.ref
}
const lavenderBreed = ({ ref }: Bird): BirdRef['genotype'] | undefined =>
  /Lavender/u.test(ref.breed ?? '')
    ? { lav: ['Lav+', 'lav'] }
    : /Chocolate/u.test(ref.breed ?? '')
      ? { choc: ['Choc+', 'choc'] }
      : undefined

/** "to his sisters", "to her brother": of the same blood as the bird they are put to. */
const isSiblingOf = (bird: Bird, other: Bird): boolean =>
  bird.ref.breed === undefined &&
  !bird.ref.cross &&
  (other.ref.breed !== undefined || other.ref.cross !== undefined) &&
  bird.saidOf.parts.some((part) => part.type === 'kin' && part.kin === 'sibling')

/** "my red sex link hen to her brother, (RIR over Delaware)": what the hybrid was bred from, told beside it. */
function bracketed(ref: BirdRef, { scene }: Reading): BirdRef | undefined {
  const crosses = scene.birds.flatMap((bird) =>
    bird.ref.cross && bird.ref.breed === undefined ? [bird.ref.cross] : [],
  )
  const [cross, ...others] = crosses
  return cross && others.length === 0 && isHybrid({ ref }) && !ref.cross ? { ...ref, cross } : undefined
}

function toldOf(pair: Pair, reading: Reading): Told {
  const { sire, dam } = pair
  if (isSiblingOf(dam, sire) || isSiblingOf(sire, dam)) {
    const { ref } = isSiblingOf(dam, sire) ? sire : dam
    const own = bracketed(ref, reading) ?? ref
    return { sire: own, dam: own }
  }
  return { sire: splitTo(sire, dam), dam: dam.saidOf.split ? splitTo(dam, sire) : ownDaughters(pair, reading) }
}

/** The cross question of these matings, each bird as its likeliest reading. */
export function crossOf(pairs: readonly Pair[], reading: Reading, more: readonly Assumed[] = []): CrossQuestion {
  const told = pairs.map((pair) => toldOf(pair, reading))
  const turned = bothWays(reading) && told.length === 1 ? told.map(({ sire, dam }) => ({ sire: dam, dam: sire })) : []
  const birds = pairs.flatMap(({ sire, dam }) => [sire, dam])
  const aspects = aspectsOf(reading)
  const shown = shownAsked(pairs, reading)
  const outOf = outOfIn(reading)
  const ofShells =
    (birds.every(isOfEggColour) && aspects.length > 0 && aspects.every((one) => one === 'shares')) ||
    (aspects.includes('shell') && (aspects.every(isShareOrShell) || aspects.includes('why'))) ||
    (aspects.includes('shares') &&
      aspects.every(isShareOrShell) &&
      reading.words.some((word) => /^(?:green|greens|olive|olives)$/u.test(word))) || // no hen is green
    (birds.some(({ ref }) => ref.genotype?.['O'] !== undefined) &&
      (aspects.length > 0 || reading.words.some((word) => /^(?:blue|blues)$/u.test(word))) &&
      aspects.every(isShareOrShell)) ||
    (aspects.length === 0 &&
      birds.some(({ ref }) => /-egg layer$|from a .* egg$|^Olive Egger$/u.test(ref.breed ?? ''))) ||
    (aspects.every((one) => one === 'shares') && asksBlue(birds, reading)) ||
    (birds.some(isOfEggColour) &&
      reading.words.includes('shade') &&
      aspects.every((one) => one === 'chicks' || one === 'shell'))
  return {
    kind: 'cross',
    matings: [...told, ...turned],
    aspects: ofShells ? ['shell'] : aspects,
    ...(shown.length > 0 && !ofShells ? { shown } : {}),
    ...(shown.length > 0 && !ofShells && outOf !== undefined ? { outOf } : {}),
    ...commonOf(reading, birds, [...pairs.flatMap(maleFirst).slice(0, 2), ...more]),
  }
}

/** "Legbar x Leghorn hens back to the Legbar, all blue?": of the eggs, where a parent lays blue and no bird is blue in the feather. */
const asksBlue = (birds: readonly Bird[], { tokens }: Reading): boolean =>
  tokens.some(
    ({ word }, at) => word === 'blue' && !tokens.slice(at + 1, at + 3).some(({ type }) => ofBirds.has(type)),
  ) &&
  parentsOf(birds.map(({ ref }) => ref)).some((ref) => carries(ref, 'O', 'O')) &&
  parentsOf(birds.map(({ ref }) => ref)).every((ref) => !carries(ref, 'Bl', 'Bl', 0.5))
const ofBirds: ReadonlySet<string> = new Set(['breed', 'family', 'colour', 'cock', 'hen', 'chick', 'trait'])
const parentsOf = (refs: readonly BirdRef[]): readonly BirdRef[] =>
  refs.flatMap((ref) => (ref.cross ? parentsOf([ref.cross.sire, ref.cross.dam]) : [ref]))
const carries = ({ breed, genotype }: BirdRef, locus: string, allele: string, least = 0): boolean => {
  const gene = breedNamed(breed ?? '')?.genes[locus]
  const told = genotype?.[locus]
  if (told) return told.includes(allele)
  if (!gene) return false
  return gene.kind === 'fixed'
    ? gene.allele === allele
    : gene.kind === 'segregates'
      ? (gene.freq[allele] ?? 0) > least
      : gene.alleles.includes(allele)
}

/** "fraction of blue layers", "how many olive": shares of shells. */
const isShareOrShell = (one: string): boolean => one === 'shares' || one === 'shell'

/** Easter Eggers and the like: of them shares are of shells. */
const isOfEggColour = ({ ref }: Bird): boolean =>
  /^(?:Easter|Olive) Egger$|-egg layer$|from a .* egg$/u.test(ref.breed ?? '')

const faultIn = (pairs: readonly Pair[]): Question | undefined => {
  const fault = pairs.flatMap(({ sire, dam }) => [sire.fault, dam.fault]).find((found) => found !== undefined)
  return fault && { kind: 'error', fault }
}

const swapped = ({ sire, dam, by }: Pair): Pair => ({ sire: dam, dam: sire, by })

/** Nothing tells which is the cock: both ways round stand as choices. */
function whichIsMale(pair: Pair, reading: Reading): AskBackQuestion {
  const ways = [
    { ...pair, by: 'sex' as const },
    { ...swapped(pair), by: 'sex' as const },
  ]
  return {
    kind: 'ask-back',
    missing: 'which-is-male',
    about: `${nameOf(pair.sire.ref)} and ${nameOf(pair.dam.ref)}`,
    options: ways.map((way) => ({
      label: `${nameOf(way.sire.ref)} cock on ${nameOf(way.dam.ref)} hen`,
      question: crossOf([way], reading),
    })),
    birds: [pair.sire.ref, pair.dam.ref],
    ...commonOf(reading),
  }
}

/** "are Cuckoo Marans autosexing like Legbars", "does a RIR/Sussex mix breed true": two birds, and no mating of them. */
const isNoMating = ({ words, has, scene }: Reading): boolean =>
  words.some((word) => /^(?:mean|means|meaning)$/u.test(word)) ||
  has('trueBreeding', 'inbreeding') ||
  (scene.matings.length === 0 &&
    /\b(?:does|do) (?:(?:a|an|the|my) )?[\w ]{3,40}\b(?:lay|lays|weigh|eat|live|get)\b/u.test(words.join(' ')) &&
    !words.some((word) => /^(?:cross|mix|chicks?|babies|make|give|produce|put|together|offspring)$/u.test(word))) ||
  (has('define', 'question', 'claim') &&
    words.some((word) => /^(?:like|than|similar)$/u.test(word)) &&
    !words.includes('look'))

/** "what does wheaten mean on a Marans": a word of the breed. */
const isWordOf = ({ sire }: Pair, { words }: Reading): boolean =>
  words.some((word) => /^(?:mean|means|meaning)$/u.test(word)) &&
  sire.saidOf.parts.every(({ type }) => type === 'colour' || type === 'trait')

/** Most readings that are offered. */
const mostOptions = 5

/** A breed without its colour: one question for each variety it may mean, the usual one first. */
function whichVariety(pair: Pair, reading: Reading): AskBackQuestion | undefined {
  const open = [pair.sire, pair.dam].filter(({ others }) => others.length > 0)
  const [first, second] = open
  if (!first) return undefined
  const choices = second
    ? bothOpen(pair)
    : [first.ref, ...first.others].map((ref): Told =>
        first === pair.sire ? { sire: ref, dam: pair.dam.ref } : { sire: pair.sire.ref, dam: ref },
      )
  const label = ({ sire, dam }: Told): string =>
    second ? `${nameOf(sire)} cock on ${nameOf(dam)} hen` : nameOf(first === pair.sire ? sire : dam)
  const cross = crossOf([pair], reading)
  return {
    kind: 'ask-back',
    missing: 'variety',
    about: [...new Set(open.map(({ saidOf }) => bareName(saidOf.parts)))].join(' and '),
    options: onceEach(choices)
      .slice(0, mostOptions)
      .map((told) => ({
        label: label(told),
        question: { ...cross, matings: [told], assumed: cross.assumed.filter(({ kind }) => kind !== 'variety') },
      })),
    birds: [pair.sire.ref, pair.dam.ref],
    ...commonOf(reading, [], maleFirst(pair)),
  }
}
const onceEach = (choices: readonly Told[]): readonly Told[] => [
  ...new Map(choices.map((one) => [`${nameOf(one.sire)} x ${nameOf(one.dam)}`, one])).values(),
]
const bareName = (parts: Bird['saidOf']['parts']): string =>
  parts.find(({ type }) => type === 'family')?.said ?? parts.map(({ said }) => said).join(' ')

/** Two open breeds: the usual pair, then each of the others on the usual one of the other side. */
function bothOpen({ sire, dam }: Pair): readonly Told[] {
  const family = dam.saidOf.parts.find((part) => part.type === 'family')
  const gold = family?.type === 'family' && sire.ref.breed === dam.ref.breed ? goldOf(family.family) : undefined
  const cross =
    gold !== undefined && gold !== sire.ref.breed
      ? [
          { sire: { ...sire.ref, breed: gold }, dam: dam.ref },
          { sire: sire.ref, dam: { ...dam.ref, breed: gold } },
        ]
      : []
  return [
    { sire: sire.ref, dam: dam.ref },
    ...cross,
    ...dam.others.slice(0, 2).map((other) => ({ sire: sire.ref, dam: other })),
    ...sire.others.slice(0, 2).map((other) => ({ sire: other, dam: dam.ref })),
  ]
}

/** The variety that sexes its chicks on a silver hen: gold, unbarred, and nothing that hides it. */
const goldOf = (family: string): string | undefined =>
  breeds.find((breed) => {
    const { S, E, I, c, B } = breed.genes
    const gold = S === undefined || (S.kind === 'fixed' && S.allele === 's+')
    const black = E?.kind === 'fixed' && E.allele === 'E'
    return breed.family === family && gold && !black && !I && !B && c?.kind !== 'fixed'
  })?.name

/** Asked only of what the daughters do, which all varieties of a breed do alike. */
const ofDaughters: ReadonlySet<string> = new Set([
  'eggs',
  'size',
  'temper',
  'broody',
  'hardiness',
  'feed',
  'egg-size',
  'vigour',
  'meat',
  'maturity',
  'comb',
  'shell',
  'welfare',
])
const onlyOfDaughters = (reading: Reading): boolean => {
  const aspects = aspectsOf(reading)
  const shells = aspects.includes('shell') && aspects.every(isShareOrShell)
  return shells || (aspects.length > 0 && aspects.every((aspect) => ofDaughters.has(aspect)))
}
/** Wings and forms do not hang on the colour. */
const isOfForm = (reading: Reading): boolean =>
  reading.has('wing') || (reading.tokens.some(({ type }) => type === 'trait') && !aspectsOf(reading).includes('sexing'))
/** An Olive Egger put to a Marans: bred on for the shell, which no colour of the Marans changes. */
const isForShells = ({ sire, dam }: Pair, reading: Reading): boolean =>
  [sire, dam].some(({ ref }) => ref.breed === 'Olive Egger') &&
  aspectsOf(reading).every((aspect) => isShareOrShell(aspect) || aspect === 'chicks')
/** Who writes genes knows his bird. */
const knowsGenes = ({ sire, dam }: Pair): boolean => [sire, dam].some(({ ref }) => ref.genotype !== undefined)

/** `RIRxBRxLSxBO`: birds in a row, with nothing to say how they go together. */
const isChain = ({ sire, dam }: Pair): boolean =>
  [sire, dam].every(({ ref, saidOf, sex }) => ref.cross !== undefined && saidOf.parts.length === 0 && sex !== undefined)

/** "F2 of Legbar x Marans", "... now brother to sister": the young of that mating, put to each other. */
const isSecondGeneration = (reading: Reading, pairs: readonly Pair[]): boolean =>
  pairs.length === 1 &&
  (isOfSecond(reading) ||
    putsKinTogether(reading) ||
    matesSiblings(reading) ||
    putsThemTogether(reading, pairs) ||
    putsToOwnKin(reading)) &&
  pairs.every(({ sire, dam, by }) => by !== 'nothing' && !sire.ref.cross && !dam.ref.cross)
const isOfSecond = ({ tokens }: Reading): boolean =>
  tokens.some((token, i) => {
    if (token.type !== 'generation' || token.generation !== 2) return false
    const [before, after] = [tokens[i - 1], tokens.slice(i + 1).find(({ type }) => type !== 'filler')]
    return (
      ['of', 'outOf', 'between', 'breed', 'family'].includes(after?.type ?? '') ||
      ((after === undefined || after.type === 'stop') &&
        ['breed', 'family', 'hen', 'comma'].includes(before?.type ?? ''))
    )
  })
/** "if I breed those to each other", of the chicks of a mating just told. */
const putsThemTogether = ({ words }: Reading, [pair]: readonly Pair[]): boolean =>
  pair !== undefined &&
  JSON.stringify(pair.sire.ref) !== JSON.stringify(pair.dam.ref) &&
  /\b(?:breed|bred|breeding|cross|crossed|crossing|mate|mated|mating|put|pair|pairing) (?:up )?(?:those|them|these|(?:the|their) (?:chicks|babies|offspring|f1s?|kids|youngsters|young|children|progeny))(?: \w+)? (?:together|to (?:each|one) (?:other|another)|with (?:each|one) (?:other|another)|among themselves|amongst themselves|brother to sister)/u.test(
    words.join(' '),
  )
/** "all blue right? and do those ...": the first cross is asked about too. */
const asksBefore = ({ tokens }: Reading): boolean => {
  const at = tokens.findIndex((token) => token.type === 'stop' && token.asks)
  return at >= 0 && tokens.slice(at).some(({ word }) => /^(?:those|them|these|their|the)\b/u.test(word))
}
/** "keep a cockerel from A x B and put him on his sisters": one of the young of that mating, to the others. */
const putsToOwnKin = ({ words }: Reading): boolean =>
  /\b(?:put|use|used|breed|bred|cross|crossed|mate|mated|run|keep|kept|pair|paired) (?:(?:back|up) )?(?:him|her|it|one|them|(?:a|one|the) (?:son|daughter|cockerel|pullet|boy|girl|male|roo|rooster|cock|hen)(?: of (?:them|these|those|mine))?) (?:back )?(?:on|onto|over|to|with|under) (?:a|his|her|its|their|the) (?:own |full )?(?:sisters?|brothers?|siblings?|sibs?)\b/u.test(
    words.join(' '),
  )
/** Brother to sister, behind a mating of their parents. */
const putsKinTogether = ({ scene, words }: Reading): boolean =>
  scene.matings.length > 1 &&
  scene.matings.some(({ sires, dams }) =>
    [...sires, ...dams].every(({ saidOf, named }) => !named && saidOf.parts.some((part) => part.type === 'kin')),
  ) &&
  words.some((word) => /^(?:brothers?|sisters?|siblings?|sibs?)$/u.test(word))
/** "F1 cross of A x B, then siblings together". */
const matesSiblings = ({ words }: Reading): boolean =>
  /\b(?:(?:siblings?|sibs?|brothers? (?:and|to|x|with|on|over) (?:his |the )?sisters?|sisters? (?:and|to|x|with) brothers?) (?:together|mated|crossed|bred|mating)|(?:then|and|now) (?:mate|breed|cross|put|pair)(?: up)? (?:the |two )?(?:f1s?|siblings|sibs)\b)/u.test(
    words.join(' '),
  )
const bredTogether = (pair: Pair): Pair => {
  const ref: BirdRef = { cross: { sire: pair.sire.ref, dam: pair.dam.ref } }
  return { sire: { ...pair.sire, ref, others: [] }, dam: { ...pair.dam, ref, others: [] }, by: 'sex' }
}

/** "Cornish x Rock": of no colour told, the white ones, of which the meat bird is bred. */
function ofMeatBird(pair: Pair): Pair {
  const bare = [pair.sire, pair.dam].map(({ saidOf, ref }) =>
    saidOf.parts.some(({ type }) => type === 'family') && !saidOf.parts.some(({ type }) => type === 'colour')
      ? breedNamed(ref.breed ?? '')?.family
      : undefined,
  )
  if (!bare.includes('Cornish') || !bare.includes('Plymouth Rock')) return pair
  const white = (bird: Bird, family: string | undefined): Bird => ({
    ...bird,
    ref: { ...bird.ref, breed: varietiesOf(family ?? '', ['white']).names[0] ?? bird.ref.breed },
    others: [],
  })
  return { ...pair, sire: white(pair.sire, bare[0]), dam: white(pair.dam, bare[1]) }
}

/** One copy of lavender or chocolate is told. */
const isSplit = ({ ref: { genotype } }: Bird): boolean =>
  genotype?.['lav']?.join('/') === 'Lav+/lav' || genotype?.['choc']?.join('/') === 'Choc+/choc'
/** "split Orpington over lavender Orpington hens": a bird that hides lavender or chocolate, and of which no colour is told, is black. */
function ofSplit({ sire, dam, by }: Pair): Pair {
  const black = (bird: Bird, other: Bird): Bird => {
    const family = bird.saidOf.parts.find((part) => part.type === 'family')
    const hides = (bird.saidOf.split && lavenderBreed(other) !== undefined) || isSplit(bird)
    const told = bird.saidOf.parts.some(({ type }) => type === 'colour')
    const name =
      family?.type === 'family' && hides && !told ? varietiesOf(family.family, ['black']).names[0] : undefined
    return name === undefined || !name.startsWith('Black')
      ? bird
      : { ...bird, ref: { ...bird.ref, breed: name }, others: [] }
  }
  return { sire: black(sire, dam), dam: black(dam, sire), by }
}

/** "Leghorn over Leghorn": of one breed and no colour told, so the usual one is not meant twice over. */
function ofOneBreed({ sire, dam, by }: Pair): Pair {
  const bare = [sire, dam].map(({ saidOf }) =>
    saidOf.parts.every(({ type }) => ['family', 'cock', 'hen', 'my', 'number'].includes(type))
      ? saidOf.parts.find(({ type }) => type === 'family')
      : undefined,
  )
  const [one, other] = bare.map((part) => (part?.type === 'family' ? part.family : undefined))
  const members = breeds.filter(({ family }) => family === one)
  const autosexing = members.every(({ genes }) => genes['B']?.kind === 'fixed')
  if (one === undefined || one !== other || autosexing || sire.saidOf.carried.length + dam.saidOf.carried.length > 0)
    return { sire, dam, by }
  const open = (bird: Bird): Bird => ({
    ...bird,
    others: members
      .filter(({ name }) => name !== bird.ref.breed)
      .map(({ name }) => ({ ...bird.ref, breed: name }))
      .slice(0, 5),
  })
  return sire.others.length > 0 ? { sire, dam, by } : { sire: open(sire), dam: open(dam), by }
}

/** "my olive eggers (A x B), a boy of them with a sister": of no breed that a rule is told of, but the young of that mating. */
export const readSecondGeneration: Reader = (reading) => {
  const pairs = pairsIn(reading)
  return pairs.length === 1 && !isToldPair(reading) && isSecondGeneration(reading, pairs)
    ? crossOf(pairs.map(bredTogether), reading)
    : undefined
}

/** Matings told or plainly there. */
export const readCross: Reader = (reading) => {
  const pairs = inEachLine(pairsIn(reading).map(ofMeatBird).map(ofSplit), reading)
  const [only] = pairs
  if (!only) return undefined
  if (isSecondGeneration(reading, pairs)) {
    const first = putsThemTogether(reading, pairs) && asksBefore(reading) ? pairs : []
    return crossOf([...first, ...pairs.map(bredTogether)], reading)
  }
  const fault = faultIn(pairs)
  if (fault) return fault
  if (pairs.length === 1) {
    if (only.by === 'nothing' && isNoMating(reading)) return undefined
    if (only.by === 'order' && isWordOf(only, reading)) return undefined
    if (only.by === 'nothing' && asksWay(reading)) return crossOf([only, swapped(only)], reading)
    if (only.by === 'nothing' && onlyOfDaughters(reading)) return crossOf([{ ...only, by: 'order' }], reading)
    if (only.by === 'nothing') return whichIsMale(only, reading)
    if (onlyOfDaughters(reading) || knowsGenes(only) || isOfForm(reading) || isForShells(only, reading))
      return crossOf(pairs, reading)
    return whichVariety(ofOneBreed(only), reading) ?? crossOf(pairs, reading)
  }
  if (pairs.some(isChain))
    return {
      kind: 'ask-back',
      missing: 'birds',
      options: [],
      birds: pairs.flatMap(({ sire, dam }) => [sire.ref, dam.ref]).slice(0, 4),
      ...commonOf(reading),
    }
  return crossOf(pairs, reading)
}
