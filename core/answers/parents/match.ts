// core/answers/parents/match.ts: does a bird that looks so fit the word a keeper used of a chick?
import type { Form, Look } from '../../looks/look.ts'

type Fits = (look: Look) => boolean

const down =
  (...colours: readonly string[]): Fits =>
  ({ chick }) =>
    colours.includes(chick.colour)
const blackParts =
  (...tints: readonly string[]): Fits =>
  ({ plumage }) =>
    tints.includes(plumage.black)
const either =
  (...some: readonly Fits[]): Fits =>
  (look) =>
    some.some((fits) => fits(look))

const yellow = down('pale yellow', 'cream', 'white')
const blue = either(down('blue-grey'), blackParts('blue'))
const gold: Fits = ({ chick, plumage }) =>
  chick.ground === 'gold' || ['red', 'mahogany', 'gold', 'buff'].includes(plumage.red)
const silver: Fits = ({ chick, plumage }) => chick.ground === 'silver' || plumage.red === 'silver'
const striped: Fits = ({ chick }) => chick.pattern.includes('stripe')
const barred: Fits = ({ plumage }) => plumage.barring !== 'none'
const spotted: Fits = ({ chick }) => chick.headSpot !== 'none' && chick.headSpot !== 'hidden'
const laced: Fits = ({ plumage }) => plumage.pattern.includes('laced')
const white: Fits = ({ chick, plumage }) => plumage.white || chick.colour === 'white'

/** Colour words of down and plumage; a chick fits by either, since nobody says how old it is. */
const colours: Readonly<Record<string, Fits>> = {
  black: either(down('black'), ({ plumage }) => plumage.pattern === 'solid' && plumage.black === 'black'),
  blue,
  grey: either(blue, down('lavender grey', 'silver grey', 'grey-brown'), blackParts('lavender')),
  splash: either(down('smoky white'), blackParts('splash')),
  lavender: either(down('lavender grey'), blackParts('lavender', 'pale lavender')),
  chocolate: either(down('chocolate'), blackParts('chocolate')),
  mauve: either(down('mauve'), blackParts('mauve')),
  dun: either(down('dun'), blackParts('dun')),
  khaki: either(down('khaki'), blackParts('khaki')),
  white: either(white, yellow),
  yellow: either(yellow, down('buff')),
  cream: yellow,
  buff: either(down('buff', 'red-buff', 'pale yellow'), ({ plumage }) => plumage.red === 'buff'),
  red: either(down('red-buff', 'buff', 'golden brown'), ({ plumage }) => ['red', 'mahogany'].includes(plumage.red)),
  gold,
  silver,
  brown: either(({ chick }) => chick.colour.includes('brown'), striped),
  striped,
  chipmunk: striped,
  barred,
  cuckoo: barred,
  spot: spotted,
  spotted,
  bigspot: ({ chick }) => chick.headSpot === 'large',
  mottled: ({ plumage }) => plumage.mottled,
  laced,
  dark: down('black', 'blue-grey', 'chocolate', 'mauve', 'dun', 'dark brown', 'brown'),
  pale: down('pale yellow', 'cream', 'white', 'buff', 'silver grey', 'smoky white', 'khaki'),
}
const sameAs: Readonly<Record<string, string>> = {
  gray: 'grey',
  stripes: 'striped',
  stripy: 'striped',
  stripey: 'striped',
  light: 'pale',
  golden: 'gold',
  choc: 'chocolate',
  lav: 'lavender',
  bars: 'barred',
  headspot: 'spot',
  blond: 'yellow',
  blonde: 'yellow',
  ginger: 'red',
}

/** A belly is pale on most dark chicks, and specks are on most pale ones: they tell no parents apart. */
const noise =
  /\b(?:yellow|white|pale|cream|light)(?:ish)?\s+(?:bell(?:y|ies)|tumm(?:y|ies)|chest|breast|bum|wing ?tips?)\b|\b\w+\s+specks?\b/giu

export type Wanted =
  | { readonly kind: 'colour'; readonly word: string; readonly fits: Fits }
  | {
      readonly kind: 'form'
      readonly word: string
      readonly trait: keyof Form
      readonly fits: (value: string) => boolean
    }

/** The colour words in what was said of a chick; words that tell nothing are passed over. */
export function colourWords(look: string): readonly Wanted[] {
  const said = look
    .toLowerCase()
    .replace(noise, ' ')
    .split(/[^a-z]+/u)
  const words = new Set(said.map((word) => sameAs[word] ?? word).filter((word) => colours[word] !== undefined))
  return [...words].map((word) => ({ kind: 'colour', word, fits: colours[word]! }))
}

const solid =
  (...tints: readonly string[]): Fits =>
  ({ plumage }) =>
    blackPatterns.has(plumage.pattern) && !plumage.white && tints.includes(plumage.black)
/** Black all over, or but for the neck; blue on black shows its own lacing. */
const blackPatterns: ReadonlySet<string> = new Set(['solid', 'birchen', 'single laced'])
/** Colours of the grown bird alone, all over where they are tints of black. */
const grown: Readonly<Record<string, Fits>> = {
  black: solid('black'),
  blue: solid('blue'),
  splash: solid('splash'),
  lavender: solid('lavender', 'pale lavender'),
  chocolate: solid('chocolate'),
  mauve: solid('mauve'),
  white: ({ plumage }) => plumage.white,
  barred,
  cuckoo: barred,
  mottled: ({ plumage }) => plumage.mottled,
  silver: ({ plumage }) => plumage.red === 'silver',
  gold: ({ plumage }) => ['red', 'mahogany', 'gold', 'buff'].includes(plumage.red),
  buff: ({ plumage }) => plumage.red === 'buff',
}
/** A colour that grown birds have; undefined for a word that is none. */
export const grownIn = (word: string): Wanted | undefined => grown[word] && { kind: 'colour', word, fits: grown[word] }

type FormWord = { readonly says: RegExp; readonly trait: keyof Form; readonly fits: (value: string) => boolean }
const formWords: readonly FormWord[] = [
  { says: /muff|beard|fluffy cheek/u, trait: 'muffs', fits: (value) => value !== 'none' },
  { says: /clean.?face/u, trait: 'muffs', fits: (value) => value === 'none' },
  { says: /crest|top.?hat|mohawk/u, trait: 'crest', fits: (value) => value !== 'none' },
  { says: /clean.?(?:leg|shank|feet|foot)/u, trait: 'feet', fits: (value) => value === 'clean' },
  {
    says: /feather\w*.?(?:leg|shank|feet|foot)|booted|fluffy feet/u,
    trait: 'feet',
    fits: (value) => value !== 'clean',
  },
  { says: /frizz/u, trait: 'feather', fits: (value) => value.includes('frizzled') },
  { says: /silk/u, trait: 'feather', fits: (value) => value === 'silkie' },
  { says: /naked|bow.?tie|bare.?neck/u, trait: 'neck', fits: (value) => value !== 'feathered' },
  { says: /(?:five|5|extra).?toe/u, trait: 'toes', fits: (value) => value !== 'four' },
  { says: /rumpless|no tail|tailless/u, trait: 'tail', fits: (value) => value !== 'tailed' },
  { says: /tuft/u, trait: 'tufts', fits: (value) => value !== 'none' },
  { says: /short.?leg/u, trait: 'legs', fits: (value) => value === 'short' },
]

export function formWanted(words: readonly string[], comb: string | undefined): readonly Wanted[] {
  const forms = words.flatMap((word): Wanted[] => {
    const found = formWords.find(({ says }) => says.test(word.toLowerCase()))
    return found ? [{ kind: 'form', word, trait: found.trait, fits: found.fits }] : []
  })
  const wanted = comb?.toLowerCase().replace(/\s*comb.*$/u, '')
  return wanted
    ? [...forms, { kind: 'form', word: `${wanted} comb`, trait: 'comb', fits: (value) => value === wanted }]
    : forms
}
