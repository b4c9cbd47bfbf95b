// bot/render/picture/text.ts: words set into a box: broken into lines, made smaller where they must be, never wider than the box.
import { drawable, outlineOf, pixelsPerUnit, widthOf, type Face } from './fonts.ts'
import { svg, type Markup } from './svg.ts'

export type Setting = {
  readonly width: number
  readonly size: number
  readonly face: Face
  readonly colour: string
  readonly align?: 'left' | 'centre' | 'right'
  readonly most?: number // lines
  readonly least?: number // smallest size; 11 reads on a phone at 360 units
}
/** Words with their lines worked out. `at` draws them into the box whose upper left corner is x, y. */
export type Words = { readonly width: number; readonly height: number; readonly at: (x: number, y: number) => Markup }

const leading = 1.22
const whole = (units: number): number => Math.round(units * pixelsPerUnit) / pixelsPerUnit

export function words(text: string, setting: Setting): Words {
  const { size, lines } = fit(drawable(text), setting)
  const { width, face, colour, align = 'left' } = setting
  const step = size * leading
  return {
    width,
    height: lines.length * step,
    at: (x, y) =>
      svg`${lines.map((line, row) => {
        const { path, scale } = outlineOf(line, face, size)
        const free = width - widthOf(line, face, size)
        const left = x + free * { left: 0, centre: 0.5, right: 1 }[align]
        return svg`<path data-words="${line}" data-box="${x} ${width}" fill="${colour}" transform="translate(${whole(left)} ${whole(y + size * 0.96 + row * step)}) scale(${scale})" d="${path}"/>`
      })}`,
  }
}

/** The largest size at which the text fits in as many lines as may be; at the smallest it is cut, with a sign that it was. */
function fit(text: string, setting: Setting): { readonly size: number; readonly lines: readonly string[] } {
  const { width, face, most = 1, least = 11 } = setting
  for (const breaking of [wholeWords, atHyphens])
    for (let size = setting.size; size >= least; size -= 0.5) {
      const lines = broken(text, width, face, size, breaking)
      if (lines.length <= most && lines.every((line) => widthOf(line, face, size) <= width)) return { size, lines }
    }
  return { size: least, lines: cut(broken(text, width, face, least, atHyphens), width, face, least, most) }
}

function broken(text: string, width: number, face: Face, size: number, breaking: Breaking): readonly string[] {
  const lines: string[] = []
  const fits = (line: string): boolean => widthOf(line, face, size) <= width
  const pieces = text.split(' ').flatMap((word) => (fits(word) ? [word] : breaking(word)))
  for (const [at, word] of pieces.entries()) {
    const last = lines.at(-1)
    const longer = last === undefined ? word : `${last}${pieces[at - 1]?.endsWith('-') ? '' : ' '}${word}`
    if (last !== undefined && fits(longer)) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}

type Breaking = (word: string) => readonly string[]
const wholeWords: Breaking = (word) => [word]
/** 'black-and-white' as 'black-', 'and-', 'white': a word too wide for its box even when small breaks where it has a hyphen. */
const atHyphens: Breaking = (word) => word.split(/(?<=-)/)

function cut(lines: readonly string[], width: number, face: Face, size: number, most: number): readonly string[] {
  const kept = lines.slice(0, most)
  return kept.map((line, row) => {
    const whole = row < most - 1 || lines.length <= most
    if (whole && widthOf(line, face, size) <= width) return line
    let short = line
    while (short !== '' && widthOf(`${short}…`, face, size) > width) short = short.slice(0, -1)
    return `${short.trimEnd()}…`
  })
}
