// bot/render/document.ts: a reply before it is text or html: lines and lists of plain and strong words.

/** Words as written, or words that a reader's eye should find first. */
export type Piece = string | { readonly strong: string } | { readonly faint: string }
export type Line = readonly Piece[]
export type Block =
  | { readonly kind: 'line'; readonly line: Line }
  | { readonly kind: 'list'; readonly numbered: boolean; readonly items: readonly Line[] }
export type Document = readonly Block[]

export const strong = (words: string): Piece => ({ strong: words })
/** For asides: assumptions and sources. Shown slanted where the reader's screen can. */
export const faint = (words: string): Piece => ({ faint: words })
export const line = (...pieces: readonly Piece[]): Block => ({ kind: 'line', line: pieces })
export const bullets = (items: readonly Line[]): Block => ({ kind: 'list', numbered: false, items })
export const numbered = (items: readonly Line[]): Block => ({ kind: 'list', numbered: true, items })

/** The first words of a block as plain text. */
export const plain = (piece: Piece): string =>
  typeof piece === 'string' ? piece : 'strong' in piece ? piece.strong : piece.faint
