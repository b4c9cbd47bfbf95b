// test/tools/pictureSheets.ts: many pictures on one: all cards at a glance, and the chicks alone without a word, to be judged by eye.
import { cardOf } from '../../bot/render/picture/card/card.ts'
import { chick } from '../../bot/render/picture/chick/draw.ts'
import { chickBox } from '../../bot/render/picture/chick/outline.ts'
import { scatter } from '../../bot/render/picture/curve.ts'
import { hatchLegs, rooms } from '../../bot/render/picture/palette.ts'
import type { Plan } from '../../bot/render/picture/card/frame.ts'
import { placed, svg, type Markup } from '../../bot/render/picture/svg.ts'
import { words } from '../../bot/render/picture/text.ts'
import type { Answer } from '../../core/answer.ts'

export type Named = { readonly number: string; readonly message: string; readonly answer: Answer; readonly plan: Plan }

const { paper, ink, stage } = rooms.light
const columns = 5
const gap = 12

const sheet = (width: number, height: number, content: readonly Markup[]): string =>
  svg`<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"><rect width="${width}" height="${height}" fill="#ffffff"/>${content}</svg>`
    .markup

/** All cards, five in a row, each row as high as its highest card. */
export function contactSheet(cards: readonly Named[]): string {
  const scale = 0.9
  const rows = Array.from({ length: Math.ceil(cards.length / columns) }, (_, row) =>
    cards.slice(row * columns, (row + 1) * columns),
  )
  let y = gap
  const content = rows.flatMap((row, r) => {
    const drawn = row.map(({ plan }, at) => {
      const x = gap + at * (plan.width * scale + gap)
      return placed(distinct(plan.markup, `s${r}${at}`), x, y, scale)
    })
    y += Math.max(...row.map(({ plan }) => plan.height)) * scale + gap
    return drawn
  })
  return sheet(gap + columns * (360 * scale + gap), Math.ceil(y), content)
}

/** The inside of a card, its marks named apart from those of other cards. */
const distinct = (markup: string, prefix: string): Markup => ({
  markup: markup
    .replace(/^<svg[^>]*>/, '')
    .replace(/<\/svg>$/, '')
    .replaceAll(/id="([^"]+)"/g, `id="${prefix}$1"`)
    .replaceAll(/url\(#([^)]+)\)/g, `url(#${prefix}$1)`),
})

/** Of each cross one cockerel and one pullet, in an order that chance fixed, both looking the same way; only numbers. */
export function blindSheet(cards: readonly Named[]): string {
  const [width, height] = [220, 150]
  const content = cards.map(({ number, answer }, at) => {
    const [row] = (answer.kind === 'cross' ? cardOf(answer)?.crosses[0]?.rows : undefined) ?? []
    const pair = [row?.cockerels.chicks[0], row?.pullets.chicks[0]]
    const shown = pulletLeft(at) ? pair.toReversed() : pair
    const chicks = shown.map((one, side) =>
      one
        ? placed(
            chick(one.look.chick, {
              shank: hatchLegs(one.look),
              room: 'light',
              id: `b${at}${side}`,
              wingRead: one.wingRead,
            }),
            side * 104,
            28,
            100 / chickBox,
          )
        : svg``,
    )
    return placed(
      svg`<rect width="${width - 8}" height="${height - 8}" rx="8" fill="${stage}"/>${words(number, { width: 60, size: 18, face: 'bold', colour: ink }).at(8, 4)}${chicks}`,
      (at % columns) * width + 4,
      Math.floor(at / columns) * height + 4,
    )
  })
  const rows = Math.ceil(cards.length / columns)
  return sheet(columns * width, rows * height, [
    svg`<rect width="${columns * width}" height="${rows * height}" fill="${paper}"/>`,
    ...content,
  ])
}

/** Whether the pullet of the nth pair stands on the left. */
export const pulletLeft = (at: number): boolean => scatter(at * 3.7 + 11) < 0.5
