// bot/render/picture/png.ts: pixels to a PNG of at most 256 colours. No library here writes palettes within the time a picture may take: flat drawings shrink to a third by it.
import { crc32, deflateSync } from 'node:zlib'

export type Pixels = { readonly width: number; readonly height: number; readonly rgba: Uint8Array }

/** A PNG with a palette (PNG specification, third edition, colour type 3). All pixels are taken as opaque. */
export function encode({ width, height, rgba }: Pixels): Uint8Array {
  const pixels = new Uint32Array(rgba.buffer, rgba.byteOffset, width * height)
  const { palette, indexOf } = reduce(pixels)
  return Buffer.concat([
    signature,
    chunk('IHDR', header(width, height)),
    chunk('PLTE', Uint8Array.from(palette.flatMap((colour) => [...channels(colour)]))),
    chunk('IDAT', deflateSync(rows(pixels, width, height, indexOf), { level: 6, memLevel: 9 })),
    chunk('IEND', new Uint8Array()),
  ])
}

const signature = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)
const most = 48

function header(width: number, height: number): Uint8Array {
  const bytes = Buffer.alloc(13)
  bytes.writeUInt32BE(width, 0)
  bytes.writeUInt32BE(height, 4)
  bytes.set([8, 3, 0, 0, 0], 8) // 8 bits, palette, deflate, no filter, no interlace
  return bytes
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const bytes = Buffer.alloc(data.length + 12)
  bytes.writeUInt32BE(data.length, 0)
  bytes.write(type, 4, 'latin1')
  bytes.set(data, 8)
  bytes.writeUInt32BE(crc32(bytes.subarray(4, data.length + 8)), data.length + 8)
  return bytes
}

/** Each row led by a 0: no filter, the best for palettes. */
function rows(pixels: Uint32Array, width: number, height: number, indexOf: (colour: number) => number): Uint8Array {
  const bytes = new Uint8Array((width + 1) * height)
  let last = -1
  let index = 0
  for (let y = 0, from = 0, to = 0; y < height; y += 1) {
    to += 1
    for (let x = 0; x < width; x += 1, from += 1, to += 1) {
      const colour = pixels[from]!
      if (colour !== last) {
        index = indexOf(colour)
        last = colour
      }
      bytes[to] = index
    }
  }
  return bytes
}

type Reduced = { readonly palette: readonly number[]; readonly indexOf: (colour: number) => number }

/** The colours of whole areas, then the commonest of the soft edges; every other colour becomes one near to it. */
function reduce(pixels: Uint32Array): Reduced {
  const palette = ranked(pixels).slice(0, most)
  const exact = new Map(palette.map((colour, at) => [colour, at]))
  const near = new Int16Array(1 << 15).fill(-1) // by the five upper bits of each channel
  const nearest = nearestOf(palette)
  return {
    palette,
    indexOf: (colour) => {
      const same = exact.get(colour)
      if (same !== undefined) return same
      const [r, g, b] = channels(colour)
      const key = ((r >> 3) << 10) | ((g >> 3) << 5) | (b >> 3)
      if (near[key]! < 0) near[key] = nearest(r, g, b)
      return near[key]!
    },
  }
}

function nearestOf(palette: readonly number[]): (r: number, g: number, b: number) => number {
  const red = Int16Array.from(palette, (colour) => colour & 255)
  const green = Int16Array.from(palette, (colour) => (colour >> 8) & 255)
  const blue = Int16Array.from(palette, (colour) => (colour >> 16) & 255)
  return (r, g, b) => {
    let best = 0
    let least = Infinity
    for (let at = 0; at < palette.length; at += 1) {
      const far = (red[at]! - r) ** 2 + (green[at]! - g) ** 2 + (blue[at]! - b) ** 2
      if (far >= least) continue
      best = at
      least = far
    }
    return best
  }
}

/** Colours by weight. Pixels that lie in a run of their own colour weigh more: those are areas, not soft edges. */
function ranked(pixels: Uint32Array): readonly number[] {
  const weights = new Map<number, number>()
  for (let from = 0; from < pixels.length;) {
    const colour = pixels[from]!
    let to = from + 1
    while (pixels[to] === colour) to += 1
    const run = to - from
    weights.set(colour, (weights.get(colour) ?? 0) + (run > 2 ? run * areaWeight : run))
    from = to
  }
  return [...weights].toSorted((a, b) => b[1] - a[1]).map(([colour]) => colour)
}
const areaWeight = 8

const channels = (colour: number): readonly [red: number, green: number, blue: number] => [
  colour & 255,
  (colour >> 8) & 255,
  (colour >> 16) & 255,
]
