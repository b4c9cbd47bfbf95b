// test/core/answers/rulesBehind.test.ts: a cross asked "why?" lists the rules of looks behind its chicks.
import { expect, test } from 'vitest'
import { answerCross } from '../../../core/answers/cross.ts'
import type { CrossQuestion } from '../../../core/question.ts'

const asked = (aspects: CrossQuestion['aspects']): CrossQuestion => ({
  kind: 'cross',
  matings: [{ sire: { breed: 'Rhode Island Red' }, dam: { breed: 'Light Sussex' } }],
  aspects,
  assumed: [],
  manner: { symbols: false, units: 'both' },
})

test('asked why, the answer tells wheaten, columbian, mahogany and silver over gold, in that order', () => {
  const [crossed] = answerCross(asked(['why'])).crosses
  const said = crossed?.rules?.map(({ says }) => says) ?? []
  const at = ['Wheaten', 'columbian', 'Mahogany', 'silver and gold'].map((word) =>
    said.findIndex((says) => says.includes(word)),
  )
  expect(at).toEqual([0, 1, 2, 3])
  expect(crossed?.rules?.[0]?.certainty).toBe('usual')
})

test('not asked why, it does not', () => {
  expect(answerCross(asked([])).crosses[0]?.rules).toBe(undefined)
})
