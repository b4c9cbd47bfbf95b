// test/published.ts: a test that carries its source in its title.
import { test } from 'vitest'
import type { Citation } from '../core/vocabulary.ts'

/** A claim held against something outside the project; `source` says where it was printed and whether that was read. */
export const published = (claim: string, source: Citation, run: () => void): void =>
  test(`${claim} [${source.ref}; ${source.status}]`, run)
