// grammar/follow/mates.ts: a mate is sought for a bird of the cross before, or one is offered for the bird that sought one.
import { shownAsked } from '../read/shownAsked.ts'
import { aspectsOf, commonOf, goalsOf, isSolid } from '../read/common.ts'
import { breeds } from '../../core/breeds.ts'
import { restated } from './cross.ts'
import type { BirdRef, CrossQuestion, Question } from '../../core/question.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Mating } from './cross.ts'

/** "which hens would be better": another mate for the bird that is kept. */
export function mateSought(base: CrossQuestion, reading: Reading): Question | undefined {
  const sought = reading.scene.wanted.find(
    ({ firm, sex, for: birds }) => firm && sex !== undefined && birds.length === 0,
  )
  const [mating] = base.matings
  if (shownAsked([], reading).length > 0) return undefined // "any chocolate boys": of the chicks
  if (
    !sought?.sex ||
    !mating ||
    reading.scene.birds.some(isSolid) ||
    reading.scene.aspects.some((aspect) => aspect === 'chicks' || aspect === 'adults') ||
    reading.words.some((word) => /^(?:lay|lays|look|weigh)$/u.test(word)) // what the daughters do; no mate is sought
  )
    return undefined
  const goals = goalsOf(reading)
  return {
    kind: 'partners',
    for: [sought.sex === 'F' ? mating.sire : mating.dam],
    wanted: sought.sex,
    goals: goals.length > 0 ? goals : base.aspects.includes('sexing') ? ['sexable'] : [],
    among: [],
    ...commonOf(reading, [], [restated(mating)]),
  }
}

type Partners = Extract<Question, { kind: 'partners' }>

/** "i have light sussex, would that do?": birds of the sex that was sought, for the ones told before. */
export function offersMates(birds: readonly Bird[], base: Partners, { words, tokens }: Reading): boolean {
  const has = words.some((word) => /^(?:have|got|ive|only|do|work|ok|okay|good|use|those|enough|instead)$/u.test(word))
  return (
    base.for.length > 0 &&
    birds.every(({ sex }) => sex === base.wanted || (sex === undefined && has)) &&
    !tokens.some(({ type }) => type === 'forWhom')
  )
}

/** "I'd rather not have a red, anything else": another mate than those of that breed or colour. */
export function othersSought(base: Partners, { tokens, words }: Reading): Partners | undefined {
  const text = words.join(' ')
  const at = tokens.findIndex(({ type, word }) => type === 'not' || /^(?:but|except|besides|without|hate)$/u.test(word))
  const seeks = /\b(?:else|other|others|another|different|alternatives?|instead)\b/u.test(text)
  if (at < 0 || !seeks || tokens.some(({ type }) => type === 'over' || type === 'under')) return undefined
  const refused = tokens.slice(at, at + 8).flatMap((token) => {
    if (token.type === 'breed') return token.names.slice(0, 1)
    const named = (name: string): boolean =>
      token.type === 'colour' && name.toLowerCase().split(' ').includes(token.colour)
    return breeds.flatMap(({ name, family, colour }) =>
      (token.type === 'family' && family === token.family) ||
      named(name) ||
      (token.type === 'colour' && colour === token.colour)
        ? [name]
        : [],
    )
  })
  const besides = [...(base.besides ?? []), ...refused.map((breed): BirdRef => ({ breed }))]
  return refused.length > 0 ? { ...base, besides } : undefined
}

export function matesOffered(birds: readonly Bird[], base: Partners, reading: Reading): Question {
  const aspects = aspectsOf(reading)
  const sought = base.goals.includes('sexable') ? (['sexing'] as const) : []
  const matings = base.for.flatMap((own) =>
    birds.map(({ ref }): Mating => (base.wanted === 'F' ? { sire: own, dam: ref } : { sire: ref, dam: own })),
  )
  return {
    kind: 'cross',
    matings: matings.slice(0, 12),
    aspects: [...new Set([...sought, ...aspects])],
    ...commonOf(reading, birds, matings.slice(0, 2).map(restated)),
  }
}
