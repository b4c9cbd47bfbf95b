// grammar/flock/tell.ts: what is told of birds by name, added to the flock told so far; a later word corrects an earlier one.
import { birdOf, traitsIn } from '../bird.ts'
import { readKinship } from '../parse.ts'
import { traits } from '../words/traits.ts'
import { isNewName, isTold, nameOf, namedClauses } from './names.ts'
import type { Kinship } from '../build/kinship.ts'
import type { Brood, Flock, FlockBird } from '../../core/question.ts'
import type { Reading } from '../reading.ts'
import type { Sex } from '../../core/vocabulary.ts'
import type { Token } from '../token.ts'

const withBird = (flock: Flock, bird: FlockBird): Flock => {
  const before = flock.birds.find(({ name }) => name === bird.name)
  const merged: FlockBird = {
    ...before,
    ...bird,
    ...together('shows', before, bird),
    ...together('carries', before, bird),
  }
  return {
    ...flock,
    birds: before ? flock.birds.map((one) => (one === before ? merged : one)) : [...flock.birds, merged],
  }
}
const together = (key: 'shows' | 'carries', before: FlockBird | undefined, bird: FlockBird): Partial<FlockBird> =>
  before?.[key] || bird[key] ? { [key]: { ...before?.[key], ...bird[key] } } : {}

const sexKnown = (flock: Flock, name: string): Sex | undefined => flock.birds.find((bird) => bird.name === name)?.sex

/** "out of Sid and Daisy": by their sexes where known, else sire first. */
function pairOf(flock: Flock, either: readonly Token[]): { readonly sire?: string; readonly dam?: string } {
  const [one, other] = either.map((token) => nameOf(token, flock))
  if (one === undefined) return {}
  if (other === undefined) return sexKnown(flock, one) === 'F' ? { dam: one } : { sire: one }
  return sexKnown(flock, one) === 'F' || sexKnown(flock, other) === 'M'
    ? { sire: other, dam: one }
    : { sire: one, dam: other }
}

function tellParents(flock: Flock, told: Extract<Kinship, { kind: 'parents' }>): Flock {
  const of = nameOf(told.of, flock)
  const { sire, dam } = told.either
    ? pairOf(flock, told.either)
    : {
        ...(told.sire ? { sire: nameOf(told.sire, flock) } : {}),
        ...(told.dam ? { dam: nameOf(told.dam, flock) } : {}),
      }
  const withSire = sire === undefined ? flock : withBird(flock, { name: sire, sex: 'M' })
  const withDam = dam === undefined ? withSire : withBird(withSire, { name: dam, sex: 'F' })
  return withBird(withDam, { name: of, ...(sire === undefined ? {} : { sire }), ...(dam === undefined ? {} : { dam }) })
}

const marked = (ids: readonly string[], yes: boolean): Readonly<Record<string, boolean>> =>
  Object.fromEntries(ids.flatMap((id) => (traits[id] ? [[traits[id].allele, yes]] : [])))

function tellIs(flock: Flock, { of, bird: said, not }: Extract<Kinship, { kind: 'is' }>): Flock {
  const name = nameOf(of, flock)
  const bird = birdOf(said, sexKnown(flock, name))
  const shown = traitsIn(said.parts.filter(({ type }) => type === 'colour' || type === 'trait')).filter(
    (id) => traits[id]?.seen === false || said.parts.every(({ type }) => type !== 'breed' && type !== 'family'),
  )
  const carried = said.carried.flatMap(({ what }) => traitsIn(what))
  const { asWritten: _, ...ref } = bird.ref
  const real =
    !not &&
    ref.breed !== undefined &&
    !(said.parts.length > 0 && said.parts.every(({ type }) => type === 'colour') && isDescribed(ref.breed))
  return withBird(flock, {
    name,
    ...(bird.sex && !not ? { sex: bird.sex } : {}),
    ...(real ? { bird: ref } : {}),
    ...(shown.length > 0 ? { shows: marked(shown, !not) } : {}),
    ...(carried.length > 0 ? { carries: marked(carried, !not) } : {}),
  })
}
const isDescribed = (breed: string): boolean => breed.endsWith(' bird')

function tellBrood(flock: Flock, { pair, counts }: Extract<Kinship, { kind: 'brood' }>): Flock {
  const { sire = '', dam = '' } = pairOf(flock, pair)
  const numbers = ofAll(counts).flatMap((token, i, all) =>
    token.type === 'number' ? [{ count: Math.round(token.value), after: all.slice(i + 1, nextNumber(all, i)) }] : [],
  )
  const all = numbers.find(
    ({ after }) =>
      after.some(({ type }) => type === 'chick' || type === 'of') &&
      !after.some(({ type }) => type === 'colour' || type === 'trait'),
  )
  const looks = numbers.filter(
    (one) => one !== all && one.after.some(({ type }) => type === 'colour' || type === 'trait'),
  )
  const chicks = looks.map(({ count, after }) => ({
    count,
    look: after.some(({ type }) => type === 'not')
      ? 'clear'
      : after
          .filter(({ type }) => type === 'colour' || type === 'trait')
          .map(({ word }) => word)
          .join(' '),
  }))
  const rest = (all?.count ?? 0) - chicks.reduce((sum, { count }) => sum + count, 0)
  const brood: Brood = { sire, dam, chicks: [...chicks, ...(rest > 0 ? [{ count: rest, look: 'clear' }] : [])] }
  const both = withBird(withBird(flock, { name: sire, sex: 'M' }), { name: dam, sex: 'F' })
  return { ...both, broods: [...both.broods, brood].slice(-40) }
}
/** "3 white of 11" and "3 of 11 white" as "3 white" and "11 of": the second number is that of all. */
function ofAll(counts: readonly Token[]): readonly Token[] {
  const at = counts.findIndex(({ type }, i) => type === 'of' && counts[i + 1]?.type === 'number')
  const [of, all] = [counts[at], counts[at + 1]]
  return of && all ? [...counts.slice(0, at), ...counts.slice(at + 2), all, of] : counts
}
const nextNumber = (tokens: readonly Token[], at: number): number => {
  const next = tokens.findIndex(({ type }, i) => i > at && type === 'number')
  return next < 0 ? tokens.length : next
}

function tell(flock: Flock, told: Kinship): Flock {
  switch (told.kind) {
    case 'parents':
      return tellParents(flock, told)
    case 'is':
      return tellIs(flock, told)
    case 'brood':
      return tellBrood(flock, told)
  }
}

/** Is this plainly told of the keeper's own birds? New names need a capital, save where both parents are named. */
function isPlain(told: Kinship, flock: Flock): boolean {
  switch (told.kind) {
    case 'parents':
      return (
        (told.sire !== undefined && told.dam !== undefined) ||
        [told.of, told.sire, told.dam, ...(told.either ?? [])].every(
          (token) => token === undefined || isNewName(token, flock),
        )
      )
    case 'is':
      return (
        isNewName(told.of, flock) ||
        (flock.birds.length > 0 && told.bird.parts.some(({ type }) => type === 'breed' || type === 'family'))
      )
    case 'brood':
      return told.pair.some((token) => isTold(token, flock)) || told.pair.every((token) => isNewName(token, flock))
  }
}

/** "does Bert carry lavender?", "is Sid lavender?": asked of a bird, and not told of it. */
function isAsked(clause: readonly Token[], { tokens }: Reading): boolean {
  const [from, to] = [clause[0]!.at, clause.at(-1)!.at]
  const end = tokens.find(({ type, at }) => type === 'stop' && at > to)
  const start = tokens.findLast(({ type, at }) => type === 'stop' && at < from)
  const first = tokens.find(({ at }) => at > (start?.at ?? -1))
  return (
    end?.said === '?' ||
    /^(?:is|are|was|does|do|did|can|could|has|have|will|would|might|may|who|whos|which|what|how)$/iu.test(
      first?.said ?? '',
    )
  )
}

/** Most birds that are remembered of one keeper. */
const mostBirds = 80

/** The flock with what the message tells; undefined where it tells nothing of named birds. */
export function flockTold(reading: Reading, flock: Flock): Flock | undefined {
  let told: Flock | undefined
  for (const clause of namedClauses(reading.tokens, flock).slice(0, 12)) {
    if (!clause.some(({ type }) => type === 'name')) continue
    const [kinship] = readKinship(clause)
    if (kinship && kinship.kind !== 'brood' && isAsked(clause, reading)) continue
    if (kinship && isPlain(kinship, told ?? flock)) told = tell(told ?? flock, kinship)
  }
  return told && told.birds.length <= mostBirds ? told : undefined
}
