// grammar/concepts.ts: what a message is about, from the phrases in it, wherever they stand.
import { phrases } from './lexicon.ts'
import { entries } from './words/entries.ts'
import { conceptWords, type Concept } from './words/concepts.ts'

type Node = { readonly next: Map<string, Node>; readonly here: Set<Concept> }
const fresh = (): Node => ({ next: new Map(), here: new Set() })
const root = fresh()
const beginnings: { readonly start: string; readonly concept: Concept }[] = []

for (const [concept, list] of entries(conceptWords))
  for (const text of phrases(list)) {
    if (text.endsWith('*')) {
      beginnings.push({ start: text.slice(0, -1), concept })
      continue
    }
    let node = root
    for (const word of text.split(' ')) {
      const next = node.next.get(word) ?? fresh()
      node.next.set(word, next)
      node = next
    }
    node.here.add(concept)
  }

/** "my uncle says", "our cousin swears": kin of the keeper, and not of a bird. */
const isOfKeeper = (words: readonly string[], at: number): boolean =>
  /^(?:uncle|aunt|cousins?|grandfather)$/u.test(words[at] ?? '') &&
  /^(?:my|our|an|wifes|husbands)$/u.test(words[at - 1] ?? '')

/** Turns of speech that touch nothing: "sick of brown eggs" is no illness. */
const idioms = ['sick of', 'sick and tired', 'dying to', 'worried sick'].map((text) => text.split(' '))
const withoutIdioms = (words: readonly string[]): readonly string[] =>
  words.map((word, at) =>
    idioms.some((idiom) => idiom[0] === word && idiom.every((part, k) => words[at + k] === part)) ? '' : word,
  )

/** How often each concept is touched. `said` are folded words; signs between them part nothing. */
export function conceptsIn(said: readonly string[]): ReadonlyMap<Concept, number> {
  const words = withoutIdioms(said)
  const found = new Map<Concept, number>()
  const add = (concept: Concept): unknown => found.set(concept, (found.get(concept) ?? 0) + 1)
  for (let i = 0; i < words.length; i += 1) {
    const word = words[i]!
    if (isOfKeeper(words, i)) continue
    for (const { start, concept } of beginnings) if (word.startsWith(start)) add(concept)
    let node: Node | undefined = root
    for (let k = i; node && k < i + 6; k += 1) {
      node = node.next.get(words[k] ?? '')
      node?.here.forEach(add)
    }
  }
  return found
}
