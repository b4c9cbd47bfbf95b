// grammar/build/wanted.ts: a mate is sought: which hens, what rooster, for whom.
import { endsOf, spanOf, tokensIn, type Reject, type Words } from './words.ts'
import type { BirdSaid, Group, Saying } from '../saying.ts'
import type { Token } from '../token.ts'

const bareBird = (tokens: readonly Token[]): BirdSaid => ({
  kind: 'bird',
  parts: tokens,
  lacks: [],
  carried: [],
  split: false,
  ...spanOf(tokens),
})

/** @param firm asked for outright; "want pullets" may be said of chicks */
const wanted = (lead: Words, bare: Words, birds: Group, firm: boolean): Saying => {
  const who = tokensIn(bare)
  const all = [...tokensIn(lead), ...who]
  return {
    kind: 'wanted',
    ...(who.length === 0 ? {} : { bare: bareBird(who) }),
    for: birds,
    firm,
    cost: 0.5,
    at: Math.min(all[0]?.at ?? Infinity, birds[0]?.at ?? Infinity),
    end: birds.length > 0 ? endsOf(birds).end : (all.at(-1)?.end ?? 0),
  }
}

/** "best way to introduce hens": a word between tells that no hens are sought. */
const isApart = (words: Words): boolean => tokensIn(words)[0]?.gap === true

export const whichBare = ([which, bare]: [Token, Words], _at: number, reject: Reject): Saying | Reject =>
  isApart(bare) ? reject : wanted(which, bare, [], true)
export const whichWant = ([which, bare]: [Token, Words, Token]): Saying => wanted(which, bare, [], true)
export const whichFor = ([which, bare, , birds]: [Token, Words, Words, Group]): Saying =>
  wanted(which, bare, birds, true)
export const whichIsFor = ([which, , bare, , birds]: [Token, Token, Words, Words, Group]): Saying =>
  wanted(which, bare, birds, true)
/** "what can I cross my RIR roo with". */
export const whichCross = ([which, , birds]: [Token, Token, Group, ...unknown[]]): Saying =>
  wanted(which, [], birds, true)
/** "what to put over my Rocks". */
export const whatFor = ([which, link, birds]: [Token, Words, Group], _at: number, reject: Reject): Saying | Reject =>
  isApart(link) ? reject : wanted(which, [], birds, true)
/** "what do I breed him to", "who should I put under her": the other sex than the word points to. */
export const whatForHim = (words: readonly Words[]): Saying => {
  const all = words.flatMap(tokensIn)
  const him = all.some(({ word }) => /^(?:he|him|his)$/u.test(word))
  const her = all.some(({ word }) => /^(?:she|her|hers)$/u.test(word))
  return { ...wanted(all, [], [], true), ...(him ? { sex: 'F' as const } : her ? { sex: 'M' as const } : {}) }
}
/** "a good match for my Brown Leghorn": somebody is sought for him. */
export const mateFor = ([want, birds]: [Token, Group], _at: number, reject: Reject): Saying | Reject =>
  /\b(?:match|mates?|partners?|pair|match up|wife|wives|husband|girlfriends?|boyfriend|companions)/u.test(want.word) &&
  want.word.endsWith(' for')
    ? wanted(want, [], birds, true)
    : reject
export const wantBare = ([want, bare]: [Token, Words]): Saying => wanted(want, bare, [], false)
export const wantFor = ([want, bare, , birds]: [Token, Words, Words, Group]): Saying => wanted(want, bare, birds, true)
/** "hens for sexable chicks", "girls for him". */
export const bareForGoal = ([bare]: [Words, Token, Words]): Saying => wanted([], bare, [], true)
export const bareFor = ([bare, , birds]: [Words, Token, Group]): Saying => wanted([], bare, birds, true)
/** "for my RIR roo which hens". */
export const forWhich = ([lead, birds, , bare]: [Token, Group, Token, Words]): Saying => wanted(lead, bare, birds, true)
