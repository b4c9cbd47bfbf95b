// bot/render/picture/adult/grounds.ts: the grounds that several patterns are built on: black-breasted, columbian, feather by feather, stippled, wheaten.
import type { Sex } from '../../../../core/vocabulary.ts'
import { blacks, reds, wheat, type FeatherTones } from '../palette.ts'
import { marked, of, only, type Paint, type Parts } from './paint.ts'
import type { Texture } from './texture.ts'

/** Black and what became of it, red and what became of it, and whether that reads as silver. */
export type Tones = { readonly black: FeatherTones; readonly red: FeatherTones; readonly silver: boolean }
/** How a pattern lies on a bird: single parts, and all the rest. */
export type Pattern = (tones: Tones, sex: Sex) => { readonly rest: Paint; readonly parts: Parts }

/** The cock of every black-breasted ground: they cannot be told apart. */
export const blackBreasted: Pattern = ({ black, red, silver }) => {
  const deep =
    red === reds['brassy silver'] ? reds.red : silver ? red : { web: red.line, line: red.edge, edge: red.edge }
  return {
    rest: of(black),
    parts: { hackle: of(red), saddle: of(red), head: of(red), back: of(deep), shoulder: of(deep), bay: of(red) },
  }
}

export const columbian: Pattern = ({ black, red }, sex) => ({
  rest: of(red),
  parts: {
    hackle: marked('striped', red, black),
    tail: of(black),
    primaries: of(black),
    sickles: of(black),
    ...(sex === 'M' && { saddle: of(red, { texture: 'ticked', colour: black.web }) }),
  },
})

/** A body marked feather by feather, the hackle striped and the tail black: hens all over, cocks on the breast. */
export const feathered =
  (texture: Texture): Pattern =>
  ({ black, red }, sex) => {
    const body = marked(texture, red, black)
    const shown: Parts = {
      hackle: marked('striped', red, black),
      head: of(red),
      tail: of(black),
      sickles: of(black),
      primaries: of(black),
    }
    if (sex === 'F') return { rest: body, parts: shown }
    return { rest: body, parts: { ...shown, back: of(red), shoulder: of(red), saddle: marked('striped', red, black) } }
  }

/** The same for hens; their cocks are black-breasted. */
export const henOnly =
  (hen: Pattern): Pattern =>
  (tones, sex) =>
    sex === 'M' ? blackBreasted(tones, sex) : hen(tones, sex)

const stippledGround = (red: FeatherTones, silver: boolean): FeatherTones =>
  silver ? stippledOn.grey : red === reds.straw ? stippledOn.straw : stippledOn.brown
const stippledOn = {
  grey: { web: '#b7b3a8', line: '#8a867c', edge: '#77736a' },
  brown: { web: '#a5814f', line: '#7c5c31', edge: '#6c5029' },
  straw: { web: '#d3c096', line: '#a4905f', edge: '#8c7a4e' },
} as const

export const stippled: Pattern = ({ black, red, silver }) => {
  const pyle = black === blacks.white
  return {
    rest: pyle ? of(reds.cream) : only(stippledGround(red, silver), { texture: 'stippled', colour: black.web }),
    parts: {
      hackle: marked('striped', red, black),
      head: of(red),
      breast: of(reds.salmon),
      tail: of(black),
      primaries: of(black),
    },
  }
}

export const wheaten: Pattern = ({ black, red, silver }) => ({
  rest: of(silver ? reds.cream : wheat),
  parts: {
    hackle: of(red),
    head: of(red),
    breast: of(silver ? reds.silver : reds.cream),
    fluff: of(silver ? reds.silver : reds.cream),
    tail: of(black),
    primaries: of(black),
  },
})
