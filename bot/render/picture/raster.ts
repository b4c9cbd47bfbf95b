// bot/render/picture/raster.ts: a drawing to pixels, to a PNG, and to the blur shown while it loads.
import { Resvg } from '@resvg/resvg-js'
import { encode as blurHashOf } from 'blurhash'
import { fontFiles, pixelsPerUnit } from './fonts.ts'
import { encode, type Pixels } from './png.ts'

export type Raster = {
  readonly png: Uint8Array
  readonly width: number // pixels
  readonly height: number
  readonly blurHash: string
}

/** What a phone on a poor line should have to fetch. */
const mostBytes = 60_000
/** Each step gives a smaller file and costs some sharpness; most pictures need only the first. */
const steps = [
  { coarser: 1, colours: 80 },
  { coarser: 1, colours: 40 },
  { coarser: 0.84, colours: 40 },
] as const

/** A tall picture is drawn coarser, so that it is made in time; never so coarse that it cannot be read. */
const zoomOf = (heightUnits: number): number =>
  Math.max(1.25, pixelsPerUnit * Math.min(1, Math.sqrt(fullHeight / heightUnits)))
const fullHeight = 680

/** A drawing this long seldom gets by with the first step. In characters. */
const full = 240_000

export function rasterise(markup: string, heightUnits: number): Raster {
  const named = markup.match(/#[0-9a-f]{6}\b/g) ?? []
  const [first, ...others] = markup.length > full ? steps.slice(1) : steps
  let pixels = pixelsOf(markup, zoomOf(heightUnits))
  let png = encode(pixels, first.colours, named, mostBytes)
  for (const { coarser, colours } of others) {
    if (png.byteLength <= mostBytes) break
    if (coarser < 1) pixels = pixelsOf(markup, zoomOf(heightUnits) * coarser)
    png = encode(pixels, colours, named, mostBytes)
  }
  return { png, width: pixels.width, height: pixels.height, blurHash: blurred(pixels) }
}

/** Charts bring words of the plotting library; all other words come as outlines, which spares reading the fonts again. */
function pixelsOf(markup: string, zoom: number): Pixels {
  const font = { loadSystemFonts: false, ...(markup.includes('<text') && { fontFiles: [...fontFiles] }) }
  const drawn = new Resvg(markup, { font, fitTo: { mode: 'zoom', value: zoom } }).render()
  return { width: drawn.width, height: drawn.height, rgba: drawn.pixels }
}

/** Across, down: the card is about twice as high as wide. */
const waves = [3, 5] as const
const blurWidth = 16

function blurred({ width, height, rgba }: Pixels): string {
  const step = width / blurWidth
  const blurHeight = Math.max(1, Math.round(height / step))
  const small = new Uint8ClampedArray(blurWidth * blurHeight * 4)
  for (let y = 0; y < blurHeight; y += 1)
    for (let x = 0; x < blurWidth; x += 1) {
      const from = (Math.min(height - 1, Math.floor((y + 0.5) * step)) * width + Math.floor((x + 0.5) * step)) * 4
      small.set(rgba.subarray(from, from + 4), (y * blurWidth + x) * 4)
    }
  return blurHashOf(small, blurWidth, blurHeight, ...waves)
}
