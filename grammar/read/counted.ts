// grammar/read/counted.ts: "5 splash and 3 blue, normal?": chicks counted of a mating that is told, to be held against what it gives.
import { isOfKin } from './carrierKin.ts'
import { chicksCounted, isClear, isSpot, saidOfAll, withoutCounts, type Chicks } from './chicks.ts'
import { readCross } from './cross.ts'
import { pairsIn } from './pairs.ts'
import { readingOf, type Reading } from '../reading.ts'
import type { Bird } from '../bird.ts'
import { commonOf, type Reader } from './common.ts'
import type { Token } from '../token.ts'
import type { BirdRef, CrossQuestion, Tally } from '../../core/question.ts'

/** Whether it is as it should be, or what else is behind it. */
const asksFit =
  /\b(?:normal|chance|luck|lucky|unlucky|odds|fits?|theory|weird|odd|strange|wrong|right|possible|expected|expect|whats up|what is up|going on|whats happening|how come|why|explain|unusual|add up|adds up|makes? sense|coincidence|fluke|should i|should be|should have|really|is that ok|off|ratio|supposed|guilty|blame|fault|to blame|who|whose|they say|i say)\b|\bhow$|\bis (?:he|she) (?:\w+ ){0,2}or\b/u

const big = /^(?:big|large|huge|bigger|clear)$/u

/** The words of a look that a tally is kept by. */
const lookOf = (look: readonly Token[], tokens: readonly Token[]): string => {
  const spot = look.find(isSpot)
  if (spot) {
    const at = tokens.indexOf(spot)
    return big.test(tokens[at - 1]?.word ?? '') ? 'bigspot' : 'spot'
  }
  return look
    .filter((token) => token.type !== 'trait' || token.trait !== 'blue egg') // no chick lays
    .filter((token) => look.length === 1 || !isClear(token))
    .map((token) => (token.type === 'colour' ? token.colour : token.type === 'trait' ? token.trait : token.word))
    .join(' ')
}

const tally = (count: number, look: string, shows: boolean, { sex }: Partial<Chicks> = {}): Tally => ({
  count,
  ...(sex ? { sex } : {}),
  look,
  ...(shows ? {} : { shows: false }),
})

/** "10 chicks, none have a spot", "8 chicks all red". */
const isOfAll = ({ at, end, not }: Chicks, tokens: readonly Token[]): boolean =>
  not || tokens.some((token) => token.at >= at && token.at < end && /^(?:all|every|each|only)$/u.test(token.word))

/** All the chicks by their looks; nothing where some are told without a look. */
function talliesIn({ tokens }: Reading): readonly Tally[] {
  const counts = chicksCounted(tokens).filter(({ at }) => !isOfKin(tokens, at))
  const seen = counts.filter(({ look }) => look.length > 0)
  const total = counts.find(({ look, of, count }) => look.length === 0 && (of === undefined || of === count))
  const [first] = seen
  if (!first) {
    const all = total && saidOfAll(tokens)
    return all && all.look.length > 0 ? [tally(total.count, lookOf(all.look, tokens), !all.not, total)] : []
  }
  const told = seen.flatMap((one): readonly Tally[] => {
    const look = lookOf(one.look, tokens)
    const rest = one.of === undefined ? 0 : one.of - one.count
    return [tally(one.count, look, !one.not, one), ...(rest > 0 ? [tally(rest, look, one.not, one)] : [])]
  })
  if (seen.some(({ of }) => of !== undefined)) return seen.length === 1 ? told : []
  const left = total === undefined ? 0 : total.count - told.reduce((sum, { count }) => sum + count, 0)
  if (told.length === 1 && total === undefined && !isOfAll(first, tokens)) return [{ ...told[0]!, count: 1 }] // of how many, nobody says
  if (left <= 0) return left < 0 ? [] : told
  return told.length === 1 ? [...told, tally(left, told[0]!.look!, first.not, first)] : []
}

/** "8 of my 10 Barred Rock chicks had big spots": told by their breed alone, they are bred pure. */
function ownKind({ scene, tokens }: Reading, counted: readonly Tally[]): CrossQuestion['matings'] {
  const [bird, ...others] = scene.birds.filter(({ ref }) => ref.breed !== undefined)
  const spots = counted.every(({ look }) => look === 'spot' || look === 'bigspot')
  const bred = tokens.some(({ type }, i) => type === 'breed' && tokens[i + 1]?.type === 'chick')
  return bird && others.length === 0 && spots && bred ? [{ sire: bird.ref, dam: bird.ref }] : []
}

/** "is he splash or blue": cocks of one colour or the other, over the hens that are told. */
function eitherCock(reading: Reading): CrossQuestion['matings'] {
  const { tokens, scene } = reading
  const at = tokens.findIndex(
    ({ type }, i) => type === 'or' && tokens[i - 1]?.type === 'colour' && tokens[i + 1]?.type === 'colour',
  )
  const asked = at >= 0 && /^(?:he|hes|is he)$/u.test(tokens[at - 2]?.word ?? '')
  const cock = (token: Token | undefined): Bird | undefined =>
    scene.birds.find(
      ({ ref, saidOf }) => ref.breed?.endsWith(' bird') && saidOf.parts.some((part) => part.at === token?.at),
    )
  const cocks = asked ? [cock(tokens[at - 1]), cock(tokens[at + 1])] : []
  const dams = [...scene.matings.flatMap((mating) => mating.dams), ...scene.birds].filter(
    ({ sex, named }) => sex === 'F' && named,
  )
  const [dam, ...others] = dams
  const sires = cocks.flatMap((bird): readonly BirdRef[] => (bird ? [bird.ref] : []))
  return dam && others.length === 0 && sires.length === 2 ? sires.map((sire) => ({ sire, dam: dam.ref })) : []
}

export const readCounted: Reader = (reading, context) => {
  const text = reading.words.join(' ')
  const counted = reading.has('carry') ? [] : talliesIn(reading)
  if (counted.length === 0) return undefined
  const pure = pairsIn(reading).length === 0 ? ownKind(reading, counted) : []
  if (pure.length > 0) return { kind: 'cross', matings: pure, aspects: [], counted, ...commonOf(reading) }
  if (!asksFit.test(text) && !(reading.asks && reading.scene.aspects.length === 0)) return undefined
  const parents = readingOf(withoutCounts(reading.text, reading.tokens))
  const either = eitherCock(parents)
  const cross = either.length > 0 || pairsIn(parents).length === 1 ? readCross(parents, context) : undefined
  if (either.length > 0) return { kind: 'cross', matings: either, aspects: [], counted, ...commonOf(reading) }
  return cross?.kind === 'cross' ? { ...cross, counted, manner: reading.manner } : undefined
}
