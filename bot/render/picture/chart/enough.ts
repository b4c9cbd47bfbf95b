// bot/render/picture/chart/enough.ts: the chance of enough pullets by the number of eggs set.
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
      data: [{ name: 'rungs', values: rungs }],
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
        { scale: 'x', orient: 'bottom', title: 'eggs set', tickMinStep: 1 },
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
        {
          type: 'text',
          from: { data: 'rungs' },
          encode: {
            enter: {
              x: place.x,
              y: { scale: 'y', field: 'chance', offset: 14 },
              align: { value: 'center' },
              fill: { value: rooms[room].onStage },
              text: { field: 'eggs' },
            },
          },
        },
      ],
    },
    room,
  )
}
