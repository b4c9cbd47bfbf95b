// bot/render/picture/svg.ts: the one way to write markup: a template that escapes text and rounds numbers.
import escapeHtml from 'escape-html'

/** Markup that is safe to put into a picture as it stands. Only `svg` makes it. */
export type Markup = { readonly markup: string }
export type Part = Markup | string | number | undefined | false | readonly Part[]

/** Builds markup. Strings are escaped, numbers rounded to hundredths, markup and lists of markup go in as they are. */
export const svg = (strings: TemplateStringsArray, ...parts: readonly Part[]): Markup => ({
  markup: strings.reduce((whole, string, at) => whole + written(parts[at - 1]) + string),
})

/** A number as it stands in a path: hundredths, without trailing noughts. */
export const round = (value: number): string => String(Math.round(value * 100) / 100)

/** Draws something at a place and size; `mirrored` about its own upright axis. */
export const placed = (drawing: Part, x: number, y: number, scale = 1): Markup =>
  svg`<g transform="translate(${x} ${y}) scale(${scale})">${drawing}</g>`

export const mirrored = (drawing: Part, width: number): Markup =>
  svg`<g transform="translate(${width} 0) scale(-1 1)">${drawing}</g>`

function written(part: Part): string {
  if (part === undefined || part === false) return ''
  if (typeof part === 'number') return round(part)
  if (typeof part === 'string') return escapeHtml(part)
  if ('markup' in part) return part.markup
  return part.map(written).join('')
}
