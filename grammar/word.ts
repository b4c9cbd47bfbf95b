// grammar/word.ts: one word of a message, as written and as read. Type only.
import type { Raw } from './tokens.ts'

export type Word = { readonly raw: Raw; readonly word: string; readonly mended?: string }
