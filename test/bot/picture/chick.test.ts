// test/bot/picture/chick.test.ts: each look of a day-old chick has its colours in the places where a keeper looks for them.
import { describe, expect, test } from 'vitest'
import { chick } from '../../../bot/render/picture/chick/draw.ts'
import { downs, flesh, hatchLegs } from '../../../bot/render/picture/palette.ts'
import { Chick, type Look } from '../../../core/looks/look.ts'
import { colours, look } from './looks.ts'

const downColours = Chick.shape.colour.options
const downPatterns = Chick.shape.pattern.options

const drawn = (parts: Partial<Look['chick']>, legs = '#123456') =>
  colours(chick(look({ chick: parts }).chick, { shank: legs, room: 'light', id: 'c' }), 120)

const flank = [80, 46] as const
const breast = [90, 78] as const
const crown = [68, 22] as const
const back = [38, 60] as const
const shank = [48, 105] as const
const face = [88, 41.6] as const

describe.each(downColours)('%s down', (colour) => {
  test('lies on back and flank, and on the breast where the belly is not paler', () => {
    const at = drawn({ colour, belly: 'pale' })
    expect(at(...flank)).toBe(downs[colour].back)
    expect(at(...breast)).toBe(downs[colour].belly)
    expect(drawn({ colour, belly: 'same' })(...breast)).toBe(downs[colour].back)
  })
})

test('a head spot lies on the crown; none leaves the crown in the colour of the down', () => {
  const pale = '#fbf3d3'
  expect(drawn({ headSpot: 'small' })(...crown)).toBe(pale)
  expect(drawn({ headSpot: 'large' })(...crown)).toBe(pale)
  for (const headSpot of ['none', 'hidden'] as const)
    expect([downs.black.back, downs.black.light]).toContain(drawn({ headSpot })(...crown))
})

test('a spot that cannot be seen on its down is not drawn', () => {
  expect(drawn({ headSpot: 'large', headSpotClear: 'no' })(...crown)).not.toBe('#fbf3d3')
})

test('a large spot reaches further than a small one, and a blurred one is dimmer', () => {
  const beyond = [60, 34] as const
  expect(drawn({ headSpot: 'small' })(...beyond)).not.toBe('#fbf3d3')
  expect(drawn({ headSpot: 'large' })(...beyond)).toBe('#fbf3d3')
  const blurred = drawn({ headSpot: 'blurred' })(...crown)
  expect(blurred > downs.black.light && blurred < '#fbf3d3').toBe(true)
})

test('a spot that shows faintly is dimmer than a clear one', () => {
  const faint = drawn({ colour: 'brown', headSpot: 'small', headSpotClear: 'faint' })(...crown)
  expect(faint).not.toBe('#fbf3d3')
  expect(faint).not.toBe(downs.brown.light)
})

describe.each(['golden brown', 'silver grey', 'brown'] as const)('stripes on %s', (colour) => {
  test('crisp ones are of the full dark tone, blurred ones are not', () => {
    expect(drawn({ colour, pattern: 'striped' })(...back)).toBe(downs[colour].stripe)
    const blurred = drawn({ colour, pattern: 'blurred stripes' })(...back)
    expect([downs[colour].stripe, downs[colour].back]).not.toContain(blurred)
  })
})

test('no two patterns of down make the same drawing', () => {
  const drawings = downPatterns.map(
    (pattern) =>
      chick(look({ chick: { colour: 'brown', pattern, belly: 'same' } }).chick, {
        shank: '#123456',
        room: 'light',
        id: 'c',
      }).markup,
  )
  expect(new Set(drawings).size).toBe(downPatterns.length)
})

test('extra white lies on face and breast; dark skin on the face; the legs have the colour they are given', () => {
  const white = '#fdfcf7'
  expect(drawn({ belly: 'same', extraWhite: true })(94, 70)).toBe(white)
  expect(drawn({ belly: 'same' })(94, 70)).toBe(downs.black.back)
  expect(drawn({ skin: 'dark' })(...face)).toBe(flesh.darkFace)
  expect(drawn({ skin: 'light' })(...face)).toBe(downs.black.back)
  expect(drawn({})(...shank)).toBe('#123456')
})

test('where the wing is read, long primaries reach beyond the coverts and short ones do not; else no quill is drawn', () => {
  const tip = [8, 90] as const
  const wing = (wing: 'fast' | 'slow', wingRead: boolean) =>
    colours(chick(look({ chick: { wing } }).chick, { shank: '#123456', room: 'light', id: 'c', wingRead }), 120)
  const bare = '#ff00ff'
  expect(wing('fast', true)(...tip)).not.toBe(bare)
  expect(wing('slow', true)(...tip)).toBe(bare)
  expect(wing('slow', true)(20, 92)).not.toBe(bare)
  for (const speed of ['fast', 'slow'] as const) expect(wing(speed, false)(20, 92)).toBe(bare)
})

describe('gold and silver on down that is otherwise alike', () => {
  const cheek = [88, 42] as const
  const at = (colour: 'dark brown' | 'grey-brown', ground: 'gold' | 'silver' | 'hidden') =>
    drawn({ colour, ground, belly: 'same' })(...cheek)
  test('dark down is pale in the face for silver, golden for gold, and dark where neither shows', () => {
    expect(at('dark brown', 'silver')).toBe(downs['silver grey'].light)
    expect(at('dark brown', 'gold')).toBe(downs['golden brown'].back)
    expect(at('dark brown', 'hidden')).toBe(downs['dark brown'].back)
  })
  test('grey down is warmer for gold', () => {
    expect(at('grey-brown', 'silver')).toBe(downs['grey-brown'].back)
    expect(at('grey-brown', 'gold') > downs['grey-brown'].back).toBe(true)
  })
})

test('legs at hatch show the skin and not yet the pigment of the grown shank', () => {
  expect(hatchLegs(look({ shank: 'slate', skin: 'white' }))).toBe(hatchLegs(look({ shank: 'white', skin: 'white' })))
  expect(hatchLegs(look({ skin: 'yellow' }))).not.toBe(hatchLegs(look({ skin: 'white' })))
  const dark = look({ chick: { skin: 'dark' }, skin: 'dark' })
  expect(hatchLegs(dark)).not.toBe(hatchLegs(look({ skin: 'white' })))
})
