// grammar/build/mating.ts: birds put to each other: by which word, in which order, and what only looks like a mating.
import { isNamed, sexOfGroup, sexSaid, type BirdSaid, type Group, type MatingSaid } from '../saying.ts'
import { bodyOf, withParents } from './body.ts'
import { isCount } from './list.ts'
import { tokensIn, type Reject, type Words } from './words.ts'
import type { Token } from '../token.ts'

/** Birds, or birds that are crosses. */
type Mated = Group | MatingSaid | BirdSaid
type Made = MatingSaid | Reject

const isGroup = (mated: Mated): mated is Group => Array.isArray(mated)
export const groupOf = (mated: Mated): Group =>
  isGroup(mated) ? mated : ['first' in mated ? crossAsBird(mated) : mated]

/** `RIR x BR hen`: the sex word of the last bird is that of the cross. */
export function crossAsBird(cross: MatingSaid): BirdSaid {
  const [sire, dam] = [cross.first[0]!, cross.second[0]!]
  const isSex = ({ type }: Token): boolean => type === 'cock' || type === 'hen' || type === 'generation'
  const bare: BirdSaid = { ...dam, parts: dam.parts.filter((part) => !isSex(part)) }
  return {
    kind: 'bird',
    parts: dam.parts.filter(isSex),
    lacks: [],
    carried: [],
    split: false,
    cross: { ...cross, second: [bare] },
    at: sire.at,
    end: dam.end,
    gap: sire.gap,
  }
}

/** Only words like "on" and "with" join them, that join other things too. */
const isWeak = (joint: Words): boolean =>
  tokensIn(joint)
    .filter(({ type }) => type === 'over' || type === 'under' || type === 'cross')
    .every((word) => word.type === 'over' && word.weak)
/** "a RIR and BR cross if": a verb has its bird right behind it. */
const isNoun = (joint: Words, next: BirdSaid): boolean => {
  const word = tokensIn(joint).find(({ type }) => type === 'cross')
  return word !== undefined && next.at - (tokensIn(joint).at(-1)?.end ?? word.end) > 3
}
/** A comb is said of a bird and is none. */
const canMate = (bird: BirdSaid): boolean =>
  bird.parts.some(({ type }) => type !== 'trait') || bird.cross !== undefined || bird.split || bird.carried.length > 0
const colourNoun =
  /^(?:reds|buffs|blacks|blues|barreds|lavs|lavenders|whites|splashes|columbians|partridges|silvers|golds|cuckoos|coppers|chocolates|browns|frizzles|smooths)$/u
/** "my reds". */
const isColourNoun = ({ parts }: BirdSaid): boolean =>
  parts.some((part) => part.type === 'colour' && colourNoun.test(part.word))
const plain: ReadonlySet<string> = new Set(['breed', 'family', 'cock', 'hen', 'gene', 'kin'])
/** More than a colour is told of it. */
const isPlainBird = (bird: BirdSaid): boolean =>
  bird.cross !== undefined || bird.parts.some(({ type }) => plain.has(type))
/** It can stand behind "on" or "under" and be a bird. */
const isMate = (bird: BirdSaid): boolean =>
  isPlainBird(bird) || isColourNoun(bird) || bird.carried.length > 0 || bird.split
/** "RIR x BR pullets": the pullets may be the chicks. */
const isChicksWord = (group: Group): boolean =>
  group.length === 1 && group[0]!.parts.some((part) => (part.type === 'hen' || part.type === 'cock') && part.many)

/** @param crossed a verb of crossing stands before them, so that even bare colours are birds */
function mate(
  left: Mated,
  joint: Words,
  right: Mated,
  order: MatingSaid['order'],
  crossed = false,
): MatingSaid | undefined {
  const [first, second] = [groupOf(left), groupOf(right)]
  const sex = sexOfGroup(first)
  const weak = isWeak(joint)
  const loose = weak || tokensIn(joint).some(({ type }) => type === 'under')
  const ordered = order !== 'either'
  const cannot =
    (sex !== undefined && sex === sexOfGroup(second) && !isChicksWord(second)) ||
    (ordered && isNoun(joint, second[0]!)) ||
    ![...first, ...second].every(canMate) ||
    (weak && !crossed && ![...first, ...second].some(isPlainBird)) ||
    (loose && !crossed && ordered && !second.every(isMate)) ||
    (weak && ordered && second[0]!.gap)
  return cannot ? undefined : { first, second, order, plain: !weak }
}

type Joined = [Mated, Words, Mated]
/** "a Leghorn/RIR cross hen": one bird of that cross. */
const isOneCross = ([left, joint, right]: Joined): boolean => {
  const joints = tokensIn(joint)
  return (
    ('first' in left || sexOfGroup(groupOf(left)) === undefined) &&
    joints.length === 1 &&
    joints[0]!.type === 'cross' &&
    groupOf(right).every((bird) => !isNamed(bird))
  )
}
export const maleFirst = ([left, joint, right]: Joined, _at: number, reject: Reject): Made =>
  isOneCross([left, joint, right]) ? reject : (mate(left, joint, right, 'male first') ?? reject)
export const femaleFirst = ([left, joint, right]: Joined, _at: number, reject: Reject): Made =>
  mate(left, joint, right, 'female first') ?? reject
/** "cross RIR with Delaware". */
export const crossMaleFirst = ([, left, joint, right]: [Token, ...Joined], _at: number, reject: Reject): Made =>
  mate(left, joint, right, 'male first', true) ?? reject
/** One kind of bird bred to itself, or two kinds put together. */
function amongThem(mated: Mated): MatingSaid | undefined {
  const [first, second, ...rest] = groupOf(mated)
  if (!first || rest.length > 0 || !isNamed(first)) return undefined
  if (second) return mate([first], [], [second], 'either')
  const parts = first.parts.filter(({ type }) => type !== 'cock' && type !== 'hen' && type !== 'number')
  const unsexed = { ...first, parts }
  return { first: [unsexed], second: [unsexed], order: 'male first', plain: true }
}
export const together = ([mated]: [Mated], _at: number, reject: Reject): Made => amongThem(mated) ?? reject
export const crossTogether = ([, mated]: [Token, Mated], _at: number, reject: Reject): Made =>
  amongThem(mated) ?? reject
/** "two Araucanas are mated": to each other. */
export const twoTogether = ([mated]: [Mated], _at: number, reject: Reject): Made =>
  groupOf(mated).some(({ parts }) => parts.some((part) => part.type === 'number' && part.value === 2))
    ? (amongThem(mated) ?? reject)
    : reject
/** "breed two Black sex-links". */
export const crossTwo = ([, mated]: [Token, Mated], at: number, reject: Reject): Made =>
  twoTogether([mated], at, reject)
/** Without a word of order: two single birds, or two groups of different sex. */
function either(left: Mated, joint: Words, right: Mated, cross: boolean): MatingSaid | undefined {
  const [first, second] = [groupOf(left), groupOf(right)]
  const [one, other] = [sexOfGroup(first), sexOfGroup(second)]
  const sexed = one !== undefined && other !== undefined && one !== other
  const joins = new Set(tokensIn(joint).map(({ type }) => type))
  const cannot =
    (!sexed && (first.length > 1 || second.length > 1)) ||
    !first.some(isNamed) ||
    !second.some(isNamed) ||
    (joins.has('or') && !(sexed && cross)) ||
    (!sexed && isCount(second[0]!) && !isCount(first[0]!)) ||
    (!sexed && !cross && (joins.has('comma') || joins.has('slash')) && !joins.has('and'))
  return cannot ? undefined : mate(left, joint, right, joins.has('plus') && !sexed ? 'male first' : 'either')
}
export const eitherFirst = ([left, joint, right]: Joined, _at: number, reject: Reject): Made =>
  either(left, joint, right, false) ?? reject
/** "cross between RIR and Delaware". */
export const crossEither = ([, , ...joined]: [Token, Words, ...Joined], _at: number, reject: Reject): Made =>
  either(...joined, true) ?? reject
/** "RIR and BR cross". */
export const eitherCross = ([left, joint, right]: [...Joined, Token], _at: number, reject: Reject): Made =>
  either(left, joint, right, true) ?? reject

/** "over my Sussex hens: a RIR or a Buckeye rooster": behind a colon the birds of the other sex, to choose from. */
export const headed = ([left, is, right]: [Mated, Token, Mated], _at: number, reject: Reject): Made => {
  const [one, other] = [sexOfGroup(groupOf(left)), sexOfGroup(groupOf(right))]
  const opposed = one !== undefined && other !== undefined && one !== other
  return is.said === ':' && opposed && groupOf(left).every(isNamed) && groupOf(right).every(isNamed)
    ? (mate(left, [], right, 'either') ?? reject)
    : reject
}
/** "P/p+ R/r+ by p+/p+ r+/r+": a sign of crossing between genes, and nothing but genes. */
export const genesBy = ([left, , right]: [Mated, Token, Mated], _at: number, reject: Reject): Made => {
  const birds = [...groupOf(left), ...groupOf(right)]
  const onlyGenes = birds.every(({ parts }) => parts.length > 0 && parts.every(({ type }) => type === 'gene'))
  return onlyGenes ? (mate(left, [], right, 'male first') ?? reject) : reject
}

/** Two birds side by side are mated when both are named and one is said to be a cock, the other a hen. */
export const sideBySide = ([left, right]: [BirdSaid, BirdSaid], _at: number, reject: Reject): Made => {
  const [one, other] = [sexSaid(left), sexSaid(right)]
  const apart = one === undefined || other === undefined || one === other || right.gap
  return apart || !isNamed(left) || !isNamed(right)
    ? reject
    : { first: [left], second: [right], order: 'either', plain: false }
}

function crossOf(sire: BirdSaid, joint: Words, dam: BirdSaid): MatingSaid | undefined {
  const sex = sexSaid(sire)
  if (sire.cross || dam.cross || (sex !== undefined && sex === sexSaid(dam)) || isNoun(joint, dam)) return undefined
  if (isWeak(joint) && tokensIn(joint).some(({ type }) => type === 'over')) return undefined
  return { first: [sire], second: [dam], order: 'male first', plain: true }
}
/** "RIR x BR hen". */
export const crossbred = (
  [sire, joint, dam]: [BirdSaid, Words, BirdSaid, ...unknown[]],
  _at: number,
  reject: Reject,
): Made => crossOf(sire, joint, dam) ?? reject

/** "half Silkie half Cochin". */
export const halves = ([, sire, , dam]: [Token, BirdSaid, Token, BirdSaid], _at: number, reject: Reject): Made =>
  crossOf(sire, [], dam) ?? reject
export const halvesJoined = (
  [half, sire, , other, dam]: [Token, BirdSaid, Words, Token, BirdSaid],
  at: number,
  reject: Reject,
): Made => halves([half, sire, other, dam], at, reject)

/** "a Leghorn/RIR cross hen". */
export const crossbredOfSex = (
  [sire, joint, dam, , sex]: [BirdSaid, Words, BirdSaid, Token, Words],
  _at: number,
  reject: Reject,
): Made => crossOf(sire, joint, { ...dam, parts: [...dam.parts, ...tokensIn(sex)] }) ?? reject

type ChildOf = [BirdSaid, Token, BirdSaid, Words, BirdSaid]
/** "F1 hen from Delaware x NH". */
export const childOf = ([child, , sire, joint, dam]: ChildOf, _at: number, reject: Reject): BirdSaid | Reject => {
  const cross = child.cross ? undefined : crossOf(sire, joint, dam)
  return cross ? withParents(child, cross) : reject
}
/** "pullet out of a Sussex hen by a RIR cock". */
export const childOfBy = (
  [child, , dam, , sire]: [BirdSaid, Token, BirdSaid, Token, BirdSaid],
  _at: number,
  reject: Reject,
): BirdSaid | Reject => (child.cross ? reject : withParents(child, byOf(dam, sire)))
/** "F2 of A x B". */
export const generationOf = (
  [generation, , ...cross]: [Token, Token, BirdSaid, Words, BirdSaid],
  _at: number,
  reject: Reject,
): BirdSaid | Reject => {
  const parents = crossOf(...cross)
  return parents ? withParents({ kind: 'bird', ...bodyOf(generation) }, parents) : reject
}
export const byOf = (dam: BirdSaid, sire: BirdSaid): MatingSaid => ({
  first: [sire],
  second: [dam],
  order: 'male first',
  plain: true,
})

/** "over BR, over Australorp". */
export const andOver = ([before, , , more]: [Mated, Words, Token, Mated]): Group => [
  ...groupOf(before),
  ...groupOf(more),
]
export const one = ([mating]: [MatingSaid]): readonly MatingSaid[] => [mating]
/** A list of matings needs a word of order, or both sexes, in each. */
export const more = (
  [before, , mating]: [readonly MatingSaid[], Words, MatingSaid],
  _at: number,
  reject: Reject,
): readonly MatingSaid[] | Reject => {
  const all = [...before, mating]
  const clear = ({ first, second, order }: MatingSaid): boolean =>
    order !== 'either' || (sexOfGroup(first) !== undefined && sexOfGroup(second) !== undefined)
  return all.every(clear) ? all : reject
}
