// bot/render/picture/card/chickPanels.ts: cockerel chicks on the left, pullet chicks on the right, each with the sign seen close; one panel where the sexes are alike.
import { rooms, type Room } from '../palette.ts'
import { placed, svg, type Markup } from '../svg.ts'
import { words } from '../text.ts'
import type { Row, SignShown } from './card.ts'
import type { Half, Shown } from './shown.ts'
import { aboveWords, chickCell, titles, type Panel } from './cells.ts'
import { columnWidth, gutter, innerWidth, margin, type Block } from './frame.ts'
import { grid } from './grid.ts'
import { lens, lensReach, placeOf } from './lens.ts'

const inset = 8

export function chickPanels(row: Row, room: Room, id: string): Block {
  if (row.chicksAlike) return both(row, room, id)
  const halves = [row.cockerels, row.pullets]
  const signs = halves.map((half) => row.sign && signOf(half, row.sign, room, `${id}${half.sex}`))
  const high = Math.max(0, ...signs.map((one) => one?.height ?? 0))
  return sideBySide(
    halves.map((half, at) => panel(half, row, room, `${id}${half.sex}`, signs[at], high)),
    room,
  )
}

/** Cockerels left, with square corners; pullets right, with round ones. */
export function sideBySide(panels: readonly Panel[], room: Room): Block {
  const height = Math.max(...panels.map((one) => one.height))
  return {
    height,
    at: (y) =>
      svg`${panels.map((one, at) => {
        const x = margin + at * (columnWidth + gutter)
        return svg`${ground(x, y, columnWidth, height, at === 0 ? 4 : 16, room)}${placed(one.drawn, x, y)}`
      })}`,
  }
}

const ground = (x: number, y: number, width: number, height: number, corner: number, room: Room): Markup =>
  svg`<rect x="${x}" y="${y}" width="${width}" height="${height}" rx="${corner}" fill="${rooms[room].stage}"/>`

/** Chicks that look the same in both sexes, in one row. */
function both(row: Row, room: Room, id: string): Block {
  const { onStage } = rooms[room]
  const inside = innerWidth - 2 * inset
  const title = words(titles.both, { width: inside, size: 14, face: 'bold', colour: onStage })
  const { chicks, rarerChicks } = row.cockerels
  const cells = grid(
    chicks.map((one, at) => chickCell(one, 'M', room, `${id}${at}`)),
    { width: inside, size: chicks.length === 1 ? 104 : 78, perRow: 4 },
  )
  const rest = words(rarerChicks, { width: inside, size: 11.5, face: 'plain', colour: onStage, align: 'centre' })
  const height = inset + title.height + cells.height + (rarerChicks ? rest.height : 0) + inset
  return {
    height,
    at: (y) => svg`${ground(margin, y, innerWidth, height, 10, room)}
      ${title.at(margin + inset, y + inset - 1)}
      ${placed(cells.drawn, margin + inset, y + inset + title.height)}
      ${rarerChicks !== '' && rest.at(margin + inset, y + inset + title.height + cells.height)}`,
  }
}

const inside = columnWidth - 2 * inset

/** @param high of the higher sign of the two sexes, so that their chicks stand on one line */
function panel(half: Half, row: Row, room: Room, id: string, sign: Panel | undefined, high: number): Panel {
  const { onStage } = rooms[room]
  const title = words(titles.chicks[half.sex], { width: inside, size: 14, face: 'bold', colour: onStage })
  const top = inset - 1 + title.height + 3
  const chicksAt = top + (high > 0 ? high + 4 : 0)
  const labelled = row.sign?.name !== 'down colour' || half.chicks.length > 1
  const size = half.chicks.length === 1 ? 112 : 72
  const cells = grid(
    half.chicks.map((one, at) => chickCell(labelled ? one : { ...one, words: '' }, half.sex, room, `${id}${at}`)),
    { width: inside, size, perRow: 2 },
  )
  const rest = words(half.rarerChicks, { width: inside, size: 11.5, face: 'plain', colour: onStage, align: 'centre' })
  return {
    height: chicksAt + cells.height + (half.rarerChicks ? rest.height + 2 : 0) + inset,
    drawn: svg`${title.at(inset, inset - 1)}
      ${sign && placed(sign.drawn, inset, top)}
      ${placed(cells.drawn, inset, chicksAt)}
      ${row.sign && sign && pointer(half, row.sign, room, { top: top + sign.height - lensReach, chicksAt, size })}
      ${half.rarerChicks !== '' && rest.at(inset, chicksAt + cells.height + 2)}`,
  }
}

/** The sign by itself, for chicks that are drawn in the row above. */
export function signPanels(row: Row, above: Row | undefined, room: Room, id: string): Block {
  const panels = [row.cockerels, row.pullets].map((half) => signPanel(half, row, above, room, `${id}${half.sex}`))
  return sideBySide(panels, room)
}

function signPanel(half: Half, row: Row, above: Row | undefined, room: Room, id: string): Panel {
  const { onStage } = rooms[room]
  const title = words(`${titles.pairs[half.sex]}: ${aboveWords(above?.sign)}`, {
    width: inside,
    size: 13,
    face: 'bold',
    colour: onStage,
  })
  const sign = row.sign && signOf(half, row.sign, room, id)
  return {
    height: inset + title.height + (sign ? sign.height + 4 : 0) + inset - 3,
    drawn: svg`${title.at(inset, inset - 2)}${sign && placed(sign.drawn, inset, inset + title.height + 1)}`,
  }
}

/** The lens and what to see in it. The lens stands low beside a long text, so that what points from it leaves the text alone. */
export function signOf(half: Half, sign: NonNullable<Row['sign']>, room: Room, id: string): Panel | undefined {
  const shown = clearest(half.chicks, sign.name)
  if (!shown) return undefined
  const { onStage } = rooms[room]
  const wide = inside - 2 * lensReach - 8
  const name = words(sign.name, { width: wide, size: 11, face: 'plain', colour: onStage })
  const says = words(half.sex === 'M' ? sign.cockerel : sign.pullet, {
    width: wide,
    size: 13,
    face: 'bold',
    colour: onStage,
    most: 10,
  })
  const high = Math.max(2 * lensReach, name.height + says.height)
  const left = half.sex === 'M' ? 2 * lensReach + 8 : 0
  const textAt = (high - name.height - says.height) / 2
  return {
    height: high,
    drawn: svg`${placed(lens(sign.name, shown, room, `${id}l`), half.sex === 'M' ? lensReach : inside - lensReach, high - lensReach)}
      ${name.at(left, textAt)}${says.at(left, textAt + name.height)}`,
  }
}

/** The commonest kind on which the sign can be read at all: a spot is looked for in vain on pale down. */
const clearest = (chicks: readonly Shown[], sign: SignShown['name']): Shown | undefined =>
  (sign === 'head spot' ? chicks.find(({ look }) => look.chick.headSpotClear !== 'no') : undefined) ?? chicks[0]

/** From the lens to the place of the sign on the first chick, with a ring about it. */
function pointer(
  { sex, chicks }: Half,
  sign: NonNullable<Row['sign']>,
  room: Room,
  at: { readonly top: number; readonly chicksAt: number; readonly size: number },
): Markup | undefined {
  const place = placeOf(sign.name, chicks[0])
  if (!place || clearest(chicks, sign.name) !== chicks[0]) return undefined
  const scale = at.size / 120
  const cellWidth = chicks.length === 1 ? inside : (inside - 6) / 2
  const left = inset + (cellWidth - at.size) / 2
  const x = left + (sex === 'M' ? place.x : 120 - place.x) * scale
  const y = at.chicksAt + place.y * scale
  const from = sex === 'M' ? inset + lensReach : inset + inside - lensReach
  const far = Math.hypot(x - from, y - at.top)
  const along = (distance: number): string =>
    `${(from + ((x - from) * distance) / far).toFixed(1)} ${(at.top + ((y - at.top) * distance) / far).toFixed(1)}`
  return svg`<path d="M${along(lensReach)}L${along(far - place.reach * scale)}" stroke="${rooms[room].point}" stroke-width="2"/>
    <circle cx="${x}" cy="${y}" r="${place.reach * scale}" fill="none" stroke="${rooms[room].point}" stroke-width="2"/>`
}
