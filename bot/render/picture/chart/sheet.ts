// bot/render/picture/chart/sheet.ts: the page around a chart: what it shows, the chart, its key, a line or two of words.
import { gap, innerWidth, margin, sheet, stacked, type Block } from '../card/frame.ts'
import { note } from '../card/heading.ts'
import { rooms, type Room } from '../palette.ts'
import type { Plan } from '../card/frame.ts'
import { svg, type Markup } from '../svg.ts'
import { words } from '../text.ts'
import { plot, type Chart } from './plot.ts'
import { seriesOf } from './series.ts'

/** What a chart says beside its marks. `key` names its series in order. */
export type ChartWords = {
  readonly title: string
  readonly key: readonly string[]
  readonly notes: readonly string[]
  readonly caption: string
  readonly fileName: string
  readonly sample: Sample
}
type Sample = 'line' | 'bar'

export async function chartSheet(told: ChartWords, chart: Chart, room: Room): Promise<Plan> {
  const content = stacked([
    heading(told.title, room),
    gap(6),
    await plot(chart, room),
    ...(told.key.length > 0
      ? [gap(4), ...told.key.map((name, at) => keyLine(name, samples[told.sample](at, room), room))]
      : []),
    ...told.notes.map((text) => note(text, room)),
  ])
  return { ...sheet(content, room), caption: told.caption, fileName: told.fileName }
}

function heading(text: string, room: Room): Block {
  const set = words(text, { width: innerWidth, size: 16, face: 'title', colour: rooms[room].ink, most: 3 })
  return { height: set.height, at: (y) => set.at(margin, y) }
}

function keyLine(name: string, sample: Markup, room: Room): Block {
  const set = words(name, { width: innerWidth - 34, size: 12.5, face: 'plain', colour: rooms[room].ink, most: 2 })
  return {
    height: set.height + 3,
    at: (y) => svg`<g transform="translate(${margin} ${y + 10})">${sample}</g>${set.at(margin + 34, y + 1)}`,
  }
}

/** A stretch of the series as the chart draws it. */
const samples: Readonly<Record<Sample, (at: number, room: Room) => Markup>> = {
  bar: (at, room) => svg`<rect x="6" y="-8" width="15" height="16" fill="${seriesOf(room, at).colour}"/>`,
  line: (at, room) => {
    const { colour, dash, shape } = seriesOf(room, at)
    return svg`<path d="M0 0h26" stroke="${colour}" stroke-width="2.4" stroke-dasharray="${dash.length > 0 ? dash.join(' ') : 'none'}"/>
      <g transform="translate(13 0)" fill="${colour}">${shapes[shape]}</g>`
  },
}

const shapes: Readonly<Record<string, Markup>> = {
  circle: svg`<circle r="4.4"/>`,
  square: svg`<rect x="-4" y="-4" width="8" height="8"/>`,
  'triangle-up': svg`<path d="M0 -5L5 4H-5Z"/>`,
  diamond: svg`<path d="M0 -5.4L5 0L0 5.4L-5 0Z"/>`,
}
