// bot/render/picture/card/eggs.ts: the daughters' eggs: shells in their colours, how many in the first year.
import type { Hen } from '../../../../core/answer.ts'
import { estimate } from '../../measures.ts'
import { share } from '../../numbers.ts'
import { rooms, shellTone, type Room } from '../palette.ts'
import { svg, type Markup } from '../svg.ts'
import { words } from '../text.ts'
import { innerWidth, margin, type Block } from './frame.ts'

const most = 4

export const eggWords = (hen: Hen): string =>
  `Hens to expect: ${estimate(hen.eggsFirstYear, hen.status, 'eggs')} in the first year`
export function shellWords({ shell }: Hen): string {
  const [only, ...others] = shell
  if (!only) return ''
  if (others.length === 0) return `${only.colour} shells`
  return `shells: ${shell.map((one) => `${share(one.share)} ${one.colour}`).join(', ')}`
}

export function eggs(hen: Hen, room: Room): Block {
  const { ink, line } = rooms[room]
  const shown = hen.shell.slice(0, most)
  const wide = shown.length * 26
  const text = words(`${eggWords(hen)}; ${shellWords(hen)}`, {
    width: innerWidth - wide - 8,
    size: 12.5,
    face: 'plain',
    colour: ink,
    most: 6,
  })
  const height = Math.max(36, text.height)
  return {
    height,
    at: (y) => svg`${shown.map(({ colour }, at) => egg(margin + 12 + at * 26, y + height / 2, shellTone(colour), line))}
      ${text.at(margin + wide + 8, y + (height - text.height) / 2)}`,
  }
}

const egg = (x: number, y: number, shell: string, line: string): Markup => svg`
  <path d="M${x} ${y - 15}C${x + 7} ${y - 15} ${x + 12} ${y - 3} ${x + 12} ${y + 4}C${x + 12} ${y + 11} ${x + 6.5} ${y + 15} ${x} ${y + 15}C${x - 6.5} ${y + 15} ${x - 12} ${y + 11} ${x - 12} ${y + 4}C${x - 12} ${y - 3} ${x - 7} ${y - 15} ${x} ${y - 15}Z" fill="${shell}" stroke="${line}" stroke-width="1.2"/>
  <path d="M${x - 6} ${y - 3}C${x - 5} ${y - 7} ${x - 3} ${y - 10} ${x - 1} ${y - 11}" fill="none" stroke="#ffffff" stroke-width="1.6" stroke-linecap="round" stroke-opacity="0.7"/>`
