// bot/transports/matrix/pages.ts: a text too long for one message, cut between lines, or between words where a line is too long. Pure.
import { replyLimitBytes } from '../../transport.ts'
import type { Reply } from '../../transport.ts'

const sizeOf = (text: string): number => Buffer.byteLength(text)

/** Pieces that fit, cut after `mark`; a piece that still does not fit is left to the caller. */
function packed(text: string, mark: string, limit: number): readonly string[] {
  const pages: string[] = []
  for (const piece of text.split(mark)) {
    const last = pages.at(-1)
    const longer = last === undefined ? piece : last + mark + piece
    if (last !== undefined && sizeOf(longer) <= limit) pages[pages.length - 1] = longer
    else pages.push(piece)
  }
  return pages
}

/** A word of more than a page, cut between characters: at most four bytes each. */
const chopped = (word: string, limit: number): readonly string[] => {
  const signs = Array.from(word)
  const step = Math.floor(limit / 4)
  return Array.from({ length: Math.ceil(signs.length / step) }, (_, i) =>
    signs.slice(i * step, (i + 1) * step).join(''),
  )
}

const fits = (text: string, limit: number): boolean => sizeOf(text) <= limit

/** One reply, or as many as it takes; pages have no html, their text says it all. */
export function pagesOf(reply: Reply, limit: number = replyLimitBytes): readonly [Reply, ...Reply[]] {
  if (fits(reply.text, limit)) return [reply]
  const lines = packed(reply.text, '\n', limit)
  const words = lines.flatMap((line) => (fits(line, limit) ? [line] : packed(line, ' ', limit)))
  const [first = '', ...rest] = words.flatMap((word) => (fits(word, limit) ? [word] : chopped(word, limit)))
  const asPage = (text: string): Reply => ({ text, html: '' })
  return [asPage(first), ...rest.map(asPage)]
}
