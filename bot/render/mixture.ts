// bot/render/mixture.ts: several looks with their shares as one phrase; what all of them share is said once.
import type { Say } from './numbers.ts'

export type Group = { readonly words: string; readonly share: number }

/** How shares are said, and how many kinds are named one by one. */
export type Telling = { readonly say: Say; readonly most: number }
/** Too rare to name in a short reply, when there are others to name. */
const rare = 0.02
/** Words that cannot end what is said once. */
const dangling = new Set(['with', 'in', 'a', 'an', 'and', 'or', 'the', 'of', 'perhaps', 'some', 'little', 'on'])

/** 'splash: pale with blue flecks' inside a list: 'splash (pale with blue flecks)'. */
const inList = (words: string): string => words.replace(/^([^:]+): (.+)$/, '$1 ($2)')

const bareWord = (word: string): string => word.replace(/[,:;]$/, '')

/** How many words all begin with, not ending in one that wants another after it. */
function sharedWords(all: readonly (readonly string[])[]): number {
  const [first = [], ...others] = all
  let n = 0
  while (n < first.length && others.every((words) => bareWord(words[n] ?? '') === bareWord(first[n] ?? ''))) n += 1
  while (n > 0 && dangling.has(bareWord(first[n - 1] ?? ''))) n -= 1
  return n
}

/** The last clause, where all end in the same. */
function commonEnd(all: readonly string[]): string {
  const ends = new Set(all.map((words) => /(?:^|.), ([^,]+)$/.exec(words)?.[1] ?? ''))
  const [only = ''] = ends
  return ends.size === 1 ? only : ''
}

const listed = (groups: readonly Group[], say: Say): string => {
  const parts = groups.map((g) => `${say(g.share)} ${g.words}`)
  return parts.join(parts.some((part) => part.includes(',')) ? '; ' : ', ')
}

/** 'black: half with red in the hackle, half with a little', 'half blue, a quarter black, all pale-bellied'. */
function together(groups: readonly Group[], say: Say): string {
  const words = groups.map((g) => g.words.split(' '))
  const n = sharedWords(words)
  if (n > 0) {
    const rest = groups.map(({ share }, i) => ({ share, words: words[i]?.slice(n).join(' ') || 'plain' }))
    return `${bareWord(words[0]?.slice(0, n).join(' ') ?? '')}: ${listed(rest, say)}`
  }
  const end = commonEnd(groups.map((g) => g.words))
  if (end === '') return listed(groups, say)
  return `${listed(
    groups.map((g) => ({ ...g, words: g.words.slice(0, -end.length - 2) })),
    say,
  )}, all ${end}`
}

/** @param groups commonest first, shares summing to 1 */
export function mixture(groups: readonly Group[], { say, most }: Telling): string {
  const [first, ...others] = groups
  if (!first) return 'none'
  if (others.length === 0) return first.words
  const named = groups.filter((g, i) => i === 0 || g.share > rare).slice(0, most)
  const told = together(
    named.map((g) => ({ ...g, words: inList(g.words) })),
    say,
  )
  return groups.length > named.length ? `${told}; and a few other kinds` : told
}
