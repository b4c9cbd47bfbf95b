// test/bot/picture/snapshot.test.ts: drawings as they were last looked at. After a wanted change: UPDATE_PICTURES=1 npx vitest run test/bot/picture/snapshot, and look at what changed.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import pixelmatch from 'pixelmatch'
import { PNG } from 'pngjs'
import { expect, test } from 'vitest'
import { grown } from '../../../bot/render/picture/adult/draw.ts'
import { cardOf } from '../../../bot/render/picture/card/card.ts'
import { drawCard } from '../../../bot/render/picture/card/draw.ts'
import { lens } from '../../../bot/render/picture/card/lens.ts'
import { chick } from '../../../bot/render/picture/chick/draw.ts'
import { rooms } from '../../../bot/render/picture/palette.ts'
import { rasterise } from '../../../bot/render/picture/raster.ts'
import { placed, svg, type Markup } from '../../../bot/render/picture/svg.ts'
import { Chick, Plumage } from '../../../core/looks/look.ts'
import { blackSexLink, cross } from '../render/samples.ts'
import { look } from './looks.ts'

const folder = 'test/bot/picture/snapshots'
/** Share of pixels that may differ: rounding on another machine moves soft edges, not shapes. */
const tolerance = 0.002

function expectAsBefore(name: string, markup: string, height: number): void {
  const file = `${folder}/${name}.png`
  const { png } = rasterise(markup, height)
  if (process.env['UPDATE_PICTURES']) {
    mkdirSync(folder, { recursive: true })
    writeFileSync(file, png)
  }
  const [before, now] = [readFileSync(file), Buffer.from(png)].map((bytes) => PNG.sync.read(bytes))
  expect([now!.width, now!.height]).toEqual([before!.width, before!.height])
  const differing = pixelmatch(before!.data, now!.data, undefined, now!.width, now!.height, { threshold: 0.1 })
  expect(differing / (now!.width * now!.height)).toBeLessThan(tolerance)
}

const columns = 6
function gallery(
  drawings: readonly Markup[],
  cell: number,
  scale: number,
): { readonly markup: string; readonly height: number } {
  const height = Math.ceil(drawings.length / columns) * cell
  const placedAll = drawings.map((one, at) =>
    placed(one, (at % columns) * cell, Math.floor(at / columns) * cell, scale),
  )
  const { markup } =
    svg`<svg xmlns="http://www.w3.org/2000/svg" width="${columns * cell}" height="${height}"><rect width="${columns * cell}" height="${height}" fill="${rooms.light.stage}"/>${placedAll}</svg>`
  return { markup, height }
}

test('chicks of every pattern and spot', () => {
  const patterns = Chick.shape.pattern.options.map(
    (pattern) => ({ colour: 'golden brown', belly: 'same', pattern }) as const,
  )
  const spots = Chick.shape.headSpot.options.map((headSpot) => ({ headSpot }) as const)
  const rest = [
    { extraWhite: true },
    { skin: 'dark' },
    { colour: 'blue-grey', headSpot: 'small', headSpotClear: 'faint' },
  ] as const
  const drawings = [...patterns, ...spots, ...rest].map((parts, at) =>
    chick(look({ chick: parts }).chick, { shank: '#e8b94a', room: 'light', id: `c${at}` }),
  )
  const { markup, height } = gallery(drawings, 60, 0.5)
  expectAsBefore('chicks', markup, height)
})

test.each(['F', 'M'] as const)('grown birds of every pattern (%s)', (sex) => {
  const drawings = Plumage.shape.pattern.options.map((pattern) =>
    grown(
      look({ plumage: { pattern, red: 'gold', black: 'black', white: pattern === 'white' }, shank: 'yellow' }),
      sex,
      'light',
    ),
  )
  const barred = (['single dose', 'double dose'] as const).map((barring) =>
    grown(look({ plumage: { barring } }), sex, 'light'),
  )
  const { markup, height } = gallery([...drawings, ...barred], 60, 0.36)
  expectAsBefore(sex === 'F' ? 'hens' : 'cocks', markup, height)
})

test('combs, crests, feet and feathers', () => {
  const forms = [
    { comb: 'rose' },
    { comb: 'pea', muffs: 'full' },
    { comb: 'walnut', crest: 'small', feet: 'feathered', toes: 'five' },
    { comb: 'V', crest: 'large' },
    { comb: 'buttercup' },
    { comb: 'none', tufts: 'tufted', tail: 'rumpless' },
    { feather: 'frizzled' },
    { feather: 'silkie' },
    { neck: 'naked' },
    { neck: 'bow-tie', legs: 'dwarf' },
    { henFeathered: true },
    { legs: 'short' },
  ] as const
  const { markup, height } = gallery(
    forms.map((form) => grown(look({ form, plumage: { pattern: 'columbian', red: 'silver' } }), 'M', 'light')),
    60,
    0.36,
  )
  expectAsBefore('forms', markup, height)
})

test('the signs seen close', () => {
  const signs = ['head spot', 'wing feathers', 'skin colour', 'stripes', 'down colour'] as const
  const looks = [
    look({ chick: { headSpot: 'small', wing: 'slow', pattern: 'striped', colour: 'brown' } }),
    look({ chick: { skin: 'dark' }, skin: 'dark' }),
  ]
  const drawings = looks.flatMap((one, a) =>
    signs.map((sign, b) => placed(lens(sign, { look: one, told: true }, 'light', `l${a}${b}`), 30, 30)),
  )
  const { markup, height } = gallery(drawings, 60, 1)
  expectAsBefore('signs', markup, height)
})

test.each(['light', 'dark'] as const)('a whole card in a %s room', (room) => {
  const { markup, height } = drawCard(cardOf(cross([blackSexLink]))!, room)
  expectAsBefore(`card-${room}`, markup, height)
})
