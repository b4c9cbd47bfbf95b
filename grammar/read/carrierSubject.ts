// grammar/read/carrierSubject.ts: of which bird it is asked whether it carries something: by the words around the question.
import { isNewName } from '../flock/names.ts'
import { isClear } from './chicks.ts'
import type { Trait } from './carrierKin.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Token } from '../token.ts'
import type { Sex } from '../../core/vocabulary.ts'
import { isParent, shows } from './carrierShown.ts'

export type Mates = { readonly sire: Bird; readonly dam: Bird }

export const pronoun = /^(?:he|hes|him|his|she|shes|her)$/u

const herWord = /^(?:she|shes|her)$/u

/** "so he's clear", "is she clean": as good as "carries nothing". */
const isCleared = (token: Token, before: readonly Token[]): boolean =>
  isClear(token) &&
  /^(?:clear|clean)$/u.test(token.word) &&
  before
    .slice(-4)
    .some(
      ({ type, word }, i, all) =>
        pronoun.test(word) ||
        ((type === 'cock' || type === 'hen') &&
          (!word.endsWith('s') || all.slice(0, i).some(({ word: verb }) => verb.startsWith('are')))),
    )

/** Tokens looked through for that: a long message is mostly about something else. */
export const mostLookedAt = 600

/** Where it is asked whether a bird carries something: in a question, else the last that is said of it. */
export function askedAt(reading: Reading): number {
  const tokens = reading.tokens.slice(0, mostLookedAt)
  const found = tokens.flatMap((token, i) =>
    token.type === 'carries' || token.type === 'split' || isCleared(token, tokens.slice(Math.max(0, i - 4), i))
      ? [i]
      : [],
  )
  const asking = found.filter((i) => {
    const start = tokens.slice(0, i).findLastIndex(({ type }) => type === 'stop' || type === 'comma') + 1
    const end = tokens.find(({ type }, k) => k > i && type === 'stop')
    return end?.said.includes('?') === true || opensQuestion.test(tokens[start]?.word ?? '')
  })
  return (asking.length > 0 ? asking : found).at(-1) ?? -1
}

const opensQuestion =
  /^(?:is|are|does|do|can|could|has|would|might|may|what|whats|how|who|which|odds|chance|chances|so)\b/u

/** The bird of which that is asked, by the words before it in its sentence. */
export function nearest(tokens: readonly Token[], at: number): Sex | undefined {
  const start = tokens.slice(0, Math.max(at, 0)).findLastIndex(({ type }) => type === 'stop') + 1
  const before = tokens.slice(Math.max(start, at - 7), Math.max(at, 0))
  const near = before.findLast(
    (token) => ((token.type === 'cock' || token.type === 'hen') && !token.parent) || pronoun.test(token.word),
  )
  if (!near) return undefined
  if (near.type === 'cock' || near.type === 'hen') return near.type === 'cock' ? 'M' : 'F'
  return herWord.test(near.word) ? 'F' : 'M'
}

/** The bird that is asked about: the one before the asking word, else the one called a carrier, else the one that does not show it. */
export function subjectOf(reading: Reading, trait: Trait, pair: Mates | undefined): Sex {
  const birds = [...(pair ? [pair.sire, pair.dam] : []), ...reading.scene.birds].filter((bird) => !isParent(bird))
  const at = askedAt(reading)
  const isMate = reading.tokens[at + 1]?.type === 'hen' || reading.tokens[at + 1]?.type === 'cock' // "over a split hen"
  const near = isMate || isWho(reading.tokens[at - 1]) ? undefined : nearest(reading.tokens, at)
  if (near) return near
  const called = birds.find(
    (bird) =>
      bird.sex !== undefined && shows(bird, trait) !== true && (bird.saidOf.carried.length > 0 || bird.saidOf.split),
  )
  if (called?.sex && !isMate) return called.sex
  const pronouns = reading.words.filter((word) => pronoun.test(word))
  if (pronouns.length > 0) return herWord.test(pronouns.at(-1)!) ? 'F' : 'M'
  if (pair && shows(pair.sire, trait) === true && shows(pair.dam, trait) !== true) return 'F'
  const only = birds.find((bird) => bird.sex !== undefined)
  if (pair || !only) return 'M'
  return (only.sex === 'F') === (shows(only, trait) !== true) ? 'F' : 'M' // of one that shows it, its mate is asked about
}

/** "who carries it", "which one carries it". */
const isWho = (token: Token | undefined): boolean => /^(?:who|which|whos|one|either|both)$/u.test(token?.word ?? '')

export function subjectName(reading: Reading): Token | undefined {
  const { tokens } = reading
  const at = Math.max(askedAt(reading), 0)
  const start = tokens.slice(0, at).findLastIndex(({ type }) => type === 'stop') + 1
  return tokens.slice(start, at).findLast((token) => isNamed(token))
}

const isNamed = (token: Token): boolean =>
  (token.type === 'unknown' || token.type === 'name') && isNewName(token, { birds: [], broods: [] })

/** "what fraction of the chicks carry it": the chicks of a mating are asked about, no bird. */
export const isOfChicks = ({ tokens }: Reading, at: number): boolean =>
  tokens
    .slice(Math.max(0, at - 4), Math.max(0, at))
    .some(
      (token) => token.type === 'chick' || (token.type === 'kin' && (token.kin === 'daughter' || token.kin === 'son')),
    )
