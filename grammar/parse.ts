// grammar/parse.ts: reads a clause saying by saying: from each word the longest saying that fits, with all its readings.
import nearley from 'nearley'
import rules from './message.js'
import type { Kinship } from './build.ts'
import type { Saying } from './saying.ts'
import type { Token } from './token.ts'

const grammar = nearley.Grammar.fromCompiled(rules)
const kin = nearley.Grammar.fromCompiled({ ...rules, ParserStart: 'kinship' })

/** Most tokens that one saying may have. */
export const longestSaying = 60
/** More readings than this of one saying are not told apart. */
const mostReadings = 12

export type Read = { readonly readings: readonly Saying[]; readonly length: number }

/** Readings of the longest saying that begins at `from`, the likeliest first. */
function longestAt(tokens: readonly Token[], from: number): Read | undefined {
  const parser = new nearley.Parser(grammar)
  const silent = parser as unknown as { reportError: () => string; finish: () => Saying[] }
  silent.reportError = () => 'no saying goes on so'
  let best: Read | undefined
  for (let i = from; i < Math.min(tokens.length, from + longestSaying); i += 1) {
    try {
      parser.feed([tokens[i]] as unknown as string)
    } catch {
      break
    }
    const readings = silent.finish()
    if (readings.length > 0) best = { readings: readings.slice(0, mostReadings), length: i - from + 1 }
  }
  return best && { ...best, readings: best.readings.toSorted((a, b) => a.cost - b.cost) }
}

/**
 * The sayings of one clause, each with its other readings. Words that begin no saying are passed over.
 *
 * @param budget most parses; what is left over is given back, so that a long message shares one budget
 */
export function sayingsOf(
  tokens: readonly Token[],
  budget: number,
): { readonly read: readonly Read[]; readonly budget: number } {
  const read: Read[] = []
  let left = budget
  for (let i = 0; i < tokens.length && left > 0;) {
    left -= 1
    const found = longestAt(tokens, i)
    if (found) read.push(found)
    i += found?.length ?? 1
  }
  return { read, budget: left }
}

/** Readings of a whole clause as something told of birds by name. */
export function readKinship(tokens: readonly Token[]): readonly Kinship[] {
  const parser = new nearley.Parser(kin)
  const silent = parser as unknown as { reportError: () => string; results: Kinship[] }
  silent.reportError = () => 'no kinship goes on so'
  try {
    parser.feed(tokens as unknown as string)
  } catch {
    return []
  }
  const odd = (told: Kinship): number => (told.kind === 'is' && told.bird.split ? 1 : 0)
  return silent.results.toSorted((a, b) => odd(a) - odd(b))
}
