// bot/render/picture/card/frame.ts: measures of the card and how blocks stand under one another.
import { rooms, type Room } from '../palette.ts'
import { svg, type Markup } from '../svg.ts'

/** A phone's width in points; the picture is drawn at twice that in pixels. */
const cardWidth = 360
export const margin = 10
export const gutter = 8
export const innerWidth = cardWidth - 2 * margin
export const columnWidth = (innerWidth - gutter) / 2

/** A part of the card, as wide as the card; `at` draws it with its upper edge at y. */
export type Block = { readonly height: number; readonly at: (y: number) => Markup }

export const gap = (height: number): Block => ({ height, at: () => svg`` })

/** Blocks under one another. */
export const stacked = (blocks: readonly Block[]): Block => ({
  height: blocks.reduce((sum, { height }) => sum + height, 0),
  at: (top) => {
    let y = top
    return svg`${blocks.map((block) => {
      const drawn = block.at(y)
      y += block.height
      return drawn
    })}`
  },
})

/** A picture before it is pixels. Width and height in units; `caption` says all that the drawing says. */
export type Plan = {
  readonly markup: string
  readonly width: number
  readonly height: number
  readonly caption: string
  readonly fileName: string
}

/** The whole picture as an SVG document. */
export function sheet(content: Block, room: Room, margins = margin): Pick<Plan, 'markup' | 'width' | 'height'> {
  const height = Math.ceil(content.height + 2 * margins)
  const { markup } =
    svg`<svg xmlns="http://www.w3.org/2000/svg" width="${cardWidth}" height="${height}" viewBox="0 0 ${cardWidth} ${height}">
    <rect width="${cardWidth}" height="${height}" fill="${rooms[room].paper}"/>${content.at(margins)}</svg>`
  return { markup, width: cardWidth, height }
}
