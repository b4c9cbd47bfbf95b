// grammar/choice.ts: the answer to a question back: "2", "the second", "barred", "the cock is the Sussex".
import { fold } from './normalise.ts'
import { birdOf } from './bird.ts'
import type { Context } from './context.ts'
import type { Reading } from './reading.ts'
import type { Question } from '../core/question.ts'

const ordinals = [
  'first, 1st, first one, the former, former',
  'second, 2nd, second one, the latter, latter',
  'third, 3rd, third one',
  'fourth, 4th, fourth one',
  'fifth, 5th, fifth one',
].map((list) => list.split(', '))

/** Words around a choice that say nothing. */
const around =
  /^(?:the|a|an|its|it|is|im|i|think|mean|meant|number|no|option|choice|one|please|pls|yes|yeah|yep|ya|ok|okay|so|they|theyre|are|hes|shes|my|was|that|thats|of|them|answer|hens?|roos?|cocks?|birds?|ones|prob|probably)$/u

/** "both", "either", "all of them": every way that was offered, side by side. */
function all(words: readonly string[], options: NonNullable<Context['pending']>): Question | undefined {
  const rest = words.filter(
    (word) =>
      word !== '' &&
      !around.test(word) &&
      !/^(?:tbh|ways?|and|to|see|tell|me|give|do|like|would|id|lets?)$/u.test(word),
  )
  if (rest.length !== 1 || !/^(?:both|either|all|each|any)$/u.test(rest[0]!)) return undefined
  const crosses = options.flatMap(({ question }) => (question.kind === 'cross' ? [question] : []))
  const [first] = crosses
  return first && crosses.length === options.length
    ? { ...first, matings: crosses.flatMap(({ matings }) => matings) }
    : undefined
}

/** The choice that the words name; undefined where they name none, or more than one. */
function chosen(words: readonly string[], options: NonNullable<Context['pending']>): Question | undefined {
  const rest = words.filter((word) => word !== '' && !around.test(word))
  const said = rest.join(' ')
  const number = /^#?(\d)[.)]?$/u.exec(said)?.[1]
  if (number !== undefined) return options[Number(number) - 1]?.question
  if (said === 'last' || said === 'last one') return options.at(-1)?.question
  const place = ordinals.findIndex((names) => names.includes(said))
  if (place >= 0) return options[place]?.question
  if (rest.length === 0 || rest.length > 5) return undefined
  const fitting = options.filter(({ label }) => {
    const words = fold(label).split(/[^a-z]+/u)
    return rest.every((word) =>
      words.some((known) => known === word || (word.length > 3 && known.startsWith(word.slice(0, 4)))),
    )
  })
  return fitting.length === 1 ? fitting[0]?.question : undefined
}

/** "the barred ones" are the Barred Plymouth Rocks. */
const isIt = (said: string, breed: string | undefined): boolean =>
  said === breed || (said.endsWith(' bird') && breed !== undefined && breed.startsWith(said.replace(/ bird$/u, '')))

/** "the roo is the RIR", "RIR is the male": the choice in which that bird plays that part. */
function told(reading: Reading, options: NonNullable<Context['pending']>): Question | undefined {
  const birds = [
    ...reading.scene.told.flatMap(({ who, is }) =>
      is.map((bird) => ({ sex: who.sex ?? bird.sex, breed: bird.ref.breed ?? who.ref.breed })),
    ),
    ...reading.scene.birds.map(({ sex, ref }) => ({ sex, breed: ref.breed })),
  ]
  for (const { sex, breed } of birds) {
    if (sex === undefined || breed === undefined) continue
    const fitting = options.filter(
      ({ question }) =>
        question.kind === 'cross' && isIt(breed, question.matings[0]?.[sex === 'M' ? 'sire' : 'dam'].breed),
    )
    if (fitting.length === 1) return fitting[0]?.question
  }
  return undefined
}

/** A colour or a whole name that is among the choices. */
function named(reading: Reading, options: NonNullable<Context['pending']>): Question | undefined {
  if (reading.words.length > 6) return undefined
  const [saying] = reading.clauses.flat()
  const first = saying?.readings[0]
  if (first?.kind !== 'birds') return undefined
  const name = birdOf(first.birds[0]!).ref.breed
  const fitting = options.filter(({ label }) => label === name)
  return fitting.length === 1 ? fitting[0]?.question : undefined
}

/** The question that a pending choice resolves to, if the message takes one. */
export function choose(reading: Reading, pending: Context['pending']): Question | undefined {
  if (!pending || pending.length === 0 || reading.words.length > 12) return undefined
  const words = reading.tokens
    .filter(({ type }) => type !== 'stop' && type !== 'comma')
    .flatMap(({ said }) => fold(said).split(/\s+/u))
  return all(words, pending) ?? chosen(words, pending) ?? told(reading, pending) ?? named(reading, pending)
}
