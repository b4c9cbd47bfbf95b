// grammar/normalise.ts: cleans a message without moving a letter: every sign keeps its place, so offsets hold.
import type { Result } from '../core/vocabulary.ts'

/** Longest message that is read, in bytes of UTF-8. */
export const byteLimit = 65_536

export type TooLong = { readonly kind: 'too-long'; readonly bytes: number; readonly limit: number }

/** Signs that mean a word or another sign. A value may not be longer than its key. */
const signs: Readonly<Record<string, string>> = {
  '🐓': '♂',
  '🐔': '♀',
  '➕': '+',
  '✖️': '×',
  '✖': '×',
  '❌': '×',
  '❎': '×',
  '⨯': '×',
  '✕': '×',
  '✗': '×',
  '🥚': '○',
  '🐣': '●',
  '🐥': '●',
  '🐤': '●',
  '❓': '?',
  '❔': '?',
  '🤔': '?',
  '➡️': '→',
  '➡': '→',
  '♂️': '♂',
  '♀️': '♀',
  '‘': "'",
  '’': "'",
  '‚': "'",
  '`': "'",
  '´': "'",
  ʼ: "'",
  '“': '"',
  '”': '"',
  '„': '"',
  '«': '"',
  '»': '"',
  '–': '-',
  '—': '-',
  '−': '-',
  '‑': '-',
  '‐': '-',
  '⁄': '/',
  '∕': '/',
  '／': '/',
  '＋': '+',
  '⁺': '+',
  '？': '?',
  '，': ',',
}

const longestFirst = Object.keys(signs).sort((a, b) => b.length - a.length)
const anySign = new RegExp(longestFirst.join('|'), 'gu')
const entities: Readonly<Record<string, string>> = { '&amp;': '&', '&quot;': '"', '&#39;': "'", '&times;': '×' }

/** Lines of a list go on as one sentence; the first stands behind its heading. */
const bullet = (run: string, at: number, whole: string): string =>
  (/:[^\S\n]*$/u.test(whole.slice(0, at)) ? ' ' : ',') + blank(run.slice(1))

/** What is said wrong and put right with the same small word: 'over Marans.. no, over Welsummer'. */
const takenBack = /\b(over|on|under|with|to)\s[^.,;?!\n]{1,40}[.,; ]{1,4}no(?: wait)?,?\s(?=\1\b)/giu

/** "my 'blue' hen": words in quotation marks are words. */
const quoted = /(?<=^|[\s(])['"](?=[\p{L}\d])|(?<=[\p{L}\d.?!])['"](?=$|[\s),.?!;:])/gu

/** 'w/ Marans', 'w/her sister': with. */
const withSlash = /(?<![\p{L}\d/+])w\/(?=\s|(?!out)[a-z]{3})/giu

const blank = (run: string): string => ' '.repeat(run.length)
const fill = (word: string, run: string): string => word + ' '.repeat(run.length - word.length)

/**
 * The message with signs made plain. Markup, links, mentions, control characters and other pictures become blanks.
 *
 * @returns text of the same length in UTF-16 units as the message
 * @fault too-long beyond `byteLimit` bytes of UTF-8
 */
export function normalise(message: string): Result<string, TooLong> {
  const bytes = byteCount(message)
  if (bytes > byteLimit) return { ok: false, fault: { kind: 'too-long', bytes, limit: byteLimit } }
  const text = message
    .replace(/<\/?[a-z!][^<>]{0,400}>/giu, blank)
    .replace(/&(?:amp|quot|#39|times);/gu, (run) => fill(entities[run] ?? '', run))
    .replace(/&(?:[a-z]{2,8}|#\d{1,6});/giu, blank)
    .replace(/(?:https?:\/\/|www\.)\S{1,2000}/giu, blank)
    .replace(/@[\w.=/-]{1,200}:[\w.-]{1,200}/gu, blank)
    .replace(/\n[^\S\n]*[-*•][^\S\n]+(?=[^\n]*\S)/gu, bullet)
    .replace(anySign, (run) => fill(signs[run] ?? '', run))
    .replace(/[^\S\n]|[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}]/gu, (run) => (run === '\n' ? run : blank(run)))
    .replace(/(?<=\p{L})_(?=\p{L})/gu, ' ')
    .replace(quoted, blank)
    .replace(withSlash, 'w ')
    .replace(takenBack, blank)
    .replace(/(?![♂♀○●×→#*+])(?:\p{Extended_Pictographic}|\p{Emoji_Modifier})/gu, blank)
  return { ok: true, value: text }
}

/** Bytes of UTF-8; a lone half of a surrogate pair counts as the three bytes that replace it. */
function byteCount(text: string): number {
  let bytes = 0
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i)
    if (unit < 0x80) bytes += 1
    else if (unit < 0x800) bytes += 2
    else if (unit >= 0xd800 && unit < 0xdc00 && (text.charCodeAt(i + 1) & 0xfc00) === 0xdc00) {
      bytes += 4
      i += 1
    } else bytes += 3
  }
  return bytes
}

/** A word as the lexicon knows it: lower case, without accents, apostrophes and dots. Most words are so already. */
export const fold = (word: string): string =>
  /^[a-z\d -]*$/.test(word)
    ? word
    : word
        .normalize('NFD')
        .replace(/[\p{M}'.]/gu, '')
        .toLowerCase()
        .replace(/ß/gu, 'ss')
