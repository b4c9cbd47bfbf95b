// test/bot/picture/png.test.ts: our PNGs as another program reads them.
import fc from 'fast-check'
import { PNG } from 'pngjs'
import { expect, test } from 'vitest'
import { encode } from '../../../bot/render/picture/png.ts'

const read = (png: Uint8Array) => PNG.sync.read(Buffer.from(png))
const opaque = (colours: readonly (readonly number[])[]): Uint8Array =>
  Uint8Array.from(colours.flatMap(([r = 0, g = 0, b = 0]) => [r, g, b, 255]))

const channel = fc.integer({ min: 0, max: 63 }).map((upper) => upper * 4)
const colour = fc.tuple(channel, channel, channel)

test('a picture of no more colours than the palette holds comes back as it was (read by pngjs)', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(colour, { minLength: 1, maxLength: 32, selector: String }),
      fc.integer({ min: 1, max: 40 }),
      fc.nat(),
      (palette, width, seed) => {
        const height = 9
        const rgba = opaque(
          Array.from({ length: width * height }, (_, at) => palette[(at * 7 + seed + (at % 3)) % palette.length]!),
        )
        const back = read(encode({ width, height, rgba }, 32))
        expect([back.width, back.height]).toEqual([width, height])
        expect(Buffer.compare(back.data, Buffer.from(rgba))).toBe(0)
      },
    ),
  )
})

test('with too many colours areas stay exact and single pixels move to the nearest that is left', () => {
  const area = Array.from({ length: 60 }, () => [195, 206, 194])
  const dots = Array.from({ length: 40 }, (_, at) => [at * 6, 0, 255 - at * 6])
  const back = read(encode({ width: 10, height: 10, rgba: opaque([...area, ...dots]) }, 8))
  expect([...back.data.subarray(0, 3)]).toEqual([195, 206, 194])
  const used = new Set(Array.from({ length: 100 }, (_, at) => back.data.readUInt32BE(at * 4)))
  expect(used.size).toBeLessThanOrEqual(8)
})

test('a colour that the drawing names is kept before soft edges, however little there is of it', () => {
  const edges = Array.from({ length: 98 }, (_, at) => [(at % 14) * 16, 128, Math.floor(at / 14) * 30])
  const rgba = opaque([...edges, [200, 54, 58], [200, 54, 58]])
  const has = (png: Uint8Array) => [...read(png).data.subarray(98 * 4, 98 * 4 + 3)].join() === '200,54,58'
  expect(has(encode({ width: 10, height: 10, rgba }, 12, ['#c8363a']))).toBe(true)
})
