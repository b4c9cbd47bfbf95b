// bot/render/tame.ts: words that came from a message, or may hold some, made safe to send back to a room.

const control = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}]+/gu
const notNameLike = /[^\p{L}\p{M}\p{N} +^/'’×&?,()\-_=%£$€]/gu

/** Every piece of a reply passes here: no control or direction marks, nothing a client turns into a ping or a link. */
export const tame = (words: string): string =>
  words
    .replace(control, ' ')
    .replaceAll('@', '(at)')
    .replaceAll('://', ' ')
    .replace(/(?<=\p{L}):(?=[\p{L}/])/gu, ': ')
    .replace(/(?<=[\p{L}\p{N}-])\.(?=\p{L}{2})/gu, ' ')
    .replace(/[#!](?=[\p{L}\p{N}])/gu, '')
    .replace(/ {2,}/g, ' ')

/** The first letter large, for the head of a line. Gene symbols keep their case: it tells dominant from recessive. */
export const capital = (words: string): string =>
  /^[^\s]*[+^/]/.test(words) ? words : words.charAt(0).toUpperCase() + words.slice(1)

/** The keeper's own words, to be shown between quotation marks: short, and only what names and genotypes are made of. */
export function quoted(words: string, most = 60): string {
  const kept = words.replace(control, ' ').replace(notNameLike, ' ').replace(/\s+/g, ' ').trim()
  const letters = Array.from(kept)
  return `“${letters.length > most ? `${letters.slice(0, most - 1).join('')}…` : kept}”`
}
