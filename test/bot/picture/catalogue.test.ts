// test/bot/picture/catalogue.test.ts: real answers of the core, every fourth bird of the catalogue bred pure and crossed, can be drawn.
import { expect, test } from 'vitest'
import { planOf } from '../../../bot/render/picture/plan.ts'
import { breeds } from '../../../core/breeds.ts'
import { resolve } from '../../../core/resolve.ts'

const some = breeds.filter((_, at) => at % 4 === 0).map(({ name }) => name)
const manner = { symbols: false, units: 'both' } as const
const planFor = (sire: string, dam: string) =>
  planOf(
    resolve({
      kind: 'cross',
      matings: [{ sire: { breed: sire }, dam: { breed: dam } }],
      aspects: [],
      assumed: [],
      manner,
    }),
    'light',
  )

/** Two screens of a phone. */
const mostHigh = 1100

/** Words that found no room: they end in a sign of it. */
const cutShort = /data-words="[^"]*…"/

test('each has a picture that names it, says its chicks, cuts no words and is no longer than two screens of a phone', async () => {
  const faults: string[] = []
  for (const [at, sire] of some.entries())
    for (const dam of [sire, some[(at * 7 + 3) % some.length]!]) {
      const plan = await planFor(sire, dam)
      const said =
        plan && [sire, dam].every((name) => plan.caption.includes(name)) && /[Pp]ullet|both sexes/.test(plan.caption)
      if (
        !said ||
        plan.height > mostHigh ||
        cutShort.test(plan.markup) ||
        plan.markup.includes('undefined') ||
        plan.markup.includes('NaN')
      )
        faults.push(`${sire} over ${dam}`)
    }
  expect(faults).toEqual([])
})
