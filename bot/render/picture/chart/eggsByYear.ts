// bot/render/picture/chart/eggsByYear.ts: eggs in each laying year of two or more lines, side by side, each with its range.
import type { Mark } from 'vega'
import type { LinesAnswer } from '../../../../core/answer.ts'
import { range } from '../../measures.ts'
import { rooms, type Room } from '../palette.ts'
import type { Plan } from '../card/frame.ts'
import { chartSheet } from './sheet.ts'
import { seriesOf } from './series.ts'

const mostOptions = 4
const mostYears = 4

const shownOf = ({ options }: LinesAnswer): LinesAnswer['options'] =>
  options.filter(({ eggsByYear }) => eggsByYear.length > 0).slice(0, mostOptions)

export const hasEggs = (answer: LinesAnswer): boolean => shownOf(answer).length >= 2

export function eggsByYearPlan(answer: LinesAnswer, room: Room): Promise<Plan> {
  const options = shownOf(answer)
  const bars = options.map(({ eggsByYear }) =>
    eggsByYear.slice(0, mostYears).map((eggs, of) => ({ year: `year ${of + 1}`, ...eggs })),
  )
  const notes = ['Bars: the middle of what may be expected. Thin lines: from the least to the most.']
  return chartSheet(
    {
      title: 'Eggs by laying year',
      key: options.map(({ name }, at) => `${letter(at)}: ${name}`),
      notes,
      caption: [
        'Chart. Eggs by laying year.',
        ...options.map(
          ({ name, eggsByYear }, at) =>
            `${letter(at)}: ${name}: ${eggsByYear
              .slice(0, mostYears)
              .map((year, at) => `year ${at + 1} ${range(year)}`)
              .join(', ')}.`,
        ),
        ...notes,
      ].join('\n'),
      fileName: 'eggs-by-year.png',
      sample: 'bar',
    },
    {
      height: 200,
      data: bars.map((values, at) => ({ name: `bars${at}`, values })),
      scales: [
        { name: 'x', type: 'band', domain: bars[0]!.map(({ year }) => year), range: 'width', padding: 0.18 },
        {
          name: 'y',
          type: 'linear',
          domain: [0, Math.max(...bars.flat().map(({ high }) => high))],
          nice: true,
          range: 'height',
        },
      ],
      axes: [
        { scale: 'x', orient: 'bottom' },
        { scale: 'y', orient: 'left', title: 'eggs a year', grid: true },
      ],
      marks: options.flatMap((_, at) => marksOf(at, options.length, room)),
    },
    room,
  )
}

/** Stands on the bars and in the key, so that neither rests on colour. */
const letter = (at: number): string => String.fromCodePoint(65 + at)

/** Bars of one series, set beside those of the others, with a whisker each. */
function marksOf(at: number, of: number, room: Room): Mark[] {
  const from = { data: `bars${at}` }
  const across = (part: number) => ({ signal: `scale('x', datum.year) + bandwidth('x') * ${(at + part) / of}` })
  const { colour } = seriesOf(room, at)
  const bar = { x: across(0.06), x2: across(0.94), y: { scale: 'y', field: 'likely' }, y2: { scale: 'y', value: 0 } }
  const whisker = { x: across(0.5), y: { scale: 'y', field: 'low' }, y2: { scale: 'y', field: 'high' } }
  const name = { x: across(0.5), y: { scale: 'y', value: 0, offset: -5 }, text: { value: letter(at) } }
  return [
    { type: 'rect', from, encode: { enter: { ...bar, fill: { value: colour } } } },
    {
      type: 'rule',
      from,
      encode: { enter: { ...whisker, stroke: { value: rooms[room].paper }, strokeWidth: { value: 4 } } },
    },
    {
      type: 'rule',
      from,
      encode: { enter: { ...whisker, stroke: { value: rooms[room].ink }, strokeWidth: { value: 1.6 } } },
    },
    {
      type: 'text',
      from,
      encode: {
        enter: {
          ...name,
          align: { value: 'center' },
          fill: { value: rooms[room].paper },
          fontWeight: { value: 'bold' },
        },
      },
    },
  ]
}
