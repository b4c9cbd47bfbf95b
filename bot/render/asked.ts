// bot/render/asked.ts: what of an answer the keeper asked for, and how he writes.
import { usualTelling } from './chicks.ts'
import { percent } from './numbers.ts'
import type { Telling } from './mixture.ts'
import type { Aspect, BirdRef, Manner, Question } from '../../core/question.ts'

export type Asked = {
  readonly aspects: readonly Aspect[]
  readonly manner: Manner
  /** Alleles that the keeper wrote of the parents. */
  readonly alleles: readonly string[]
}

const plainManner: Manner = { symbols: false, units: 'both' }

const allelesOf = (bird: BirdRef): readonly string[] => [
  ...Object.values(bird.genotype ?? {}).flat(),
  ...(bird.cross ? [...allelesOf(bird.cross.sire), ...allelesOf(bird.cross.dam)] : []),
]

export const askedOf = (question: Question): Asked => ({
  aspects: question.kind === 'cross' ? question.aspects : [],
  manner: 'manner' in question ? question.manner : plainManner,
  alleles: question.kind === 'cross' ? question.matings.flatMap(({ sire, dam }) => [sire, dam].flatMap(allelesOf)) : [],
})

export const wants = (asked: Asked, ...aspects: readonly Aspect[]): boolean =>
  aspects.some((aspect) => asked.aspects.includes(aspect))

/** Shares in percent for those who asked for shares, and then every kind by name. */
export const tellingOf = (asked: Asked): Telling =>
  wants(asked, 'shares')
    ? { say: percent, most: 8 }
    : wants(asked, 'more')
      ? { ...usualTelling, most: 8 }
      : usualTelling

/** Nothing special asked: the short reply with everything a keeper needs. */
export const usual = (asked: Asked): boolean => asked.aspects.every((aspect) => aspect === 'symbols')
