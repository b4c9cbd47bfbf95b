// grammar/read/crossOf.ts: the cross question of the matings of a message: each bird as told, what is asked, what was assumed.
import { breedNamed } from '../../core/breeds.ts'
import { aspectsOf, commonOf, isHybrid } from './common.ts'
import { outOfIn, shownAsked } from './shownAsked.ts'
import type { Assumed, BirdRef, CrossQuestion } from '../../core/question.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Colour } from '../words/colours.ts'
import type { Pair } from './pairs.ts'

export type Told = { readonly sire: BirdRef; readonly dam: BirdRef }

export const nameOf = (ref: BirdRef): string => ref.breed ?? ref.asWritten ?? 'the bird'

/** Order of the words alone told who is the male. */
export const maleFirst = ({ sire, dam, by }: Pair): readonly Assumed[] =>
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

export const lavenderBreed = ({ ref }: Bird): BirdRef['genotype'] | undefined =>
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
export const isShareOrShell = (one: string): boolean => one === 'shares' || one === 'shell'

/** Easter Eggers and the like: of them shares are of shells. */
const isOfEggColour = ({ ref }: Bird): boolean =>
  /^(?:Easter|Olive) Egger$|-egg layer$|from a .* egg$/u.test(ref.breed ?? '')
