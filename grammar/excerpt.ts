// grammar/excerpt.ts: of a very long message, the sentences that speak of birds.
import { tellsOfBirds } from './lexicon.ts'
import { fold } from './normalise.ts'

/** Longest text that is read whole, in UTF-16 units; some 550 words, five times the longest that a keeper was seen to write. */
export const mostRead = 3000

type Sentence = { readonly at: number; readonly text: string; readonly weight: number }

/** Words of birds and genotypes in it, each counted once, and a question before a statement. */
function weightOf(sentence: string): number {
  const told = new Set<string>()
  for (const [word] of sentence.slice(0, mostRead).matchAll(/[\p{L}\d'/+]+/gu)) {
    const folded = fold(word.toLowerCase())
    if (/[+/]/u.test(folded) || tellsOfBirds(folded)) told.add(folded)
  }
  return told.size * 2 + Number(sentence.includes('?'))
}

/** The text itself where it is short; else its sentences with the most words of birds, in their order. */
export function excerpt(text: string): string {
  if (text.length <= mostRead) return text
  const sentences = [...text.matchAll(/[^.;…\n?!]+[.;…\n?!]*/gu)].map((found): Sentence => ({
    at: found.index,
    text: found[0].slice(0, mostRead),
    weight: weightOf(found[0]),
  }))
  let left = mostRead
  const chosen = sentences
    .toSorted((a, b) => b.weight - a.weight || a.at - b.at)
    .filter((sentence) => {
      if (sentence.text.length > left) return false
      left -= sentence.text.length
      return true
    })
  return chosen
    .toSorted((a, b) => a.at - b.at)
    .map((sentence) => sentence.text)
    .join('')
}
