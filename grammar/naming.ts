// grammar/naming.ts: does a word for a bird name one that was named before, or add to it: breeds, colours, kin, herds.
import { breedNamed } from '../core/breeds.ts'
import { isPluralName } from './partTaken.ts'
import { sexSaid } from './saying.ts'
import { hasVariety } from './variety.ts'
import type { BirdSaid, Group } from './saying.ts'
import type { Token } from './token.ts'
import type { Colour } from './words/colours.ts'

export const familyIn = (said: BirdSaid): string | undefined => {
  for (const part of said.parts) {
    if (part.type === 'family') return part.family
    if (part.type === 'breed' && part.names[0] !== undefined) return breedNamed(part.names[0])?.family
  }
  return undefined
}

export const hasBreed = (said: BirdSaid): boolean =>
  said.parts.some(({ type }) => type === 'breed' || type === 'family') || said.cross !== undefined

export const coloursIn = (said: BirdSaid): readonly Colour[] =>
  said.parts.flatMap((part) => (part.type === 'colour' ? [part.colour] : []))

/** Colours that are spoken of within one breed, or with "ones" behind them. */
export const isPattern = (said: BirdSaid): boolean =>
  coloursIn(said).some((colour) =>
    ['laced', 'pencilled', 'spangled', 'short legged', 'long legged', 'tufted', 'clean-faced'].includes(colour),
  ) || said.parts.some(({ type, word }) => type === 'colour' && word.endsWith(' ones'))

/** Is this word for a bird of the message one that names it again: "the red", "the Australorp"? */
export function names(again: BirdSaid, bird: BirdSaid): boolean {
  const whole = again.parts.find((part) => part.type === 'breed')
  if (whole?.type === 'breed')
    return bird.parts.some((part) => part.type === 'breed' && part.names[0] === whole.names[0])
  const [one, other] = [familyIn(again), familyIn(bird)]
  if (one !== undefined)
    return (
      one === other &&
      coloursIn(again).every(
        (colour) => coloursIn(bird).length === 0 || coloursIn(bird).includes(colour) || nameHas(bird, colour),
      )
    )
  const colours = coloursIn(again)
  return colours.length > 0 && colours.every((colour) => coloursIn(bird).includes(colour) || nameHas(bird, colour))
}

const nameHas = (bird: BirdSaid, colour: Colour): boolean =>
  bird.parts.some((part) => part.type === 'breed' && (part.names[0] ?? '').toLowerCase().includes(colour))

/** "Welsummers and my Orpington cockerel": one cock, and so many hens. */
export const isHerd = (said: BirdSaid, group: Group): boolean =>
  sexSaid(said) === undefined &&
  isPluralName(said) &&
  group.some((one) => one !== said && one.parts.some((part) => part.type === 'cock' && !part.many))

/** "hatchery Barred Rocks vs exhibition ones": the same breed in another line. */
export function inOtherLine(said: BirdSaid, list: Group): BirdSaid {
  const line = said.parts.some(({ type }) => type === 'line')
  const other = list.find((one) => one !== said && one.parts.some(({ type }) => type === 'line') && hasBreed(one))
  if (!line || hasBreed(said) || !other) return said
  return { ...said, parts: [...other.parts.filter(({ type }) => type === 'breed' || type === 'family'), ...said.parts] }
}

/** "his mother", "Grandsire": kin of a bird, and no mate of it. */
export const isKin = ({ parts }: BirdSaid): boolean =>
  parts.some(({ type }) => type === 'kin') ||
  (parts.some(({ type }) => type === 'his' || type === 'her') &&
    parts.some((part) => (part.type === 'cock' || part.type === 'hen') && part.parent))

export const merged = (of: BirdSaid, more: BirdSaid): BirdSaid => ({
  ...of,
  parts: [...of.parts, ...more.parts.filter(({ type }) => !['their', 'my', 'number'].includes(type))],
  lacks: [...of.lacks, ...more.lacks],
  carried: [...of.carried, ...more.carried],
  split: of.split || more.split,
  cross: of.cross ?? more.cross,
})

/** Is there such a variety of that breed? */
export function fitsFamily(said: BirdSaid, family: string | undefined): boolean {
  if (family === undefined) return false
  const own = familyIn(said)
  if (own !== undefined)
    return own === family && (said.parts.some(({ type }) => type === 'breed') || coloursIn(said).length > 0)
  const colours = coloursIn(said)
  return colours.length > 0 && hasVariety(family, colours)
}

/** "I kept a cockerel from A x B. Can I put him on ...": the young bird itself goes on, and not its parents. */
export function isBredOn(who: BirdSaid, tokens: readonly Token[]): boolean {
  const sex = sexSaid(who)
  const pronoun = sex === 'M' ? /^(?:he|him|hes)$/u : sex === 'F' ? /^(?:she|her|shes|them|they)$/u : undefined
  const at = tokens.findIndex((token) => token.at > who.end && pronoun?.test(token.word) === true)
  const joins = tokens
    .slice(Math.max(0, at - 3), at + 4)
    .some(({ type }) => type === 'over' || type === 'under' || type === 'cross')
  return at >= 0 && joins && tokens.slice(at).some(({ type }) => type === 'breed' || type === 'family')
}
