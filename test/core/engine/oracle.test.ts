// test/core/engine/oracle.test.ts: every stored statement answered as independent programs answered it.
import { describe, expect, test } from 'vitest'
import { answerStatement } from '../../../core/statement.ts'
import stored from '../../data/statements.json' with { type: 'json' }

type Stored = {
  readonly id: string
  readonly title: string
  readonly oracle: string
  readonly answer: Readonly<Record<string, number | boolean>>
  readonly exact?: Readonly<Record<string, string>>
  readonly evidenceProbability?: number
  readonly evidenceExact?: string
}
const problems = [...stored.problems, ...stored.largePedigrees] as unknown as readonly Stored[]
const possible = problems.filter(({ answer }) => answer['impossible'] === undefined)

describe.each(possible)('$id, $title [$oracle]', (problem) => {
  const found = answerStatement(problem)
  if (!('answer' in found)) throw new Error(JSON.stringify(found))

  test('each class to 1e-12, and no class that is not there', () => {
    expect(Object.keys(found.answer).toSorted()).toEqual(Object.keys(problem.answer).toSorted())
    for (const [name, p] of Object.entries(problem.answer))
      expect(Math.abs(found.answer[name]! - Number(p)), name).toBeLessThanOrEqual(1e-12)
  })
  test.runIf(problem.evidenceProbability !== undefined)('the chance of all readings to 1e-12', () => {
    expect(Math.abs(found.evidence - problem.evidenceProbability!)).toBeLessThanOrEqual(1e-12)
  })
  test.runIf(problem.exact !== undefined)('the same fractions', () => {
    expect(found.exact).toEqual(problem.exact)
  })
  test.runIf(problem.evidenceExact !== undefined)('the same fraction for the chance of all readings', () => {
    expect(found.evidenceExact).toBe(problem.evidenceExact)
  })
})

test.each(problems.filter(({ answer }) => answer['impossible'] !== undefined))(
  '$id, $title, is a conflict of readings [$oracle]',
  (problem) => {
    expect(answerStatement(problem)).toEqual({
      conflict: [
        { bird: 'c', reading: 'S: S/S' },
        { bird: 'k', reading: 'ground: gold' },
      ],
    })
  },
)
