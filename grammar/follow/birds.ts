// grammar/follow/birds.ts: another bird, another line, the other way round, or a word put right: the cross before with that change.
import { breedNamed, lineOf } from '../../core/breeds.ts'
import { birdOf } from '../bird.ts'
import { partTaken } from '../partTaken.ts'
import { aspectsOf, isSolid } from '../read/common.ts'
import { isNamed } from '../saying.ts'
import { familyOf } from '../variety.ts'
import { lineSought } from '../words/lines.ts'
import { areChicksAsked, asksSexOf } from './asked.ts'
import { crossAgain, inPlace, lasting, withBird } from './cross.ts'
import type { BirdRef, CrossQuestion } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Group } from '../saying.ts'
import type { Mating } from './cross.ts'

/** The new bird; bare colours are of the breed in whose place it comes. */
const newBird = (group: Group, part: Sex, mating: Mating): readonly BirdRef[] =>
  group.map(
    (said) =>
      birdOf(
        said,
        part,
        familyOf(inPlace(mating, part).breed ?? '') ?? familyOf(inPlace(mating, part === 'M' ? 'F' : 'M').breed ?? ''),
      ).ref,
  )

function replaced(base: CrossQuestion, group: Group, told: Sex | undefined, reading: Reading): CrossQuestion {
  const [first] = base.matings
  const part = partTaken(group, told, first!, reading.tokens)
  const matings = base.matings.flatMap((mating) =>
    newBird(group, part, mating).map((bird) => withBird(mating, part, withOld(bird, inPlace(mating, part)))),
  )
  const once = [...new Map(matings.map((mating) => [JSON.stringify(mating), mating])).values()]
  return crossAgain(base, once, [...lasting(base), ...aspectsOf(reading)], reading)
}

/** "same but heritage", "same but split": what is told is added to the bird that was there. */
const withOld = (bird: BirdRef, old: BirdRef): BirdRef => {
  if (bird.breed !== undefined || bird.cross !== undefined) return bird
  const genotype = { ...old.genotype, ...bird.genotype }
  return { ...old, ...bird, ...(Object.keys(genotype).length > 0 ? { genotype } : {}) }
}

// --- lines ---

const partTold = ({ words, tokens }: Reading): Sex | undefined => {
  if (tokens.some(({ type }) => type === 'cock') || words.some((word) => /^(?:he|hes|him|his)$/u.test(word))) return 'M'
  if (tokens.some(({ type }) => type === 'hen') || words.some((word) => /^(?:she|shes|her|hers)$/u.test(word)))
    return 'F'
  return undefined
}

function withLine(bird: BirdRef, line: keyof typeof lineSought): BirdRef | undefined {
  const breed = bird.breed === undefined ? undefined : breedNamed(bird.breed)
  const found = breed && lineSought[line].map((word) => lineOf(breed, word)).find((one) => one !== undefined)
  return found ? { ...bird, line: found.id } : undefined
}

/** The one part of which a line was told before: "production RIR over Rocks", "and the heritage line?". */
function partOfLine({ matings }: CrossQuestion): Sex | undefined {
  const [sires, dams] = [matings.some(({ sire }) => sire.line), matings.some(({ dam }) => dam.line)]
  return sires === dams ? undefined : sires ? 'M' : 'F'
}

/** A line without a bird: of the bird the pronoun points to, of the one whose line was told, else of every bird that has such a line. */
export function lineChanged(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const token = reading.tokens.find(({ type }) => type === 'line')
  if (token?.type !== 'line' || reading.scene.birds.some((bird) => bird.ref.breed !== undefined)) return undefined
  const part = partTold(reading) ?? partOfLine(base)
  const matings = base.matings.map(({ sire, dam }) => ({
    sire: part === 'F' ? sire : (withLine(sire, token.line) ?? sire),
    dam: part === 'M' ? dam : (withLine(dam, token.line) ?? dam),
  }))
  return JSON.stringify(matings) === JSON.stringify(base.matings)
    ? undefined
    : crossAgain(base, matings, [...lasting(base), ...aspectsOf(reading)], reading)
}

// --- what was told of a bird of the cross ---

/** "no, the roo is the Sussex": the birds change places, or a new one comes in. */
export function corrected(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const [mating] = base.matings
  if (asksSexOf(reading)) return undefined // of the chicks
  for (const { who, is } of reading.scene.told) {
    const part = who.sex
    const [first] = is
    // "the RIR is the rooster": which bird is told first, its part behind
    const bird = who.ref.breed !== undefined && first && !first.named ? who : first
    if (!mating || part === undefined || !bird) continue
    const said = bird.ref
    const old = inPlace(mating, part)
    const other = inPlace(mating, part === 'M' ? 'F' : 'M')
    if (bird.saidOf.split || bird.saidOf.carried.length > 0 || (said.breed === undefined && said.genotype)) {
      const genotype = said.genotype ?? splitLike(other)
      return crossAgain(
        base,
        base.matings.map((one) =>
          withBird(one, part, { ...inPlace(one, part), genotype: { ...inPlace(one, part).genotype, ...genotype } }),
        ),
        lasting(base),
        reading,
      )
    }
    if (said.breed === undefined) continue
    const isOther = isSameBird(
      said,
      other,
      bird.saidOf.parts.some(({ type }) => type === 'family'),
    )
    if (isOther && !isSameBird(said, old, false))
      return crossAgain(
        base,
        base.matings.map(({ sire, dam }) => ({ sire: dam, dam: sire })),
        lasting(base),
        reading,
      )
    return crossAgain(
      base,
      [withBird(mating, part, newBird([bird.saidOf], part, mating)[0] ?? said)],
      lasting(base),
      reading,
    )
  }
  return undefined
}

const isSameBird = (said: BirdRef, bird: BirdRef, family: boolean): boolean =>
  said.breed === bird.breed ||
  (family && familyOf(said.breed ?? '') === familyOf(bird.breed ?? '') && said.breed !== undefined) ||
  ((said.breed ?? '').endsWith(' bird') &&
    (bird.breed ?? '').toLowerCase().includes((said.breed ?? '').toLowerCase().replace(' bird', '')))

/** "split too": to what the other bird shows. */
const splitLike = ({ breed, genotype }: BirdRef): BirdRef['genotype'] => {
  if (/Lavender/u.test(breed ?? '') || genotype?.['lav']) return { lav: ['Lav+', 'lav'] }
  if (/Chocolate/u.test(breed ?? '') || genotype?.['choc']) return { choc: ['Choc+', 'choc'] }
  if (/White/u.test(breed ?? '')) return { c: ['C+', 'c'] }
  return undefined
}

export const reversed = (base: CrossQuestion, reading: Reading): CrossQuestion | undefined =>
  reading.scene.aspects.includes('reverse')
    ? crossAgain(
        base,
        base.matings.map(({ sire, dam }) => ({ sire: dam, dam: sire })),
        [...lasting(base), ...aspectsOf(reading)].filter((aspect) => aspect !== 'reverse'),
        reading,
      )
    : undefined

export function changed(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const [change] = reading.scene.changes
  const group = change?.birds ?? []
  const told = change?.part ?? partOnlyTold(reading) ?? partPointedTo(reading)
  if (change && group.some(isNamed)) return replaced(base, group, told, reading)
  const birds = reading.scene.birds.filter(
    (bird) =>
      !isDenied(bird, reading) &&
      (isSolid(bird) || (bird.named && bird.saidOf.parts.some(({ type }) => type === 'colour'))),
  )
  if (areChicksAsked(birds, reading)) return undefined
  if (birds.length === 0 || birds.length > 3 || reading.words.length > 9) return undefined
  return replaced(
    base,
    birds.map(({ saidOf }) => saidOf),
    birds[0]!.sex ?? told,
    reading,
  )
}

/** "hes a New Hampshire not RIR". */
const isDenied = ({ saidOf }: Bird, { tokens }: Reading): boolean =>
  tokens.findLast(({ at, type }) => at < saidOf.at && type !== 'filler')?.type === 'not'

/** "with Sussex hens instead": a part named beside the change. */
const partOnlyTold = ({ words }: Reading): Sex | undefined =>
  words.includes('over') || words.includes('under') ? (words.includes('under') ? 'M' : 'F') : undefined

/** "what if hes split": the cock. */
const partPointedTo = ({ words }: Reading): Sex | undefined =>
  words.some((word) => /^(?:he|hes|him)$/u.test(word))
    ? 'M'
    : words.some((word) => /^(?:she|shes)$/u.test(word))
      ? 'F'
      : undefined
