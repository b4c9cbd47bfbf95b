// test/tools/chatter.ts: messages made up from the words of the trade, from signs and from noise, the same for the same seed.
import { breeds } from '../../core/breeds.ts'
import { aspectWords, goalWords } from '../../grammar/words/asked.ts'
import { colourWords } from '../../grammar/words/colours.ts'
import { conceptWords } from '../../grammar/words/concepts.ts'
import { languages } from '../../grammar/words/languages.ts'
import { lineWords } from '../../grammar/words/lines.ts'
import * as matings from '../../grammar/words/matings.ts'
import { nicknames } from '../../grammar/words/nicknames.ts'
import * as sexes from '../../grammar/words/sexes.ts'
import { smallWords } from '../../grammar/words/small.ts'
import { species } from '../../grammar/words/species.ts'
import { traits } from '../../grammar/words/traits.ts'

/** A number in [0, 1) from a seed, and the next seed (mulberry32). */
export function draw(seed: number): { readonly value: number; readonly next: number } {
  const next = (seed + 0x6d2b79f5) | 0
  let mixed = Math.imul(next ^ (next >>> 15), 1 | next)
  mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
  return { value: ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32, next }
}

const split = (lists: readonly string[]): readonly string[] =>
  lists.flatMap((list) => list.split(',').map((text) => text.trim().replace('*', '')))

/** Phrases of each part of speech, so that a message has the make of one. */
export const phrasesBy = {
  bird: [
    ...breeds.map(({ name }) => name),
    ...split(Object.values(nicknames)),
    ...split(species.map(({ said }) => said)),
  ],
  colour: split(Object.values(colourWords)),
  line: split(Object.values(lineWords)),
  sex: split([
    ...Object.values(sexes),
    ...Object.values(languages).flatMap(({ cock, hen, hens }) => [cock, hen, hens]),
  ]),
  mating: split(Object.values(matings)),
  small: split(Object.values(smallWords)),
  asked: split([...Object.values(aspectWords), ...Object.values(goalWords)]),
  concept: split(Object.values(conceptWords)),
  trait: split(Object.values(traits).map(({ said }) => said)),
  gene: [
    'S/s+',
    's+/-',
    'B/W',
    'b/b',
    'Ss',
    'e^b/eWh',
    'lav/lav',
    'Bl/bl+',
    'O/o',
    'Q/q',
    'S/s+/S',
    'K/-',
    'i/I^D',
    'B/c',
    'W/w',
  ],
  number: [
    '1',
    '2',
    '12',
    '4 of 7',
    '90%',
    '£2.50',
    '$18',
    '2027-03-01',
    'half',
    'dozen',
    '0',
    '999999999',
    '1e9',
    '-3',
    '3.5kg',
  ],
  sign: [
    '?',
    '!',
    '.',
    ',',
    ';',
    ':',
    '(',
    ')',
    '[',
    ']',
    '{',
    '}',
    '+',
    '&',
    '/',
    '\\',
    '=',
    '×',
    '♂',
    '♀',
    '🐓',
    '🐔',
    '➕',
    '\n',
    '-',
    '—',
    '"',
    "'",
    '’',
    '*',
    '#',
    '@a:b.c',
    '<b>',
    '</script>',
    '&amp;',
    '&#39;',
    'http://x.y/z',
    '\u0000',
    '\u200b',
    '\ud800',
    '\u202e',
    '%',
    '^',
    '~',
    '|',
  ],
  name: ['Bert', "Bert's", 'Daisy', 'Sid', 'daisy', 'Bella'],
  noise: [
    'zxq',
    'aaaa',
    'Ωμέγα',
    'אבג',
    'ñandú',
    'x',
    'xx',
    'XxX',
    'rirxbr',
    'ffffffffffffffffffff',
    'sellect',
    'RIRRIR',
    '١٢',
    '𝓡𝓘𝓡',
  ],
} as const

const parts = Object.values(phrasesBy)

/** One message of up to `most` phrases. */
export function message(seed: number, most: number): { readonly text: string; readonly next: number } {
  let at = seed
  const pick = (below: number): number => {
    const { value, next } = draw(at)
    at = next
    return Math.floor(value * below)
  }
  const length = 1 + pick(most)
  let text = ''
  for (let i = 0; i < length; i += 1) {
    const list = parts[pick(parts.length)]!
    let phrase = list[pick(list.length)] ?? ''
    if (pick(8) === 0 && phrase.length > 3) phrase = slipped(phrase, pick)
    if (pick(6) === 0) phrase = phrase.toUpperCase()
    text += (pick(12) === 0 ? '' : ' ') + phrase
  }
  return { text: text.trim(), next: at }
}

/** A letter lost, doubled or swapped. */
function slipped(word: string, pick: (below: number) => number): string {
  const at = pick(word.length - 1)
  const how = pick(3)
  if (how === 0) return word.slice(0, at) + word.slice(at + 1)
  if (how === 1) return word.slice(0, at) + word[at] + word.slice(at)
  return word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2)
}
