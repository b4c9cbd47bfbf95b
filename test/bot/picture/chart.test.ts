// test/bot/picture/chart.test.ts: charts show the numbers of the answer, in words too, in either room.
import { describe, expect, test } from 'vitest'
import { after, oddsPlan } from '../../../bot/render/picture/chart/odds.ts'
import { eggsByYearPlan } from '../../../bot/render/picture/chart/eggsByYear.ts'
import { enoughPlan } from '../../../bot/render/picture/chart/enough.ts'
import { carrier, enough, twoLines } from './chartAnswers.ts'

describe('the chance that a bird carries it, after n clear chicks', () => {
  test('2 in 3 falls to 1 in 2, 1 in 3, 1 in 5 on a bird that shows it: by hand, 2·½ⁿ against 1', () => {
    expect(after(2 / 3, 1 / 2, 0)).toBeCloseTo(2 / 3, 12)
    expect(after(2 / 3, 1 / 2, 1)).toBeCloseTo(1 / 2, 12)
    expect(after(2 / 3, 1 / 2, 2)).toBeCloseTo(1 / 3, 12)
    expect(after(2 / 3, 1 / 2, 3)).toBeCloseTo(1 / 5, 12)
  })
  test('a full brother of a lavender bird, six black chicks from a lavender hen: about 3 in 100', () => {
    expect(after(2 / 3, 1 / 2, 6)).toBeCloseTo(1 / 33, 12)
  })
})

describe('every word and number drawn is in the caption, but for the scales', () => {
  const said = (markup: string) => [...markup.matchAll(/data-words="([^"]*)"/g)].map(([, line = '']) => line)
  test.each([
    ['odds', () => oddsPlan(carrier, 'light')],
    ['eggs by year', () => eggsByYearPlan(twoLines, 'light')],
    ['enough pullets', () => enoughPlan(enough, 'light')],
  ] as const)('%s', async (_, plan) => {
    const { markup, caption } = await plan()
    for (const line of said(markup)) expect(caption).toContain(line.replaceAll('&#39;', "'"))
    expect(markup).toContain('DejaVu Sans')
  })
  test('the odds after each of the first chicks', async () => {
    const { caption } = await oddsPlan(carrier, 'light')
    expect(caption).toMatch(/with a lavender hen: after 1 chick about 50 in 100, after 2 chicks about 33 in 100/)
  })
  test('the range of each year of each line', async () => {
    const { caption } = await eggsByYearPlan(twoLines, 'light')
    expect(caption).toContain('B: heritage Rhode Island Red: year 1 195 to 250, year 2 160 to 215.')
  })
  test('the chance at each number of eggs', async () => {
    const { caption } = await enoughPlan(enough, 'light')
    expect(caption).toContain('42 eggs: about 83 in 100; 46 eggs: about 91 in 100')
  })
})

test('the number of eggs advised is pointed out with its chance', async () => {
  const { markup } = await enoughPlan(enough, 'light')
  expect(markup).toContain(`>${enough.eggsToSet} eggs: `)
})

test('bars and lines carry letters and shapes, so that none rests on colour', async () => {
  const bars = (await eggsByYearPlan(twoLines, 'dark')).markup
  expect(bars.match(/>A<\/text>/g)).toHaveLength(2)
  expect(bars.match(/>B<\/text>/g)).toHaveLength(2)
  const lines = (await oddsPlan(carrier, 'dark')).markup
  expect(lines).toMatch(/stroke-dasharray="6,3"/)
})
