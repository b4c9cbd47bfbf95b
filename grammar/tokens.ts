// grammar/tokens.ts: cuts a normalised message into words, numbers, prices, gene symbols and signs. Blanks die here.
import moo from 'moo'

const rawTypes = [
  'gene',
  'money',
  'number',
  'word',
  'times',
  'plus',
  'and',
  'slash',
  'comma',
  'open',
  'close',
  'is',
  'male',
  'female',
  'egg',
  'chick',
  'stop',
  'ask',
  'dash',
  'sign',
] as const
export type RawType = (typeof rawTypes)[number]
const isRawType = (type: string): type is RawType => rawTypes.some((known) => known === type)

/** `at` counts UTF-16 units from the start of the message. */
export type Raw = { readonly type: RawType; readonly text: string; readonly at: number }

/** An allele as keepers type one: `s+`, `e^Wh`, `eWh`, `lav`, `Lav+`, `I^D`, `pti-1+`. */
const allele = String.raw`[A-Za-z]{1,4}(?:\^\(?[A-Za-z+]{1,3}\)?|-1)?\+?`
const genes = new RegExp(
  [
    String.raw`(?<![\p{L}\d+/])${allele}(?:/(?:${allele}|[-_?0])){1,3}(?![\p{L}\d/])`, // a pair, or a hen's one copy
    String.raw`(?<![\p{L}\d+/])[A-Za-z]{1,2}\^\(?[A-Za-z+]{1,3}\)?\+?(?![\p{L}\d])`, // one allele with its raised letters
    String.raw`(?<![\p{L}\d+/])[A-Za-z]{1,4}\+(?![\p{L}\d+])`, // one wild-type allele
    String.raw`(?<![\p{L}\d+/])(?:[Bb]l|[KkSsBbOo])[/ ]?-(?![\p{L}\d-])`, // S-
  ].join('|'),
  'u',
)

const lexer = moo.compile({
  blank: { match: /[^\S\n]+/u },
  gene: { match: genes },
  money: {
    match:
      /[£$€]\s?\d+(?:[.,]\d{1,2})?[kp]?|\d+(?:[.,]\d{1,2})?\s?(?:[£$€]|(?:c|ct|p|cents?|pence|usd|eur|gbp|aud|dollars?|bucks?|euros?|quid|pounds? sterling|pounds?(?=\s?(?:a|per|for|for a|each|for each|an)\s(?:\d+\s?(?:kg|kilos?)\s)?(?:bag|sack|tonne|bale|kg|kilo|25|20|pullet|chick)))(?![\p{L}\d]))/u,
  },
  ordinal: { match: /\d+(?:st|nd|rd|th)(?![\p{L}\d])/u, type: () => 'word' }, // "3rd": no number of birds
  number: { match: /\d+(?:[.,]\d+)*%?/u },
  word: { match: /(?:\p{L}\.){2,}\p{L}?(?!\p{L})|\p{L}[\p{L}\p{M}\d]*(?:'[\p{L}\p{M}\d]+)*/u },
  stop: { match: /(?:\.|;|…|\n)(?:[.;…\s])*/u, lineBreaks: true },
  ask: { match: /[?!]+/u },
  times: { match: /[×*]/u },
  plus: { match: /\+/u },
  and: { match: /&/u },
  slash: { match: /[/|\\]/u },
  comma: { match: /,/u },
  open: { match: /[([{]/u },
  close: { match: /[)\]}]/u },
  is: { match: /[:=→]/u },
  male: { match: /♂/u },
  female: { match: /♀/u },
  egg: { match: /○/u },
  chick: { match: /●/u },
  dash: { match: /-+/u },
  sign: { match: /[^\s]/u },
})

/**
 * The tokens of a normalised message, in order. Never throws: a sign that nobody knows is a `sign`.
 *
 * @param most tokens beyond this number are left unread
 */
export function tokensOf(text: string, most: number): readonly Raw[] {
  const found: Raw[] = []
  lexer.reset(text)
  for (const token of lexer) {
    if (token.type === undefined || token.type === 'blank') continue
    if (isRawType(token.type)) found.push({ type: token.type, text: token.text, at: token.offset })
    if (found.length >= most) break
  }
  return found
}
