// bot/render/picture/card/cells.ts: one chick or one grown bird with its share and its words.
import type { Sex } from '../../../../core/vocabulary.ts'
import { grown, grownUntold } from '../adult/draw.ts'
import { shapes } from '../adult/shapes.ts'
import { chick, chickUntold } from '../chick/draw.ts'
import { chickBox } from '../chick/outline.ts'
import { outlineOf } from '../fonts.ts'
import { hatchLegs, rooms, type Room } from '../palette.ts'
import { mirrored, placed, svg, type Markup } from '../svg.ts'
import { words, type Words } from '../text.ts'
import type { Row } from './card.ts'
import type { Shown } from './shown.ts'

export type Panel = { readonly height: number; readonly drawn: Markup }
export type Cell = (width: number, size: number) => Panel

export const titles = {
  chicks: { M: '♂ Cockerel chicks', F: '♀ Pullet chicks' },
  grown: { M: '♂ Grown cock', F: '♀ Grown hen' },
  pairs: { M: '♂ Cockerels', F: '♀ Pullets' },
  both: '♂ ♀ Chicks: both sexes alike',
  couples: '♂ ♀ Grown: cocks and hens alike',
} as const

/** Of birds drawn in the row above; wing feathers drawn there are not theirs. */
export const aboveWords = (signAbove: Row['sign']): string =>
  signAbove?.name === 'wing feathers' ? 'same down' : 'as above'

/** Cockerels look right and pullets left, so that they face each other. */
const facing = (drawing: Markup, sex: Sex, width: number): Markup => (sex === 'M' ? drawing : mirrored(drawing, width))

/** A chick in its box; one of untold down is grey, with a question mark. */
export const chickDrawing = ({ look, told, wingRead }: Shown, sex: Sex, room: Room, id: string): Markup => {
  const seen = { shank: hatchLegs(look), room, id, wingRead }
  return told
    ? facing(chick(look.chick, seen), sex, chickBox)
    : svg`${facing(chickUntold(look.chick, seen), sex, chickBox)}${questionMark(chickBox * 0.4, 92, 40)}`
}

/** A grown bird in the box of its shape; one of untold colour is grey, with a question mark. */
export const grownDrawing = ({ look, told }: Shown, sex: Sex, room: Room): Markup => {
  const { width, height } = shapes[sex]
  return told
    ? facing(grown(look, sex, room), sex, width)
    : svg`${facing(grownUntold(look, sex, room), sex, width)}${questionMark(width * 0.46, height * 0.68, 40)}`
}

const questionMark = (x: number, y: number, size: number): Markup => {
  const { path, scale } = outlineOf('?', 'bold', size)
  return svg`<path fill="#ffffff" transform="translate(${x} ${y}) scale(${scale})" d="${path}"/>`
}

export const chickCell =
  (shown: Shown, sex: Sex, room: Room, id: string): Cell =>
  (width, size) => {
    const label = labels(shown, width, room, [{ words: shown.words, face: 'plain', size: 12 }])
    return {
      height: size + heightOf(label),
      drawn: svg`${placed(chickDrawing(shown, sex, room, id), (width - size) / 2, 0, size / chickBox)}${stackedWords(label, size)}`,
    }
  }

/** Hens are drawn somewhat smaller than cocks; both stand on one line. */
export const grownCell =
  (shown: Shown, sex: Sex, room: Room): Cell =>
  (width, size) => {
    const shape = shapes[sex]
    const scale = size / shapes.M.height
    const top = (shapes.M.ground - shape.ground) * scale
    const label = labels(shown, width, room, [
      { words: shown.words, face: 'bold', size: 12 },
      { words: shown.lesser.join(', '), face: 'plain', size: 11.5 },
    ])
    const bird = grownDrawing(shown, sex, room)
    return {
      height: size + heightOf(label),
      drawn: svg`${placed(bird, (width - shape.width * scale) / 2, top, scale)}${stackedWords(label, size)}`,
    }
  }

/** A cock and a hen of one kind beside each other, facing, with one label. */
export const coupleCell =
  (male: Shown, female: Shown, room: Room): Cell =>
  (width, size) => {
    const scale = Math.min(size / shapes.M.height, width / (shapes.M.width + shapes.F.width))
    const high = shapes.M.height * scale
    const left = (width - (shapes.M.width + shapes.F.width) * scale) / 2
    const hen = grownDrawing(female, 'F', room)
    const label = labels(male, width, room, [
      { words: male.words, face: 'bold', size: 12 },
      { words: male.lesser.join(', '), face: 'plain', size: 11.5 },
    ])
    return {
      height: high + heightOf(label),
      drawn: svg`${placed(grownDrawing(male, 'M', room), left, 0, scale)}
        ${placed(hen, left + shapes.M.width * scale, (shapes.M.ground - shapes.F.ground) * scale, scale)}${stackedWords(label, high)}`,
    }
  }

type Line = { readonly words: string; readonly face: 'plain' | 'bold'; readonly size: number }

function labels({ share }: Shown, width: number, room: Room, lines: readonly Line[]): readonly Words[] {
  const colour = rooms[room].onStage
  const first: Line = { words: share, face: 'bold', size: 13 }
  return [first, ...lines]
    .filter(({ words }) => words !== '')
    .map(({ words: text, face, size }) => words(text, { width, size, face, colour, align: 'centre', most: 10 }))
}

export const heightOf = (lines: readonly Words[]): number => lines.reduce((sum, { height }) => sum + height, 0)

export const stackedWords = (lines: readonly Words[], top: number): Markup => {
  let y = top
  return svg`${lines.map((line) => {
    const drawn = line.at(0, y)
    y += line.height
    return drawn
  })}`
}
