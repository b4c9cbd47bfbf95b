// test/grammar/messages.ts: the tables of messages in test/data/messages: `message || question` or `message || question || message before`.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const folder = join(import.meta.dirname, '../data/messages')

export type Row = { readonly text: string; readonly wanted: string; readonly before: string | undefined }
export type Table = { readonly name: string; readonly about: string; readonly rows: readonly Row[] }

function rowOf(line: string): Row {
  const [text = '', wanted = '', before] = line.split('||').map((part) => part.trim())
  return { text, wanted, before }
}

export const tables: readonly Table[] = readdirSync(folder)
  .filter((file) => file.endsWith('.txt'))
  .map((file) => {
    const lines = readFileSync(join(folder, file), 'utf8')
      .split('\n')
      .filter((line) => line.trim() !== '')
    const [head = '', ...rows] = lines
    return {
      name: file.replace('.txt', ''),
      about: head
        .split(': ')
        .slice(1)
        .join(': ')
        .replace(/\.? Message \|\|.*$/u, ''),
      rows: rows.map(rowOf),
    }
  })
