// bot/render/picture/chart/enough.ts: the chance of enough pullets by the number of eggs set.
import type { Mark } from 'vega'
import type { HatchAnswer } from '../../../../core/answer.ts'
import { inHundred, plural } from '../../numbers.ts'
import { rooms, type Room } from '../palette.ts'
import type { Plan } from '../card/frame.ts'
import { chartSheet } from './sheet.ts'
import { seriesOf } from './series.ts'

export const hasEnough = ({ distribution, pulletsWanted }: HatchAnswer): boolean =>
  pulletsWanted !== null && distribution.length >= 3

export function enoughPlan(answer: HatchAnswer, room: Room): Promise<Plan> {
  const rungs = [...answer.distribution].toSorted((a, b) => a.eggs - b.eggs)
  const { colour } = seriesOf(room, 0)
  const title = `Chance of ${plural(answer.pulletsWanted ?? 0, 'pullet')} by eggs set`
  const place = { x: { scale: 'x', field: 'eggs' }, y: { scale: 'y', field: 'chance' } }
  const told = answer.eggsToSet === null ? [] : [`Set ${answer.eggsToSet} to be ${inHundred(answer.certainty)} sure.`]
  return chartSheet(
    {
      title,
      key: [],
      notes: told,
      caption: [
        `Chart. ${title}.`,
        `${rungs.map(({ eggs, chance }) => `${plural(eggs, 'egg')}: ${inHundred(chance)}`).join('; ')}.`,
        ...told,
      ].join('\n'),
      fileName: 'eggs-to-set.png',
      sample: 'line',
    },
    {
      height: 210,
      data: [
        { name: 'rungs', values: rungs },
        { name: 'advised', values: rungs.filter(({ eggs }) => eggs === answer.eggsToSet) },
      ],
      scales: [
        {
          name: 'x',
          type: 'linear',
          domain: { data: 'rungs', field: 'eggs' },
          zero: false,
          nice: true,
          range: 'width',
        },
        { name: 'y', type: 'linear', domain: [0, 1], range: 'height' },
      ],
      axes: [
        { scale: 'x', orient: 'bottom', title: 'eggs set', tickMinStep: 1, tickCount: 8 },
        {
          scale: 'y',
          orient: 'left',
          title: 'chance in 100',
          grid: true,
          encode: { labels: { update: { text: { signal: 'round(datum.value * 100)' } } } },
        },
      ],
      marks: [
        {
          type: 'line',
          from: { data: 'rungs' },
          encode: { enter: { ...place, stroke: { value: colour }, strokeWidth: { value: 2.4 } } },
        },
        {
          type: 'symbol',
          from: { data: 'rungs' },
          encode: { enter: { ...place, size: { value: 60 }, fill: { value: colour } } },
        },
        ...told.flatMap(() => advised(rooms[room].onStage)),
      ],
    },
    room,
  )
}

/** From the number advised up to its point, with its words. */
const advised = (ink: string): readonly Mark[] => {
  const from = { data: 'advised' }
  const x = { scale: 'x', field: 'eggs' }
  const right = "scale('x', datum.eggs) > 0.6 * range('x')[1]" // then the words stand left of the line
  return [
    {
      type: 'rule',
      from,
      encode: {
        enter: {
          x,
          y: { scale: 'y', field: 'chance', offset: 6 },
          y2: { scale: 'y', value: 0 },
          stroke: { value: ink },
          strokeDash: { value: [3, 3] },
        },
      },
    },
    {
      type: 'text',
      from,
      encode: {
        enter: {
          x: { ...x, offset: { signal: `${right} ? -6 : 6` } },
          align: { signal: `${right} ? 'right' : 'left'` },
          y: { scale: 'y', field: 'chance', mult: 0.5, offset: { scale: 'y', value: 0, mult: 0.5 } },
          fill: { value: ink },
          text: { signal: "datum.eggs + ' eggs: ' + round(datum.chance * 100) + ' in 100'" },
        },
      },
    },
  ]
}
