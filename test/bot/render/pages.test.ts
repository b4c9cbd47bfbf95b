// test/bot/render/pages.test.ts: a reply of any length is cut into pages within the limit, and nothing gets lost.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bullets, line, type Block } from '../../../bot/render/document.ts'
import { asHtml } from '../../../bot/render/html.ts'
import { pages, withMore } from '../../../bot/render/pages.ts'
import { asText } from '../../../bot/render/text.ts'
import { replyLimitBytes } from '../../../bot/transport.ts'

const words = fc.oneof(fc.string({ maxLength: 400 }), fc.constant('<&">'.repeat(400)), fc.constant('ü🐓'.repeat(300)))
const block: fc.Arbitrary<Block> = fc.oneof(
  words.map((w) => line(w)),
  fc.array(words, { maxLength: 60 }).map((items) => bullets(items.map((item) => [item]))),
)

test('every page with its last line keeps to 16 KiB of text and three times that of html', () => {
  fc.assert(
    fc.property(fc.array(block, { maxLength: 30 }), (document) => {
      for (const page of pages(document)) {
        expect(Buffer.byteLength(asText(withMore(page)))).toBeLessThanOrEqual(replyLimitBytes)
        expect(Buffer.byteLength(asHtml(withMore(page)))).toBeLessThanOrEqual(3 * replyLimitBytes)
      }
    }),
    { numRuns: 60 },
  )
})

test('the pages together hold every line once, in order', () => {
  const document = Array.from({ length: 900 }, (_, n) => line(`cross ${n}: black with a pale belly`))
  const all = pages(document)
  expect(all.length).toBeGreaterThan(1)
  expect(all.map(asText).join('\n')).toBe(asText(document))
})

test('a short reply is one page, silence is none', () => {
  expect(pages([line('black')])).toHaveLength(1)
  expect(pages([])).toEqual([])
})

test('one line longer than a page is cut, not sent', () => {
  const [page] = pages([line('x'.repeat(100_000))])
  expect(asText(page ?? []).endsWith('…')).toBe(true)
})
