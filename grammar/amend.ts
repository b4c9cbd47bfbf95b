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
    const length = markAt(words, i)
    if (length === 0) continue
    const [slip, meant] = [runBefore(head, i), runAfter(head, i + length)]
    if (!slip || !meant) continue
    const [old, right] = [head.slice(slip.from, slip.to), head.slice(meant.from, meant.to)]
    const sex = right.some(isSex) ? [] : old.filter(isSex)
    return amended([...tokens.slice(0, slip.from), ...right, ...sex, ...tokens.slice(meant.to)], slips - 1)
  }
  return tokens
}

/** "RIR!!! X!!! BARRED!!! ROCK!!!": a sign behind nearly every word parts nothing. */
export function unshouted(raws: readonly Raw[]): readonly Raw[] {
  const isShout = ({ type, text }: Raw): boolean =>
    (type === 'ask' && !text.includes('?')) || (type === 'stop' && /\.\.|…/u.test(text))
  const shouts = raws.filter(isShout).length
  const words = raws.filter(({ type }) => type === 'word').length
  return shouts > 2 && words <= shouts * 2 ? raws.filter((raw) => !isShout(raw)) : raws
}
