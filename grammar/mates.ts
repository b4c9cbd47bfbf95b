// grammar/mates.ts: of two groups of birds, which is the male: by sex words, by pronouns, by the order of the words.
import { birdOf } from './bird.ts'
import { coloursIn, hasBreed } from './naming.ts'
import { isNamed, sexOfGroup, sexSaid } from './saying.ts'
import type { Sex } from '../core/vocabulary.ts'
import type { Bird } from './bird.ts'
import type { BirdSaid, MatingSaid } from './saying.ts'
import type { Token } from './token.ts'

export type Mating = {
  readonly sires: readonly Bird[]
  readonly dams: readonly Bird[]
  /** How it is known who is the male: a sex word, the order of the words, or not at all. */
  readonly by: 'sex' | 'order' | 'nothing'
}

export type Entry = { said: BirdSaid; sex: Sex | undefined; carry: string | undefined; place: 'mating' | 'bird' }

export const opposite = (sex: Sex): Sex => (sex === 'M' ? 'F' : 'M')

const heWord = /^(?:he|hes|him|his)$/u

const sheWord = /^(?:she|shes|her|hers)$/u

/** "my RIR is from show stock. He runs with ...": the bird named last before "he" is a cock, if no sex was told of it. */
export function sexByPronoun(entries: readonly Entry[], tokens: readonly Token[]): void {
  for (const [i, { word, at }] of tokens.entries()) {
    const sex = heWord.test(word) ? 'M' : sheWord.test(word) ? 'F' : undefined
    const next = tokens[i + 1]
    const owns =
      (word === 'his' || word === 'her') && (next?.type === 'kin' || next?.type === 'hen' || next?.type === 'cock')
    if (sex === undefined || owns) continue
    const last = entries.findLast(({ said }) => said.at < at && isNamed(said))
    const several = last?.said.parts.some((part) => part.type === 'number' && part.value > 1) === true // no single "he"
    const sought =
      sex === 'M' &&
      /^(?:should|must|ought|would|can|could|be|is)$/u.test(tokens[i - 1]?.word ?? '') &&
      /^be$/u.test(next?.word ?? '')
    const answered = sex === 'M' && last?.sex === undefined && hasPointed(entries, at) // "a Legbar boy, can my girls (RIR, EE) make chicks with him"
    if (several || sought || answered) continue
    if (last && last.sex === undefined && hasBreed(last.said) && last.place === 'bird' && last.said.lacks.length === 0)
      last.sex = sex
  }
}

/** One cock was named before: "he" is that one. */
const hasPointed = (entries: readonly Entry[], at: number): boolean =>
  entries.some(({ said, sex }) => said.at < at && sex === 'M' && hasBreed(said))

/** "lavender x chocolate Orpington": the breed is told once, behind both. */
export const isOfSameBreed = ({ first, second, plain, order }: MatingSaid): boolean =>
  plain &&
  order === 'male first' &&
  first.every((said) => !hasBreed(said) && sexSaid(said) === undefined) &&
  second.some(
    (said) => hasBreed(said) && (coloursIn(said).length > 0 || said.parts.some(({ type }) => type === 'breed')),
  )

export const sexesOf = (said: MatingSaid): readonly [Sex | undefined, Sex | undefined] => [
  sexOfGroup(said.first),
  sexOfGroup(said.second),
]

/** Who is the male: by sex words first, then by what genes tell, then by the order of the words. */
export function orderOf(first: readonly Entry[], second: readonly Entry[], said: MatingSaid): Mating {
  const of = (entries: readonly Entry[], sex: Sex | undefined): readonly Bird[] =>
    entries.map((entry) => birdOf(entry.said, sex ?? entry.sex, entry.carry))
  const sexOf = (entries: readonly Entry[]): Sex | undefined =>
    entries.map((entry) => entry.sex ?? birdOf(entry.said).sex).find((sex) => sex !== undefined)
  const [one, other] = [sexOf(first), sexOf(second)]
  const chicks = one === undefined && other === 'M' && said.order === 'male first' && isChicks(second)
  if (!chicks && (one === 'M' || other === 'F') && !(one === 'F' || other === 'M'))
    return {
      sires: of(first, 'M'),
      dams: of(second, 'F'),
      by: one === undefined && said.order === 'either' ? 'sex' : 'sex',
    }
  if (!chicks && (one === 'F' || other === 'M')) return { sires: of(second, 'M'), dams: of(first, 'F'), by: 'sex' }
  if (said.order === 'female first') return { sires: of(second, 'M'), dams: of(first, 'F'), by: 'order' }
  return { sires: of(first, 'M'), dams: of(unsexed(second), 'F'), by: said.order === 'either' ? 'nothing' : 'order' }
}

/** "RIR x BR cockerels": the sons are asked about. */
const isChicks = (entries: readonly Entry[]): boolean =>
  entries.length === 1 && entries[0]!.said.parts.some((part) => part.type === 'cock' && part.many)

const unsexed = (entries: readonly Entry[]): readonly Entry[] =>
  entries.map((entry) => ({
    ...entry,
    sex: undefined,
    said: { ...entry.said, parts: entry.said.parts.filter(({ type }) => type !== 'cock') },
  }))
