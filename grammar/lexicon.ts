// grammar/lexicon.ts: every phrase that has a meaning here, found word by word, the longest first.
import { bareNames, breeds } from '../core/breeds.ts'
import { aspectWords, goalWords } from './words/asked.ts'
import { colourWords } from './words/colours.ts'
import { languages } from './words/languages.ts'
import { lineWords } from './words/lines.ts'
import { entries } from './words/entries.ts'
import * as matings from './words/matings.ts'
import { nicknames } from './words/nicknames.ts'
import { risky as riskyWords } from './words/risky.ts'
import * as sexes from './words/sexes.ts'
import { fillers, smallWords } from './words/small.ts'
import { species } from './words/species.ts'
import { traits } from './words/traits.ts'
import { fold } from './normalise.ts'
import type { Meaning } from './token.ts'

/** A phrase as the words of the message are compared with it: folded, hyphens and slashes as blanks. */
export const phrase = (text: string): string => fold(text.replace(/[-/]/gu, ' ')).replace(/\s+/gu, ' ').trim()
export const phrases = (list: string): readonly string[] => list.split(',').map(phrase).filter(Boolean)

type Node = { readonly next: Map<string, Node>; meaning?: Meaning; text?: string }
const root: Node = { next: new Map() }
const joined = new Map<string, string>()
const words = new Map<string, Set<string>>()

function put(text: string, meaning: Meaning): void {
  let node = root
  for (const word of text.split(' ')) {
    const next = node.next.get(word) ?? { next: new Map<string, Node>() }
    node.next.set(word, next)
    node = next
    words.set(
      word,
      (words.get(word) ?? new Set()).add(text === word ? JSON.stringify(meaning) : `${meaning.type} ${word}`),
    )
  }
  node.meaning = meaning
  node.text = text
  const run = text.replaceAll(' ', '')
  if (run.length >= 6) joined.set(run, text)
}

const putAll = (list: string, meaning: Meaning): void => phrases(list).forEach((text) => put(text, meaning))

function putSmall(): void {
  putAll(fillers, { type: 'filler' })
  for (const [type, list] of entries(smallWords)) putAll(list, { type })
  putAll(matings.over, { type: 'over', weak: false })
  putAll(matings.overWeak, { type: 'over', weak: true })
  const { under, and, or, cross, between, outOf, by, half } = matings
  for (const [type, list] of entries({ under, and, or, cross, between, outOf, by, half })) putAll(list, { type })
  putAll(matings.generation, { type: 'generation', generation: 1 })
  putAll(matings.generation2, { type: 'generation', generation: 2 })
}

function putSexes(): void {
  putAll(sexes.chick, { type: 'chick' })
  putAll(sexes.cock, { type: 'cock', many: false, parent: false })
  putAll(sexes.cocks, { type: 'cock', many: true, parent: false })
  putAll(sexes.hen, { type: 'hen', many: false, parent: false })
  putAll(sexes.hens, { type: 'hen', many: true, parent: false })
  putAll(sexes.father, { type: 'cock', many: false, parent: true })
  putAll(sexes.fathers, { type: 'cock', many: true, parent: true })
  putAll(sexes.mothers, { type: 'hen', many: true, parent: true })
  putAll(sexes.mother, { type: 'hen', many: false, parent: true })
  const { daughter, son, sibling, grandchild, grandfather, grandmother } = sexes
  for (const [kin, list] of entries({ daughter, son, sibling, grandchild, grandfather, grandmother }))
    putAll(list, { type: 'kin', kin })
}

function putForeign(): void {
  for (const words of Object.values(languages)) {
    putAll(words.small, { type: 'filler' })
    for (const aspect of ['sexing', 'chicks', 'eggs', 'shell', 'reverse', 'why'] as const)
      putAll(words[aspect], { type: 'aspect', aspect })
    putAll(words.over, { type: 'over', weak: true })
    for (const type of ['under', 'and', 'or', 'which', 'my', 'is', 'chick'] as const) putAll(words[type], { type })
    putAll(words.for, { type: 'forWhom' })
    for (const type of ['cock', 'hen'] as const) {
      putAll(words[type], { type, many: false, parent: false })
      putAll(words[`${type}s`], { type, many: true, parent: false })
    }
  }
}

function putAsked(): void {
  for (const [aspect, list] of entries(aspectWords)) putAll(list, { type: 'aspect', aspect })
  for (const [goal, list] of entries(goalWords)) putAll(list, { type: 'goal', goal })
}

/** Word by word also in the plural: `Barred Rocks`, `silkies`. */
const plural = (name: string): string => `${name}${/(?:s|sh|x|ch)$/u.test(name) ? 'es' : 's'}`

/** `barred hens` names a breed and a sex: the sex is read by itself. */
const endsInSex = /\b(?:hens?|roo|rooster|cock|cockerel)$/iu

function putBreeds(): void {
  for (const row of bareNames) {
    const family = row.family
    const meant = row.means ?? []
    const names = row.usual === undefined ? meant : [row.usual, ...meant.filter((name) => name !== row.usual)]
    for (const word of row.words)
      put(phrase(word), family === undefined ? { type: 'breed', names } : { type: 'family', family })
  }
  for (const { name, family, alsoCalled, misspelt } of breeds) {
    if (family === 'described') continue
    const meaning: Meaning = { type: 'breed', names: [name] }
    for (const text of [name, plural(name), ...[...alsoCalled, ...misspelt].filter((also) => !endsInSex.test(also))])
      put(phrase(text), meaning)
  }
  for (const [name, list] of Object.entries(nicknames)) putAll(list, { type: 'breed', names: [name] })
  for (const { name, said } of species) putAll(said, { type: 'family', family: name })
}

putForeign()
putAsked()
putSmall()
putSexes()
for (const [id, { said }] of Object.entries(traits)) putAll(said, { type: 'trait', trait: id })
putBreeds()
putAll(goalWords.sexable, { type: 'sexlink' })
for (const [line, list] of entries(lineWords)) putAll(list, { type: 'line', line })
for (const [colour, list] of entries(colourWords)) putAll(list, { type: 'colour', colour })

export const isRisky: (text: string) => boolean = (
  (set) => (text: string) =>
    set.has(text)
)(new Set(phrases(riskyWords)))

export type Found = { readonly meaning: Meaning; readonly text: string; readonly length: number }

/** The longest phrase that begins at `from`. `admits` may turn a phrase down, then a shorter one is tried. */
export function longestPhrase(
  at: (index: number) => string | undefined,
  from: number,
  admits: (found: Found) => boolean,
): Found | undefined {
  const found: Found[] = []
  let node: Node | undefined = root
  for (let i = from; node && i < from + 8; i += 1) {
    const word = at(i)
    node = word === undefined ? undefined : node.next.get(word)
    if (node?.meaning && node.text !== undefined)
      found.push({ meaning: node.meaning, text: node.text, length: i - from + 1 })
  }
  return found.toReversed().find(admits)
}

const ofBirds: ReadonlySet<Meaning['type']> = new Set([
  'breed',
  'family',
  'colour',
  'line',
  'cock',
  'hen',
  'kin',
  'chick',
  'trait',
  'carries',
  'over',
  'under',
  'sexlink',
  'generation',
])
/** True for a word that by itself names a bird, its looks, its kin or a mating. */
export function tellsOfBirds(word: string): boolean {
  const meaning = root.next.get(word)?.meaning
  return (
    (meaning !== undefined && ofBirds.has(meaning.type)) ||
    (meaning === undefined && words.has(word) && word.length > 3)
  )
}

/** True for a word of any phrase. */
export const isKnownWord = (word: string): boolean => words.has(word)
/** The phrase of which this is the run-together form: `rhodeislandred`, `sexlink`. */
export const runTogether = (word: string): string | undefined => joined.get(word)
/** Every word, with what it stands for: near misses of two words that mean the same are no tie. */
export const knownWords = (): ReadonlyMap<string, ReadonlySet<string>> => words
/** Run-together form of each phrase. */
export const joinedNames = (): ReadonlyMap<string, string> => joined
