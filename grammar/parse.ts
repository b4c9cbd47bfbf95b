// grammar/parse.ts: reads a clause saying by saying: from each word the longest saying that fits, with all its readings.
import nearley from 'nearley'
import rules from './message.js'
import type { Kinship } from './build/kinship.ts'
import type { Saying } from './saying.ts'
import type { Token } from './token.ts'

const grammar = nearley.Grammar.fromCompiled(rules)
const kin = nearley.Grammar.fromCompiled({ ...rules, ParserStart: 'kinship' })

/** Most tokens that one saying may have. */
export const longestSaying = 60
/** A parse with more open states than this is given up: its words can be read in too many ways. */
const mostStates = 900
/** More readings than this of one saying are not told apart. */
const mostReadings = 12

export type Read = { readonly readings: readonly Saying[]; readonly length: number }

/** What is used of nearley's parser beyond its types. */
type Parser<T> = {
  readonly feed: (tokens: readonly Token[]) => unknown
  readonly finish: () => T[]
  readonly table: readonly { readonly states: readonly unknown[] }[]
  readonly current: number
  reportError: () => string
}

function parserOf<T>(grammar: nearley.Grammar): Parser<T> {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- its types know neither lists of tokens nor its table
  const parser = new nearley.Parser(grammar) as unknown as Parser<T>
  parser.reportError = () => 'no saying goes on so' // nearley's own report walks the whole table
  return parser
}

/** Feeds one token. False where no saying goes on so, or where it goes on in too many ways. */
function fed<T>(parser: Parser<T>, token: Token): boolean {
  try {
    parser.feed([token])
  } catch {
    return false
  }
  return (parser.table[parser.current]?.states.length ?? 0) <= mostStates
}

type Found = Read & { readonly fed: number }

const names: ReadonlySet<Token['type']> = new Set(['breed', 'family', 'colour', 'line'])
/** "a Lakenvelder and a Vorwerk | cock": an end here would part a bird from its sex. */
function isMidBird(tokens: readonly Token[], at: number): boolean {
  const [before, next, after] = [tokens[at - 1], tokens[at], tokens[at + 1]]
  const isSex = (next?.type === 'cock' || next?.type === 'hen') && !next.gap
  return isSex && after?.type !== 'is' && before !== undefined && names.has(before.type)
}

/** Readings of the longest saying that begins at `from`, the likeliest first. None ends within a bird if another end is there. */
function longestAt(tokens: readonly Token[], from: number, most: number): Found {
  const parser = parserOf<Saying>(grammar)
  const end = Math.min(tokens.length, from + longestSaying, from + most)
  let best: Read = { readings: [], length: 0 }
  let isWhole = false
  let at = from
  while (at < end && fed(parser, tokens[at]!)) {
    at += 1
    const readings = parser.finish()
    if (readings.length === 0 || (isWhole && isMidBird(tokens, at))) continue
    isWhole = !isMidBird(tokens, at)
    best = { readings: readings.slice(0, mostReadings), length: at - from }
  }
  return { ...best, readings: best.readings.toSorted((a, b) => a.cost - b.cost), fed: at - from + 1 }
}

/**
 * The sayings of one clause, each with its other readings. Words that begin no saying are passed over.
 *
 * @param budget most tokens that are handed to the parser; what is left is given back, so that the clauses of a
 *        message share one budget
 */
export function sayingsOf(
  tokens: readonly Token[],
  budget: number,
): { readonly read: readonly Read[]; readonly budget: number } {
  const read: Read[] = []
  let left = budget
  for (let i = 0; i < tokens.length && left > 0;) {
    const found = longestAt(tokens, i, left)
    left -= found.fed
    if (found.length > 0) read.push(found)
    i += Math.max(found.length, 1)
  }
  return { read, budget: Math.max(left, 0) }
}

/** Readings of a whole clause as something told of birds by name. */
export function readKinship(tokens: readonly Token[]): readonly Kinship[] {
  const parser = parserOf<Kinship>(kin)
  if (!tokens.every((token) => fed(parser, token))) return []
  const odd = (told: Kinship): number => (told.kind === 'is' && told.bird.split ? 1 : 0)
  return parser.finish().toSorted((a, b) => odd(a) - odd(b))
}
