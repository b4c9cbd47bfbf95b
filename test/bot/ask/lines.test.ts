// test/bot/ask/lines.test.ts: lines come out the same however the stream was cut up, and no line grows without bound.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { linesOf } from '../../../bot/ask/lines.ts'

async function* pieces(text: string, size: number): AsyncGenerator<string> {
  for (let at = 0; at < text.length; at += size) yield text.slice(at, at + size)
}
async function collect(chunks: AsyncIterable<string>, limit?: number): Promise<readonly string[]> {
  const lines: string[] = []
  for await (const line of linesOf(chunks, limit)) lines.push(line)
  return lines
}

test('cutting the stream elsewhere changes no line', async () => {
  const text = fc.array(fc.constantFrom('a', 'b', '\n', '\r\n', 'ü'), { maxLength: 30 }).map((parts) => parts.join(''))
  await fc.assert(
    fc.asyncProperty(text, fc.integer({ min: 1, max: 7 }), async (whole, size) => {
      expect(await collect(pieces(whole, size))).toEqual(await collect(pieces(whole, 1000)))
    }),
  )
})

test('a last line without its end counts, an empty end does not', async () => {
  expect(await collect(pieces('a\n\nb', 2))).toEqual(['a', '', 'b'])
  expect(await collect(pieces('a\nb\n', 2))).toEqual(['a', 'b'])
  expect(await collect(pieces('', 2))).toEqual([])
})

test('a line past the limit is cut one sign after it, and the next line is whole', async () => {
  expect(await collect(pieces(`${'x'.repeat(50)}\nok`, 8), 10)).toEqual(['x'.repeat(11), 'ok'])
})
