// bot/render/pages.ts: a reply cut into pages that every network takes, between lines, never inside one.
import { asHtml } from './html.ts'
import { asText } from './text.ts'
import { line } from './document.ts'
import { replyLimitBytes } from '../transport.ts'
import type { Block, Document } from './document.ts'

/** Room for the line that says how to go on. */
const spare = 200
const bytes = (words: string): number => Buffer.byteLength(words)

/** A list too long for one page becomes several lists. */
const small = (block: Block): readonly Block[] =>
  block.kind === 'list' && bytes(asText([block])) > 2000 ? block.items.map((item) => line('- ', ...item)) : [block]

/** Text and html both count: html may weigh three times the text. */
const fits = (page: Document): boolean =>
  bytes(asText(page)) <= replyLimitBytes - spare && bytes(asHtml(page)) <= 3 * (replyLimitBytes - spare)

/** One line that is too long by itself is cut: nothing the bot says needs a line of many kilobytes. */
const cut = (block: Block): Block => (fits([block]) ? block : line(`${asText([block]).slice(0, 2000)}…`))

/** Pages in order; one for nearly every reply, none for silence. */
export function pages(document: Document): readonly Document[] {
  if (document.length > 0 && fits(document)) return [document]
  const all: Document[] = []
  let page: Document = []
  for (const block of document.flatMap(small).map(cut)) {
    if (page.length > 0 && !fits([...page, block])) {
      all.push(page)
      page = []
    }
    page = [...page, block]
  }
  return page.length > 0 ? [...all, page] : all
}

/** The page with a last line that says there is more. */
export const withMore = (page: Document): Document => [...page, line('There is more: say “more” for the rest.')]
