// bot/render/picture/png.ts: pixels to a PNG of at most 256 colours. No library here writes palettes within the time a picture may take: flat drawings shrink to a third by it.
import { crc32, deflateSync } from 'node:zlib'

export type Pixels = { readonly width: number; readonly height: number; readonly rgba: Uint8Array }

/**
 * A PNG with a palette (PNG specification, third edition, colour type 3). All pixels are taken as opaque.
 *
 * @param colours size of the palette, at most 256; fewer make a smaller file and coarser edges
 * @param named '#rrggbb' of the drawing's own colours, which come before those of soft edges
 * @param enough bytes that need no harder packing
 */
export function encode(
  { width, height, rgba }: Pixels,
  colours: number,
  named: readonly string[] = [],
  enough = Infinity,
): Uint8Array {
  const runs = runsOf(new Uint32Array(rgba.buffer, rgba.byteOffset, width * height), width)
  const { palette, indexOf } = reduce(runs, colours, named)
  const lines = rows(runs, width, height, indexOf)
  const quick = deflateSync(lines, packing.quick)
  return Buffer.concat([
    signature,
    chunk('IHDR', header(width, height)),
    chunk('PLTE', Uint8Array.from(palette.flatMap((colour) => [...channels(colour)]))),
    chunk('IDAT', quick.byteLength > enough ? deflateSync(lines, packing.hard) : quick),
    chunk('IEND', new Uint8Array()),
  ])
}

/** Hard packing makes the file a tenth smaller and takes three times as long. */
const packing = { quick: { level: 3, memLevel: 9 }, hard: { level: 6, memLevel: 9 } } as const

/** Neighbours of one colour in one row, so that each pixel is looked at once. */
type Runs = { readonly count: number; readonly colours: Uint32Array; readonly lengths: Uint16Array }

function runsOf(pixels: Uint32Array, width: number): Runs {
  const { colours, lengths } = roomFor(pixels.length)
  let count = 0
  for (let row = 0; row < pixels.length; row += width) {
    let colour = pixels[row]!
    let from = row
    for (let at = row + 1; at < row + width; at += 1) {
      const next = pixels[at]!
      if (next === colour) continue
      colours[count] = colour
      lengths[count] = at - from
      count += 1
      colour = next
      from = at
    }
    colours[count] = colour
    lengths[count] = row + width - from
    count += 1
  }
  return { count, colours, lengths }
}

const signature = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)

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

/** Tables kept from picture to picture: taking and clearing megabytes anew each time costs as much as the work itself. */
const tables = {
  colours: new Uint32Array(0),
  lengths: new Uint16Array(0),
  lines: new Uint8Array(0),
  weights: new Uint32Array(1 << 18),
  common: new Uint32Array(1 << 18),
  near: new Int16Array(1 << 18),
}
function roomFor(pixels: number): typeof tables {
  if (tables.colours.length < pixels) {
    tables.colours = new Uint32Array(pixels)
    tables.lengths = new Uint16Array(pixels)
  }
  return tables
}

/** Each row led by a 0: no filter, the best for palettes. */
function rows(runs: Runs, width: number, height: number, indexOf: (colour: number) => number): Uint8Array {
  const length = (width + 1) * height
  if (tables.lines.length < length) tables.lines = new Uint8Array(length)
  const bytes = tables.lines
  let to = 0
  let end = 0 // of the row
  for (let run = 0; run < runs.count; run += 1) {
    if (to === end) {
      bytes[to] = 0
      end = to + width + 1
      to += 1
    }
    const index = indexOf(runs.colours[run]!)
    const until = to + runs.lengths[run]!
    if (until - to > 16) bytes.fill(index, to, until)
    else for (let at = to; at < until; at += 1) bytes[at] = index
    to = until
  }
  return bytes.subarray(0, length)
}

type Reduced = { readonly palette: readonly number[]; readonly indexOf: (colour: number) => number }

/** The colours of whole areas, then the commonest of the soft edges; every other colour becomes one near to it. */
function reduce(runs: Runs, most: number, named: readonly string[]): Reduced {
  const palette = commonest(runs, most, new Set(named.map((colour) => cellOf(fromHex(colour)))))
  const near = tables.near.fill(-1)
  palette.forEach((colour, at) => {
    near[cellOf(colour)] = at
  })
  const nearest = nearestOf(palette)
  return {
    palette,
    indexOf: (colour) => {
      const cell = cellOf(colour)
      if (near[cell]! < 0) near[cell] = nearest(...channels(colour))
      return near[cell]!
    },
  }
}

/** Colours whose channels agree in their six upper bits count as one: by eye they are. Below 2 to the 18th. */
const cellOf = (colour: number): number =>
  ((colour & 0xfc) << 10) | ((colour & 0xfc00) >> 4) | ((colour & 0xfc0000) >> 18)

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
function commonest(runs: Runs, most: number, named: ReadonlySet<number>): readonly number[] {
  const weights = tables.weights.fill(0)
  const colours = tables.common
  const seen: number[] = []
  for (let run = 0; run < runs.count; run += 1) {
    const [colour, length] = [runs.colours[run]!, runs.lengths[run]!]
    const cell = cellOf(colour)
    const area = length > 2
    if (weights[cell] === 0) seen.push(cell)
    if (weights[cell] === 0 || area) colours[cell] = colour
    weights[cell]! += area ? length * areaWeight : length
  }
  const weightOf = (cell: number): number => weights[cell]! * (named.has(cell) ? namedWeight : 1)
  return seen
    .toSorted((a, b) => weightOf(b) - weightOf(a))
    .slice(0, most)
    .map((cell) => colours[cell]!)
}
const areaWeight = 8
const namedWeight = 6

/** As it lies in memory: red in the lowest byte. */
const fromHex = (colour: string): number => Buffer.from(`${colour.slice(1)}ff`, 'hex').readUInt32LE()

const channels = (colour: number): readonly [red: number, green: number, blue: number] => [
  colour & 255,
  (colour >> 8) & 255,
  (colour >> 16) & 255,
]
