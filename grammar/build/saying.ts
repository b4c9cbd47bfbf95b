// grammar/build/saying.ts: whole sayings: matings and birds, chicks of a mating, who is who, counts, and what is asked.
import { isNamed, sexOfGroup, sexSaid, type BirdSaid, type Group, type MatingSaid, type Saying } from '../saying.ts'
import { byOf, crossAsBird } from './mating.ts'
import { endsOf, isToken, spanOf, tokensIn, type Reject, type Words } from './words.ts'
import type { Token } from '../token.ts'

const both = ({ first, second }: MatingSaid): Group => [...first, ...second]

/** A bare "split" beside a colour is likelier "split to" that colour. */
const oddity = (birds: Group): number =>
  birds.reduce(
    (sum, { split, carried, parts }) =>
      sum + Number(split) + Number(carried.length > 1) * 0.5 + Number(parts.some(isBehindSex)) * 0.4,
    0,
  )
/** "laced hen silver | laced cock": a colour behind the sex word is likelier of the next bird. */
const isBehindSex = ({ type }: Token, at: number, parts: readonly Token[]): boolean =>
  type === 'colour' && (parts[at - 1]?.type === 'cock' || parts[at - 1]?.type === 'hen')

/** "have A + B" is likelier a list than a mating. */
const isOwned = ({ first, second, order }: MatingSaid): boolean =>
  order === 'male first' && first[0]?.parts[0]?.type === 'my' && second[0]?.parts[0]?.type !== 'my'

/** How far from the plainest way to tell of a mating. */
function costOf(mating: MatingSaid): number {
  const { first, second, order } = mating
  const sexes = [sexOfGroup(first), sexOfGroup(second)]
  const sexed = sexes.filter((sex) => sex !== undefined).length
  const turned = sexes[0] === (order === 'female first' ? 'M' : 'F')
  return (
    (sexed === 0 && isOwned(mating) ? 1.8 : 0) +
    Number(!first.some(isNamed) || !second.some(isNamed)) +
    oddity(both(mating)) +
    (order === 'either' ? 2 : 0) +
    (2 - sexed) * 0.25 +
    Number(turned) * 0.1 +
    Number(first.length > 1) * 0.2
  )
}

export const matings = ([all]: [readonly MatingSaid[]]): Saying => ({
  kind: 'matings',
  matings: all,
  cost: all.reduce((sum, mating) => sum + costOf(mating), 0) / all.length,
  ...endsOf(all.flatMap(both)),
})
/** A single mating that stands for itself. */
export const mating = ([one]: [MatingSaid]): Saying => matings([[one]])
/** "what does an RIR roo on BR hens give": both named, else a mate is sought. */
export const askedMatings = ([, all]: [Token, readonly MatingSaid[]], _at: number, reject: Reject): Saying | Reject =>
  all.every(({ first, second }) => first.some(isNamed) && second.some(isNamed)) ? matings([all]) : reject

export const mentioned = ([birds]: [Group]): Saying => ({
  kind: 'birds',
  birds,
  cost: (birds.length > 1 ? 1.5 : 1) + oddity(birds),
  ...endsOf(birds),
})

// --- chicks and hens out of a mating ---

const offspring = (
  who: BirdSaid | undefined,
  chicks: boolean,
  of: MatingSaid | BirdSaid,
  from: Token | undefined,
): Saying => ({
  kind: 'offspring',
  ...(who ? { who } : {}),
  chicks,
  of,
  cost: 0,
  at: who?.at ?? from?.at ?? 0,
  end: 'first' in of ? endsOf(both(of)).end : of.end,
})
type Matings = readonly MatingSaid[]
export const outOfMating = ([who, , of]: [BirdSaid, Token, Matings]): Saying => offspring(who, false, of[0]!, undefined)
export const chickOfMating = ([chick, , of]: [Token, Token, Matings]): Saying =>
  offspring(undefined, true, of[0]!, chick)
export const ofMating = ([word, of]: [Token, Matings]): Saying => offspring(undefined, true, of[0]!, word)
export const outOfBy = ([who, , dam, , sire]: [BirdSaid, Token, BirdSaid, Token, BirdSaid]): Saying =>
  offspring(who, false, byOf(dam, sire), undefined)
export const chickOutOfBy = ([chick, , dam, , sire]: [Token, Token, BirdSaid, Token, BirdSaid]): Saying =>
  offspring(undefined, true, byOf(dam, sire), chick)
export const ofBy = ([word, dam, , sire]: [Token, BirdSaid, Token, BirdSaid]): Saying =>
  offspring(undefined, true, byOf(dam, sire), word)
/** "a pullet from my Sussex hen"; "a Marans cock from show lines" has a line and no parent. */
export const outOfOne = ([who, , of]: [BirdSaid, Token, BirdSaid], _at: number, reject: Reject): Saying | Reject =>
  of.parts.every(({ type }) => type === 'line') && of.cross === undefined
    ? reject
    : offspring(who, false, of, undefined)
export const chickOfOne = ([chick, , of]: [Token, Token, BirdSaid]): Saying => offspring(undefined, true, of, chick)

// --- who is who ---

const tell = (who: BirdSaid, is: Group, not: boolean): Saying => ({
  kind: 'told',
  who,
  is,
  not,
  corrects: false,
  cost: 0.5 + oddity([who, ...is]),
  at: who.at,
  end: endsOf(is).end,
})
/** "roo = NH hens = BR": a roo is no hen. */
function agree(who: BirdSaid, is: Group): boolean {
  const [one, other] = [sexSaid(who), sexOfGroup(is)]
  return one === undefined || other === undefined || one === other
}
export const told = ([who, , is]: [BirdSaid, Token, Group], _at: number, reject: Reject): Saying | Reject =>
  agree(who, is) ? tell(who, is, false) : reject
/** "my hen is half Silkie half Cochin". */
export const toldCross = ([who, , cross]: [BirdSaid, Token, MatingSaid]): Saying =>
  tell(who, [{ ...crossAsBird(cross), parts: [] }], false)
export const toldNot = ([who, , , is]: [BirdSaid, Token, Token, Group], _at: number, reject: Reject): Saying | Reject =>
  agree(who, is) ? tell(who, is, true) : reject

// --- counts ---

const counted = (words: Words, count: number, of: number | undefined, look: Words, not: boolean): Saying => {
  const { at, end } = spanOf(tokensIn(words))
  return { kind: 'tally', count, ...(of === undefined ? {} : { of }), look: tokensIn(look), not, cost: 0.2, at, end }
}
const valueOf = (word: Words): number => (isToken(word) && word.type === 'number' ? word.value : 0)
type Four = readonly [Words, Words, Words, Words]
/** "4 of 7 white". */
export const ofAll = (words: Four): Saying => counted(words, valueOf(words[0]), valueOf(words[2]), words[3], false)
/** "3 white out of 14". */
export const lookOf = (words: Four): Saying => counted(words, valueOf(words[0]), valueOf(words[3]), words[1], false)
/** "10 are hens". */
export const countIs = (words: readonly Words[]): Saying =>
  counted(words, valueOf(words[0]), undefined, words[2], false)
/** "6 not white". */
export const clear = (words: readonly Words[]): Saying => counted(words, valueOf(words[0]), undefined, words[2], true)

// --- what is asked ---

type Asked = Pick<Extract<Saying, { kind: 'asked' }>, 'aspect' | 'goal'>
const ask = (word: Token, asked: Asked): Saying => ({ kind: 'asked', ...asked, cost: 0, at: word.at, end: word.end })
export const aspect = ([word]: [Token]): Saying => ask(word, word.type === 'aspect' ? { aspect: word.aspect } : {})
export const goal = ([word]: [Token]): Saying => ask(word, word.type === 'goal' ? { goal: word.goal } : {})
export const sexlink = ([word]: [Token]): Saying => ask(word, { goal: 'sexable' })
/** "which is the rooster": nobody is sought. */
export const whichIs = ([which]: [Token]): Saying => ask(which, {})
