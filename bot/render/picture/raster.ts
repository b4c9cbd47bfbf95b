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

/** A tall picture is drawn coarser, so that it is made in time and stays small. Heights in units. */
const tall = 720
const coarse = 1.5

/** Charts bring words of the plotting library; all other words come as outlines, which spares reading the fonts again. */
export function rasterise(markup: string, heightUnits: number): Raster {
  const value = heightUnits > tall ? coarse : pixelsPerUnit
  const font = { loadSystemFonts: false, ...(markup.includes('<text') && { fontFiles: [...fontFiles] }) }
  const drawn = new Resvg(markup, { font, fitTo: { mode: 'zoom', value } }).render()
  const pixels = { width: drawn.width, height: drawn.height, rgba: drawn.pixels }
  return { png: encode(pixels), width: drawn.width, height: drawn.height, blurHash: blurred(pixels) }
}

/** Across, down: the card is about twice as high as wide. */
const waves = [4, 6] as const
const blurWidth = 24

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
