// bot/render/text.ts: a document as plain text, complete by itself.
import { plain } from './document.ts'
import { tame } from './tame.ts'
import type { Block, Document, Line } from './document.ts'

const lineText = (line: Line): string => tame(line.map(plain).join(''))

function blockText(block: Block): string {
  if (block.kind === 'line') return lineText(block.line)
  return block.items.map((item, i) => `${block.numbered ? `${i + 1}.` : '-'} ${lineText(item)}`).join('\n')
}

export const asText = (document: Document): string => document.map(blockText).join('\n')
