// bot/render/picture/fonts.ts: the fonts that come with the project, so that a picture looks the same on every machine: how wide their letters are, and their outlines.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
// oxlint-disable-next-line import/default -- Node takes the CommonJS build, which has one
import opentype from 'opentype.js'

export type Face = 'plain' | 'bold' | 'title'
/** How many pixels the picture has to a unit. */
export const pixelsPerUnit = 1.6

/** Outlines are kept on a grid of so many steps to the em: finer than the eye, and short to write. */
const grid = 512

type Letter = { readonly advance: number; readonly outline: string; readonly known: boolean }
type Font = { readonly unitsPerEm: number; readonly letter: (letter: string) => Letter }

const folder = join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf')
const fileOf: Readonly<Record<Face, string>> = {
  plain: join(folder, 'DejaVuSansCondensed.ttf'),
  bold: join(folder, 'DejaVuSansCondensed-Bold.ttf'),
  title: join(folder, 'DejaVuSerifCondensed-Bold.ttf'),
}

export const fontFiles: readonly string[] = Object.values(fileOf)

const opened = new Map<Face, Font>()
function font(face: Face): Font {
  const font = opened.get(face) ?? open(fileOf[face])
  opened.set(face, font)
  return font
}

function open(file: string): Font {
  const bytes = readFileSync(file)
  const buffer = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength)
  const read = opentype.parse(buffer, { lowMemory: true }) // a letter when it is asked for: all of them take 40 MB
  const letters = new Map<string, Letter>()
  const letter = (sign: string): Letter => {
    const glyph = read.charToGlyph(sign)
    const outline = relative(glyph.getPath(0, 0, grid).commands)
    const made = { advance: glyph.advanceWidth ?? 0, outline, known: read.charToGlyphIndex(sign) > 0 }
    letters.set(sign, made)
    return made
  }
  return { unitsPerEm: read.unitsPerEm, letter: (sign) => letters.get(sign) ?? letter(sign) }
}

/** An outline in steps from point to point, so that one letter can be put after another without reckoning it anew. */
function relative(commands: readonly opentype.PathCommand[]): string {
  let [x, y, startX, startY] = [0, 0, 0, 0]
  const step = (toX: number, toY: number): string => `${Math.round(toX - x)} ${Math.round(toY - y)}`
  return commands
    .map((command) => {
      if (command.type === 'Z') {
        ;[x, y] = [startX, startY]
        return 'z'
      }
      const drawn = `${command.type.toLowerCase()}${'x1' in command ? `${step(command.x1, command.y1)} ` : ''}${'x2' in command ? `${step(command.x2, command.y2)} ` : ''}${step(command.x, command.y)}`
      ;[x, y] = [command.x, command.y]
      if (command.type === 'M') [startX, startY] = [x, y]
      return drawn
    })
    .join('')
}

/** Letters step on by whole pixels, as in print set for screens: like letters are drawn alike, which makes the file a third smaller. */
const advanceOf = (sign: string, face: Face, size: number): number => {
  const { unitsPerEm, letter } = font(face)
  return Math.round((letter(sign).advance / unitsPerEm) * size * pixelsPerUnit) / pixelsPerUnit
}

/** Width of a line in units of the picture; without kerning. */
export function widthOf(text: string, face: Face, size: number): number {
  return Array.from(text).reduce((width, sign) => width + advanceOf(sign, face, size), 0)
}

/** The outline of a line, its base line at 0, in steps of the grid; `scale` brings it to the size wanted. */
export function outlineOf(text: string, face: Face, size: number): { readonly path: string; readonly scale: string } {
  const { letter } = font(face)
  let x = 0
  const path = Array.from(text, (sign) => {
    const drawn = `M${Math.round((x / size) * grid)} 0${letter(sign).outline}`
    x += advanceOf(sign, face, size)
    return drawn
  })
  return { path: path.join(''), scale: (size / grid).toFixed(6) }
}

/** The text without letters that the font lacks: they would leave gaps. */
export const drawable = (text: string): string =>
  Array.from(text.normalize('NFC').replaceAll(/\s+/g, ' '))
    .filter((sign) => font('plain').letter(sign).known)
    .join('')
    .trim()
