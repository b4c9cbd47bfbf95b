// grammar/bird.ts: a bird as said, made a bird of the catalogue: breed, line, genotype, and what else its words may mean.
import { breedNamed, lineOf } from '../core/breeds.ts'
import { loci, type LocusId } from '../core/data/loci.ts'
import { inOrder, lociOfAllele, readGenotype, sexTold, hasWChromosome, type GenotypeFault } from '../core/genotype.ts'
import { longestPhrase } from './lexicon.ts'
import { lineSought, type SaidLine } from './words/lines.ts'
import { traitOfColour, traits } from './words/traits.ts'
import { describedBy, familyOf, showsAll, varietiesOf, type Varieties } from './variety.ts'
import { isNamed, sexSaid, type BirdSaid, type Carried } from './saying.ts'
import type { BirdRef, ToldGenotype } from '../core/question.ts'
import type { Sex } from '../core/vocabulary.ts'
import type { Colour } from './words/colours.ts'
import type { Token } from './token.ts'

/** A bird of the message: the likeliest reading, and the others. */
export type Bird = {
  readonly ref: BirdRef
  /** Other varieties that the same words may mean; empty where none needs asking. */
  readonly others: readonly BirdRef[]
  readonly sex?: Sex
  readonly said: string
  readonly saidOf: BirdSaid
  /** Breed, colour or genes are told. */
  readonly named: boolean
  readonly many: boolean
  readonly fault?: GenotypeFault
}

const coloursIn = (tokens: readonly Token[]): readonly Colour[] =>
  tokens.flatMap((token) => (token.type === 'colour' ? [token.colour] : []))

/** Copies for one sex: a hen has one at a Z locus. */
const copies = (locus: LocusId, pair: readonly [string, string], sex: Sex | undefined): readonly string[] =>
  loci[locus].on === 'Z' && sex === 'F' ? [pair[0]] : inOrder(locus, pair)

function toldByWord(trait: string, how: 'seen' | 1 | 2, sex: Sex | undefined): ToldGenotype {
  const record = traits[trait]
  if (!record) return {}
  const { locus, allele } = record
  const all: readonly string[] = loci[locus].alleles
  const wild = loci[locus].wild
  if (how === 2) return { [locus]: copies(locus, [allele, allele], sex) }
  if (how === 1) {
    const other = allele === wild ? all.find((one) => one !== wild) : wild
    return { [locus]: loci[locus].on === 'Z' && sex === 'F' ? [allele] : inOrder(locus, [allele, other ?? wild]) }
  }
  return record.seen ? { [locus]: [allele] } : { [locus]: copies(locus, [allele, allele], sex) }
}

/** `lavender`, `barring`, `lav`, `S`: the traits that words name. */
export function traitsIn(tokens: readonly Token[]): readonly string[] {
  return tokens.flatMap((token) => {
    if (token.type === 'trait') return [token.trait]
    if (token.type === 'colour') return traitOfColour[token.colour] ?? []
    if (token.type === 'sexlink') return []
    if (token.type === 'breed') return breedTrait(token.names[0] ?? '')
    if (token.type === 'family') return token.family === 'Silkie' ? ['silkie feather'] : []
    const named = lociOfAllele(token.word)
    return named
      ? Object.keys(traits)
          .filter((id) => traits[id]?.locus === named.locus && traits[id]?.allele === named.allele)
          .slice(0, 1)
      : []
  })
}
const breedTrait = (name: string): readonly string[] =>
  name === 'Naked Neck'
    ? ['naked neck']
    : name === 'Barred Plymouth Rock'
      ? ['barring']
      : name === 'Frizzle'
        ? ['frizzle']
        : []

/** @param forEggs known by its eggs: of such a bird, blue is the shell */
const carriedGenotype = (carried: readonly Carried[], sex: Sex | undefined, forEggs: boolean): ToldGenotype =>
  Object.assign(
    {},
    ...carried.flatMap(({ copies, what }) =>
      traitsIn(what).map((trait) => toldByWord(forEggs && trait === 'blue' ? 'blue egg' : trait, copies, sex)),
    ),
  )

/** What a bird is said not to have: without a dominant it is pure for the wild type. */
function lackedGenotype(lacks: readonly Token[], sex: Sex | undefined): ToldGenotype {
  const told: Record<string, readonly string[]> = {}
  for (const trait of traitsIn(lacks)) {
    const record = traits[trait]
    if (!record?.seen || record.locus === 'I' || record.locus === 'E') continue
    const wild = loci[record.locus].wild
    told[record.locus] = copies(record.locus, [wild, wild], sex)
  }
  return told
}

/** A lone symbol is one told copy. */
const asPair = (written: string): string =>
  /[/-]/u.test(written) || lociOfAllele(written) === undefined ? written : `${written}/-`

const writtenGenes = (bird: BirdSaid): string =>
  [...bird.parts, ...bird.carried.flatMap(({ what }) => what).filter(({ said }) => /[/-]/u.test(said))]
    .filter(({ type }) => type === 'gene')
    .map(({ said }) => asPair(said))
    .join(' ')

/** The sex that the genes give away where no word does. */
const sexOfGenes = (bird: BirdSaid): Sex | undefined => {
  const text = bird.parts.filter(({ type }) => type === 'gene').map(({ said }) => said)
  if (text.length === 0) return undefined
  if (text.some((word) => hasWChromosome(word) || isHenPair(word))) return 'F'
  const read = readGenotype(text.join(' '))
  return read.ok ? sexTold(read.value) : undefined
}
const isHenPair = (word: string): boolean => {
  const named = /[/-]-?$/u.test(word) ? lociOfAllele(word.replace(/[/-]+$/u, '')) : undefined
  return named !== undefined && loci[named.locus].on === 'Z'
}

/** "production red" is a breed and a line in one. */
function lineInName(token: Token): SaidLine | undefined {
  if (token.type !== 'breed') return undefined
  const first = token.word.split(' ')[0] ?? ''
  return first === 'production' || first === 'prod' || first === 'layer'
    ? 'production'
    : first === 'heritage'
      ? 'heritage'
      : undefined
}

function lineIn(tokens: readonly Token[], breed: string | undefined): string | undefined {
  const known = breed === undefined ? undefined : breedNamed(breed)
  if (!known) return undefined
  for (const token of tokens) {
    const said = token.type === 'line' ? token.line : lineInName(token)
    if (said === undefined) continue
    for (const word of lineSought[said]) {
      const line = lineOf(known, word)
      if (line) return line.id
    }
  }
  return undefined
}

/** The breed words, with the colours beside them. `carry` is a breed named nearby, whose varieties the colours may mean. */
function namesOf(bird: BirdSaid, carry: string | undefined): Varieties | undefined {
  const colours = coloursIn(bird.parts)
  const breed = shortVariety(bird) ?? bird.parts.find((part) => part.type === 'breed')
  if (breed?.type === 'breed')
    return ofBreed(breed.names, coloursIn(bird.parts.filter((part) => !isSaidOf(part, breed))))
  const family = bird.parts.find((part) => part.type === 'family')
  if (family?.type === 'family') {
    const dark = colours.length === 0 && hidesInBlack(bird) ? blackOf(family.family) : undefined
    return dark ?? varietiesOf(family.family, [...colours, ...barredLine(bird, family.family)])
  }
  const egg = colours.length === 0 ? eggName(bird) : undefined
  if (egg !== undefined) return { names: [egg], firm: true }
  if (colours.length === 0) return bird.parts.some((part) => part.type === 'trait') ? describedByTrait(bird) : undefined
  if (bird.parts.some((part) => part.type === 'colour' && part.word === 'reds'))
    return { names: ['Rhode Island Red'], firm: true }
  if (carry !== undefined) {
    const carried = varietiesOf(carry, colours)
    if (carried.genotype === undefined && carried.names[0] !== undefined && showsAll(carried.names[0], colours))
      return carried
  }
  return describedBy(colours)
}

/** Split for what thins black: a bird that shows black itself. */
const hidesInBlack = (bird: BirdSaid): boolean =>
  bird.carried.some(
    ({ copies: count, what }) => count === 1 && traitsIn(what).some((id) => id === 'lavender' || id === 'chocolate'),
  ) ||
  bird.parts.some(
    ({ type, said }) =>
      type === 'gene' && /^(?:lav\+\/lav|choc\+?\/choc)$/iu.test(said) && !/^(?:lav\/lav|choc\/choc)$/u.test(said),
  )
function blackOf(family: string): Varieties | undefined {
  const black = varietiesOf(family, ['black'])
  const [name] = black.names
  return name !== undefined && black.genotype === undefined && showsAll(name, ['black'])
    ? { names: [name], firm: true }
    : undefined
}

/** "Wyandotte (SL)": letters that stand for a variety in front of that name do so behind it too. */
function shortVariety({ parts }: BirdSaid): Token | undefined {
  const [family, letters] = ['family', 'breed'].map((type) => parts.find((part) => part.type === type))
  if (!family || !letters || letters.at < family.at || letters.word.length > 3) return undefined
  const words = [letters.word, ...family.word.split(' ')]
  const found = longestPhrase(
    (i) => words[i],
    0,
    ({ length }) => length === words.length,
  )?.meaning
  return found?.type === 'breed' ? { ...letters, ...found } : undefined
}

/** "are Light Sussex silver based": said of a bird whose name tells its colour already. */
const isSaidOf = (part: Token, breed: Token): boolean =>
  part.type === 'colour' &&
  (part.colour === 'silver' || part.colour === 'gold') &&
  part.at > breed.at &&
  breed.type === 'breed' &&
  breed.names[0] !== familyOf(breed.names[0] ?? '')

/** A fine-barred Rock is a barred one. */
const barredLine = (bird: BirdSaid, family: string): readonly Colour[] =>
  family === 'Plymouth Rock' && bird.parts.some((part) => part.type === 'line' && part.line.endsWith('barred'))
    ? ['barred']
    : []

/** "blue egg rooster", "white egg hens": a bird known by the egg it came from, or lays. */
function eggName(bird: BirdSaid): string | undefined {
  const goal = bird.parts.find((part) => part.type === 'goal')
  const shell = goal?.type === 'goal' ? /^(\w+)-eggs$/u.exec(goal.goal)?.[1] : undefined
  if (shell === undefined) return undefined
  if (sexSaid(bird) !== 'F' && /^(?:blue|green|olive)$/u.test(shell)) return 'Bird from a blue egg'
  return `${shell.charAt(0).toUpperCase()}${shell.slice(1)}-egg layer`
}

const describedByTrait = (bird: BirdSaid): Varieties | undefined => {
  const ids = bird.parts.flatMap((part) => (part.type === 'trait' ? [part.trait] : []))
  const name = ids.includes('blue egg') ? 'Bird from a blue egg' : ids.includes('naked neck') ? 'Naked Neck' : undefined
  return name === undefined ? undefined : { names: [name], firm: true }
}

/** A whole name with a colour beside it may be another variety of the same breed: `silver Barnevelder`. */
function ofBreed(names: readonly string[], colours: readonly Colour[]): Varieties {
  const whole = colours.length === 1 && names.length === 1 ? breedNamed(`${colours[0]} ${names[0]}`)?.name : undefined
  if (whole !== undefined) return { names: [whole], firm: true }
  const family = names[0] === undefined ? undefined : familyOf(names[0])
  if (colours.length === 0 || family === undefined || names.length > 1) return { names, firm: names.length === 1 }
  const variety = varietiesOf(family, colours)
  const better = variety.genotype === undefined && variety.names[0] !== undefined && showsAll(variety.names[0], colours)
  return better && !showsAll(names[0]!, colours) ? variety : { names, firm: true }
}

/**
 * The bird that words tell.
 *
 * @param sex told by the part it plays, where its own words tell none
 * @param carry breed whose varieties bare colours may mean
 */
export function birdOf(said: BirdSaid, sex?: Sex, carry?: string): Bird {
  const own = sexSaid(said) ?? sexOfGenes(said)
  const part = own ?? sex
  const varieties = namesOf(said, carry)
  const genes = writtenGenes(said)
  const read = genes === '' ? undefined : readGenotype(genes, part)
  const asWritten = wordsOf(said)
  const genotype: ToldGenotype = {
    ...varieties?.genotype,
    ...traitGenotype(said, part),
    ...lackedGenotype(said.lacks, part),
    ...carriedGenotype(said.carried, part, /Egger$|-egg layer$/u.test(varieties?.names[0] ?? '')),
    ...(read?.ok ? read.value : {}),
  }
  const cross = said.cross && crossRef(said)
  const ref = (breed: string | undefined): BirdRef => {
    const line = lineIn(said.parts, breed)
    return {
      ...(breed === undefined ? {} : { breed }),
      ...(line === undefined ? {} : { line }),
      ...(Object.keys(genotype).length > 0 ? { genotype } : {}),
      ...(cross ? { cross } : {}),
      ...(asWritten === '' ? {} : { asWritten }),
    }
  }
  const names = varieties?.names ?? []
  return {
    ref: ref(names[0]),
    others: varieties?.firm === false ? names.slice(1, 6).map(ref) : [],
    ...(part === undefined ? {} : { sex: part }),
    said: asWritten,
    saidOf: said,
    named: isNamed(said),
    many: said.parts.some(
      (one) => ((one.type === 'cock' || one.type === 'hen') && one.many) || (one.type === 'number' && one.value > 1),
    ),
    ...(read && !read.ok ? { fault: read.fault } : {}),
  }
}

/** Combs, skin, feathering told of a bird; not what its breed name says. */
function traitGenotype(said: BirdSaid, sex: Sex | undefined): ToldGenotype {
  const told = said.parts.flatMap((part) =>
    part.type === 'trait' && part.trait !== 'blue egg' ? [toldByWord(part.trait, 'seen', sex)] : [],
  )
  const frizzled =
    said.parts.some((part) => part.type === 'colour' && part.colour === 'frizzle') &&
    said.parts.some(({ type }) => type === 'breed' || type === 'family')
  const rumpless = said.parts.some((part) => part.type === 'colour' && part.colour === 'rumpless')
  return Object.assign({}, ...told, frizzled ? { F: ['F'] } : {}, rumpless ? { Rp: ['Rp'] } : {})
}

const wordsOf = (said: BirdSaid): string =>
  said.parts
    .filter(({ type }) => !['my', 'his', 'her', 'their', 'number', 'comma', 'open', 'close'].includes(type))
    .map(({ said: text }) => text)
    .filter((text, i, all) => text !== all[i - 1])
    .join(' ')
    .slice(0, 60)

function crossRef(said: BirdSaid): BirdRef['cross'] {
  const mating = said.cross
  if (!mating) return undefined
  const [one, other] = [mating.first[0], mating.second[0]]
  if (!one || !other) return undefined
  const turned = mating.order === 'female first' || sexSaid(one) === 'F' || sexSaid(other) === 'M'
  const [sire, dam] = turned ? [other, one] : [one, other]
  return { sire: birdOf(sire, 'M').ref, dam: birdOf(dam, 'F', familyOf(birdOf(sire, 'M').ref.breed ?? '')).ref }
}
