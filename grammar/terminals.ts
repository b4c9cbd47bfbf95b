// grammar/terminals.ts: hands typed tokens to the grammar one by one; the types of tokens are its terminals.
import type { Token } from './token.ts'

/** What nearley wants of a lexer. Its state is the list at hand; each parse resets it. */
export const terminals = (() => {
  let left: readonly Token[] = []
  let at = 0
  return {
    has: (): boolean => true,
    reset(tokens: readonly Token[]): void {
      left = tokens
      at = 0
    },
    next: (): Token | undefined => left[at++],
    save: (): undefined => undefined,
    formatError: (): string => 'no saying goes on so',
  }
})()
