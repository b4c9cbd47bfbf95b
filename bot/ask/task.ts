// bot/ask/task.ts: the arguments of `ask` as one task, or what is wrong with them and how to mend it.
import { parseArgs } from 'node:util'
import type { Result } from '../../core/vocabulary.ts'

export type Task =
  | { readonly kind: 'message'; readonly text: string; readonly json: boolean; readonly picture?: string }
  | { readonly kind: 'batch'; readonly file: string }
  | { readonly kind: 'statement'; readonly file: string }

/** Every flag of the command; `string` flags take a file. */
export const flags = {
  json: { type: 'boolean' },
  batch: { type: 'string' },
  statement: { type: 'string' },
  picture: { type: 'string' },
} as const

const one = 'npm run --silent ask -- "Rhode Island Red cock over Light Sussex hens"'
const fault = (words: string): Result<Task, string> => ({ ok: false, fault: `ask: ${words}` })

type Values = ReturnType<typeof parse>['values']
const parse = (argv: readonly string[]) => parseArgs({ args: [...argv], options: flags, allowPositionals: true })

function chosen({ json, batch, statement, picture }: Values, words: readonly string[]): Result<Task, string> {
  const text = words.join(' ')
  if (batch !== undefined && statement !== undefined)
    return fault('--batch and --statement do not go together; give one.')
  if (batch === undefined && statement === undefined) {
    if (words.length === 0) return fault(`there is no message. Write one in quotes: ${one}`)
    return {
      ok: true,
      value: { kind: 'message', text, json: json ?? false, ...(picture === undefined ? {} : { picture }) },
    }
  }
  if (words.length > 0)
    return fault(`a message does not go with a file; leave out the words "${text.slice(0, 40)}" or the file.`)
  if (picture !== undefined) return fault('--picture goes with one message; leave it out here.')
  if (statement !== undefined) return { ok: true, value: { kind: 'statement', file: statement } }
  if (json !== true) return fault(`--batch answers in JSON only; write --json --batch ${batch ?? 'FILE'}`)
  return { ok: true, value: { kind: 'batch', file: batch ?? '-' } }
}

/** @fault one line that names the fault and the fix */
export function readTask(argv: readonly string[]): Result<Task, string> {
  try {
    const { values, positionals } = parse(argv)
    return chosen(values, positionals)
  } catch (error) {
    const said = error instanceof Error ? (error.message.split(/[.\n]/)[0] ?? '') : ''
    return fault(
      `${said}. Flags are ${Object.keys(flags)
        .map((f) => `--${f}`)
        .join(', ')}; ${one}`,
    )
  }
}
