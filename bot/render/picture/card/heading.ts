// bot/render/picture/card/heading.ts: the names of the parents, the verdict in its band, and short notes.
import { rooms, verdictTones, type Room } from '../palette.ts'
import { svg, type Markup } from '../svg.ts'
import { words } from '../text.ts'
import type { CrossShown, Row } from './card.ts'
import { innerWidth, margin, stacked, type Block } from './frame.ts'

const label = 40

/** Cock and hen, a line or two each, more for birds of long descent. */
export function names({ sire, dam }: CrossShown, room: Room): Block {
  const { ink, soft } = rooms[room]
  return stacked(
    [
      ['Cock', sire],
      ['Hen', dam],
    ].map(([part = '', bird = '']) => {
      const name = words(bird, { width: innerWidth - label, size: 16, face: 'title', colour: ink, most: 3, least: 11 })
      const tag = words(part, { width: label, size: 11.5, face: 'plain', colour: soft })
      return {
        height: name.height + 2,
        at: (y: number) => svg`${tag.at(margin, y + 3.5)}${name.at(margin + label, y)}`,
      }
    }),
  )
}

/** What the row hangs on, whether the chicks can be sexed, and how surely. */
export function verdict(row: Row): Block {
  const inside = innerWidth - 46
  const tones = verdictTones[row.verdict]
  const lines = [
    ...(row.given ? [words(row.given, { width: inside, size: 13.5, face: 'bold', colour: tones.ink, most: 5 })] : []),
    words(row.verdictWords, { width: inside, size: row.given ? 13.5 : 16, face: 'bold', colour: tones.ink }),
    ...(row.sure ? [words(row.sure, { width: inside, size: 12, face: 'plain', colour: tones.ink, most: 2 })] : []),
  ]
  const high = lines.reduce((sum, { height }) => sum + height, 0)
  return {
    height: high + 12,
    at: (y) => {
      let top = y + 5
      return svg`<rect x="${margin}" y="${y}" width="${innerWidth}" height="${high + 12}" rx="9" fill="${tones.band}"/>
        ${mark[row.verdict](margin + 21, y + (high + 12) / 2, tones.ink)}
        ${lines.map((line) => {
          const drawn = line.at(margin + 40, top)
          top += line.height
          return drawn
        })}`
    },
  }
}

/** A shape for each verdict, so that none rests on its colour. */
const mark: Readonly<Record<Row['verdict'], (x: number, y: number, ink: string) => Markup>> = {
  yes: (x, y, ink) =>
    svg`<path d="M${x - 8} ${y + 1}l5.5 6l11 -13" fill="none" stroke="${ink}" stroke-width="3.4" stroke-linecap="round" stroke-linejoin="round"/>`,
  partly: (x, y, ink) =>
    svg`<circle cx="${x}" cy="${y}" r="8.5" fill="none" stroke="${ink}" stroke-width="2.4"/><path d="M${x} ${y - 8.5}a8.5 8.5 0 0 1 0 17z" fill="${ink}"/>`,
  no: (x, y, ink) =>
    svg`<path d="M${x - 7} ${y - 7}l14 14M${x + 7} ${y - 7}l-14 14" stroke="${ink}" stroke-width="3.4" stroke-linecap="round"/>`,
}

export function note(text: string, room: Room): Block {
  const set = words(text, { width: innerWidth, size: 12, face: 'plain', colour: rooms[room].soft, most: 4 })
  return { height: set.height + 6, at: (y) => set.at(margin, y + 5) }
}
