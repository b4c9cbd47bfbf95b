// bot/ask/lines.ts: lines of a stream one by one, however it is cut up; a line past the limit is cut, not gathered.

/** Longest line kept, in characters: a message at its limit, every letter escaped, with as much context, and to spare. */
export const longestLine = 4 * 1024 * 1024

/** Lines without their end; the text after the last line end counts when there is any. */
export async function* linesOf(chunks: AsyncIterable<string>, limit = longestLine): AsyncGenerator<string> {
  let held = ''
  for await (const chunk of chunks) {
    const parts = chunk.split('\n')
    for (const part of parts.slice(0, -1)) {
      yield keep(held, part, limit).replace(/\r$/, '')
      held = ''
    }
    held = keep(held, parts.at(-1) ?? '', limit)
  }
  if (held !== '') yield held
}

/** One character past the limit stays, so that the reader sees that the line is too long. */
const keep = (held: string, more: string, limit: number): string =>
  held.length > limit ? held : held + more.slice(0, limit + 1 - held.length)
