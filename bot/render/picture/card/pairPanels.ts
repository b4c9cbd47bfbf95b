// bot/render/picture/card/pairPanels.ts: a row with little room: of each sex the chick and the grown bird side by side, with the sign in words.
import { shapes } from '../adult/shapes.ts'
import { chickBox } from '../chick/outline.ts'
import { rooms, type Room } from '../palette.ts'
import { placed, svg, type Markup } from '../svg.ts'
import { words, type Words } from '../text.ts'
import type { Row } from './card.ts'
import type { Half, Shown } from './shown.ts'
import { chickDrawing, grownDrawing, heightOf, stackedWords, titles, type Panel } from './cells.ts'
import { sideBySide, signOf } from './chickPanels.ts'
import { placeOf } from './lens.ts'
import { columnWidth, type Block } from './frame.ts'

const inset = 8
const inside = columnWidth - 2 * inset

export function pairPanels(row: Row, room: Room, id: string): Block {
  const halves = [row.cockerels, row.pullets]
  const signs = halves.map((half) => closeUp(half, row, room, `${id}${half.sex}`))
  const high = Math.max(0, ...signs.map((one) => one?.height ?? 0))
  return sideBySide(
    halves.map((half, at) => panel(half, row, room, `${id}${half.sex}`, signs[at], high)),
    room,
  )
}

/** A sign in one place of the chick is shown close; down colour the chick itself shows. */
const closeUp = (half: Half, { sign }: Row, room: Room, id: string): Panel | undefined =>
  sign && placeOf(sign.name, half.pairs[0]) ? signOf({ ...half, chicks: half.pairs }, sign, room, id) : undefined

function panel(half: Half, row: Row, room: Room, id: string, sign: Panel | undefined, high: number): Panel {
  const colour = rooms[room].onStage
  const title = words(titles.pairs[half.sex], { width: inside, size: 13.5, face: 'bold', colour })
  const pairs = half.pairs.map((one, at) => pair(one, half, row, room, `${id}${at}`))
  const rest = words(half.rarerPairs, { width: inside, size: 11.5, face: 'plain', colour, align: 'centre' })
  const top = inset - 2 + title.height + 2
  let y = high > 0 ? top + high + 4 : top - 2
  const drawn = pairs.map((one) => {
    const here = placed(one.drawn, inset, y)
    y += one.height + 5
    return here
  })
  const end = half.rarerPairs === '' ? y : y + rest.height + 4
  return {
    height: end + inset - 5,
    drawn: svg`${title.at(inset, inset - 2)}${sign && placed(sign.drawn, inset, top)}${drawn}${half.rarerPairs !== '' && rest.at(inset, y)}`,
  }
}

const chickSize = 64
const birdSize = 82

function pair(shown: Shown, half: Half, row: Row, room: Room, id: string): Panel {
  const shape = shapes[half.sex]
  const scale = birdSize / shape.height
  const bird = grownDrawing(shown, half.sex, room)
  const young = svg`${placed(chickDrawing(shown, half.sex, room, id), 0, 0, chickSize / chickBox)}${ring(row, half, room)}`
  const label = labels(shown, half, row, room)
  return {
    height: birdSize + heightOf(label),
    drawn: svg`${placed(young, 0, birdSize - chickSize)}${placed(bird, inside - shape.width * scale, 0, scale)}${stackedWords(label, birdSize)}`,
  }
}

/** A ring about the place of the sign. */
function ring({ sign }: Row, { sex, pairs }: Half, room: Room): Markup | undefined {
  const place = sign && placeOf(sign.name, pairs[0])
  if (!place) return undefined
  const scale = chickSize / chickBox
  const x = (sex === 'M' ? place.x : chickBox - place.x) * scale
  return svg`<circle cx="${x}" cy="${place.y * scale}" r="${place.reach * scale}" fill="none" stroke="${rooms[room].point}" stroke-width="1.8"/>`
}

function labels(shown: Shown, half: Half, { sign }: Row, room: Room): readonly Words[] {
  const colour = rooms[room].onStage
  const shownClose = sign !== undefined && placeOf(sign.name, shown) !== undefined
  const says =
    sign && half.pairs.length === 1 && !shownClose ? (half.sex === 'M' ? sign.cockerel : sign.pullet) : shown.words
  const set = (text: string, face: 'plain' | 'bold', size: number): Words =>
    words(text, { width: inside, size, face, colour, align: 'centre', most: 6 })
  return [
    ...(shown.share ? [set(shown.share, 'bold', 13)] : []),
    set(says, 'bold', 12),
    ...shown.lesser.map((words) => set(words, 'plain', 11.5)),
  ]
}
