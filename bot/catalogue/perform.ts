// bot/catalogue/perform.ts: one call of the catalogue command: its words in, lines on stdout or one fault on stderr, an exit code.
import { readFile } from 'node:fs/promises'
import type * as Catalogue from '../../core/catalogue.ts'
import { cardLines, coverageLines, faultLines, listLines } from './print.ts'

export const usage = [
  'npm run --silent catalogue -- list [WORD]         birds whose name has the word',
  'npm run --silent catalogue -- show NAME [LINE]    one bird: genes, looks, lines, sources, what the bot says',
  'npm run --silent catalogue -- coverage            how much was read, is practice, or is from memory',
  'npm run --silent catalogue -- check FILE          a file of birds, and what the bot will say of them',
]

type Door = typeof Catalogue
const say = (lines: readonly string[]): 0 => {
  process.stdout.write(`${lines.join('\n')}\n`)
  return 0
}
const complain = (code: 1 | 2, lines: readonly string[]): 1 | 2 => {
  process.stderr.write(`${lines.join('\n')}\n`)
  return code
}

/** A catalogue that does not hold cannot be loaded; its faults are what the operator needs. */
async function open(): Promise<Door | string> {
  try {
    return await import('../../core/catalogue.ts')
  } catch (error) {
    return error instanceof Error ? error.message : String(error)
  }
}

function show(door: Door, words: readonly string[]): number {
  const whole = door.shown(words.join(' '))
  const withLine = words.length > 1 ? door.shown(words.slice(0, -1).join(' '), words.at(-1)) : whole
  const found = whole.kind === 'unknown' && withLine.kind === 'bird' ? withLine : whole
  switch (found.kind) {
    case 'bird':
      return say(cardLines(found.card))
    case 'several':
      return complain(2, [`catalogue: “${words.join(' ')}” is several birds; name one: ${found.names.join(', ')}.`])
    case 'unknown': {
      const near = found.near.length > 0 ? ` Like it: ${found.near.join(', ')}.` : ''
      return complain(2, [`catalogue: no bird “${words.join(' ')}”.${near} “list WORD” finds names.`])
    }
  }
}

async function check(door: Door, file: string): Promise<number> {
  const text = await readFile(file, 'utf8').catch(() => undefined)
  if (text === undefined) return complain(2, [`catalogue: cannot read ${file}; give the path of a JSON file.`])
  const result = door.checkedFile(file, text)
  if (!result.ok) return complain(1, faultLines(result.fault))
  const lines = result.value.flatMap((card) => [...cardLines(card), ''])
  return say([...lines, `${result.value.length} birds read, no fault.`])
}

export async function perform(argv: readonly string[]): Promise<number> {
  const [command, ...words] = argv
  if (command === undefined) return complain(2, ['catalogue: say what to do.', ...usage])
  const door = await open()
  if (typeof door === 'string') return complain(1, [door])
  switch (command) {
    case 'list':
      return say(listLines(door.listed(words.join(' ')), door.nameCounts()))
    case 'show':
      return words.length > 0 ? show(door, words) : complain(2, ['catalogue: show which bird? e.g. show Light Sussex'])
    case 'coverage':
      return say(coverageLines(door.coverage()))
    case 'check':
      return words[0] === undefined
        ? complain(2, ['catalogue: check which file? e.g. check core/data/breeds/rocks.json'])
        : check(door, words[0])
    default:
      return complain(2, [`catalogue: no command “${command}”.`, ...usage])
  }
}
