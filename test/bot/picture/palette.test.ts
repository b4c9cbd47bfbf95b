// test/bot/picture/palette.test.ts: words can be read by day and by night, and no sign rests on hue alone.
import { describe, expect, test } from 'vitest'
import { downs, rooms, verdictTones } from '../../../bot/render/picture/palette.ts'
import { seriesOf } from '../../../bot/render/picture/chart/series.ts'

/** Relative luminance and contrast as W3C defines them (WCAG 2.2, definitions). */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return value <= 0.040_45 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}
function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b)
  return (light + 0.05) / (dark + 0.05)
}

describe.each(['light', 'dark'] as const)('in a %s room', (room) => {
  const tones = rooms[room]
  test('every word stands out by 4.5 to 1 from what is behind it (WCAG 2.2, 1.4.3)', () => {
    expect(contrast(tones.ink, tones.paper)).toBeGreaterThanOrEqual(4.5)
    expect(contrast(tones.soft, tones.paper)).toBeGreaterThanOrEqual(4.5)
    expect(contrast(tones.onStage, tones.stage)).toBeGreaterThanOrEqual(4.5)
    expect(contrast(tones.onStage, tones.yard)).toBeGreaterThanOrEqual(4.5)
    for (const { band, ink } of Object.values(verdictTones)) expect(contrast(ink, band)).toBeGreaterThanOrEqual(4.5)
  })
  test('what points out a sign stands out from the stage by 3 to 1 (WCAG 2.2, 1.4.11)', () => {
    expect(contrast(tones.point, tones.stage)).toBeGreaterThanOrEqual(3)
  })
  test('chicks of any down can be told from the stage by lightness, of the down or of its edge', () => {
    for (const { back, edge } of Object.values(downs))
      expect(Math.max(contrast(back, tones.stage), contrast(edge, tones.stage))).toBeGreaterThanOrEqual(1.5)
  })
  test('the lines of a chart differ by lightness from their ground', () => {
    for (const at of [0, 1, 2, 3]) expect(contrast(seriesOf(room, at).colour, tones.yard)).toBeGreaterThanOrEqual(2.5)
  })
})

test('silver and gold chicks differ by lightness, which every eye sees', () => {
  expect(contrast(downs['pale yellow'].back, downs['red-buff'].back)).toBeGreaterThanOrEqual(2)
  expect(contrast(downs.cream.back, downs.buff.back)).toBeGreaterThanOrEqual(1.3)
  expect(contrast(downs['silver grey'].back, downs['golden brown'].back)).toBeGreaterThanOrEqual(1.5)
})
