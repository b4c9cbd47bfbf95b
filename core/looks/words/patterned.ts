// core/looks/words/patterned.ts: patterned birds in words: cleared bodies, lacing, spangles, bars across.
import type { Draft } from '../rule.ts'
import { barred, barredBody, black, body, dark, darkBars, ends, red, whiteTurned } from './parts.ts'

type Say = Partial<Record<Draft['pattern'], (d: Draft) => string>>

/** What keepers call a clear body with dark hackle and tail. */
const columbians: Partial<Readonly<Record<Draft['red'], string>>> = {
  silver: 'light columbian',
  gold: 'buff columbian',
  buff: 'buff columbian',
}

const named = (name: string | undefined): string => (name === undefined ? '' : ` (${name})`)
const marks = (d: Draft): string => (darkBars(d) ? 'some dark marks' : `some ${black(d)}`)
const laced = (d: Draft): string => `each feather laced with ${black(d)}`

export const patterned: Say = {
  pencilled: (d) => `${red(d)} finely pencilled with ${black(d)}`,
  columbian: (d) =>
    `${barredBody(d)} ${ends(d)}${named(d.mottled || whiteTurned(d) || barred(d) ? undefined : columbians[d.red])}`,
  'black-tailed': (d) => `${barredBody(d)} a ${dark(d)} tail`,
  self: (d) => `${red(d)} all over`,
  belted: (d) => `${body(d)} body with solid ${black(d)} head, hackle and tail`,
  'smudged columbian': (d) => `${barredBody(d)} ${ends(d)} and ${marks(d)} on back and breast`,
  'single laced': (d) => (d.red === 'none' ? `${black(d)}, each feather edged darker` : `${red(d)}, ${laced(d)}`),
  'double laced': (d) => `${red(d)}, each feather double laced with ${black(d)}`,
  'partly laced': (d) => `${red(d)} with broken ${black(d)} lacing`,
  spangled: (d) => `${red(d)}, each feather tipped with a ${black(d)} spangle`,
  'autosomal barred': (d) => `${red(d)}, barred crosswise with ${black(d)}`,
}

/** Cocks that keep their own feathers show these patterns on the breast alone. */
export const onCocks: Say = {
  'single laced': (d) =>
    d.red === 'none'
      ? `${black(d)}, breast feathers edged darker`
      : `${red(d)}, hackle and saddle striped and breast laced with ${black(d)}`,
  'autosomal barred': (d) => `${red(d)} hackle and back, breast and body barred with ${black(d)}`,
}
