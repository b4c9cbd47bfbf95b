// bot/render/picture/card/yard.ts: the grown cock on the left, the grown hen on the right, with their words.
import { rooms, type Room } from '../palette.ts'
import { placed, svg } from '../svg.ts'
import { words } from '../text.ts'
import type { Row } from './card.ts'
import type { Half } from './shown.ts'
import { coupleCell, grownCell, heightOf, stackedWords, titles, type Panel } from './cells.ts'
import { columnWidth, gutter, innerWidth, margin, type Block } from './frame.ts'
import { grid } from './grid.ts'

const inset = 6
const inside = columnWidth - 2 * inset

export function yard(row: Row, room: Room): Block {
  if (row.grownAlike) return couples(row, room)
  const common = row.allGrown.join(', ')
  const halves = [row.cockerels, row.pullets].map((half) => side(half, room))
  const line = words(common, {
    width: innerWidth - 2 * inset,
    size: 11.5,
    face: 'plain',
    colour: rooms[room].onStage,
    align: 'centre',
    most: 3,
  })
  const high = Math.max(...halves.map((one) => one.height))
  const height = high + 2 * inset + (common ? line.height + 3 : 0)
  return {
    height,
    at: (
      y,
    ) => svg`<rect x="${margin}" y="${y}" width="${innerWidth}" height="${height}" rx="10" fill="${rooms[room].yard}"/>
      ${halves.map(({ drawn }, at) => placed(drawn, margin + inset + at * (columnWidth + gutter), y + inset))}
      ${common !== '' && line.at(margin + inset, y + inset + high + 3)}`,
  }
}

/** Kinds that come alike in both sexes: of each the cock and the hen, all in one row. */
function couples({ cockerels, pullets, allGrown }: Row, room: Room): Block {
  const colour = rooms[room].onStage
  const width = innerWidth - 2 * inset
  const title = words(titles.couples, { width, size: 13, face: 'bold', colour })
  const cells = grid(
    cockerels.grown.map((male, at) => coupleCell(male, pullets.grown[at] ?? male, room)),
    { width, size: cockerels.grown.length > 2 ? 62 : 90, perRow: 3 },
  )
  const under = [cockerels.rarerGrown, allGrown.join(', ')]
    .filter(Boolean)
    .map((text) => words(text, { width, size: 11.5, face: 'plain', colour, align: 'centre', most: 3 }))
  const height = title.height + cells.height + heightOf(under) + 2 * inset
  return {
    height,
    at: (
      y,
    ) => svg`<rect x="${margin}" y="${y}" width="${innerWidth}" height="${height}" rx="10" fill="${rooms[room].yard}"/>
      ${placed(
        svg`${title.at(0, 0)}${placed(cells.drawn, 0, title.height)}${stackedWords(under, title.height + cells.height)}`,
        margin + inset,
        y + inset,
      )}`,
  }
}

function side(half: Half, room: Room): Panel {
  const colour = rooms[room].onStage
  const title = words(titles.grown[half.sex], { width: inside, size: 13, face: 'bold', colour })
  const size = half.grown.length > 1 ? 78 : 146
  const cells = grid(
    half.grown.map((one) => grownCell(one, half.sex, room)),
    { width: inside, size, perRow: 2 },
  )
  const under = [half.rarerGrown, half.allGrown.join(', ')]
    .filter(Boolean)
    .map((text) => words(text, { width: inside, size: 11.5, face: 'plain', colour, align: 'centre', most: 4 }))
  return {
    height: title.height + cells.height + heightOf(under),
    drawn: svg`${title.at(0, 0)}${placed(cells.drawn, 0, title.height)}
      ${stackedWords(under, title.height + cells.height)}`,
  }
}
