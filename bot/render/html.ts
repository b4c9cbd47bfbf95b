// bot/render/html.ts: a document as the html that phone clients show: p br strong em ul ol li, nothing else.
import escapeHtml from 'escape-html'
import { tame } from './tame.ts'
import type { Block, Document, Line, Piece } from './document.ts'

/** Html that is safe to send. Only `html` makes it, so raw words cannot be mixed in. */
type Html = { readonly safe: string }

const put = (value: string | Html | readonly Html[]): string => {
  if (typeof value === 'string') return escapeHtml(tame(value))
  return 'safe' in value ? value.safe : value.map((v) => v.safe).join('')
}

/** Tagged template: what stands in the template is markup, what is put in is words and gets escaped. */
export const html = (markup: TemplateStringsArray, ...values: readonly (string | Html | readonly Html[])[]): Html => ({
  safe: markup.reduce((all, part, i) => all + put(values[i - 1] ?? '') + part),
})

const pieceHtml = (piece: Piece): Html => {
  if (typeof piece === 'string') return html`${piece}`
  return 'strong' in piece ? html`<strong>${piece.strong}</strong>` : html`<em>${piece.faint}</em>`
}
const lineHtml = (line: Line): Html => html`${line.map(pieceHtml)}`
const item = (line: Line): Html => html`<li>${lineHtml(line)}</li>`

function blockHtml(block: Block): Html {
  if (block.kind === 'line') return html`<p>${lineHtml(block.line)}</p>`
  return block.numbered
    ? html`<ol>
        ${block.items.map(item)}
      </ol>`
    : html`<ul>
        ${block.items.map(item)}
      </ul>`
}

export const asHtml = (document: Document): string => document.map((block) => blockHtml(block).safe).join('')
