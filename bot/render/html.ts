// bot/render/html.ts: a document as the html that phone clients show: p br strong em ul ol li, nothing else.
import escapeHtml from 'escape-html'
import { tame } from './tame.ts'
import type { Block, Document, Line, Piece } from './document.ts'

/** Html that is safe to send. Only `markup` makes it, so raw words cannot be mixed in. */
type Html = { readonly safe: string }

const put = (value: string | Html | readonly Html[]): string => {
  if (typeof value === 'string') return escapeHtml(tame(value))
  return 'safe' in value ? value.safe : value.map((v) => v.safe).join('')
}

/** Tagged template: what stands in the template is markup, what is put in is words and gets escaped. */
const markup = (written: TemplateStringsArray, ...values: readonly (string | Html | readonly Html[])[]): Html => ({
  safe: written.reduce((all, part, i) => all + put(values[i - 1] ?? '') + part),
})

const pieceHtml = (piece: Piece): Html => {
  if (typeof piece === 'string') return markup`${piece}`
  return 'strong' in piece ? markup`<strong>${piece.strong}</strong>` : markup`<em>${piece.faint}</em>`
}
const lineHtml = (line: Line): Html => markup`${line.map(pieceHtml)}`
const item = (line: Line): Html => markup`<li>${lineHtml(line)}</li>`

const list = ({ numbered, items }: List): Html =>
  numbered ? markup`<ol>${items.map(item)}</ol>` : markup`<ul>${items.map(item)}</ul>`

type List = Extract<Block, { readonly kind: 'list' }>
const paragraph = (lines: readonly Line[]): Html => {
  const [first, ...others] = lines.map(lineHtml)
  return first ? markup`<p>${first}${others.map((other) => markup`<br>${other}`)}</p>` : markup``
}

/** The verdict is a paragraph of its own; lines that follow one another share one, so that a phone shows them close. */
export function asHtml(document: Document): string {
  const parts: Html[] = []
  let lines: Line[] = []
  const close = (): void => {
    parts.push(paragraph(lines))
    lines = []
  }
  for (const [i, block] of document.entries()) {
    if (block.kind === 'list') close()
    if (block.kind === 'line') lines.push(block.line)
    else parts.push(list(block))
    if (i === 0) close()
  }
  close()
  return parts.map(({ safe }) => safe).join('')
}
