// grammar/variety.ts: which catalogue birds the breed and colour words of a bird may mean, the likeliest first.
import { bareNames, breedNamed, breeds, type Breed } from '../core/breeds.ts'
import { fold } from './normalise.ts'
import { colourWords, type Colour } from './words/colours.ts'
import { entries } from './words/entries.ts'
import { phrases } from './lexicon.ts'
import { species } from './words/species.ts'
import type { ToldGenotype } from '../core/question.ts'

export type Varieties = {
  /** Catalogue names, likeliest first. */
  readonly names: readonly string[]
  /** True where the first is so usual that nobody needs to be asked. */
  readonly firm: boolean
  /** What the colour word says where the catalogue has no such variety. */
  readonly genotype?: ToldGenotype
}

const colourPhrases: readonly (readonly [string, Colour])[] = entries(colourWords).flatMap(([colour, list]) =>
  phrases(list).map((words) => [` ${words} `, colour] as const),
)

/** The colour words of a catalogue name: `Blue Laced Red Wyandotte` -> blue, laced, red. */
function coloursOf(breed: Breed): ReadonlySet<Colour> {
  const rest = ` ${fold(breed.name.replace(breed.family, '')).replace(/[^a-z]+/gu, ' ')} `
  return new Set(colourPhrases.flatMap(([words, colour]) => (rest.includes(words) ? [colour] : [])))
}

type Variety = { readonly name: string; readonly colours: ReadonlySet<Colour> }
const families: ReadonlyMap<string, readonly Variety[]> = new Map(
  Object.entries(Object.groupBy(breeds, ({ family }) => family)).map(([family, members = []]) => [
    family,
    members.map((breed) => ({ name: breed.name, colours: coloursOf(breed) })),
  ]),
)

const usualOf = (family: string): { readonly names: readonly string[]; readonly firm: boolean } => {
  const ours = species.find(({ name }) => name === family)
  const theirs = bareNames.find((row) => row.family === family)?.usual
  const all = (families.get(family) ?? []).map(({ name }) => name)
  const first = ours?.usual.filter((name) => all.includes(name)) ?? (theirs === undefined ? [] : [theirs])
  return {
    names: [...new Set([...first, ...(first.length > 0 ? [] : all)])],
    firm: ours?.firm ?? (theirs !== undefined || all.length === 1),
  }
}

/** What a colour does on a black bird, where the catalogue lacks the variety. */
const onBlack: Partial<Readonly<Record<Colour, ToldGenotype>>> = {
  blue: { Bl: ['Bl', 'bl+'] },
  splash: { Bl: ['Bl', 'Bl'] },
  lavender: { lav: ['lav', 'lav'] },
  chocolate: { choc: ['choc', 'choc'] },
  mottled: { mo: ['mo', 'mo'] },
  barred: { B: ['B'] },
  cuckoo: { B: ['B'] },
  frizzle: { F: ['F', 'f+'] },
}

const nearly: Partial<Readonly<Record<Colour, Colour>>> = {
  barred: 'cuckoo',
  cuckoo: 'barred',
  red: 'brown',
  light: 'columbian',
  columbian: 'light',
  gold: 'partridge',
  yellow: 'buff',
  pale: 'light',
  ginger: 'red',
  grey: 'blue',
}

/** A breed told with colours: the varieties that show them all, those with the fewest others first. */
export function varietiesOf(family: string, colours: readonly Colour[]): Varieties {
  const usual = usualOf(family)
  if (colours.length === 0) return usual
  const members = families.get(family) ?? []
  const having = (wanted: readonly Colour[]): readonly string[] =>
    members
      .filter((variety) => wanted.every((colour) => variety.colours.has(colour)))
      .toSorted((a, b) => a.colours.size - b.colours.size || rank(usual.names, a.name) - rank(usual.names, b.name))
      .map(({ name }) => name)
  const exact = having(colours)
  const meant = having(colours.map((colour) => nearly[colour] ?? colour))[0]
  const size = (name: string | undefined): number =>
    members.find((variety) => variety.name === name)?.colours.size ?? Infinity
  if (exact.length > 0 && size(exact[0]) > colours.length && size(meant) === colours.length)
    return { names: [meant!], firm: true } // a yellow Orpington is a buff one, not a lemon cuckoo
  if (exact.length > 0) return narrowed(exact, members, colours.length)
  const near = having(colours.map((colour) => nearly[colour] ?? colour))
  if (near.length > 0) return { names: near.slice(0, 1), firm: true }
  const without = colours.filter((colour) => members.some((variety) => variety.colours.has(colour)))
  const rest = without.length > 0 ? having(without) : []
  const genotype = colours.map((colour) => onBlack[colour]).find((found) => found !== undefined)
  if (genotype && rest.length === 0) {
    const black = having(['black'])[0]
    return { names: [black ?? usual.names[0] ?? family], firm: true, genotype }
  }
  return rest.length > 0 ? { names: rest.slice(0, 1), firm: true } : usual
}

/** True where the breed has a variety of just these colours. */
export const hasVariety = (family: string, colours: readonly Colour[]): boolean =>
  (families.get(family) ?? []).some(
    ({ colours: own }) => own.size === colours.length && colours.every((colour) => own.has(colour)),
  )

/** Does this bird show all of these colours, by its name? */
export function showsAll(name: string, colours: readonly Colour[]): boolean {
  const own = [...families.values()].flat().find((variety) => variety.name === name)?.colours
  return own !== undefined && colours.every((colour) => own.has(colour))
}

const rank = (names: readonly string[], name: string): number => {
  const at = names.indexOf(name)
  return at < 0 ? names.length : at
}

/** `silver Wyandotte` may be laced or pencilled; with no other colour words, the plainest is meant. */
function narrowed(exact: readonly string[], members: readonly Variety[], told: number): Varieties {
  const plainest = members.find(({ name }) => name === exact[0])?.colours.size ?? 0
  const alike = exact.filter((name) => members.find((variety) => variety.name === name)?.colours.size === plainest)
  return {
    names: alike.length > 1 && plainest > told ? alike.slice(0, 4) : exact.slice(0, 1),
    firm: alike.length === 1 || plainest === told,
  }
}

/** Colour words alone: the breed that is known by them, else the catalogue's described bird. */
const knownBy: readonly (readonly [readonly Colour[], string])[] = [
  [['silver', 'laced'], 'Silver Laced Wyandotte'],
  [['gold', 'laced'], 'Golden Laced Wyandotte'],
  [['blue', 'laced', 'red'], 'Blue Laced Red Wyandotte'],
  [['black', 'copper'], 'Black Copper Marans'],
  [['blue', 'copper'], 'Blue Copper Marans'],
  [['splash', 'copper'], 'Splash Copper Marans'],
  [['copper'], 'Black Copper Marans'],
  [['white', 'crested', 'black'], 'White Crested Black Polish'],
  [['white', 'laced', 'red'], 'White Laced Red Cornish'],
  [['exchequer'], 'Exchequer Leghorn'],
  [['salmon'], 'Salmon Faverolles'],
  [['speckled'], 'Speckled Sussex'],
  [['barred'], 'Barred Plymouth Rock'],
  [['jubilee'], 'Jubilee Orpington'],
  [['mille fleur'], "Mille Fleur d'Uccle"],
  [['tufted'], 'Tufted Araucana'],
  [['clean-faced'], 'Clean-faced Araucana'],
]

const described: Partial<Readonly<Record<Colour, string>>> = {
  red: 'Red bird',
  ginger: 'Red bird',
  buff: 'Buff Orpington',
  gold: 'Gold bird',
  silver: 'Silver bird',
  columbian: 'Columbian bird',
  light: 'Columbian bird',
  black: 'Black bird',
  white: 'White bird',
  cuckoo: 'Barred bird',
  blue: 'Blue bird',
  grey: 'Blue bird',
  splash: 'Splash bird',
  lavender: 'Lavender bird',
  chocolate: 'Chocolate bird',
  dun: 'Dun bird',
  mottled: 'Mottled bird',
  partridge: 'Partridge bird',
  brown: 'Brown bird',
  duckwing: 'Silver duckwing bird',
  wheaten: 'Wheaten bird',
  birchen: 'Birchen bird',
  laced: 'Laced bird',
  spangled: 'Spangled bird',
  crele: 'Crele bird',
  pyle: 'Pyle bird',
  paint: 'Paint bird',
  frizzle: 'Frizzle',
  smooth: 'Smooth',
  'short legged': 'Short-legged bantam',
  'long legged': 'Japanese bantam (long leg)',
  crested: 'Crested bird',
  bearded: 'Muffed bird',
  mixed: 'Mixed breed',
  coloured: 'Mixed breed',
  tailed: 'Mixed breed',
  chipmunk: 'Brown bird',
  pencilled: 'Partridge bird',
}

/** The bird of colour words alone; undefined where they describe no bird (`yellow`). */
export function describedBy(colours: readonly Colour[]): Varieties | undefined {
  const told = new Set(colours)
  const known = knownBy.find(([words]) => words.length === told.size && words.every((word) => told.has(word)))
  if (known) return { names: [known[1]], firm: true }
  if (told.has('barred') && !told.has('white')) return { names: ['Barred Plymouth Rock'], firm: true }
  const first = knownBy.find(([words]) => words.length > 1 && words.every((word) => told.has(word)))
  if (first) return { names: [first[1]], firm: true }
  const name = colours.map((colour) => described[colour]).find((found) => found !== undefined)
  return name === undefined ? undefined : { names: [name], firm: true }
}

/** Other varieties of a breed, by any of its names: what "same but blue hens" chooses among. */
export const familyOf = (name: string): string | undefined => breedNamed(name)?.family
