// core/answers/parents/egg.ts: which hens can have laid the egg a chick came out of.
import { breedNamed } from '../../breeds.ts'
import type { BirdRef } from '../../question.ts'

/** Shell words of the catalogue that a keeper may mean by one of his own. */
const meant: Readonly<Record<string, readonly string[]>> = {
  brown: ['brown', 'tinted'],
  dark: ['dark'],
  chocolate: ['dark'],
  white: ['white'],
  cream: ['cream', 'tinted', 'white'],
  tinted: ['cream', 'tinted', 'brown'],
  pink: ['tinted', 'cream'],
  blue: ['blue'],
  green: ['green', 'olive'],
  olive: ['olive', 'green'],
}

/** The hen of the catalogue that stands for a dam of whom only the egg is told. */
const layers: Readonly<Record<string, string>> = {
  brown: 'Brown-egg layer',
  dark: 'Dark-egg layer',
  chocolate: 'Dark-egg layer',
  white: 'White-egg layer',
  blue: 'Blue-egg layer',
  green: 'Green-egg layer',
  olive: 'Olive-egg layer',
}

const wordOf = (egg: string | undefined): string | undefined =>
  Object.keys(meant).find((word) => egg?.toLowerCase().includes(word))

/** False where this hen's breed does not lay such an egg; true where it does or where nobody knows. */
export function canLay({ breed }: BirdRef, egg: string | undefined): boolean {
  const word = wordOf(egg)
  const shell = breed === undefined ? undefined : breedNamed(breed)?.shell.colour
  if (word === undefined || shell === undefined || shell === 'unknown') return true
  return meant[word]!.some((colour) => shell.includes(colour))
}

export const unnamedDam = (egg: string | undefined): BirdRef => ({ breed: layers[wordOf(egg) ?? ''] ?? 'Mixed breed' })
export const unnamedSire: BirdRef = { breed: 'Mixed breed' }
