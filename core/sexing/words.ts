// core/sexing/words.ts: what to look for on a cockerel and on a pullet, and what the figure for a sign rests on.
import type { Sign } from '../answer.ts'
import { signs, type SignId } from '../data/signs.ts'
import type { Look } from '../looks/look.ts'
import type { Hatch, LookClass } from './hatch.ts'
import { marksOf } from './marks.ts'

const stripeWords: Partial<Readonly<Record<Look['chick']['pattern'], string>>> = {
  striped: 'dark, crisp stripes',
  'faint stripes': 'faint stripes',
  'broken stripes': 'broken stripes',
  marbled: 'dark, clear marbling',
  smudged: 'dark, clear smudges',
  'blurred stripes': 'pale, blurred stripes',
}

const wording: Readonly<Record<Exclude<SignId, 'marks'>, (look: Look) => string>> = {
  'down colour': ({ chick }) => `${chick.words} down`,
  'head spot': ({ chick }) =>
    chick.headSpotClear === 'no' || chick.headSpot === 'hidden'
      ? 'no spot to be seen'
      : {
          none: 'no spot on the head',
          small: 'a pale spot on the head',
          large: 'a large pale spot on the head',
          blurred: 'a blurred pale patch on the head',
          hidden: '',
        }[chick.headSpot],
  'wing feathers': ({ chick }) =>
    chick.wing === 'fast'
      ? 'wing primaries clearly longer than the coverts'
      : 'wing primaries no longer than the coverts',
  'skin colour': ({ chick }) => (chick.skin === 'dark' ? 'dark face and skin' : 'light face and skin'),
  stripes: ({ chick }) => stripeWords[chick.pattern] ?? 'no stripes',
}

/** The two commonest wordings of one sex, joined with "or"; of more than two, first those that the other sex has not. */
function common(classes: readonly LookClass[], others: readonly LookClass[], word: (look: Look) => string): string {
  const shares = new Map<string, number>()
  for (const { share, look } of classes) shares.set(word(look), (shares.get(word(look)) ?? 0) + share)
  const ranked = [...shares].filter(([, share]) => share > 0.04).toSorted((a, b) => b[1] - a[1])
  if (ranked.length > 2) {
    const theirs = new Set(others.map(({ look }) => word(look)))
    ranked.sort((a, b) => Number(theirs.has(a[0])) - Number(theirs.has(b[0])))
  }
  return either(ranked.slice(0, 2).map(([words]) => words))
}

/** 'black or blue-grey, pale-bellied down' where two wordings part in their first word only, else 'this, or that'. */
function either([one = '', other]: readonly string[]): string {
  if (other === undefined) return one
  const [first = '', second = ''] = [one, other].map((words) => words.split(/,? /)[0])
  const rest = one.slice(first.length)
  return first !== '' && rest === other.slice(second.length) ? `${first} or ${other}` : `${one}, or ${other}`
}

export function describe(
  id: SignId,
  { M, F }: Hatch,
  pure: string | undefined,
): { readonly cockerel: string; readonly pullet: string } {
  if (id === 'stripes' && stripesRead([...M, ...F].map(({ look }) => look)) === 'marks')
    return {
      cockerel: common(M, F, wording.stripes).replace('stripes', 'markings'),
      pullet: common(F, M, wording.stripes),
    }
  if (id !== 'marks') return { cockerel: common(M, F, wording[id]), pullet: common(F, M, wording[id]) }
  const mark = marksOf({ M, F }, pure)?.mark ?? 'marked down'
  return { cockerel: `mostly without ${mark}`, pullet: `mostly with ${mark}` }
}

type ChickPattern = Look['chick']['pattern']
const downsOf = (looks: readonly Look[], patterns: readonly ChickPattern[]): boolean =>
  looks.every(({ chick }) => patterns.includes(chick.pattern))

/** How plainly the washed-out down of the autosexing breeds parts from the other downs of a hatch. */
export function stripesRead(looks: readonly Look[]): 'sure' | 'marks' | 'blend' {
  if (downsOf(looks, ['striped', 'blurred stripes'])) return 'sure'
  return downsOf(looks, ['marbled', 'smudged', 'blurred stripes']) ? 'marks' : 'blend'
}

const clarity = ['clear', 'good', 'fair', 'faint', 'poor', 'no']
const worst = (found: readonly string[]): string =>
  [...found].toSorted((a, b) => clarity.indexOf(b) - clarity.indexOf(a))[0] ?? 'good'

/** Where the accuracy comes from: the least sure of the misread rates that went into it. */
export function basisOf(id: SignId, { M, F }: Hatch, pure: string | undefined): Pick<Sign, 'basis' | 'status'> {
  const looks = [...M, ...F].map(({ look }) => look)
  const pick = ({
    basis,
    status,
  }: {
    readonly basis: string
    readonly status: Sign['status']
  }): Pick<Sign, 'basis' | 'status'> => ({ basis, status })
  switch (id) {
    case 'marks':
      return pick(marksOf({ M, F }, pure) ?? { basis: '', status: 'from memory' })
    case 'head spot': {
      const { size, ...rates } = signs['head spot'].misread
      if (looks.every(({ chick }) => chick.headSpot !== 'none')) return pick(size)
      const least = worst(looks.map(({ chick }) => chick.headSpotClear))
      return pick(rates[least === 'clear' || least === 'fair' ? least : 'faint'])
    }
    case 'down colour': {
      const readable = looks.filter(({ chick }) => chick.ground !== 'hidden' && chick.groundClear !== 'no')
      if (readable.length === 0) return pick(signs['down colour'].misread.colour)
      const least = worst(readable.map(({ chick }) => chick.groundClear))
      return pick(signs['down colour'].misread[least === 'poor' || least === 'fair' ? least : 'good'])
    }
    case 'wing feathers':
    case 'skin colour':
      return pick(signs[id].misread.sure)
    case 'stripes':
      return pick(signs.stripes.misread[stripesRead(looks)])
  }
}
