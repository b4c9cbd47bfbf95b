// grammar/amend.ts: a keeper who corrects himself in one breath, "a Speckledy, no wait, a cuckoo Marans", and one who shouts.
import type { Raw } from './tokens.ts'
import type { Token } from './token.ts'

/** Words behind which the right bird comes in the place of the one just said. */
const marks: readonly (readonly string[])[] = [
  'no wait',
  'wait no',
  'no sorry',
  'sorry no',
  'oh no',
  'i mean',
  'i meant',
  'i ment',
  'scratch that',
  'strike that',
  'make that',
  'or rather',
  'actually no',
  'no actually',
  'nope',
  'oops',
  'whoops',
  'correction',
  'sorry',
].map((words) => words.split(' '))

const ofName: ReadonlySet<string> = new Set(['breed', 'family', 'colour', 'line'])
const isSex = ({ type }: Token): boolean => type === 'cock' || type === 'hen'
/** May stand between a slip, the mark and the right word. */
const between: ReadonlySet<string> = new Set([
  'filler',
  'stop',
  'comma',
  'unknown',
  'is',
  'their',
  'her',
  'his',
  'my',
  'not',
])

type Run = { readonly from: number; readonly to: number }

/** Words of a mark at that place; 0 where there is none. */
function markAt(words: readonly string[], at: number): number {
  const found = marks.find((mark) => mark.every((word, k) => words[at + k] === word))
  return found?.length ?? 0
}

/** "Ancona? no Minorca": a bare no between two names, the first one asked of himself. */
const lone = (tokens: readonly Token[], at: number): number =>
  tokens[at]!.word === 'no' &&
  tokens[at - 1]?.type === 'stop' &&
  ofName.has(tokens[at - 2]?.type ?? '') &&
  ofName.has(tokens[at + 1]?.type ?? '')
    ? 1
    : 0

/** The name that ends, or begins, nearest, with its sex word. */
function runBefore(tokens: readonly Token[], at: number): Run | undefined {
  let to = at
  while (to > 0 && at - to < 4 && between.has(tokens[to - 1]!.type)) to -= 1
  let from = to
  if (from > 0 && isSex(tokens[from - 1]!)) from -= 1
  while (from > 0 && ofName.has(tokens[from - 1]!.type)) from -= 1
  return from < to && tokens.slice(from, to).some(({ type }) => ofName.has(type)) ? { from, to } : undefined
}
function runAfter(tokens: readonly Token[], at: number): Run | undefined {
  let from = at
  while (from < tokens.length && from - at < 5 && between.has(tokens[from]!.type)) from += 1
  let to = from
  while (to < tokens.length && ofName.has(tokens[to]!.type)) to += 1
  if (to < tokens.length && isSex(tokens[to]!)) to += 1
  return tokens.slice(from, to).some(isName) ? { from, to } : undefined
}
const isName = ({ type }: Token): boolean => type === 'breed' || type === 'family'

/** Words looked through, and slips mended in one message. */
const mostLookedAt = 400
const mostSlips = 4

/** The tokens with each slip replaced by what was meant. */
export function amended(tokens: readonly Token[], slips = mostSlips): readonly Token[] {
  if (slips === 0) return tokens
  const head = tokens.slice(0, mostLookedAt)
  const words = head.map(({ word }) => word)
  for (let i = 1; i < head.length; i += 1) {
    const length = markAt(words, i) || lone(head, i)
    if (length === 0) continue
    const [slip, meant] = [runBefore(head, i), runAfter(head, i + length)]
    if (!slip || !meant) continue
    const [old, right] = [head.slice(slip.from, slip.to), head.slice(meant.from, meant.to)]
    const sex = right.some(isSex) ? [] : old.filter(isSex)
    return amended([...tokens.slice(0, slip.from), ...right, ...sex, ...tokens.slice(meant.to)], slips - 1)
  }
  return tokens
}

/** "RIR", "x" and "BR" on a line each: a cross sign by itself joins what stands above and below. */
export function crossedLines(tokens: readonly Token[]): readonly Token[] {
  const isCross = (token: Token | undefined): boolean => token?.type === 'over' && token.word === 'x'
  return tokens.filter(
    (token, at) =>
      !(
        token.type === 'stop' &&
        !token.asks &&
        ((isCross(tokens[at - 1]) && at > 1) || (isCross(tokens[at + 1]) && at > 0))
      ),
  )
}

/** "back to his mother's breed (Delaware)", "an Olive Egger hen's daughters with a Leghorn dad": the breed itself, and the hen. */
export function ofParents(tokens: readonly Token[]): readonly Token[] {
  const isParent = (token: Token | undefined): boolean =>
    (token?.type === 'cock' || token?.type === 'hen') && token.word.endsWith('s')
  const isOwner = (token: Token | undefined): boolean => token?.type === 'his' || token?.type === 'her'
  const isKind = (token: Token | undefined): boolean => /^(?:breed|kind|colou?r|variety)$/u.test(token?.word ?? '')
  const fathered = tokens.some((token) => token.type === 'cock' && token.parent && !token.many)
  return tokens.filter((token, at) => {
    const [before, after] = [tokens[at - 1], tokens[at + 1]]
    if (isOwner(token)) return !(isParent(after) && isKind(tokens[at + 2]) && isNamed(tokens, at + 3))
    if (isParent(token)) return !(isOwner(before) && isKind(after) && isNamed(tokens, at + 2))
    if (isKind(token)) return !(isOwner(tokens[at - 2]) && isParent(before) && isNamed(tokens, at + 1))
    if (token.type === 'open' || token.type === 'close') {
      const near = Math.max(0, at - 5)
      const from = near + tokens.slice(near, at).findLastIndex(isKind)
      return !(from >= near && from >= 2 && isOwner(tokens[from - 2]) && isParent(tokens[from - 1]))
    }
    const ofHen = before !== undefined && /['’]s$/u.test(before.said) && (before.type === 'hen' || isName(before))
    const young = token.type === 'kin' && (token.kin === 'daughter' || token.kin === 'son')
    const mated = tokens.slice(at + 1, at + 4).some(({ type }) => type === 'over')
    return !(young && ofHen && fathered && mated)
  })
}
/** A name stands there, in brackets or behind a comma. */
const isNamed = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(at, at + 3).some(({ type }, i, near) => ofName.has(type) && near.slice(0, i).every(isPunctuation))
const isPunctuation = ({ type }: Token): boolean => ['open', 'comma', 'filler', 'is'].includes(type)

/** "pullets from Welsummer x Legbar and put them to a Legbar": the young that were just named are put to the next bird. */
export function putOn(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex(
    (token, i) =>
      token.type === 'their' &&
      /^(?:them|her|him)$/u.test(token.word) &&
      tokens[i - 1]?.type === 'cross' &&
      tokens[i + 1]?.type === 'over',
  )
  let from = at - 1
  while (from > 0 && ['and', 'comma', 'filler', 'stop'].includes(tokens[from - 1]!.type)) from -= 1
  let name = from
  while (name > 0 && (isPartOfName(tokens[name - 1]!) || tokens[name - 1]!.word === 'x')) name -= 1
  const [outOf, young] = [tokens[name - 1], tokens[name - 2]]
  const crossed = tokens.slice(name, from).filter(({ word }) => word === 'x').length === 1
  const isYoung = young?.type === 'hen' || young?.type === 'kin' || young?.type === 'cock'
  if (at < 0 || from < 2 || !crossed || !isYoung || !(outOf?.type === 'outOf' || outOf?.type === 'of')) return tokens
  const { said, word, at: place, end, gap } = tokens[at + 1]!
  const isHen = young.type === 'hen' || (young.type === 'kin' && young.kin === 'daughter')
  const link: Token = isHen ? { said, word, at: place, end, gap, type: 'under' } : tokens[at + 1]!
  return [...tokens.slice(0, from), link, ...tokens.slice(at + 2)]
}
const isPartOfName = ({ type, word }: Token): boolean => ofName.has(type) || (type === 'filler' && /^an?$/u.test(word))

/** "could two Olive Eggers give": both parents are of that kind. */
function isTwo(tokens: readonly Token[], end: number): boolean {
  let from = end
  while (from > 0 && ofName.has(tokens[from]!.type)) from -= 1
  const count = tokens[from]
  return count?.type === 'number' && count.value === 2 && tokens.slice(from, end + 1).some(isName)
}

const gave = /^(?:gave|gives|give|threw|throws|produced|produces|hatched|had|made|keeps?|got)$/u
/** "my Scots Dumpy pair gave ...": both parents are of that kind. */
export function pairedKind(tokens: readonly Token[]): readonly Token[] {
  return tokens.map((token, at) => {
    const after = tokens.slice(at + 1).find(({ type }) => type !== 'filler')
    const kind = ofName.has(tokens[at - 1]?.type ?? '') && !/^(?:with|to|him|her|them)$/u.test(after?.word ?? '')
    const bred =
      /^(?:pair|trio|quad)$/u.test(token.word) ||
      (token.word === 'pen' && gave.test(after?.word ?? '')) ||
      (/^(?:gives?|makes?|throws?|produces?)$/u.test(token.word) && isTwo(tokens, at - 1))
    const { said, word, at: place, end, gap } = token
    return kind && bred ? { said, word, at: place, end, gap, type: 'together' } : token
  })
}

/** "splash always breeds blue": what comes of it, and no mating with a blue bird. */
export const breedingOn = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, at) => {
    const isColour = tokens[at + 1]?.type === 'colour' && tokens[at - 1]?.type !== 'cock'
    const { said, word, at: place, end, gap } = token
    const mixes = /^(?:mix|mixes|crosses|crossbreds)$/u.test(word) && ofName.has(tokens[at - 1]?.type ?? '')
    if (mixes && /^(?:have|has|are|is|all|look|came|come|turned|hatched|lay)$/u.test(tokens[at + 1]?.word ?? ''))
      return { said, word, at: place, end, gap, type: 'chick' }
    return word === 'breeds' && isColour ? { said, word, at: place, end, gap, type: 'unknown' } : token
  })

/** "grandma was chocolate, can my pullet have it": whether it was passed on. */
export function handedOn(tokens: readonly Token[]): readonly Token[] {
  const head = tokens.slice(0, mostLookedAt)
  const kin = head.some(
    (token) => token.type === 'kin' || ((token.type === 'cock' || token.type === 'hen') && token.parent),
  )
  const looks = head.some(({ type }) => type === 'colour' || type === 'trait')
  if (!kin || !looks) return tokens
  return tokens.map((token, at) => {
    const next = tokens[at + 1]
    const { said, word, at: place, end, gap } = token
    const has = /^(?:have|has|got|gets|get|inherit|inherited|inherits|havin)$/u.test(word)
    return has &&
      (/^(?:it|that)$/u.test(next?.word ?? '') || /^the gene$/u.test(`${next?.word} ${tokens[at + 2]?.word}`))
      ? { said, word, at: place, end, gap, type: 'carries' }
      : token
  })
}

const weighed =
  /^(?:meat|heavy|weigh|weighs|weight|dress|dresses|dressed|grow|grows|lbs?|kgs?|kilos?|pounds|weeks|wks|big|eat|eats|look)$/u
/** "meat off a Bresse x Rock cockerel": a cockerel of that cross, and no Rock cock. */
export function bredCockerel(tokens: readonly Token[]): readonly Token[] {
  const isOfWeight = ({ word }: Token): boolean => word.split(' ').some((part) => weighed.test(part)) // "how big"
  if (!tokens.slice(0, mostLookedAt).some(isOfWeight)) return tokens
  return tokens.map((token, at) => {
    if (token.type !== 'cock' || token.many || token.parent) return token
    let from = at - 1
    while (from >= 0 && (ofName.has(tokens[from]!.type) || tokens[from]!.type === 'over')) from -= 1
    const before = tokens.slice(from + 1, at)
    const crossed = before.filter(({ type, word }) => type === 'over' && word === 'x').length === 1
    return crossed && before.filter(isName).length === 2 && /\ban?$/u.test(tokens[from]?.word ?? '')
      ? { ...token, many: true }
      : token
  })
}

/** "mum was Wyandotte dad Leghorn", "dad is a RIR and mum a Sussex": each parent is told in a clause of its own. */
export function partedParents(tokens: readonly Token[]): readonly Token[] {
  const isParent = (token: Token | undefined): boolean =>
    (token?.type === 'cock' || token?.type === 'hen') && token.parent && !token.many
  const isSmall = (token: Token | undefined): boolean => token?.type === 'filler' || token?.type === 'is'
  return tokens.flatMap((token, at) => {
    if (!isParent(token)) return [token]
    const joined = tokens[at - 1]?.type === 'and'
    let from = at - (joined ? 2 : 1)
    while (from >= 0 && (ofName.has(tokens[from]!.type) || isSmall(tokens[from]))) from -= 1
    let to = at + 1
    while (isSmall(tokens[to])) to += 1
    const told = tokens.slice(from + 1, at - (joined ? 1 : 0))
    const other = tokens[from]
    const isOther = isParent(other) && other!.type !== token.type && isSmall(tokens[from + 1])
    const names = told.some(isName) && ofName.has(tokens[to]?.type ?? '')
    const unnamed = told.some(isName) && ['stop', 'unknown', undefined].includes(tokens[to]?.type) // "mum Barred Rock, dad ??"
    return (isOther && names) || (isParent(other) && other!.type !== token.type && unnamed)
      ? [{ ...token, end: token.at, said: '', word: '.', type: 'stop', asks: false }, token]
      : [token]
  })
}

/** "RIR!!! X!!! BARRED!!! ROCK!!!": a sign behind nearly every word parts nothing. */
export function unshouted(raws: readonly Raw[]): readonly Raw[] {
  const isShout = ({ type, text }: Raw): boolean =>
    (type === 'ask' && !text.includes('?')) || (type === 'stop' && /\.\.|…/u.test(text))
  const shouts = raws.filter(isShout).length
  const words = raws.filter(({ type }) => type === 'word').length
  return shouts > 2 && words <= shouts * 2 ? raws.filter((raw) => !isShout(raw)) : raws
}

/** "F2 from lavender to black": behind a second generation, what joins two names joins a cock and a hen. */
export function secondOf(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex((token) => token.type === 'generation' && token.generation === 2)
  const from = at + 1 + tokens.slice(at + 1, at + 4).findIndex(({ type }) => type === 'of' || type === 'outOf')
  if (at < 0 || from <= at || !/^(?:of|outOf)$/u.test(tokens[from]!.type)) return tokens
  const length = tokens.slice(from + 1).findIndex(({ type }) => !ofName.has(type) && type !== 'filler')
  const link = tokens[from + 1 + length]
  const joins = length > 0 && link?.type === 'over' && link.weak && ofName.has(tokens[from + 2 + length]?.type ?? '')
  return joins ? tokens.map((token) => (token === link ? { ...link, word: 'x', weak: false } : token)) : tokens
}
