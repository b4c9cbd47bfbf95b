// test/bot/picture/door.test.ts: the door to the pictures: what has one, what it is like, and that a failure costs nothing else.
import { isBlurhashValid } from 'blurhash'
import { PNG } from 'pngjs'
import { describe, expect, test } from 'vitest'
import { picture } from '../../../bot/render/picture.ts'
import { draw } from '../../../bot/render/picture/worker.ts'
import { Answer, type CrossAnswer } from '../../../core/answer.ts'
import { blackSexLink, cross } from '../render/samples.ts'
import { carrier, enough, twoLines } from './chartAnswers.ts'

const common = { summary: 'x', assumptions: [], assumed: [], cautions: [], sources: [], birds: [], sire: [], dam: [] }
const fact: Answer = { kind: 'fact', ...common, about: 'x', says: [], certainty: 'sure', verdict: 'not asked' }

/** An answer that no core gives: its down has no colour that can be drawn. */
function undrawable(): CrossAnswer {
  const answer = structuredClone(cross([blackSexLink]))
  Reflect.set(answer.crosses[0]!.cases[0]!.cockerels[0]!.look.chick, 'colour', 'no colour')
  return answer
}

describe('a picture of a cross', () => {
  test('is a PNG of the size it says, under 60 KB, with a caption, a file name and a blur', async () => {
    const drawn = await picture(cross([blackSexLink]))
    const { width, height } = PNG.sync.read(Buffer.from(drawn!.png))
    expect([drawn!.width, drawn!.height]).toEqual([width, height])
    expect(drawn!.png.byteLength).toBeLessThan(60_000)
    expect(drawn!.caption).toContain('Barred Plymouth Rock')
    expect(drawn!.fileName).not.toBe(drawn!.caption)
    expect(isBlurhashValid(drawn!.blurHash ?? '').result).toBe(true)
  })
  test('differs between a light and a dark room in its pixels, not in its words', async () => {
    const [light, dark] = await Promise.all([
      picture(cross([blackSexLink])),
      picture(cross([blackSexLink]), { room: 'dark' }),
    ])
    expect(Buffer.compare(Buffer.from(light!.png), Buffer.from(dark!.png))).not.toBe(0)
    expect(dark!.caption).toBe(light!.caption)
  })
  test('is drawn once: the same answer again gives the very same bytes, another answer others', async () => {
    const task = { answer: cross([blackSexLink]), room: 'light' } as const
    const [first, again] = [await draw(task), await draw(structuredClone(task))]
    expect(again!.png).toBe(first!.png)
    const other = cross([{ ...blackSexLink, cockerels: blackSexLink.pullets }])
    expect((await draw({ answer: other, room: 'light' }))!.png).not.toBe(first!.png)
  })
})

test.each([
  ['carrier', carrier, 'carrier-odds.png'],
  ['lines', twoLines, 'eggs-by-year.png'],
  ['hatch', enough, 'eggs-to-set.png'],
] as const)('an answer of kind %s has a chart', async (_, answer, fileName) => {
  const drawn = await picture(answer)
  expect(drawn?.fileName).toBe(fileName)
  expect(drawn!.png.byteLength).toBeLessThan(60_000)
})

test('a question back shows what stands until it is answered, where something does', async () => {
  const askBack = { kind: 'ask-back', ...common, missing: 'which-is-male', options: [] } as const
  expect(await picture(askBack)).toBeUndefined()
  const one = cross([blackSexLink])
  const bothWays = { ...one, crosses: [one.crosses[0]!, one.crosses[0]!] }
  expect((await picture({ ...askBack, provisional: bothWays }))?.fileName).toBe('cross.png')
})

describe('no picture', () => {
  test('where the kind of answer has none, or there is nothing to draw', async () => {
    expect(await picture(fact)).toBeUndefined()
    expect(await picture({ kind: 'silent' })).toBeUndefined()
    expect(await picture({ ...cross([]), crosses: [] })).toBeUndefined()
    expect(await picture({ ...carrier, now: 0 })).toBeUndefined()
    expect(await picture({ ...twoLines, options: twoLines.options.slice(0, 1) })).toBeUndefined()
    expect(await picture({ ...enough, distribution: [] })).toBeUndefined()
  })
})

describe('a failure', () => {
  test('is told to the caller, and the next picture comes out as if nothing had been', async () => {
    await expect(picture(undrawable())).rejects.toThrow(/undefined/)
    await expect(picture(cross([blackSexLink]))).resolves.toBeDefined()
  })
  test('includes not being done in time', async () => {
    await expect(picture(cross([blackSexLink]), { patienceMs: 0 })).rejects.toThrow(/abort/i)
    await expect(picture(cross([blackSexLink]))).resolves.toBeDefined()
  })
})
