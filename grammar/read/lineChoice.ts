// grammar/read/lineChoice.ts: two lines of one parent set against each other: the same mating once with each of them.
import { breedNamed, lineOf } from '../../core/breeds.ts'
import { lineSought } from '../words/lines.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Pair } from './pairs.ts'
import type { Token } from '../token.ts'

const isName = (token: Token | undefined): boolean => token?.type === 'breed' || token?.type === 'family'
const isNear = ({ type, word }: Token): boolean =>
  ['line', 'colour', 'filler', 'open', 'slash', 'cock', 'hen'].includes(type) && !/^(?:when|if|now|then)$/u.test(word)

/** "if he is production": of the parent that the pronoun points to. */
function pronounOf(tokens: readonly Token[], at: number): 'M' | 'F' | undefined {
  const near = tokens.slice(Math.max(0, at - 5), at)
  const words = near.slice(near.findLastIndex(isName) + 1).map(({ word }) => word.split(' ')[0])
  return words.some((word) => /^(?:he|hes|him)$/u.test(word ?? ''))
    ? 'M'
    : words.some((word) => /^(?:she|shes|they|theyre)$/u.test(word ?? ''))
      ? 'F'
      : undefined
}

/** The breed of which a word of a line is said: the one beside it, else the one named last before it, else the next. */
function breedOf(tokens: readonly Token[], at: number): Token | undefined {
  const [before, after] = [tokens.slice(Math.max(0, at - 60), at), tokens.slice(at + 1, at + 60)]
  const next = after.find((token) => !isNear(token) || token.type === 'cock' || token.type === 'hen')
  if (isName(next)) return next
  return before.findLast(isName) ?? after.find(isName)
}

const isOf = ({ ref }: Bird, token: Token): boolean =>
  token.type === 'breed'
    ? token.names[0] === ref.breed
    : token.type === 'family' && breedNamed(ref.breed ?? '')?.family === token.family

/** Lines of that bird that the message names, in its order. */
function linesOf(bird: Bird, part: 'M' | 'F', tokens: readonly Token[]): readonly string[] {
  const breed = breedNamed(bird.ref.breed ?? '')
  if (!breed) return []
  let pointed: 'M' | 'F' | undefined
  const found = tokens.flatMap((token, at) => {
    if (isName(token)) pointed = undefined
    if (token.type !== 'line') return []
    pointed = pronounOf(tokens, at) ?? pointed
    const of = breedOf(tokens, at)
    if (pointed ? pointed !== part : !of || !isOf(bird, of)) return []
    const line = lineSought[token.line].map((word) => lineOf(breed, word)).find((known) => known !== undefined)
    return line ? [line.id] : []
  })
  return [...new Set(found)]
}

const compares =
  /\b(?:instead of|rather than|in place of|vs|versus|or|than|compared|compare|difference|differ|better|worth|matter|matters|point)\b/u

/** Most tokens of a message that are looked through. */
const mostLookedAt = 300
/** Most lines of one bird that are set side by side. */
const mostLines = 3

/** The mating with each of the lines that are compared; as it was where none are. */
export function inEachLine(pairs: readonly Pair[], { tokens, words }: Reading): readonly Pair[] {
  const [only, ...rest] = pairs
  if (!only || rest.length > 0 || only.sire.ref.breed === only.dam.ref.breed || !compares.test(words.join(' ')))
    return pairs
  const head = tokens.slice(0, mostLookedAt)
  const [sires, dams] = [linesOf(only.sire, 'M', head), linesOf(only.dam, 'F', head)]
  const having = (bird: Bird, line: string): Bird => ({ ...bird, ref: { ...bird.ref, line } })
  if (sires.length > 1) return sires.slice(0, mostLines).map((line) => ({ ...only, sire: having(only.sire, line) }))
  if (dams.length > 1) return dams.slice(0, mostLines).map((line) => ({ ...only, dam: having(only.dam, line) }))
  return pairs
}
