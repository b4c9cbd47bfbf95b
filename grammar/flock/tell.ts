// grammar/flock/tell.ts: what is told of birds by name, added to the flock told so far; a later word corrects an earlier one.
import { birdOf, traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { broodOf, pairIn, talliesIn, type Pair } from './broods.ts'
import { isAskingPiece, kinshipsOf } from './kinships.ts'
import { isNewName, nameOf, namedClauses } from './names.ts'
import type { Kinship } from '../build/kinship.ts'
import type { Brood, Flock, FlockBird, Tally } from '../../core/question.ts'
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

/** The brood of a pair; told again after a "no", it takes the place of the one before. */
function withBrood(flock: Flock, pair: Pair, chicks: readonly Tally[], corrects: boolean): Flock {
  const brood = broodOf(pair, chicks)
  const isSame = (one: Brood): boolean => one.sire === brood.sire && one.dam === brood.dam
  const at = corrects ? flock.broods.findLastIndex(isSame) : -1
  const withSires = pair.sires.reduce((told, name) => withBird(told, { name, sex: 'M' }), flock)
  const both = withBird(withSires, { name: pair.dam, sex: 'F' })
  return { ...both, broods: at < 0 ? [...both.broods, brood].slice(-40) : both.broods.with(at, brood) }
}

function tell(flock: Flock, told: Kinship): Flock {
  switch (told.kind) {
    case 'parents':
      return tellParents(flock, told)
    case 'is':
      return tellIs(flock, told)
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
  }
}

/** The words of one sentence, and whether they ask: by their first word, or by a question mark where nothing else is said. */
type Sentence = { readonly tokens: readonly Token[]; readonly asks: boolean; readonly marked: boolean }

function sentencesOf({ tokens }: Reading): readonly Sentence[] {
  const found: Sentence[] = []
  let open: Token[] = []
  const close = (marked: boolean): void => {
    if (open.length > 0) found.push({ tokens: open, asks: isAskingPiece(open), marked })
    open = []
  }
  for (const token of tokens.slice(0, 400)) {
    if (token.type === 'stop') close(token.said.includes('?'))
    else open.push(token)
  }
  close(false)
  return found
}

/** Where a question begins behind what is told: "…, does he carry it?" */
function askedFrom({ tokens, asks, marked }: Sentence): number {
  if (asks) return 0
  const at = tokens.findIndex(
    ({ type }, i) =>
      (type === 'comma' || type === 'and') && tokens[i + 1] !== undefined && isAskingPiece(tokens.slice(i + 1)),
  )
  return at >= 0 ? at + 1 : marked ? 0 : tokens.length
}

const corrected = /^(?:no|nope|sorry|oops|actually|correction|wait|my bad)\b/iu

/** Most birds that are remembered of one keeper. */
const mostBirds = 80

/** What a message tells of birds by name, and the part of it that asks; `flock` is undefined where nothing is told. */
export type FlockTold = { readonly flock: Flock; readonly asked: string }

export function flockTold(reading: Reading, before: Flock): FlockTold | undefined {
  let flock = before
  let told = false
  let names: readonly Token[] = before.birds.map(({ name }) => nameToken(name))
  let pair: Pair | undefined
  const asked: string[] = []
  const corrects = corrected.test(reading.text.trim())
  for (const sentence of sentencesOf(reading).slice(0, 12)) {
    const from = askedFrom(sentence)
    const telling = sentence.tokens.slice(0, from)
    const rest = sentence.tokens.slice(from)
    const ask = (): unknown => rest.length > 0 && asked.push(reading.text.slice(rest[0]!.at, rest.at(-1)!.end))
    const chicks = talliesIn(telling)
    const [clause = []] = namedClauses(telling, flock)
    const now = clause.some(({ type }) => type === 'name') ? pairIn(clause, flock) : undefined
    const own =
      sentence.marked && from === 0 && isCounted(sentence) ? namedClauses(sentence.tokens, flock)[0] : undefined
    const asking = own && pairIn(own, flock)
    if (asking && !/\b(?:father|dad|sire|who|which)\b/iu.test(own.map(({ word }) => word).join(' '))) {
      flock = withBrood(flock, asking, talliesIn(sentence.tokens), corrects)
      told = true
      continue
    }
    if (chicks.length > 0 && (now ?? pair)) {
      flock = withBrood(flock, (now ?? pair)!, chicks, corrects)
      told = true
    }
    {
      for (const kinship of kinshipsOf(clause, { names, sexOf: (name) => sexKnown(flock, nameOf(name, flock)) }))
        if (isPlain(kinship, flock)) {
          flock = tell(flock, kinship)
          told = true
        }
    }
    if (now) pair = now
    names = [...names, ...clause.filter(({ type }) => type === 'name')]
    ask()
  }
  return told && flock.birds.length <= mostBirds ? { flock, asked: asked.join('? ') } : undefined
}
const isCounted = ({ tokens }: Sentence): boolean =>
  tokens.some(({ type }) => type === 'number') && talliesIn(tokens).length > 0
const nameToken = (name: string): Token => ({
  type: 'name',
  said: name,
  word: name.toLowerCase(),
  at: -1000,
  end: -1000,
  gap: false,
})
