// bot/render/picture/adult/patterns.ts: how each pattern of the looks lies on a hen and on a cock.
import type { Plumage } from '../../../../core/looks/look.ts'
import { blacks } from '../palette.ts'
import { blackBreasted, columbian, feathered, henOnly, stippled, wheaten, type Pattern } from './grounds.ts'
import { marked, of, only, type Worn } from './paint.ts'

export const patterns: Readonly<Record<Plumage['pattern'], Pattern>> = {
  solid: ({ black }) => ({ rest: of(black), parts: {} }),
  'solid with leakage': ({ black, red }, sex) => ({
    rest: of(black),
    parts: {
      hackle: only(black, { texture: 'leaking', colour: red.web }),
      ...(sex === 'M' && {
        saddle: only(black, { texture: 'leaking', colour: red.web }),
        shoulder: only(black, { texture: 'flecked', colour: red.web }),
      }),
    },
  }),
  birchen: ({ black, red }, sex) => ({
    rest: of(black),
    parts: {
      head: of(red),
      hackle: marked('striped', red, black),
      breast: only(black, { texture: 'edged', colour: red.web }),
      ...(sex === 'M' && { saddle: marked('striped', red, black), shoulder: of(red), back: of(red) }),
    },
  }),
  'black-breasted': (tones, sex) => (sex === 'M' ? blackBreasted(tones, sex) : stippled(tones, sex)),
  wheaten: henOnly(wheaten),
  stippled: henOnly(stippled),
  partridge: henOnly(feathered('pencilled')),
  pencilled: henOnly(feathered('pencilled')),
  columbian,
  'black-tailed': ({ black, red }) => ({
    rest: of(red),
    parts: { tail: of(black), sickles: of(black), primaries: of(black) },
  }),
  self: ({ red }) => ({ rest: of(red), parts: {} }),
  'single laced': feathered('laced'),
  'double laced': (tones, sex) =>
    sex === 'F'
      ? feathered('double laced')(tones, sex)
      : {
          ...blackBreasted(tones, sex),
          parts: { ...blackBreasted(tones, sex).parts, breast: marked('edged', tones.black, tones.red) },
        },
  'partly laced': feathered('partly laced'),
  spangled: ({ black, red }) => ({
    rest: marked('spangled', red, black),
    parts: {
      hackle: marked('striped', red, black),
      head: of(red),
      sickles: of(red, { texture: 'spangled', colour: black.web }),
    },
  }),
  'autosomal barred': ({ black, red }, sex) => ({
    rest: marked('cross-barred', red, black),
    parts: {
      hackle: of(red),
      head: of(red),
      ...(sex === 'M' && { saddle: of(red), sickles: of(black), tail: of(black) }),
    },
  }),
  'smudged columbian': (tones, sex) => {
    const { rest, parts: own } = columbian(tones, sex)
    const smudge: Worn = { texture: 'flecked', colour: tones.black.web, opacity: 0.75 }
    return {
      rest,
      parts: {
        ...own,
        back: { ...rest, wears: [...rest.wears, smudge] },
        breast: { ...rest, wears: [...rest.wears, smudge] },
        shoulder: { ...rest, wears: [...rest.wears, smudge] },
      },
    }
  },
  belted: ({ black, red }) => ({
    rest: of(red),
    parts: { hackle: of(black), head: of(black), tail: of(black), sickles: of(black), primaries: of(black) },
  }),
  mixed: ({ black, red }) => ({
    rest: of(red, { texture: 'patched', colour: black.web }),
    parts: { tail: of(black), sickles: of(black), head: of(red) },
  }),
  white: ({ black }) => ({ rest: of(black === blacks['white with dark flecks'] ? black : blacks.white), parts: {} }),
}
