// grammar/aside.ts: what is told of a bird in an aside, between commas or behind "he told me he is", put right behind the bird.
import { parentTold } from './parentTold.ts'
import type { Token } from './token.ts'

const ofName: ReadonlySet<string> = new Set(['breed', 'family', 'colour', 'line'])
const isSex = (token: Token | undefined): boolean => token?.type === 'cock' || token?.type === 'hen'
const isJoint = (token: Token | undefined): boolean => token?.type === 'over' || token?.type === 'under'
const isSmall = ({ type }: Token): boolean => type === 'comma' || type === 'filler'

/** Does a bird with a breed end right before `at`: "frizzle Cochin rooster", "RIR"? */
function endsBird(tokens: readonly Token[], at: number): boolean {
  let from = isSex(tokens[at - 1]) ? at - 1 : at
  while (from > 0 && ofName.has(tokens[from - 1]!.type)) from -= 1
  return tokens.slice(from, at).some(({ type }) => type === 'breed' || type === 'family')
}

const isLook = ({ type }: Token): boolean =>
  ['colour', 'line', 'gene', 'trait', 'carries', 'pure', 'single'].includes(type)

/** Place of the "over" or "under" to which an aside that begins at `from` leads; -1 where it is no aside. */
function endOfAside(tokens: readonly Token[], from: number): number {
  let to = from
  while (to < tokens.length && (isLook(tokens[to]!) || isSmall(tokens[to]!))) to += 1
  const told = tokens.slice(from, to)
  const coloured = new Set(
    told.flatMap((token, i) =>
      token.type === 'colour' ? [told.slice(0, i).filter(({ type }) => type === 'comma').length] : [],
    ),
  )
  return isJoint(tokens[to]) && told.some(isLook) && coloured.size <= 1 ? to : -1
}

/** "Cochin rooster, black, F/f+, over ...", "Australorp cock, the old laying line, over ...": one bird, in spite of the commas. */
function apposed(tokens: readonly Token[]): readonly Token[] {
  const dropped = new Set<Token>()
  for (const [at, token] of tokens.entries()) {
    if (token.type !== 'comma' || dropped.has(token) || !endsBird(tokens, at)) continue
    const end = endOfAside(tokens, at + 1)
    for (const one of tokens.slice(at, Math.max(end, at))) if (isSmall(one)) dropped.add(one)
  }
  return dropped.size === 0 ? tokens : tokens.filter((token) => !dropped.has(token))
}

const stock = /^(?:stock|strains?|lines?|breeding)$/u
/** "roo from split stock (mo/mo)": what he is, and no mating that he came of. */
function ofStock(tokens: readonly Token[]): readonly Token[] {
  const dropped = new Set<Token>()
  for (const [at, token] of tokens.entries()) {
    if (token.type !== 'outOf' || !endsBird(tokens, at)) continue
    let to = at + 1
    while (to < tokens.length && ['colour', 'trait', 'carries', 'filler'].includes(tokens[to]!.type)) to += 1
    const told = tokens.slice(at + 1, to)
    const last = told.findLast(({ word }) => stock.test(word))
    if (last && told.some(({ type }) => type === 'carries')) [token, last].forEach((one) => dropped.add(one))
  }
  return dropped.size === 0 ? tokens : tokens.filter((token) => !dropped.has(token))
}

/** Most words of an aside in which somebody says what the bird is. */
const mostSaid = 12
const saying: ReadonlySet<string> = new Set([
  'filler',
  'unknown',
  'my',
  'their',
  'his',
  'her',
  'line',
  'and',
  'outOf',
  'comma',
  'is',
])
const pronouns = {
  cock: /^(?:he|hes|his|who|whos|that|thats)$/u,
  hen: /^(?:she|shes|her|who|whos|that|thats|they|theyre)$/u,
}

/** "BCM roo, the breeder told me he's carrying ... on my hens", "cock, who I was told carries ..., over": told of the bird before. */
function hearsay(tokens: readonly Token[]): readonly Token[] {
  for (const [at, token] of tokens.entries()) {
    if (token.type !== 'cock' && token.type !== 'hen') continue
    if (!endsBird(tokens, at + 1)) continue
    let to = at + 1
    while (to < tokens.length && to - at <= mostSaid && saying.has(tokens[to]!.type)) to += 1
    const said = tokens.slice(at + 1, to)
    const told = tokens[to]?.type === 'open' ? tokens[to + 1] : tokens[to]
    const isOfIt = said.some(({ word }) => pronouns[token.type].test(word))
    if (!isOfIt || said.length < 3 || !told || !['carries', 'pure', 'single', 'gene'].includes(told.type)) continue
    const rest = tokens.slice(to)
    const stop = rest.findIndex(({ type }) => type === 'stop')
    if (rest.slice(0, stop < 0 ? undefined : stop).some(isJoint)) return [...tokens.slice(0, at + 1), ...hearsay(rest)]
  }
  return tokens
}

const ofGenes: ReadonlySet<string> = new Set(['number', 'filler', 'trait', 'single', 'pure', 'unknown', 'colour', 'is'])
/** "w one dom white copy I/i+", "known to be S/-": words before the symbols that say no more than they do. */
function beforeGenes(tokens: readonly Token[]): readonly Token[] {
  const dropped = new Set<Token>()
  for (const [at, token] of tokens.entries()) {
    const next = tokens[at + 1]
    const opens =
      token.type === 'over' &&
      token.weak &&
      (token.word.startsWith('w') || (token.word === 'to' && next?.type === 'is'))
    if (!opens || next?.type === 'gene') continue
    let to = at + 1
    while (to - at < 7 && ofGenes.has(tokens[to]?.type ?? '')) to += 1
    const from = tokens[at - 1]?.type === 'unknown' ? at - 1 : at
    if (tokens[to]?.type === 'gene' && endsBird(tokens, from)) tokens.slice(from, to).forEach((one) => dropped.add(one))
  }
  return dropped.size === 0 ? tokens : tokens.filter((token) => !dropped.has(token))
}

const ofClause: ReadonlySet<string> = new Set(['their', 'his', 'her', 'unknown', 'filler', 'over', 'my'])
/** "the girls he moved in with are Rocks", "hens I put him with are ...": who they are, and no mating yet. */
function withoutClause(tokens: readonly Token[]): readonly Token[] {
  const dropped = new Set<Token>()
  for (const [at, token] of tokens.entries()) {
    if (!isSex(token)) continue
    let to = at + 1
    while (to - at < 8 && ofClause.has(tokens[to]?.type ?? '')) to += 1
    const clause = tokens.slice(at + 1, to)
    const moved =
      clause.at(-1)?.type === 'over' && clause.length > 1 && clause.filter(({ type }) => type === 'over').length === 1
    if (moved && tokens[to]?.type === 'is' && tokens[to]?.said !== ':') clause.forEach((one) => dropped.add(one))
  }
  return dropped.size === 0 ? tokens : tokens.filter((token) => !dropped.has(token))
}

/** "faverolles an brahma": and. */
const joinedByAn = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, at) => {
    if (token.word !== 'an') return token
    const isName = (near: Token | undefined): boolean => near?.type === 'breed' || near?.type === 'family'
    const named = isName(tokens[at - 1]) && tokens.slice(at + 1, at + 3).some(isName)
    const { said, word, at: place, end, gap } = token
    return named ? { said, word, at: place, end, gap, type: 'and' } : token
  })

/** Most tokens between brackets. */
const farBracket = 60

/** "hens: [a, b]": brackets around all that a heading names. */
function unbracketed(tokens: readonly Token[]): readonly Token[] {
  const dropped = new Set<Token>()
  for (const [at, token] of tokens.entries()) {
    if (token.type !== 'open' || tokens[at - 1]?.type !== 'is') continue
    const close = tokens.slice(at, at + farBracket).find(({ type }) => type === 'close')
    if (close) [token, close].forEach((one) => dropped.add(one))
  }
  return dropped.size === 0 ? tokens : tokens.filter((token) => !dropped.has(token))
}

const isSameName = ({ type, word }: Token, name: Token | undefined): boolean =>
  (type === 'breed' || type === 'family') &&
  name !== undefined &&
  (word.endsWith(name.word) || name.word.endsWith(word))

/** "A x B, B is the roo", "A and B and the B is the hen": what B is stands by itself, and B is no third bird. */
const partedTold = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, at) => {
    if (token.type !== 'comma' && token.type !== 'and') return token
    let from = at + 1
    while (tokens[from] && isSmall(tokens[from]!)) from += 1
    let is = from
    while (ofName.has(tokens[is]?.type ?? '')) is += 1
    let to = is + 1
    while (tokens[to]?.type === 'filler' || tokens[to]?.type === 'my') to += 1
    const name = tokens.slice(from, is).find(({ type }) => type === 'breed' || type === 'family')
    const told =
      name !== undefined && tokens[is]?.type === 'is' && isSex(tokens[to]) && !ofName.has(tokens[to + 1]?.type ?? '')
    const { at: place, end, gap } = token
    const again = (): boolean => token.type === 'comma' || tokens.slice(0, at).some((one) => isSameName(one, name))
    return told && again() ? { said: '', word: '.', at: place, end, gap, type: 'stop', asks: false } : token
  })

/** The tokens with every aside put behind its bird. */
export const apart = (tokens: readonly Token[]): readonly Token[] =>
  partedTold(apposed(beforeGenes(hearsay(ofStock(withoutClause(unbracketed(joinedByAn(parentTold(tokens)))))))))
