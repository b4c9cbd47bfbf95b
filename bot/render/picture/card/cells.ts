// bot/render/picture/card/cells.ts: one chick or one grown bird with its share and its words.
import type { Sex } from '../../../../core/vocabulary.ts'
import { grown } from '../adult/draw.ts'
import { shapes } from '../adult/shapes.ts'
import { chick } from '../chick/draw.ts'
import { chickBox } from '../chick/outline.ts'
import { hatchLegs, rooms, type Room } from '../palette.ts'
import { mirrored, placed, svg, type Markup } from '../svg.ts'
import { words, type Words } from '../text.ts'
import type { Shown } from './card.ts'

export type Panel = { readonly height: number; readonly drawn: Markup }
export type Cell = (width: number, size: number) => Panel

export const titles = {
  chicks: { M: '♂ Cockerel chicks', F: '♀ Pullet chicks' },
  grown: { M: '♂ Grown cock', F: '♀ Grown hen' },
  pairs: { M: '♂ Cockerels', F: '♀ Pullets' },
  above: { M: '♂ Cockerels: as above', F: '♀ Pullets: as above' },
  both: '♂ ♀ Chicks: both sexes alike',
  couples: '♂ ♀ Grown: cocks and hens alike',
} as const

/** Cockerels look right and pullets left, so that they face each other. */
export const facing = (drawing: Markup, sex: Sex, width: number): Markup =>
  sex === 'M' ? drawing : mirrored(drawing, width)

export const chickDrawing = ({ look }: Shown, sex: Sex, room: Room, id: string): Markup =>
  facing(chick(look.chick, hatchLegs(look), room, id), sex, chickBox)

export const chickCell =
  (shown: Shown, sex: Sex, room: Room, id: string): Cell =>
  (width, size) => {
    const label = labels(shown, width, room, [{ words: shown.words, face: 'plain', size: 12 }])
    return {
      height: size + heightOf(label),
      drawn: svg`${placed(chickDrawing(shown, sex, room, id), (width - size) / 2, 0, size / chickBox)}${stackedWords(label, size)}`,
    }
  }

export const grownCell =
  (shown: Shown, sex: Sex, room: Room): Cell =>
  (width, size) => {
    const shape = shapes[sex]
    const scale = size / shape.height
    const label = labels(shown, width, room, [
      { words: shown.words, face: 'bold', size: 12 },
      { words: shown.lesser, face: 'plain', size: 11.5 },
    ])
    const bird = facing(grown(shown.look, sex, room), sex, shape.width)
    return {
      height: size + heightOf(label),
      drawn: svg`${placed(bird, (width - shape.width * scale) / 2, 0, scale)}${stackedWords(label, size)}`,
    }
  }

/** A cock and a hen of one kind beside each other, facing, with one label. */
export const coupleCell =
  (male: Shown, female: Shown, room: Room): Cell =>
  (width, size) => {
    const scale = Math.min(size / shapes.M.height, width / (shapes.M.width + shapes.F.width))
    const high = shapes.M.height * scale
    const left = (width - (shapes.M.width + shapes.F.width) * scale) / 2
    const hen = facing(grown(female.look, 'F', room), 'F', shapes.F.width)
    const label = labels(male, width, room, [
      { words: male.words, face: 'bold', size: 12 },
      { words: male.lesser, face: 'plain', size: 11.5 },
    ])
    return {
      height: high + heightOf(label),
      drawn: svg`${placed(grown(male.look, 'M', room), left, 0, scale)}
        ${placed(hen, left + shapes.M.width * scale, (shapes.M.ground - shapes.F.ground) * scale, scale)}${stackedWords(label, high)}`,
    }
  }

type Line = { readonly words: string; readonly face: 'plain' | 'bold'; readonly size: number }

function labels({ share }: Shown, width: number, room: Room, lines: readonly Line[]): readonly Words[] {
  const colour = rooms[room].onStage
  const first: Line = { words: share, face: 'bold', size: 13 }
  return [first, ...lines]
    .filter(({ words }) => words !== '')
    .map(({ words: text, face, size }) => words(text, { width, size, face, colour, align: 'centre', most: 6 }))
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
