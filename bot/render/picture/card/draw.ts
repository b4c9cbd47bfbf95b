// bot/render/picture/card/draw.ts: the card of a cross: names, verdict, chicks of both sexes with the sign, the grown birds, the eggs.
import type { Room } from '../palette.ts'
import type { Card, CrossShown, Row } from './card.ts'
import { eggs } from './eggs.ts'
import { gap, sheet, stacked, type Block } from './frame.ts'
import { names, note, verdict } from './heading.ts'
import { chickPanels, signPanels } from './chickPanels.ts'
import { pairPanels } from './pairPanels.ts'
import { yard } from './yard.ts'

export function drawCard(card: Card, room: Room): ReturnType<typeof sheet> {
  const crosses = card.crosses.flatMap((cross, at) => [
    ...(at === 0 ? [] : [gap(14)]),
    ...(card.crosses.length > 1 ? brief(cross, room, `x${at}`) : full(cross, room)),
  ])
  const last = [...card.remarks, card.moreCrosses].filter(Boolean)
  return sheet(stacked([...crosses, ...last.map((words) => note(words, room))]), room)
}

function full(cross: CrossShown, room: Room): readonly Block[] {
  const [first, second] = cross.rows
  return [
    names(cross, room),
    gap(7),
    ...(first && !second ? large(first, room) : []),
    ...(first && second ? [...small(first, room, 'a'), gap(10), ...small(second, room, 'b', first)] : []),
    ...notes(cross, room),
    ...(cross.hen ? [gap(8), eggs(cross.hen, room)] : []),
  ]
}

const brief = (cross: CrossShown, room: Room, id: string): readonly Block[] => [
  names(cross, room),
  gap(4),
  ...cross.rows.flatMap((row) => small(row, room, id)),
  ...notes({ ...cross, moreCases: '' }, room),
]

/** A row that has the picture to itself. */
const large = (row: Row, room: Room): readonly Block[] => [
  verdict(row),
  gap(7),
  chickPanels(row, room, 'a'),
  gap(8),
  yard(row, room),
]

/** One row among several. */
const small = (row: Row, room: Room, id: string, above?: Row): readonly Block[] => [
  verdict(row),
  gap(6),
  row.asAbove ? signPanels(row, above, room, id) : pairPanels(row, room, id),
]

/** What is said of any of the rows, once. */
const notes = ({ rows, moreCases }: CrossShown, room: Room): readonly Block[] =>
  [...new Set([...rows.flatMap(({ remarks }) => remarks), moreCases])].filter(Boolean).map((words) => note(words, room))
