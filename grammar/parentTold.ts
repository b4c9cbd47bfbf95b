// grammar/parentTold.ts: "black roo out of a lavender hen, over ...": a parent told of a bird that goes on to a mate, as what it must carry unseen.
import type { Token } from './token.ts'

/** Recessives that are not on the Z, as a parent that shows one hands it on to every chick; and chocolate, to sons. */
const recessive = /\b(lavender|mottled|chocolate)\b/u
type Shown = 'lavender' | 'mottled' | 'chocolate'

const ofName: ReadonlySet<string> = new Set(['breed', 'family', 'colour'])
const isFrom = ({ type, word }: Token): boolean => type === 'outOf' || (type === 'between' && word.startsWith('from'))

const textOf = (tokens: readonly Token[]): string =>
  tokens
    .flatMap((token) => (token.type === 'breed' ? token.names : [token.type === 'colour' ? token.colour : '']))
    .join(' ')
    .toLowerCase()

/** The bird whose parent is told: its sex and its name, right before `at`. */
function young(
  tokens: readonly Token[],
  at: number,
): { readonly sex: 'cock' | 'hen'; readonly name: string } | undefined {
  const sex = tokens[at - 1]
  if (sex?.type !== 'cock' && sex?.type !== 'hen') return undefined
  let from = at - 1
  while (from > 0 && ofName.has(tokens[from - 1]!.type)) from -= 1
  return from < at - 1 ? { sex: sex.type, name: textOf(tokens.slice(from, at - 1)) } : undefined
}

/** The parent from `at` on: what it shows, and where the telling ends before the mate; nothing where no mate follows. */
function parentAt(
  tokens: readonly Token[],
  at: number,
): { readonly shown: Shown; readonly sex: 'cock' | 'hen'; readonly end: number } | undefined {
  let from = at + 1
  while (['filler', 'my', 'his', 'her'].includes(tokens[from]?.type ?? '')) from += 1
  let to = from
  while (ofName.has(tokens[to]?.type ?? '')) to += 1
  const [sex, shown] = [tokens[to], recessive.exec(textOf(tokens.slice(from, to)))?.[1]]
  const next = tokens.slice(to + 1).find(({ type }) => type !== 'comma')
  const goesOn = next?.type === 'over' || next?.type === 'under'
  if ((sex?.type !== 'cock' && sex?.type !== 'hen') || sex.many || !goesOn) return undefined
  return shown === 'lavender' || shown === 'mottled' || shown === 'chocolate'
    ? { shown, sex: sex.type, end: to + 1 }
    : undefined
}

export function parentTold(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex((token, i) => isFrom(token) && young(tokens, i) !== undefined)
  const from = tokens[at]
  const [child, parent] = [young(tokens, at), from && parentAt(tokens, at)]
  if (!from || !child || !parent || child.name.includes(parent.shown)) return tokens
  if (parent.shown === 'chocolate' && child.sex !== 'cock') return tokens // with one Z she shows it
  const { said, at: place, end, gap } = from
  const rest = tokens.slice(parent.end)
  return [
    ...tokens.slice(0, at),
    { said, at: place, end, gap, word: 'split to', type: 'carries' },
    { said: parent.shown, at: place, end, gap: false, word: parent.shown, type: 'colour', colour: parent.shown },
    ...(rest[0]?.type === 'comma' ? rest.slice(1) : rest),
  ]
}
