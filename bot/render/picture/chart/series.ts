// bot/render/picture/chart/series.ts: how the lines and bars of a chart are told apart: by lightness, shape and dash, never by colour alone.
import type { Room } from '../palette.ts'

export type Series = { readonly colour: string; readonly shape: string; readonly dash: readonly number[] }

const light: readonly Series[] = [
  { colour: '#2f3b96', shape: 'circle', dash: [] },
  { colour: '#b8581b', shape: 'square', dash: [6, 3] },
  { colour: '#3f7f74', shape: 'triangle-up', dash: [2, 3] },
  { colour: '#77706a', shape: 'diamond', dash: [8, 3, 2, 3] },
]
const dark: readonly Series[] = [
  { colour: '#c3caff', shape: 'circle', dash: [] },
  { colour: '#ffb27a', shape: 'square', dash: [6, 3] },
  { colour: '#8fdccb', shape: 'triangle-up', dash: [2, 3] },
  { colour: '#e0d8c8', shape: 'diamond', dash: [8, 3, 2, 3] },
]

/** The style of the nth series. */
export const seriesOf = (room: Room, at: number): Series => (room === 'light' ? light : dark)[at % light.length]!
