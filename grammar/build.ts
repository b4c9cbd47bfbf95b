// grammar/build.ts: what the rules of message.ne make of their words. A rule that cannot be meant says `reject`.
import { breedNamed } from '../core/breeds.ts'
import { lociOfAllele } from '../core/genotype.ts'
import {
  isNamed,
  sexOfGroup,
  sexSaid,
  type BirdSaid,
  type Carried,
  type Group,
  type MatingSaid,
  type Saying,
} from './saying.ts'
import type { Token } from './token.ts'

type Reject = object
type Rule<T> = (words: readonly unknown[], at: number, reject: Reject) => T | Reject
type Body = Omit<BirdSaid, 'kind'>
type Piece =
  | Token
  | (Partial<Pick<BirdSaid, 'lacks' | 'carried' | 'split' | 'cross' | 'parts'>> & {
      readonly gap: boolean
      readonly at: number
      readonly end: number
      /** Made from what stood in brackets. */
      readonly bracket?: boolean
    })

const isToken = (piece: unknown): piece is Token => typeof piece === 'object' && piece !== null && 'type' in piece
/** Tokens inside nested rule results, in order. */
const tokensIn = (words: unknown): readonly Token[] =>
  Array.isArray(words) ? words.flatMap(tokensIn) : isToken(words) ? [words] : []
const spanOf = (tokens: readonly Token[]) => ({
  at: tokens[0]?.at ?? 0,
  end: tokens.at(-1)?.end ?? 0,
  gap: tokens[0]?.gap ?? false,
})

// --- birds ---

const bodyOf = (piece: Piece): Body => {
  const { at, end, gap } = piece
  const empty = { lacks: [], carried: [], split: false, at, end, gap }
  return isToken(piece) ? { ...empty, parts: [piece] } : { ...empty, parts: [], ...piece }
}

/** A piece is a token, or what `without`, `carried` and `noted` made; nearley wraps single symbols in lists. */
const pieceOf = (words: unknown): Piece => {
  let inner = words
  while (Array.isArray(inner) && inner.length === 1) inner = inner[0]
  return inner as Piece
}

/** A bracket is said of what stands before it. */
export const body: Rule<Body> = ([piece], _at, reject) => {
  const first = pieceOf(piece)
  return !isToken(first) && first.bracket === true ? reject : bodyOf(first)
}

const has = (of: Body, ...types: readonly Token['type'][]): boolean => of.parts.some(({ type }) => types.includes(type))
const sameName = (one: Token, other: Token): boolean =>
  one.type === 'breed' && other.type === 'breed'
    ? one.names[0] === other.names[0]
    : familyTold(one) !== undefined && familyTold(one) === familyTold(other)
const familyTold = (token: Token): string | undefined =>
  token.type === 'family' ? token.family : token.type === 'breed' ? breedNamed(token.names[0] ?? '')?.family : undefined

/** Can this piece be of the same bird? One breed, one sex; nothing new once a word was left out, but sex and genes. */
function fits(of: Body, more: Body): boolean {
  const named = has(of, 'breed', 'family') || of.cross !== undefined
  const sexed = has(of, 'cock', 'hen', 'kin')
  for (const part of more.parts) {
    if (part.type === 'gene' && of.parts.some((before) => before.type === 'gene' && locusOf(before) === locusOf(part)))
      return false
    if (part.type === 'breed' || part.type === 'family') {
      const same = of.parts.filter((before) => sameName(before, part)).length
      if (named && (same === 0 || same > 1) && !isHybridName(part)) return false
      if (sexed && part.gap) return false
    }
    if (
      (part.type === 'cock' || part.type === 'hen' || part.type === 'kin') &&
      (sexed || (part.gap && !named && !has(of, 'gene')))
    )
      return false
    if (part.type === 'colour' && part.gap && (sexed || named || has(of, 'gene'))) return false
    if (part.type === 'line' && part.gap && (sexed || named)) return false
  }
  return !(more.cross && (named || has(of, 'colour')) && !has(of, 'generation') && !of.parts.some(isHybridName))
}

const locusOf = ({ word }: Token): string | undefined => lociOfAllele(word.split('/')[0] ?? '')?.locus

/** A named hybrid may be followed by its parents, or be called a cross of a breed. */
const isHybridName = (part: Token): boolean =>
  part.type === 'breed' && /sex-link|Olive Egger|Easter Egger|Mixed breed/u.test(part.names[0] ?? '')

export const grown: Rule<Body> = ([before, piece], _at, reject) => {
  const of = before as Body
  const more = bodyOf(pieceOf(piece))
  if (!fits(of, more)) return reject
  return {
    parts: [...of.parts, ...more.parts],
    lacks: [...of.lacks, ...more.lacks],
    carried: [...of.carried, ...more.carried],
    split: of.split || more.split,
    cross: of.cross ?? more.cross,
    at: of.at,
    end: more.end,
    gap: of.gap,
  }
}

/** Numbers and "my" alone are no bird. */
const isBird = (of: Body): boolean =>
  of.lacks.length > 0 ||
  of.cross !== undefined ||
  of.carried.length > 0 ||
  of.split ||
  has(of, 'breed', 'family', 'colour', 'cock', 'hen', 'kin', 'gene', 'trait', 'line', 'generation')

export const bird: Rule<BirdSaid> = ([of], _at, reject) =>
  isBird(of as Body) ? { kind: 'bird', ...(of as Body) } : reject
export const led: Rule<BirdSaid> = ([lead, of], _at, reject) => {
  const before = tokensIn(lead)
  if (before.length === 0) return reject
  const said = of as Body
  if (!isBird(said)) return reject
  return { kind: 'bird', ...said, parts: [...before, ...said.parts], at: before[0]!.at, gap: before[0]!.gap }
}

export const without: Rule<Piece> = ([not, name]) => {
  const tokens = tokensIn(name)
  return { ...spanOf([not as Token, ...tokens]), lacks: tokens }
}
const carries =
  (copies: 1 | 2): Rule<Piece> =>
  ([word, what], _at, reject) => {
    const tokens = tokensIn(what)
    if (tokens[0]?.gap) return reject
    const carried: readonly Carried[] = [{ copies, what: tokens }]
    return { ...spanOf([word as Token, ...tokens]), carried }
  }
export const carriesOne = carries(1)
export const carriesTwo = carries(2)
export const split: Rule<Piece> = ([word]) => ({ ...spanOf([word as Token]), split: true })

export const noted: Rule<Piece> = ([open, notes, close]) => {
  const pieces = notePieces(notes)
  const merged = pieces.map(bodyOf)
  return {
    ...spanOf([open as Token, close as Token]),
    bracket: true,
    parts: merged.flatMap(({ parts }) => parts),
    lacks: merged.flatMap(({ lacks }) => lacks),
    carried: merged.flatMap(({ carried }) => carried),
  }
}
function notePieces(notes: unknown): readonly Piece[] {
  if (Array.isArray(notes)) return notes.flatMap(notePieces)
  if (isToken(notes)) return notes.type === 'comma' ? [] : [notes]
  return typeof notes === 'object' && notes !== null ? [notes as Piece] : []
}
export const bracketed: Rule<Piece> = ([open, mating, close]) => ({
  ...spanOf([open as Token, close as Token]),
  cross: mating as MatingSaid,
})
/** "with muffs", "with one copy of the blue egg gene". */
export const having: Rule<Piece> = ([word, feature], _at, reject) => {
  const over = word as Token
  return over.type === 'over' && over.weak && over.word.startsWith('w') ? pieceOf(feature) : reject
}
const isShell = (token: unknown): boolean => isToken(token) && token.type === 'goal' && token.goal.endsWith('-eggs')
/** "black hens with bars". */
export const havingColour: Rule<Piece> = ([word, colour], at, reject) =>
  /^(?:bars|barring|stripes|crests?|beards?|tufts)$/u.test((colour as Token).word)
    ? having([word, colour], at, reject)
    : reject
export const fromEgg: Rule<Piece> = ([from, egg], _at, reject) =>
  isShell(egg) ? { ...spanOf([from as Token, egg as Token]), parts: [egg as Token] } : reject
export const eggBird: Rule<Piece> = (words, _at, reject) => {
  const tokens = tokensIn(words)
  return isShell(tokens[0]) && tokens[1]?.gap === false ? { ...spanOf(tokens), parts: tokens } : reject
}
export const afterComma: Rule<Piece> = (words) => pieceOf(words.at(-1))
export const thatIs: Rule<Piece> = ([, gene], _at, reject) => ((gene as Token).gap ? reject : (gene as Token))

// --- lists ---

export const list: Rule<Group> = ([one]) => [one as BirdSaid]
/** Birds of a list are of one sex. `or` after a sex word keeps them apart as choices all the same. */
export const listed: Rule<Group> = (words, _at, reject) => {
  const [before, , next] = words
  const group = before as Group
  const one = next as BirdSaid
  const [sex, other] = [sexOfGroup(group), sexSaid(one)]
  if (sex !== undefined && other !== undefined && sex !== other) return reject
  const joins = tokensIn(words[1])
  if (isCount(one) && !isCount(group[0]!)) return reject
  if (one.gap && one.parts.every(({ type }) => type === 'gene')) return reject
  if (isSingle(group.at(-1)!) && other === undefined && isNamed(one) && !joins.some(({ type }) => type === 'or'))
    return reject
  if (group.length === 1 && isNamed(one) && !isNamed(group[0]!) && !hasLine(group[0]!)) return reject
  if (group.some(isNamed) && !isNamed(one) && !(joins.some(({ type }) => type === 'or') && hasLine(one))) return reject
  return [...group, one]
}

/** "one Delaware rooster": what follows is another kind of bird. */
const isSingle = ({ parts }: BirdSaid): boolean =>
  parts.some((part) => (part.type === 'cock' || part.type === 'hen') && !part.many) &&
  parts.some(({ type }) => type === 'breed' || type === 'family')
/** "one lavender": a number and a colour, of no named breed. */
const isCount = ({ parts }: BirdSaid): boolean =>
  parts.some(({ type }) => type === 'number') &&
  !parts.some(({ type }) => type === 'breed' || type === 'family' || type === 'cock' || type === 'hen')
const hasLine = ({ parts }: BirdSaid): boolean => parts.some(({ type }) => type === 'line')

// --- matings ---

const groupOf = (mated: unknown): Group => {
  if (Array.isArray(mated)) return mated as Group
  return [isBirdSaid(mated) ? mated : crossAsBird(mated as MatingSaid)]
}
const isBirdSaid = (mated: unknown): mated is BirdSaid => typeof mated === 'object' && mated !== null && 'kind' in mated

/** `RIR x BR hen`: the sex word of the last bird is that of the cross. */
function crossAsBird(cross: MatingSaid): BirdSaid {
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

const allWeak = (words: unknown): boolean => {
  const joins = tokensIn(words).filter(({ type }) => type === 'over' || type === 'under' || type === 'cross')
  return joins.every((word) => word.type === 'over' && word.weak)
}

function mate(
  left: unknown,
  joint: unknown,
  right: unknown,
  order: MatingSaid['order'],
  reject: Reject,
  crossed = false,
): MatingSaid | Reject {
  const [first, second] = [groupOf(left), groupOf(right)]
  const [one, other] = [sexOfGroup(first), sexOfGroup(second)]
  if (one !== undefined && one === other && !isChicksWord(second)) return reject
  const weak = allWeak(joint)
  if (order !== 'either' && isNoun(joint, second[0]!)) return reject
  if (!first.every(canMate) || !second.every(canMate)) return reject
  if (weak && !crossed && !first.some(isPlainBird) && !second.some(isPlainBird)) return reject
  const loose = weak || tokensIn(joint).some(({ type }) => type === 'under')
  if (
    loose &&
    !crossed &&
    order !== 'either' &&
    !second.every((bird) => isPlainBird(bird) || isColourNoun(bird) || bird.carried.length > 0 || bird.split)
  )
    return reject
  if (weak && order !== 'either' && second[0]!.gap) return reject
  return { first, second, order, plain: !weak }
}
/** "a RIR and BR cross if": a verb has its bird right behind it. */
const isNoun = (joint: unknown, next: BirdSaid): boolean => {
  const word = tokensIn(joint).find(({ type }) => type === 'cross')
  return word !== undefined && next.at - word.end > 3
}
/** A comb or a lack is said of a bird and is none. */
const canMate = (bird: BirdSaid): boolean =>
  bird.parts.some(({ type }) => type !== 'trait') || bird.cross !== undefined || bird.split || bird.carried.length > 0
/** "my reds". */
const isColourNoun = ({ parts }: BirdSaid): boolean =>
  parts.some(
    (part) =>
      part.type === 'colour' &&
      /^(?:reds|buffs|blacks|blues|barreds|lavs|lavenders|whites|splashes|columbians|partridges|silvers|golds|cuckoos|coppers|chocolates|browns|frizzles|smooths)$/u.test(
        part.word,
      ),
  )
/** More than a colour is told of it. */
const isPlainBird = (bird: BirdSaid): boolean =>
  bird.cross !== undefined ||
  bird.parts.some(
    ({ type }) =>
      type === 'breed' || type === 'family' || type === 'cock' || type === 'hen' || type === 'gene' || type === 'kin',
  )

/** "RIR x BR pullets": the pullets may be the chicks. */
const isChicksWord = (group: Group): boolean =>
  group.length === 1 && group[0]!.parts.some((part) => (part.type === 'hen' || part.type === 'cock') && part.many)

export const maleFirst: Rule<MatingSaid> = ([left, joint, right], _at, reject) =>
  mate(left, joint, right, 'male first', reject)
export const femaleFirst: Rule<MatingSaid> = ([left, joint, right], _at, reject) =>
  mate(left, joint, right, 'female first', reject)
export const crossMaleFirst: Rule<MatingSaid> = ([, left, joint, right], _at, reject) =>
  mate(left, joint, right, 'male first', reject, true)

/** One kind of bird bred to itself, or two kinds put together. */
const amongThem = (mated: unknown, reject: Reject): MatingSaid | Reject => {
  const [first, second, ...rest] = groupOf(mated)
  if (!first || rest.length > 0 || !isNamed(first)) return reject
  if (second) return mate([first], [], [second], 'either', reject)
  const unsexed = {
    ...first,
    parts: first.parts.filter(({ type }) => type !== 'cock' && type !== 'hen' && type !== 'number'),
  }
  return { first: [unsexed], second: [unsexed], order: 'male first', plain: true }
}
export const together: Rule<MatingSaid> = ([mated], _at, reject) => amongThem(mated, reject)
export const crossTogether: Rule<MatingSaid> = ([, mated], _at, reject) => amongThem(mated, reject)

/** Without a word of order: two single birds, or two groups of different sex. */
const either = (left: unknown, joint: unknown, right: unknown, reject: Reject, cross: boolean): MatingSaid | Reject => {
  const [first, second] = [groupOf(left), groupOf(right)]
  const [one, other] = [sexOfGroup(first), sexOfGroup(second)]
  const sexed = one !== undefined && other !== undefined && one !== other
  if (!sexed && (first.length > 1 || second.length > 1)) return reject
  if (!first.some(isNamed) || !second.some(isNamed)) return reject
  const joins = tokensIn(joint)
  if (joins.some(({ type }) => type === 'or') && !(sexed && cross)) return reject
  if (!sexed && isCount(second[0]!) && !isCount(first[0]!)) return reject
  if (
    !sexed &&
    !cross &&
    joins.some(({ type }) => type === 'comma' || type === 'slash') &&
    !joins.some(({ type }) => type === 'and')
  )
    return reject
  return mate(left, joint, right, joins.some(({ type }) => type === 'plus') && !sexed ? 'male first' : 'either', reject)
}
export const eitherFirst: Rule<MatingSaid> = ([left, joint, right], _at, reject) =>
  either(left, joint, right, reject, false)
export const crossEither: Rule<MatingSaid> = ([, , left, joint, right], _at, reject) =>
  either(left, joint, right, reject, true)
export const eitherCross: Rule<MatingSaid> = ([left, joint, right], _at, reject) =>
  either(left, joint, right, reject, true)

/** Two birds side by side are mated when both are named and one is said to be a cock, the other a hen. */
export const sideBySide: Rule<MatingSaid> = ([left, right], _at, reject) => {
  const [one, other] = [sexSaid(left as BirdSaid), sexSaid(right as BirdSaid)]
  if (one === undefined || other === undefined || one === other) return reject
  if ((right as BirdSaid).gap || !isNamed(left as BirdSaid) || !isNamed(right as BirdSaid)) return reject
  return { first: [left as BirdSaid], second: [right as BirdSaid], order: 'either', plain: false }
}

export const crossbred: Rule<MatingSaid> = ([left, joint, right], _at, reject) => {
  const [sire, dam] = [left as BirdSaid, right as BirdSaid]
  if (sire.cross || dam.cross || (sexSaid(sire) === sexSaid(dam) && sexSaid(sire) !== undefined)) return reject
  if (allWeak(joint) && tokensIn(joint).some(({ type }) => type === 'over')) return reject
  if (isNoun(joint, dam)) return reject
  return { first: [sire], second: [dam], order: 'male first', plain: true }
}

/** A bird and its parents. */
const childWith = (child: unknown, cross: MatingSaid | Reject, reject: Reject): BirdSaid | Reject =>
  cross === reject
    ? reject
    : { ...(child as BirdSaid), cross: cross as MatingSaid, end: (cross as MatingSaid).second[0]?.end ?? 0 }
export const childOf: Rule<BirdSaid> = ([child, , sire, joint, dam], at, reject) =>
  (child as BirdSaid).cross ? reject : childWith(child, crossbred([sire, joint, dam], at, reject), reject)
export const childOfBy: Rule<BirdSaid> = ([child, , dam, , sire], _at, reject) =>
  (child as BirdSaid).cross ? reject : childWith(child, byOf(dam, sire), reject)

export const generationOf: Rule<BirdSaid> = ([generation, , sire, joint, dam], at, reject) => {
  const said = bodyOf(generation as Token)
  return childWith({ kind: 'bird', ...said }, crossbred([sire, joint, dam], at, reject), reject)
}
export const andOver: Rule<Group> = ([before, , , more]) => [...groupOf(before), ...groupOf(more)]
export const one: Rule<readonly MatingSaid[]> = ([mating]) => [mating as MatingSaid]
/** A list of matings needs a word of order, or both sexes, in each. */
export const more: Rule<readonly MatingSaid[]> = ([before, , mating], _at, reject) => {
  const all = [...(before as readonly MatingSaid[]), mating as MatingSaid]
  const clear = ({ first, second, order }: MatingSaid): boolean =>
    order !== 'either' || (sexOfGroup(first) !== undefined && sexOfGroup(second) !== undefined)
  return all.every(clear) ? all : reject
}

// --- sayings ---

const ends = (birds: Group) => ({ at: birds[0]?.at ?? 0, end: birds.at(-1)?.end ?? 0 })
const both = ({ first, second }: MatingSaid): Group => [...first, ...second]
/** A bare "split" beside a colour is likelier "split to" that colour; "have A + B" is likelier a list. */
const oddity = (birds: Group): number =>
  birds.reduce((sum, { split, carried }) => sum + Number(split) + Number(carried.length > 1) * 0.5, 0)
const costOf = ({ first, second, order }: MatingSaid): number => {
  const sexed = Number(sexOfGroup(first) !== undefined) + Number(sexOfGroup(second) !== undefined)
  const turned = sexOfGroup(first) === (order === 'female first' ? 'M' : 'F') ? 1 : 0
  const owned =
    sexed === 0 && first[0]?.parts[0]?.type === 'my' && order === 'male first' && second[0]?.parts[0]?.type !== 'my'
      ? 1.8
      : 0
  return (
    owned +
    Number(!first.some(isNamed) || !second.some(isNamed)) +
    oddity([...first, ...second]) +
    (order === 'either' ? 2 : 0) +
    (2 - sexed) * 0.25 +
    turned * 0.1 +
    Number(first.length > 1) * 0.2
  )
}

export const matings: Rule<Saying> = ([said]) => {
  const all = said as readonly MatingSaid[]
  return {
    kind: 'matings',
    matings: all,
    cost: all.reduce((sum, mating) => sum + costOf(mating), 0) / all.length,
    ...ends(all.flatMap(both)),
  }
}
export const mentioned: Rule<Saying> = ([birds]) => {
  const group = birds as Group
  return { kind: 'birds', birds: group, cost: (group.length > 1 ? 1.5 : 1) + oddity(group), ...ends(group) }
}

const offspring = (who: unknown, chicks: boolean, of: MatingSaid | BirdSaid, tokens: readonly Token[]): Saying => ({
  kind: 'offspring',
  ...(who === undefined ? {} : { who: who as BirdSaid }),
  chicks,
  of,
  cost: 0,
  at: who === undefined ? (tokens[0]?.at ?? 0) : (who as BirdSaid).at,
  end: 'kind' in of ? of.end : ends(both(of)).end,
})
const firstOf = (matings: unknown): MatingSaid => (matings as readonly MatingSaid[])[0]!
const byOf = (dam: unknown, sire: unknown): MatingSaid => ({
  first: [sire as BirdSaid],
  second: [dam as BirdSaid],
  order: 'male first',
  plain: true,
})
export const outOfMating: Rule<Saying> = ([who, , of]) => offspring(who, false, firstOf(of), [])
export const chickOfMating: Rule<Saying> = ([chick, , of]) => offspring(undefined, true, firstOf(of), [chick as Token])
export const ofMating: Rule<Saying> = ([word, of]) => offspring(undefined, true, firstOf(of), [word as Token])
export const outOfBy: Rule<Saying> = ([who, , dam, , sire]) => offspring(who, false, byOf(dam, sire), [])
export const chickOutOfBy: Rule<Saying> = ([chick, , dam, , sire]) =>
  offspring(undefined, true, byOf(dam, sire), [chick as Token])
export const ofBy: Rule<Saying> = ([word, dam, , sire]) => offspring(undefined, true, byOf(dam, sire), [word as Token])
export const outOfOne: Rule<Saying> = ([who, , of]) => offspring(who, false, of as BirdSaid, [])
export const chickOfOne: Rule<Saying> = ([chick, , of]) => offspring(undefined, true, of as BirdSaid, [chick as Token])

const wanted = (words: unknown, bare: unknown, birds: Group, firm: boolean): Saying => {
  const lead = tokensIn(words)
  const who = tokensIn(bare)
  const all = [...lead, ...who]
  const sexless = who.length === 0
  const end = birds.length > 0 ? ends(birds).end : (all.at(-1)?.end ?? 0)
  return {
    kind: 'wanted',
    ...(sexless ? {} : { bare: { kind: 'bird', parts: who, lacks: [], carried: [], split: false, ...spanOf(who) } }),
    for: birds,
    firm,
    cost: 0.5,
    at: Math.min(all[0]?.at ?? Infinity, birds[0]?.at ?? Infinity),
    end,
  }
}
/** "best way to introduce hens": a word between tells that no hens are sought. */
const isApart = (bare: unknown): boolean => tokensIn(bare)[0]?.gap === true
export const whichBare: Rule<Saying> = ([which, bare], _at, reject) =>
  isApart(bare) ? reject : wanted(which, bare, [], true)
export const whichWant: Rule<Saying> = ([which, bare]) => wanted(which, bare, [], true)
export const whichFor: Rule<Saying> = ([which, bare, , birds]) => wanted(which, bare, birds as Group, true)
export const whichIs: Rule<Saying> = ([which]) => ask(which, {})
export const whichIsFor: Rule<Saying> = ([which, , bare, , birds]) => wanted(which, bare, birds as Group, true)
export const whichCross: Rule<Saying> = ([which, , birds]) => wanted(which, [], birds as Group, true)
export const whichMating: Rule<Saying> = ([, , left, joint, right], at, reject) => {
  const mating = mate(left, joint, right, 'male first', reject, true)
  return mating === reject ? reject : matings([[mating]], at, reject)
}
export const whichTogether: Rule<Saying> = ([, , mated], at, reject) => {
  const mating = amongThem(mated, reject)
  return mating === reject ? reject : matings([[mating]], at, reject)
}
/** Both birds named, else it is a mate that is sought. */
export const whichMatings: Rule<Saying> = ([, said], at, reject) =>
  (said as readonly MatingSaid[]).every(({ first, second }) => first.some(isNamed) && second.some(isNamed))
    ? matings([said], at, reject)
    : reject
export const whatFor: Rule<Saying> = ([which, link, birds], _at, reject) =>
  isApart(link) ? reject : wanted(which, [], birds as Group, true)
export const wantBare: Rule<Saying> = ([want, bare]) => wanted(want, bare, [], false)
export const wantFor: Rule<Saying> = ([want, bare, , birds]) => wanted(want, bare, birds as Group, true)
export const bareForGoal: Rule<Saying> = ([bare]) => wanted([], bare, [], true)
export const bareFor: Rule<Saying> = ([bare, , birds]) => wanted([], bare, birds as Group, true)
export const forWhich: Rule<Saying> = ([lead, birds, , bare]) => wanted(lead, bare, birds as Group, true)

const tell = (who: unknown, is: unknown, not: boolean): Saying => {
  const bird = who as BirdSaid
  return {
    kind: 'told',
    who: bird,
    is: is as Group,
    not,
    corrects: false,
    cost: 0.5 + oddity([bird, ...(is as Group)]),
    at: bird.at,
    end: ends(is as Group).end,
  }
}
/** "roo = NH hens = BR": a roo is no hen. */
const agree = (who: unknown, is: unknown): boolean => {
  const [one, other] = [sexSaid(who as BirdSaid), sexOfGroup(is as Group)]
  return one === undefined || other === undefined || one === other
}
export const told: Rule<Saying> = ([who, , is], _at, reject) => (agree(who, is) ? tell(who, is, false) : reject)
export const toldNot: Rule<Saying> = ([who, , , is], _at, reject) => (agree(who, is) ? tell(who, is, true) : reject)
export const correction: Rule<Saying> = ([, said]) => ({
  ...(said as Extract<Saying, { kind: 'told' }>),
  corrects: true,
})

const counted = (
  words: readonly unknown[],
  count: number,
  of: number | undefined,
  look: readonly Token[],
  not: boolean,
): Saying => {
  const { at, end } = spanOf(tokensIn(words))
  return { kind: 'tally', count, ...(of === undefined ? {} : { of }), look, not, cost: 0.2, at, end }
}
const valueOf = (word: unknown): number => (isToken(word) && word.type === 'number' ? word.value : 0)
export const ofAll: Rule<Saying> = (words) =>
  counted(words, valueOf(words[0]), valueOf(words[2]), tokensIn(words[3]), false)
export const lookOf: Rule<Saying> = (words) =>
  counted(words, valueOf(words[0]), valueOf(words[3]), tokensIn(words[1]), false)
export const clear: Rule<Saying> = (words) => counted(words, valueOf(words[0]), undefined, tokensIn(words[2]), true)

const turn = (
  words: readonly unknown[],
  how: 'swap' | 'same' | 'about' | 'instead',
  birds: unknown,
  part: readonly Token[] = [],
): Saying => {
  const sex = part.find(({ type }) => type === 'cock' || type === 'hen')
  const group = birds as Group
  const { at } = spanOf(tokensIn(words[0]))
  return {
    kind: 'change',
    how,
    ...(sex ? { part: sex.type === 'cock' ? 'M' : 'F' } : {}),
    birds: group,
    cost: 0.3,
    at: how === 'instead' ? ends(group).at : at,
    end: ends(group).end,
  }
}
export const swapped: Rule<Saying> = (words) => turn(words, 'swap', words.at(-1), tokensIn(words[1]))
export const sameBut: Rule<Saying> = (words) => turn(words, 'same', words[1])
export const whatAbout: Rule<Saying> = (words) => turn(words, 'about', words[1])
export const whatAboutWith: Rule<Saying> = (words) => turn(words, 'about', words[2])
export const instead: Rule<Saying> = (words) => turn(words, 'instead', words[0])

const ask = (word: unknown, asked: Pick<Extract<Saying, { kind: 'asked' }>, 'aspect' | 'goal'>): Saying => {
  const { at, end } = spanOf([word as Token])
  return { kind: 'asked', ...asked, cost: 0, at, end }
}
export const aspect: Rule<Saying> = ([word]) =>
  isToken(word) && word.type === 'aspect' ? ask(word, { aspect: word.aspect }) : ask(word, {})
export const goal: Rule<Saying> = ([word]) =>
  isToken(word) && word.type === 'goal' ? ask(word, { goal: word.goal }) : ask(word, {})
export const sexlink: Rule<Saying> = ([word]) => ask(word, { goal: 'sexable' })

// --- a flock told by name ---

/** One thing told of birds by name. */
export type Kinship =
  | {
      readonly kind: 'parents'
      readonly of: Token
      readonly sire?: Token
      readonly dam?: Token
      readonly either?: readonly Token[]
    }
  | { readonly kind: 'is'; readonly of: Token; readonly bird: BirdSaid; readonly not: boolean }
  | { readonly kind: 'brood'; readonly pair: readonly [Token, Token]; readonly counts: readonly Token[] }

const parents = (of: unknown, more: { sire?: unknown; dam?: unknown; either?: readonly unknown[] }): Kinship =>
  ({ kind: 'parents', of, ...more }) as Kinship
export const outOfNamed: Rule<Kinship> = ([of, , dam, , sire]) => parents(of, { sire, dam })
export const outOfPair: Rule<Kinship> = ([of, , sire, , dam]) => parents(of, { either: [sire, dam] })
export const outOfNamedOne: Rule<Kinship> = ([of, , one]) => parents(of, { either: [one] })
export const byNamed: Rule<Kinship> = ([of, , sire]) => parents(of, { sire })
const byPart = (of: unknown, part: unknown, named: unknown): Kinship =>
  parents(of, tokensIn(part)[0]?.type === 'cock' ? { sire: named } : { dam: named })
export const parentIs: Rule<Kinship> = ([of, part, , named]) => byPart(of, part, named)
export const isParentOf: Rule<Kinship> = ([named, , of, part]) => byPart(of, part, named)
const ofNamed = (of: unknown, bird: unknown, not: boolean): Kinship => ({
  kind: 'is',
  of: of as Token,
  bird: bird as BirdSaid,
  not,
})
export const namedIs: Rule<Kinship> = ([of, , bird]) => ofNamed(of, bird, false)
export const namedIsNot: Rule<Kinship> = (words) => ofNamed(words[0], words.at(-1), true)
export const namedIsBeside: Rule<Kinship> = ([of, bird]) => ofNamed(of, bird, false)
export const namedAfter: Rule<Kinship> = ([bird, of]) => ofNamed(of, bird, false)
export const isNamedSo: Rule<Kinship> = ([bird, , of]) => ofNamed(of, bird, false)
export const lastOf: Rule<Kinship> = (words) => words.at(-1) as Kinship
export const broodOf: Rule<Kinship> = ([one, , other, counts]) => ({
  kind: 'brood',
  pair: [one as Token, other as Token],
  counts: tokensIn(counts),
})
