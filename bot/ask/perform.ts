// bot/ask/perform.ts: does one task of the command line; loads only what that task needs, for a quick start.
import { createReadStream } from 'node:fs'
import { readFile, writeFile } from 'node:fs/promises'
import { once } from 'node:events'
import { text as wholeText } from 'node:stream/consumers'
import { linesOf } from './lines.ts'
import { readTask, type Task } from './task.ts'
import type { Answer } from '../../core/answer.ts'

/** 0: answered. 1: the answer stands, but its picture could not be made. 2: bad usage, nothing answered. */
type ExitCode = 0 | 1 | 2

const complain = (words: string): void => void process.stderr.write(`${words}\n`)

/** Waits while the reader of our output is slower than we are. */
async function print(line: string): Promise<void> {
  if (!process.stdout.write(`${line}\n`)) await once(process.stdout, 'drain')
}

const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error))

async function message(task: Extract<Task, { kind: 'message' }>): Promise<ExitCode> {
  const [{ think }, { emptyContext }] = await Promise.all([import('../think.ts'), import('../../grammar/context.ts')])
  const { answer, document } = think(task.text, emptyContext())
  const { asText } = await import('../render/text.ts')
  await print(task.json ? JSON.stringify(answer) : asText(document))
  return task.picture === undefined ? 0 : picture(answer, task.picture)
}

/** The text has gone out before; a picture that cannot be made costs only the picture. */
async function picture(answer: Answer, file: string): Promise<ExitCode> {
  try {
    const { picture } = await import('../render/picture.ts')
    const drawn = await picture(answer)
    if (drawn) await writeFile(file, drawn.png)
    else complain('ask: this answer has no picture.')
    return 0
  } catch (error) {
    complain(`ask: the picture could not be written to ${file}: ${reason(error)}`)
    return 1
  }
}

async function batch(file: string): Promise<ExitCode> {
  const { answerLine } = await import('./batch.ts')
  const chunks = file === '-' ? process.stdin.setEncoding('utf8') : createReadStream(file, 'utf8')
  for await (const line of linesOf(chunks)) await print(answerLine(line, () => performance.now()))
  return 0
}

async function statement(file: string): Promise<ExitCode> {
  const text = await (file === '-' ? wholeText(process.stdin) : readFile(file, 'utf8'))
  const { statementLine } = await import('./statement.ts')
  await print(statementLine(text))
  return 0
}

function carryOut(task: Task): Promise<ExitCode> {
  switch (task.kind) {
    case 'message':
      return message(task)
    case 'batch':
      return batch(task.file)
    case 'statement':
      return statement(task.file)
  }
}

/** The file is not there, or is a folder, or may not be read. */
const unread = (error: unknown): boolean => error instanceof Error && 'syscall' in error && 'code' in error

/** A reader that went away (`| head`) ends the run quietly. */
const readerGone = (): void => {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0)
    throw error
  })
}

export async function perform(argv: readonly string[]): Promise<ExitCode> {
  const task = readTask(argv)
  if (!task.ok) {
    complain(task.fault)
    return 2
  }
  readerGone()
  try {
    return await carryOut(task.value)
  } catch (error) {
    if (!unread(error)) throw error
    complain(
      `ask: cannot read the file: ${reason(error)}. Give the name of a file that exists, or - for standard input.`,
    )
    return 2
  }
}
