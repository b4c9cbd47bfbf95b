// bot/render/picture/chart/odds.ts: the chance that a bird carries an allele, falling with each further chick that is clear of it.
import type { Mark } from 'vega'
import type { CarrierAnswer } from '../../../../core/answer.ts'
import { birdName } from '../../birds.ts'
import { inHundred, plural } from '../../numbers.ts'
import { capital } from '../../tame.ts'
import { rooms, type Room } from '../palette.ts'
import type { Plan } from '../card/frame.ts'
import { chartSheet } from './sheet.ts'
import { seriesOf } from './series.ts'

type Line = {
  readonly mating: string
  readonly points: readonly { readonly chicks: number; readonly chance: number }[]
}
const mostLines = 3
const mostChicks = 24
const enough = 0.008
/** What keepers call settled. */
const doubt = 0.05

/** Chance after n clear chicks: the carrier's share shrinks by `clear` with each (Bayes). */
export const after = (now: number, clear: number, n: number): number =>
  (now * clear ** n) / (now * clear ** n + 1 - now)

function linesOf({ now, moreChicks }: CarrierAnswer): readonly Line[] {
  if (now === null || now <= 0 || now >= 1) return []
  return moreChicks.slice(0, mostLines).flatMap(({ mating, clear }) => {
    if (clear === undefined || clear >= 1) return []
    const points = Array.from({ length: mostChicks + 1 }, (_, chicks) => ({
      chicks,
      chance: after(now, clear, chicks),
    }))
    const last = points.findIndex(({ chance }) => chance < enough)
    return [{ mating, points: last < 0 ? points : points.slice(0, last + 1) }]
  })
}

export const hasOdds = (answer: CarrierAnswer): boolean => answer.possible && linesOf(answer).length > 0

export function oddsPlan(answer: CarrierAnswer, room: Room): Promise<Plan> {
  const lines = linesOf(answer)
  const title = `${capital(birdName(answer.bird))}: chance of carrying ${answer.trait}`
  const start = `Now: ${inHundred(answer.now ?? 0)}`
  const said = lines.map(({ mating, points }) => [mating, points] as const)
  const notes = [
    `${start}. Each chick clear of it lowers the chance; one chick that shows it settles it. The dashed line is ${doubt * 100} in 100.`,
  ]
  return chartSheet(
    {
      title,
      key: said.map(([mating]) => mating),
      notes,
      caption: [
        `Chart. ${title}, by further chicks clear of it.`,
        ...notes,
        ...said.map(([mating, points]) => `${mating}: ${steps(points)}.`),
      ].join('\n'),
      fileName: 'carrier-odds.png',
      sample: 'line',
    },
    {
      height: 210,
      data: lines.map(({ points }, at) => ({ name: `line${at}`, values: points })),
      scales: [
        {
          name: 'x',
          type: 'linear',
          domain: [0, Math.max(...lines.map(({ points }) => points.length - 1))],
          range: 'width',
        },
        { name: 'y', type: 'linear', domain: [0, Math.max(answer.now ?? 0, 0.1)], nice: true, range: 'height' },
      ],
      axes: [
        { scale: 'x', orient: 'bottom', title: 'further chicks, all clear of it', tickMinStep: 1, format: 'd' },
        {
          scale: 'y',
          orient: 'left',
          title: 'chance in 100',
          grid: true,
          encode: { labels: { update: { text: { signal: 'round(datum.value * 100)' } } } },
        },
      ],
      marks: [level(doubt, rooms[room].onStage), ...lines.flatMap((_, at) => marksOf(at, room))],
    },
    room,
  )
}

/** A level to come down to. */
const level = (chance: number, ink: string): Mark => ({
  type: 'rule',
  encode: {
    enter: {
      x: { value: 0 },
      x2: { field: { group: 'width' } },
      y: { scale: 'y', value: chance },
      stroke: { value: ink },
      strokeDash: { value: [3, 3] },
    },
  },
})

function marksOf(at: number, room: Room): Mark[] {
  const { colour, dash, shape } = seriesOf(room, at)
  const from = { data: `line${at}` }
  const place = { x: { scale: 'x', field: 'chicks' }, y: { scale: 'y', field: 'chance' } }
  const stroke = { stroke: { value: colour }, strokeWidth: { value: 2.2 }, strokeDash: { value: [...dash] } }
  const point = { shape: { value: shape }, size: { value: 42 }, fill: { value: colour } }
  return [
    { type: 'line', from, encode: { enter: { ...place, ...stroke } } },
    { type: 'symbol', from, encode: { enter: { ...place, ...point } } },
  ]
}

/** The chance after so many chicks, at the start, each of the first few, and at the end. */
const steps = (points: Line['points']): string =>
  points
    .filter(({ chicks }) => chicks > 0 && (chicks <= 4 || chicks === points.length - 1 || chicks % 4 === 0))
    .map(({ chicks, chance }) => `after ${plural(chicks, 'chick')} ${inHundred(chance)}`)
    .join(', ')
