// grammar/partTaken.ts: which part of a cross a new bird takes, where no word tells: "is it the same with a Welsummer".
import { breedNamed } from '../core/breeds.ts'
import { birdOf } from './bird.ts'
import { sexOfGroup, type BirdSaid, type Group } from './saying.ts'
import { familyOf } from './variety.ts'
import type { BirdRef, CrossQuestion } from '../core/question.ts'
import type { Sex } from '../core/vocabulary.ts'
import type { Token } from './token.ts'

type Mating = CrossQuestion['matings'][number]

/** Silver or bars: what a hen gives to her sons alone. A bird with either goes with birds that have either. */
export function marks({ breed, genotype }: BirdRef): boolean | undefined {
  const genes = breed === undefined ? undefined : breedNamed(breed)?.genes
  if (!genes && !genotype) return undefined
  const has = (locus: string, allele: string): boolean => {
    const [told, gene] = [genotype?.[locus], genes?.[locus]]
    if (told) return told.includes(allele)
    return gene?.kind === 'fixed' && gene.allele === allele
  }
  const hidesSilver = has('E', 'E') || has('c', 'c') || has('I', 'I')
  return has('B', 'B') || (has('S', 'S') && !hidesSilver)
}

/** The part of the bird that sexes its chicks as the new one does, where the two of the mating differ. */
function bySexing(bird: BirdRef, { sire, dam }: Mating): Sex | undefined {
  const [own, cock, hen] = [bird, sire, dam].map(marks)
  if (own === undefined || cock === undefined || hen === undefined || cock === hen) return undefined
  return own === cock ? 'M' : 'F'
}

/** The part of the bird that is of the same breed, where the other is not. */
function byFamily(bird: BirdRef, { sire, dam }: Mating): Sex | undefined {
  const [own, cock, hen] = [bird, sire, dam].map(({ breed }) => (breed === undefined ? undefined : familyOf(breed)))
  if (own === undefined || cock === hen) return undefined
  return own === cock ? 'M' : own === hen ? 'F' : undefined
}

const sameAsMany = /marans|faverolles|sussex|polish|cornish/iu
/** "Delawares", "Buff Orps". */
export function isPluralName({ parts }: BirdSaid): boolean {
  const name = parts.find(({ type }) => type === 'breed' || type === 'family')
  return name !== undefined && /s$/iu.test(name.said) && !sameAsMany.test(name.said)
}
/** "Delawares" are hens; "a Delaware" is the one cock. */
function byNumber([first]: Group, tokens: readonly Token[]): Sex | undefined {
  const name = first?.parts.find(({ type }) => type === 'breed' || type === 'family')
  if (!first || !name) return undefined
  if (isPluralName(first)) return 'F'
  const before = tokens.findLast(({ at, word }) => at < first.at && /^(?:a|an|another)$/u.test(word))
  const between = before && tokens.filter(({ at }) => at > before.at && at < first.at)
  return between?.every(({ type }) => type === 'filler') === true ? 'M' : undefined
}

/**
 * The part a new bird takes in a mating.
 *
 * @param told by a word of the message beside it
 */
export function partTaken(group: Group, told: Sex | undefined, mating: Mating, tokens: readonly Token[]): Sex {
  const [first] = group
  const lead = first?.parts[0]?.type
  const said = told ?? sexOfGroup(group) ?? (lead === 'his' ? 'M' : lead === 'her' ? 'F' : undefined)
  if (said || !first) return said ?? 'F'
  const { ref } = birdOf(first)
  return byFamily(ref, mating) ?? bySexing(ref, mating) ?? byNumber(group, tokens) ?? 'F'
}
